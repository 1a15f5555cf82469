import { escapeText } from '../figures/markup.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import { symbolSheet } from '../render/symbol-sheet.ts';
import type { SiteAddresses } from './site-addresses.ts';
import type { NavigationWord, PageHead } from './site-page.ts';

const WORDS: readonly (readonly [NavigationWord, string])[] = [
  ['Register', '/'],
  ['Finder', '/finder/'],
  ['Compare', '/compare/'],
  ['Topologies', '/topologies/'],
  ['Parts', '/parts/'],
  ['Methods', '/methods/'],
];

/** Pages that stand under another word of the navigation. */
const UNDER: Partial<Readonly<Record<NavigationWord, NavigationWord>>> = { Makers: 'Parts', Rules: 'Methods', Bench: 'Methods' };

const FIGURES = [1, 2, 3, 4, 5, 6, 7, 8];

/** What a page says of itself in its head: title, description, the addresses by which it is known. */
export function shellHead(head: PageHead, site: SiteSettings, { href, whole }: SiteAddresses): string {
  const { title, description, hidden = false, movedTo } = head;
  const canonical = head.canonical === undefined ? null : (whole(head.canonical) ?? (movedTo === undefined ? null : href(head.canonical)));
  const lines = [
    `<title>${escapeText(title === site.name ? title : `${title} · ${site.name}`)}</title>`,
    `<meta name="description" content="${escapeText(description)}">`,
    hidden ? '<meta name="robots" content="noindex">' : '',
    canonical === null ? '' : `<link rel="canonical" href="${escapeText(canonical)}">`,
    site.address === null
      ? ''
      : `<link rel="alternate" type="application/atom+xml" href="${href('/feed.xml')}" title="${escapeText(`${site.name}, newest sheets`)}">`,
    ...sharedFields(head, site, whole).map(([property, content]) => `<meta property="${property}" content="${escapeText(content)}">`),
    movedTo === undefined ? '' : `<meta http-equiv="refresh" content="0; url=${escapeText(href(movedTo))}">`,
  ];
  return lines.join('');
}

/** The Open Graph protocol wants whole addresses: without that of the site, and on pages that are not to be found, nothing is said. */
function sharedFields(
  { title, description, canonical, hidden = false, sharing }: PageHead,
  site: SiteSettings,
  whole: SiteAddresses['whole'],
): readonly (readonly [string, string])[] {
  const address = canonical === undefined ? null : whole(canonical);
  if (address === null || hidden) return [];
  const image = sharing === undefined ? null : whole(sharing.path);
  return [
    ['og:type', canonical?.startsWith('/teardowns/') === true ? 'article' : 'website'],
    ['og:title', title],
    ['og:description', description],
    ['og:url', address],
    ['og:site_name', site.name],
    ...(sharing === undefined || image === null
      ? []
      : ([
          ['og:image', image],
          ['og:image:type', 'image/png'],
          ['og:image:width', String(sharing.width)],
          ['og:image:height', String(sharing.height)],
          ['og:image:alt', sharing.alt],
        ] as const)),
  ];
}

/** Everything of the body before the zones: symbols, the foot of print, the frame of the sheet and its head strip. Addresses are rooted. */
export function shellOpening({ glyphs = [], foot, current }: PageHead, site: Pick<SiteSettings, 'name'>): string {
  return (
    '<a class="skip" href="#main">Skip to the sheet</a>' +
    symbolSheet(glyphs) +
    (foot === undefined
      ? ''
      : `<p class="foot" aria-hidden="true"><span class="foot-left">${escapeText(foot.left)}</span> <span class="foot-middle">${escapeText(foot.middle)}</span></p>`) +
    `<div class="sheet">${figures('top')}<div class="frame">${headStrip(current, site.name)}<main id="main">`
  );
}

/** Everything of the body after the zones. */
export const SHELL_CLOSING = `</main></div>${figures('bottom')}</div>`;

function figures(edge: 'top' | 'bottom'): string {
  return `<div class="figs ${edge}" aria-hidden="true">${FIGURES.map((figure) => `<span>${String(figure)}</span>`).join('')}</div>`;
}

function headStrip(current: NavigationWord | undefined, name: string): string {
  const word = current === undefined ? undefined : (UNDER[current] ?? current);
  const items = WORDS.map(([each, address]) => {
    const mark = each !== word ? '' : ` aria-current="${word === current ? 'page' : 'true'}"`;
    return `<li><a href="${address}"${mark}>${each}</a></li>`;
  });
  return (
    `<header class="strip"><a class="site" href="/">${escapeText(name)}</a><nav aria-label="Site"><ul>${items.join('')}</ul></nav>` +
    `<div class="scheme"><a class="to-search" href="/search/"${current === 'Search' ? ' aria-current="page"' : ''}>Search</a> ` +
    '<button type="button" data-scheme-switch hidden>Paper scheme</button></div></header>'
  );
}
