import type { DataPath } from '../diagnostics/finding.ts';
import type { PointFields } from './efficiency-fields.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** Reports a result that says nothing of an efficiency point, where its reading reported nothing else: "100 %: fine". */
export function reportEmptyResult(
  context: ReadingContext,
  written: { readonly text: string; readonly path: DataPath },
  result: Partial<PointFields>,
  before: number,
): void {
  const { efficiency, input, measuredOutput, current, notSustained, loads } = result;
  const said = [efficiency, input, measuredOutput, current, notSustained].some((field) => field != null);
  const isLoaded = (loads ?? []).some((load) => load.measuredOutput !== null || load.power !== null || load.current !== null);
  if (said || isLoaded || context.findings.length > before) return;
  const message = `"${written.text}" says neither an efficiency nor what went in or came out.`;
  const advice = 'Write it as in 91.2 %, 25.4 W or 20.03 V 0.9 A 25.4 W; a load that the device did not hold is "not sustained".';
  context.findings.push(readingFinding('unreadable-value', atValue(written.path), message, { advice }));
}
