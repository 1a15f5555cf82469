/** The first letter as a capital, the rest as it is: "Boost PFC". */
export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
