import type { PathBlock, PathOutlet, PathPart, PowerPath } from '../../derived/power-path/power-path.ts';
import { roleOf } from '../../roles/index.ts';
import { stageOf } from '../../stages/index.ts';
import { conductionWatts } from './losses.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { sentenceCase } from '../../units/sentence-case.ts';

/** Watts with one decimal: "107.3"; a dash where not known. */
export function watts(power: Known<'power'>): string {
  return isMissing(power) ? '–' : power.nominal.toFixed(1);
}

/** The input, with "≈" where it is worked out from an efficiency measured at another load. */
export function inputWatts(path: PowerPath): string {
  return path.basis === 'by efficiency' ? `≈ ${watts(path.input)}` : watts(path.input);
}

/** Trade name of a stage, first letter large. */
export function stageName({ kind, stage }: PathBlock): string {
  const name = stageOf(kind)?.name ?? stage;
  return sentenceCase(name);
}

/** "C1", "C3 + A1", "Output". */
export function outletName({ ports }: PathOutlet): string {
  return ports.length === 0 ? 'Output' : ports.join(' + ');
}

/** "45.0 W", "not known". */
export function outletPower({ power }: PathOutlet): string {
  if (isMissing(power)) return 'not known';
  return `${watts(power)} W`;
}

/** "shared, up to 15 V", "15.00 V 2 A". */
export function outletNote({ ports, note }: PathOutlet): string | null {
  const words = [...(ports.length > 1 ? ['shared'] : []), ...(note === null ? [] : [note])];
  return words.length === 0 ? null : words.join(', ');
}

/** What matters first in a block: what switches, couples and stores, before what filters, controls and senses. */
const ORDER: readonly string[] = [
  'transformer',
  'primary-switch',
  'pfc-switch',
  'buck-switch',
  'clamp-switch',
  'synchronous-rectifier',
  'rectifier-diode',
  'bridge-rectifier',
  'pfc-diode',
  'bulk-capacitor',
  'cell',
  'inductor',
  'pfc-inductor',
  'input-fuse',
  'transient-suppressor',
  'x-capacitor',
  'common-mode-choke',
  'controller',
];

/** References to name in the drawing, those of most weight first; "and n more" where there is no room for all. */
export function namedParts(parts: readonly PathPart[], most: number): { readonly references: readonly string[]; readonly more: number } {
  const rank = ({ role }: PathPart): number => (ORDER.includes(role) ? ORDER.indexOf(role) : ORDER.length);
  const all = [...parts].sort((one, other) => rank(one) - rank(other)).flatMap(({ references }) => references);
  return { references: all.slice(0, most), more: Math.max(0, all.length - most) };
}

/** "Input filter: 3 parts: X capacitor CX1, …" for readers of text. */
export function blockSentence(block: PathBlock): string {
  const parts = block.parts.map(({ references, role }) => `${roleOf(role)?.name ?? role} ${references.join(', ')}`);
  return `${stageName(block)}${parts.length === 0 ? '' : `: ${parts.join('; ')}`}`;
}

/** The whole path in a sentence. */
export function pathSentence(path: PowerPath): string {
  const stages = path.blocks.map(stageName).join(', ');
  const outlets = path.outlets.map((outlet) => `${outletName(outlet)} ${outletPower(outlet)}`).join(', ');
  const loss = isMissing(path.loss) ? 'the loss is not known' : `${watts(path.loss)} W stay as heat`;
  return `${isMissing(path.input) ? 'Input not known' : `${inputWatts(path)} W in`}, ${watts(path.output)} W out, ${loss}.${conductionSentence(path)} Stages in order: ${stages}. Ports: ${outlets}.`;
}

/** "Of that conduction alone takes, where it could be worked out: Boost PFC 0.17 W."; empty where nothing could. */
function conductionSentence({ blocks }: PowerPath): string {
  const parts = blocks.flatMap((block) => {
    const { conduction } = block;
    return conduction === null || isMissing(conduction.loss) ? [] : [`${stageName(block)} ${conductionWatts(conduction.loss.nominal)} W`];
  });
  return parts.length === 0 ? '' : ` Of that conduction alone takes, where it could be worked out: ${parts.join(', ')}.`;
}

/** Words broken in two lines near the middle where they are longer than `most` letters. */
export function twoLines(words: string, most: number): readonly string[] {
  if (words.length <= most) return [words];
  const spaces = [...words.matchAll(/ /gu)].map(({ index }) => index + 1);
  const middle = words.length / 2;
  const cut = spaces.reduce<number | null>(
    (best, at) => (best === null || Math.abs(at - middle) < Math.abs(best - middle) ? at : best),
    null,
  );
  return cut === null ? [words] : [words.slice(0, cut).trim(), words.slice(cut)];
}
