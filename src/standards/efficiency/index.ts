import { codeOfConductTier2 } from './code-of-conduct-tier-2.ts';
import type { EfficiencyRule } from './efficiency-rule.ts';
import { eu2019 } from './eu-2019-1782.ts';
import { eu2025 } from './eu-2025-2052.ts';
import { levelVi } from './level-vi.ts';

/** Limits of efficiency that a supply from the mains is held against, in the order in which they are shown. */
export const EFFICIENCY_RULES: readonly EfficiencyRule[] = [levelVi, eu2019, eu2025, codeOfConductTier2];
