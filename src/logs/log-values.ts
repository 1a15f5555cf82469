import type { Known } from '../values/value.ts';
import type { LogSummary } from './log-summary.ts';

/** Values of a log that prose may quote: `:value[full-load.sustained-power]`, `:value[full-load.highest-temperature-case]`. */
export function logValues(log: LogSummary): Readonly<Record<string, Known>> {
  const { id, power } = log;
  const channels = log.channels.flatMap(({ quantity, mean, lowest, highest }) => [
    [`mean-${quantity}`, mean] as const,
    [`lowest-${quantity}`, lowest.value] as const,
    [`highest-${quantity}`, highest.value] as const,
  ]);
  const steps = log.steps.flatMap(({ changes }, index) =>
    changes.flatMap(({ quantity, before, after, lowest, highest, settling }) =>
      Object.entries({ before, after, lowest, highest, settling }).map(
        ([word, value]) => [`step-${index + 1}.${quantity}-${word}`, value] as const,
      ),
    ),
  );
  const named: readonly (readonly [string, Known])[] = [
    ['duration', log.duration],
    ['energy', log.energy],
    ['charge', log.charge],
    ['peak-power', power.peak],
    ['sustained-power', power.sustained],
    ['dropped-after', power.droppedAfter],
    ['under-load', power.underLoad],
    ...channels,
    ...steps,
  ];
  return Object.fromEntries(named.map(([name, value]) => [`${id}.${name}`.replace(/ /g, '-'), value]));
}
