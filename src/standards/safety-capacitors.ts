import type { Source } from '../values/value.ts';

/** A class of capacitor that may stand on the mains or across the barrier. */
interface SafetyCapacitorClass {
  readonly name: 'X1' | 'X2' | 'X3' | 'Y1' | 'Y2' | 'Y4';
  /** Impulse before the endurance test, in volts, for capacitances up to 1 µF; null where there is none. */
  readonly impulse: number | null;
  /** Whether the impulse falls with the square root of the capacitance above 1 µF. */
  readonly fallsAbove1Microfarad: boolean;
  readonly mayStand: string;
  readonly source: Source;
}

const IMPULSES: Source = {
  title: 'IEC 60384-14, impulse before the endurance test',
  section:
    'as given by a public calculator and by a maker’s page; where such a capacitor may stand as quoted in the archive of the IEEE product-safety list',
  standing: 'secondary',
  url: 'https://techoverflow.net/2019/08/07/x1-x2-y1-y2-y4-impulse-withstand-rating-voltage-calculator-iec-60384-14/',
};

const FROM_MEMORY: Source = { title: 'IEC 60384-14', section: 'class X3, obsolete', standing: 'memory' };

/** The classes of IEC 60384-14. */
export const SAFETY_CAPACITOR_CLASSES: readonly SafetyCapacitorClass[] = [
  { name: 'X1', impulse: 4000, fallsAbove1Microfarad: true, mayStand: 'across the line', source: IMPULSES },
  { name: 'X2', impulse: 2500, fallsAbove1Microfarad: true, mayStand: 'across the line', source: IMPULSES },
  { name: 'X3', impulse: null, fallsAbove1Microfarad: false, mayStand: 'across the line', source: FROM_MEMORY },
  { name: 'Y1', impulse: 8000, fallsAbove1Microfarad: false, mayStand: 'across reinforced insulation', source: IMPULSES },
  {
    name: 'Y2',
    impulse: 5000,
    fallsAbove1Microfarad: true,
    mayStand: 'across basic insulation; two in series across reinforced',
    source: IMPULSES,
  },
  { name: 'Y4', impulse: 2500, fallsAbove1Microfarad: false, mayStand: 'across basic insulation, up to 150 V', source: IMPULSES },
];

/** Impulse voltage that a class must stand at a capacitance in farads; null for an unknown class or one without impulse. */
export function impulseVoltage(name: string, farads: number): number | null {
  const found = SAFETY_CAPACITOR_CLASSES.find((candidate) => candidate.name === name);
  if (found === undefined || found.impulse === null) return null;
  return found.fallsAbove1Microfarad && farads > 1e-6 ? found.impulse / Math.sqrt(farads / 1e-6) : found.impulse;
}
