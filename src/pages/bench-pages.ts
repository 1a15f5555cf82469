import { NO_BENCH } from '../entry/bench.ts';
import { benchZones } from '../render/bench-page.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The bench: there only where the content has a bench.yaml that names something. */
export function benchPages({ manifest: { bench = NO_BENCH, sheets } }: SiteCorpus): readonly PlannedPage[] {
  if (bench.instruments.length + bench.methods.length === 0) return [];
  const shown = sheets.map(({ slug, maker, name, instruments }) => ({
    slug,
    maker,
    name,
    ...(instruments === undefined ? {} : { instruments }),
  }));
  return [
    {
      path: '/bench/',
      follows: [bench, shown],
      draw: () => ({
        frame: 'lists',
        head: {
          title: 'The bench',
          description:
            'The instruments of this bench with their accuracy and calibration, its methods, and the sheets that each was used on.',
          current: 'Bench',
          canonical: '/bench/',
        },
        html: benchZones(bench, shown),
      }),
    },
  ];
}
