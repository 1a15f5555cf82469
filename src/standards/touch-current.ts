import type { Source } from '../values/value.ts';

/** One published limit for the current through a person who touches an accessible part. */
export interface TouchCurrentLimit {
  readonly id: string;
  /** Whose limit it is and for which equipment. */
  readonly name: string;
  /** Limit in amperes. */
  readonly amperes: number;
  readonly kind: 'rms' | 'peak' | 'direct';
  readonly source: Source;
}

const TABLE_5A: Source = {
  title: 'IEC 60950-1, table 5A',
  section: 'as quoted in the archive of the IEEE product-safety list',
  standing: 'secondary',
  url: 'https://www.mail-archive.com/emc-pstc@listserv.ieee.org/msg25786.html',
};

const TABLE_4: Source = {
  title: 'IEC 62368-1, 5.2.2.2, table 4',
  section: 'read in a public rendering of the clause',
  standing: 'secondary',
};

const HOUSEHOLD: Source = { title: 'IEC 60335-1, 8.1.4', section: 'as quoted in a public forum', standing: 'secondary' };

/** Limits by name. A computed Y-capacitor current beside them is an indication, never a test. */
export const TOUCH_CURRENT_LIMITS: readonly TouchCurrentLimit[] = [
  { id: '60950-not-earthed', name: 'IEC 60950-1, equipment without earth', amperes: 0.25e-3, kind: 'rms', source: TABLE_5A },
  { id: '60950-hand-held', name: 'IEC 60950-1, earthed, hand-held', amperes: 0.75e-3, kind: 'rms', source: TABLE_5A },
  { id: '60950-earthed', name: 'IEC 60950-1, other earthed equipment', amperes: 3.5e-3, kind: 'rms', source: TABLE_5A },
  { id: '62368-es1', name: 'IEC 62368-1, ES1', amperes: 0.5e-3, kind: 'rms', source: TABLE_4 },
  { id: '62368-es2', name: 'IEC 62368-1, ES2', amperes: 5e-3, kind: 'rms', source: TABLE_4 },
  {
    id: '60335-protective-impedance',
    name: 'IEC 60335-1, behind a protective impedance',
    amperes: 0.7e-3,
    kind: 'peak',
    source: HOUSEHOLD,
  },
  { id: '60335-direct', name: 'IEC 60335-1, direct current', amperes: 2e-3, kind: 'direct', source: HOUSEHOLD },
];
