import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'bare-metal-by-camera',
  title: 'Bare metal was read by its radiation',
  severity: 'note',
  why: 'Bright metal radiates a few per cent of what plastic does and mirrors the room: a camera set for plastic reads it tens of kelvins too cold.',
  advice: 'Put tape or a dot of paint on it or use a thermocouple, and say so; or state the emissivity that was set for the metal.',
  source: {
    title: 'testo, table of emissivities',
    section: 'aluminium not oxidised 0.02 to 0.03, copper slightly tarnished 0.04; plastics 0.94, black matt paint 0.97',
    standing: 'read',
    url: 'https://www.testo.com/zh-CN/Emissivities+of+the+most+important+materials/services_knowledgeable_thermography_emissivity_table',
  },
};

export const bareMetalByCamera: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  return derived.heat.spots.flatMap(({ index, place, emissivity }) => {
    const point = entry.measurements[index];
    if (emissivity === null || point === undefined) return [];
    const said =
      emissivity === 'not given'
        ? 'no number is given for its emissivity'
        : `an emissivity of ${point.conditions['emissivity'] ?? ''} is that of plastic or paint`;
    const message = `${place}: ${point.value.quantity.written} by radiation from bare metal, and ${said}. It may be much hotter.`;
    return [findingOf(RULE, atValue(...point.value.path), { message, subject: place })];
  });
}
