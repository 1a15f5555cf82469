import { totemPoleLegRms } from '../../formulas/pfc/totem-pole-leg-rms.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { BOOST_PFC_MODEL, pfcInductorRms, pfcPeakCurrent } from './boost-pfc.ts';
import { BUS_SIDE, drawnPower } from './bus-side.ts';
import type { RoleCurrent, StageGiven, StageModel } from './stage-model.ts';
import { currentStress, voltageStress } from './stress.ts';

const CORNER = 'lowest line, full load';

function legRms(given: StageGiven): RoleCurrent {
  return {
    current: applyFormula(totemPoleLegRms, { power: drawnPower(given), rms: given.supply.lowest }),
    corner: CORNER,
    places: 2,
    carrying: 2,
  };
}

/** Totem-pole PFC: all four devices block the bus; each carries the line current in one half wave or as the free-wheeling one. */
export const TOTEM_POLE_PFC_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    'pfc-switch': (given) => [
      voltageStress('off-state voltage', given.input.highest),
      currentStress('peak current', () => ({ stress: pfcPeakCurrent(given), corner: CORNER })),
    ],
    'synchronous-rectifier': (given) => [voltageStress('off-state voltage', given.input.highest)],
    'pfc-inductor': (given) => [currentStress('peak current', () => ({ stress: pfcPeakCurrent(given), corner: CORNER }))],
  },
  operating: (given) => [{ name: 'peak current of the PFC inductor', value: pfcPeakCurrent(given) }],
  rms: { 'pfc-switch': legRms, 'synchronous-rectifier': legRms, 'pfc-inductor': pfcInductorRms },
  assumes: [...BOOST_PFC_MODEL.assumes, 'Ripple is left out of the rms current of a leg.'],
  refuses: ['The surge current through the slow leg at the zero of the mains.'],
};
