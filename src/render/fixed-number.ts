/** A number with fixed decimals: true minus, thousands set off by a narrow space. */
export function fixedNumber(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const [whole = '', fraction] = text.split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  const sign = value < 0 && Number(text) !== 0 ? '−' : '';
  return `${sign}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}
