import type { LogSummary } from '../logs/log-summary.ts';

/** Where the sheet shows a log: the heading of its plot. */
export function logAddress(logs: readonly LogSummary[], id: string): string {
  return `#${logAnchor(logs.findIndex((log) => log.id === id))}`;
}

/** Anchor of a log by its place among those of the sheet. */
export function logAnchor(index: number): string {
  return `log-${String(index + 1)}`;
}
