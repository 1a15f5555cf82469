import type { LogFault, LogPlace, LogRuleId } from './log-rule.ts';

/** Faults of a file as they come up: the first ones of each rule in full, the others as a count. */
export interface FaultList {
  readonly add: (rule: LogRuleId, message: string, at: LogPlace) => void;
  readonly all: () => readonly LogFault[];
}

/** As many as one would correct by hand. */
const SHOWN = 10;

/** Makes an empty list; a log of a million rows may have a million faults, and nobody reads them. */
export function faultList(): FaultList {
  const shown: LogFault[] = [];
  const counts = new Map<LogRuleId, number>();
  const last = new Map<LogRuleId, number>();
  return {
    add(rule, message, at) {
      const count = (counts.get(rule) ?? 0) + 1;
      counts.set(rule, count);
      if (at.in === 'file') last.set(rule, at.line);
      if (count <= SHOWN) shown.push({ rule, message, at });
    },
    all: () => [
      ...shown,
      ...[...counts]
        .filter(([, count]) => count > SHOWN)
        .map(([rule, count]): LogFault => {
          const line = last.get(rule) ?? 1;
          const message = `${count - SHOWN} more rows like the ${SHOWN} above; the last is line ${line}`;
          return { rule, message, at: { in: 'file', line, cell: null } };
        }),
    ],
  };
}
