import { escapeText } from '../figures/markup.ts';
import type { Derived, StageVerdict } from '../derived/derived.ts';
import { isMissing } from '../values/value.ts';
import { fold } from './fold.ts';
import { quantity } from './quantity.ts';
import { referenceList } from './references.ts';
import { counted } from '../units/counted.ts';
import { sentence } from './words.ts';

/**
 * What can be said of each stage beside the stress figure: what is thin or open, then behind a line each what has room and what it works at;
 * last the gain curve of a resonant stage, ready drawn.
 */
export function stageByStage(derived: Derived, gainCurves = ''): string {
  return speaking(derived.stageVerdicts) + lossNote(derived.losses) + comfortable(derived.stageVerdicts) + operating(derived) + gainCurves;
}

interface Said {
  readonly stage: string;
  readonly name: string;
  readonly sentences: readonly string[];
}

/** Stages with something thin, open, close or not judged. */
function speaking(verdicts: readonly StageVerdict[]): string {
  return stageList(verdicts.map((verdict) => ({ ...verdict, sentences: verdict.sentences.filter((one) => one !== verdict.comfortable) })));
}

function comfortable(verdicts: readonly StageVerdict[]): string {
  const at = verdicts.flatMap(({ stage, name, comfortable: said }): Said[] => (said === null ? [] : [{ stage, name, sentences: [said] }]));
  if (at.length === 0) return '';
  return fold(`<b>${counted(at.length, 'stage')}</b> with ratings that are comfortable, and which is nearest to its line`, stageList(at));
}

function stageList(said: readonly Said[]): string {
  const items = said
    .filter(({ sentences }) => sentences.length > 0)
    .map(
      ({ stage, name, sentences }) =>
        `<dt>${escapeText(stage)} <span class="soft">${escapeText(name)}</span></dt>${sentences.map((one) => `<dd>${sentence(one)}</dd>`).join('')}`,
    );
  return items.length === 0 ? '' : `<dl class="stage-verdicts">${items.join('')}</dl>`;
}

/** Measured loss beside what conduction explains of it. */
function lossNote(losses: Derived['losses']): string {
  if (losses === null || isMissing(losses.measured) || isMissing(losses.explained) || isMissing(losses.unexplained)) return '';
  const parts = losses.items.flatMap(({ references, loss }) =>
    isMissing(loss) ? [] : [`${escapeText(referenceList(references))} ${quantity(loss)}`],
  );
  return `<p class="loss-note">At ${sentence(losses.point)} it loses ${quantity(losses.measured)}. Conduction explains ${quantity(losses.explained)} of it (${parts.join(', ')}); ${quantity(losses.unexplained)} are switching, cores, windings, control and parts that are not named.</p>`;
}

/** Values that each stage works at, worked out from what was read; ratios as plain numbers, as the trade says them. */
function operating({ operating: figures, stageVerdicts }: Derived): string {
  const known = figures.flatMap(({ stage, name, value }) =>
    isMissing(value) ? [] : [{ stage, text: `${escapeText(name)} ${quantity(value, value.dimension === 'ratio' ? { unit: '1' } : {})}` }],
  );
  const stages = [...new Set(known.map(({ stage }) => stage))];
  const items = stages.map((stage) => {
    const name = stageVerdicts.find((verdict) => verdict.stage === stage)?.name;
    const values = known.filter((one) => one.stage === stage).map(({ text }) => `<li>${text}</li>`);
    return `<dt>${escapeText(stage)}${name === undefined ? '' : ` <span class="soft">${escapeText(name)}</span>`}</dt><dd><ul>${values.join('')}</ul></dd>`;
  });
  if (items.length === 0) return '';
  return fold(
    `<b>${counted(known.length, 'value')}</b> that ${counted(stages.length, 'stage works', 'stages work')} at, worked out`,
    `<dl class="stage-verdicts">${items.join('')}</dl>`,
  );
}
