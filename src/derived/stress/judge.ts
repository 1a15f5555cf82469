import type { Part } from '../../entry/entry.ts';
import { currentStressRatio } from '../../formulas/stress/current-stress-ratio.ts';
import { voltageStressRatio } from '../../formulas/stress/voltage-stress-ratio.ts';
import { ruleFor, type DeratingPolicy } from '../../standards/derating/policy.ts';
import type { Stress } from '../../stages/models/stage-model.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { StressRow, Verdict } from '../derived.ts';
import { partClassOf, technologyOf } from '../part-class.ts';
import { transientRatingOf } from '../part-rating.ts';

/** A stress to be judged: which part, what it is called, and the two numbers. */
interface Strain<D extends 'voltage' | 'current'> {
  readonly part: Part;
  /** Trade word for the stress: "reverse voltage". */
  readonly quantity: string;
  readonly stress: Known<D>;
  readonly rating: Known<D>;
  /** Class to judge it by, where the rating used makes it another than the part's own. */
  readonly partClass?: string;
  /** The corner at which it is worst, in words. */
  readonly corner?: string | null;
  /** Judged by the rating itself, where the stress is of moments or holds an allowance already. */
  readonly against?: Stress['against'];
  /** Published methods whose range the interval is. */
  readonly methods?: readonly string[];
}

/** A voltage against a rated voltage. */
export function judgeVoltage(strain: Strain<'voltage'>, policy: DeratingPolicy): StressRow {
  const { stress, rating } = strain;
  return row(strain, 'voltage', applyFormula(voltageStressRatio, { stress, rating }), policy);
}

/** A current against a rated current. */
export function judgeCurrent(strain: Strain<'current'>, policy: DeratingPolicy): StressRow {
  const { stress, rating } = strain;
  return row(strain, 'current', applyFormula(currentStressRatio, { stress, rating }), policy);
}

function row(
  strain: Strain<'voltage'> | Strain<'current'>,
  quantity: 'voltage' | 'current',
  ratio: Known<'ratio'>,
  policy: DeratingPolicy,
): StressRow {
  const { part, stress, rating } = strain;
  const question = { partClass: strain.partClass ?? partClassOf(part), role: part.role, technology: technologyOf(part), quantity };
  const rule = ruleFor(policy, isMissing(rating) ? question : { ...question, rated: rating.nominal });
  const limit = (strain.against ?? 'policy') === 'policy' ? (rule?.limit ?? null) : null;
  const transient = quantity === 'voltage' ? transientRatingOf(part) : null;
  return {
    references: part.references,
    role: part.role,
    stage: part.stage,
    quantity: strain.quantity,
    stress,
    rating,
    ratio,
    limit,
    policy: policy.id,
    verdict: verdictOf(ratio, limit),
    ...(strain.corner === undefined || strain.corner === null ? {} : { corner: strain.corner }),
    ...(strain.methods === undefined || strain.methods.length === 0 ? {} : { methods: strain.methods }),
    ...(strain.against === 'allowance' ? { allowance: true as const } : {}),
    ...(transient === null ? {} : { transientRating: transient }),
  };
}

/** Within where the whole interval is at or below the limit, over where all of it is above; 100 % where a policy names none. */
export function verdictOf(ratio: Known<'ratio'>, limit: number | null): Verdict {
  if (isMissing(ratio)) return 'withheld';
  // A ratio of two written numbers may miss the limit by the last binary digit only: 20 V on 25 V is 0.8.
  const edge = (limit ?? 1) * (1 + 1e-9);
  if (ratio.high <= edge) return 'within';
  return ratio.low > edge ? 'over' : 'straddles';
}
