import type { Finding } from '../diagnostics/finding.ts';
import { pipelineFinding } from './pipeline-rule.ts';

/** Runs a step of an entry; one that fails becomes a finding that names it, and the other value stands in for its result. */
export type GuardedStep = <T>(step: string, otherwise: T, run: () => T) => T;

/** Guards the steps of one entry. */
export function guardedSteps(findings: Finding[]): GuardedStep {
  return (step, otherwise, run) => {
    try {
      return run();
    } catch (error) {
      findings.push(stepFailed(step, error));
      return otherwise;
    }
  };
}

/** The finding that a step of this program failed on an entry. */
export function stepFailed(step: string, error: unknown): Finding {
  const words = error instanceof Error ? (error.message.split('\n', 1)[0] ?? error.name) : String(error);
  return pipelineFinding('internal-fault', `The step "${step}" failed on this entry: ${words}`);
}
