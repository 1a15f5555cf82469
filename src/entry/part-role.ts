import type { DataPath } from '../diagnostics/finding.ts';
import { findRole, roleOf, roleWords } from '../roles/index.ts';
import type { Role } from '../roles/role.ts';
import { stageOf } from '../stages/index.ts';
import type { StageDeclaration } from '../stages/stage-kind.ts';
import type { Span } from '../units/quantity.ts';
import type { Stage } from './entry.ts';
import { didYouMean } from './nearest-word.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** Stages that part groups and "also in" may name, and the kinds of those that could be read. */
export interface KnownStages {
  readonly names: readonly string[];
  readonly kinds: ReadonlyMap<string, StageDeclaration>;
}

/** Groups for parts that belong to no block. */
export const GROUPS_WITHOUT_STAGE: readonly string[] = ['case', 'elsewhere'];

/** What part groups can be named after: every block of the entry, whether or not its kind is known. */
export function knownStages(names: readonly string[], stages: readonly Stage[]): KnownStages {
  const kinds = stages.flatMap((stage): [string, StageDeclaration][] => {
    const kind = stageOf(stage.kind);
    return kind === null ? [] : [[stage.id, kind]];
  });
  return { names, kinds: new Map(kinds) };
}

/** The role that words mean in a block: its own short words first ("switch" in a boost PFC), then the trade's names. */
export function roleInStage(words: string, stage: StageDeclaration | undefined): Role | null {
  const short = Object.entries(stage?.shortRoles ?? {}).find(([word]) => word.toLowerCase() === words.trim().toLowerCase());
  return (short === undefined ? null : roleOf(short[1])) ?? findRole(words);
}

/** Reports words that name no role. */
export function reportUnknownRole(
  context: ReadingContext,
  words: string,
  stage: StageDeclaration | undefined,
  path: DataPath,
  span?: Span,
): void {
  const advice =
    didYouMean(words, [...Object.keys(stage?.shortRoles ?? {}), ...roleWords()]) ??
    'Use the name of the trade: fuse, X capacitor, switch, bulk capacitor …';
  context.findings.push(readingFinding('unknown-role', atValue(path, span), `Nobody calls a part "${words}".`, { advice }));
}

/** Reports a role that the block it stands under does not hold. */
export function reportMisplacedRole(
  context: ReadingContext,
  role: Role,
  stage: StageDeclaration | undefined,
  path: DataPath,
  subject: string,
): void {
  if (stage === undefined || stage.roles.includes(role.id)) return;
  const message = `${subject} is a ${role.name}, which a ${stage.name} does not hold.`;
  context.findings.push(readingFinding('role-out-of-place', atValue(path), message, { subject }));
}
