import { expect } from 'vitest';

/** Weight of half the last digit of a number as printed: 0.05 for "15.0". */
function halfLastDigit(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** Whether a number rounds to what a document prints; nobody picks a tolerance. */
export function roundsTo(value: number, printed: string): boolean {
  // The last part lets a decimal half that binary numbers miss by their last digit count as a half.
  return Math.abs(value - Number(printed)) <= halfLastDigit(printed) * (1 + 1e-9);
}

/** Asserts that a computed number prints as a document states it. `where` names the document's page or section. */
export function expectPrinted(value: number, printed: string, where: string): void {
  expect(roundsTo(value, printed), `computed ${String(value)}, printed ${printed} (${where})`).toBe(true);
}
