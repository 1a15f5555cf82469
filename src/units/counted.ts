import { formatNumber } from './format-number.ts';

/** A count with its noun: "1 part", "7 parts", "1 entry". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${formatNumber(count, 0)} ${count === 1 ? one : many}`;
}
