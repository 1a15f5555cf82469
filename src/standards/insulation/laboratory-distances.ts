import type { Source } from '../../values/value.ts';

/** What a laboratory asked of one place in a mains adapter; distances in mm. */
export interface LaboratoryDistance {
  readonly standard: string;
  readonly place: string;
  readonly peak: number;
  readonly rms: number;
  readonly clearance: number;
  readonly creepage: number;
  readonly source: Source;
}

function report(section: string): Source {
  return { title: 'Test report in the safety papers of a household appliance with a mains adapter', section, standing: 'read' };
}

const OLDER = 'IEC 60950-1';
const NEWER = 'IEC 62368-1';

/** Distances that laboratories demanded of real mains adapters: what others had to keep, beside the tables. */
export const LABORATORY_DISTANCES: readonly LaboratoryDistance[] = [
  {
    standard: OLDER,
    place: 'line to neutral before the fuse, functional',
    peak: 420,
    rms: 250,
    clearance: 1.5,
    creepage: 2.5,
    source: report('first report, p. 42'),
  },
  {
    standard: OLDER,
    place: 'primary to secondary, reinforced',
    peak: 420,
    rms: 250,
    clearance: 4,
    creepage: 5,
    source: report('first report, p. 42'),
  },
  {
    standard: OLDER,
    place: 'core to secondary, reinforced',
    peak: 428,
    rms: 250,
    clearance: 4.2,
    creepage: 5,
    source: report('second report, p. 42'),
  },
  {
    standard: OLDER,
    place: 'core to secondary, reinforced',
    peak: 530,
    rms: 281,
    clearance: 4.4,
    creepage: 5.8,
    source: report('first report, p. 42 and 47'),
  },
  {
    standard: NEWER,
    place: 'category II, pollution degree 2, basic',
    peak: 420,
    rms: 240,
    clearance: 1.5,
    creepage: 3,
    source: report('third report, p. 44; the table gives 2.5 mm, the laboratory wrote 3.0 mm'),
  },
  {
    standard: NEWER,
    place: 'category II, pollution degree 2, reinforced',
    peak: 420,
    rms: 240,
    clearance: 3,
    creepage: 5,
    source: report('third report, p. 44'),
  },
];

/** Least thickness of solid reinforced insulation, mm, in both standards as the same reports show it. */
export const SOLID_INSULATION: { readonly millimetres: number; readonly source: Source } = {
  millimetres: 0.4,
  source: report('p. 45 of the first and third report'),
};
