/** "1st", "2nd", "23rd", "11th". */
export function ordinal(count: number): string {
  const tens = count % 100;
  const ending = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return `${String(count)}${ending}`;
}
