import type { Source } from '../../values/value.ts';

/** IEC 60664-1 as the calculator of an open-source board-design program tabulates it; the standard itself was not seen. */
export function tabulated60664(section: string): Source {
  return { title: 'IEC 60664-1:2020', section: `${section}, as tabulated in an open-source board-design program`, standing: 'secondary' };
}
