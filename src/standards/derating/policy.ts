import type { Source } from '../../values/value.ts';

/** Class of part that a policy speaks of; the words are those of the part roles. */
export type DeratedClass = string;

/** A fuse in a direct supply, whose printed range has no tolerance to come on top; only its voltage line differs. */
export const DIRECT_SUPPLY_FUSE: DeratedClass = 'fuse in a direct supply';

/** One line of a policy: the highest share of a rating that it accepts. */
export interface DeratingRule {
  readonly partClass: DeratedClass;
  /** Where the line is for some roles of the class only: a bulk capacitor, not every electrolytic. */
  readonly roles?: readonly string[];
  /** Where the line is for some technologies of the class only: "tantalum". */
  readonly technologies?: readonly string[];
  readonly quantity: 'voltage' | 'current' | 'power' | 'temperature';
  /** Highest accepted ratio of stress to rating. */
  readonly limit: number;
  /** Ratio from which a reviewer should say more than a remark, where the policy has a second line. */
  readonly caution?: number;
  /** Ratings for which the line holds, in the SI unit of the quantity: fuses from 2 A up. */
  readonly ratedFrom?: number;
  readonly ratedBelow?: number;
  /** Conditions, as the source gives them. */
  readonly condition?: string;
  readonly source: Source;
}

/** A derating policy is data: how much of a rating a design may use, and who says so. */
export interface DeratingPolicy {
  /** kebab-case, equal to the file stem. */
  readonly id: string;
  readonly title: string;
  /** For whom it was written, and how strict that makes it here. */
  readonly meaning: string;
  readonly rules: readonly DeratingRule[];
  /** Written by the site for itself; left out for the policies that come with the program. */
  readonly isOwn?: true;
}

/** What a site says of derating: the policy for its entries, and policies that it wrote itself. */
export interface SiteDerating {
  /** Policy of every entry that names none; null for the default. */
  readonly chosen: string | null;
  readonly own: readonly DeratingPolicy[];
}

/** What is to be judged: a part, and one of its ratings. */
export interface DeratingQuestion {
  readonly partClass: DeratedClass;
  readonly role: string;
  readonly technology: string | null;
  readonly quantity: DeratingRule['quantity'];
  /** Rated value in its SI unit, where it decides the line. */
  readonly rated?: number;
}

/** The line of a policy that answers a question, the one that names role or technology first; null where it has none. */
export function ruleFor(policy: DeratingPolicy, question: DeratingQuestion): DeratingRule | null {
  const fitting = policy.rules.filter((rule) => fits(rule, question));
  return fitting.find((rule) => rule.roles !== undefined || rule.technologies !== undefined) ?? fitting[0] ?? null;
}

function fits(rule: DeratingRule, question: DeratingQuestion): boolean {
  if (rule.partClass !== question.partClass || rule.quantity !== question.quantity) return false;
  if (rule.roles !== undefined && !rule.roles.includes(question.role)) return false;
  if (rule.technologies !== undefined && !rule.technologies.includes(question.technology ?? '')) return false;
  if (rule.ratedFrom !== undefined && !(question.rated !== undefined && question.rated >= rule.ratedFrom)) return false;
  return rule.ratedBelow === undefined || (question.rated !== undefined && question.rated < rule.ratedBelow);
}
