import { escapeText } from '../figures/markup.ts';
import type { Manifest, SheetSummary } from '../corpus/prepared.ts';
import { fixedNumber } from './quantity.ts';
import { revisedCorrections } from './findings.ts';
import { ZONE_END, fullZone, sideZone, zoneLetter, zoneStart } from './zone.ts';
import { lineUpFigure } from './line-up.ts';
import { searchForm } from './search-form.ts';
import { registerTable } from './register-table.ts';
import { counted } from '../units/counted.ts';

/** One page of the register: the sheets on it, newest first, and where it stands among the pages. */
export interface RegisterPage {
  readonly page: number;
  readonly pages: number;
  readonly sheets: readonly SheetSummary[];
  /** Address of each page, by number from 1. */
  readonly addressOf: (page: number) => string;
}

/** All zones of a register page; the first page has the counts, the line-up and the late corrections too. */
export function registerZones(manifest: Manifest, page: RegisterPage): string {
  const { sheets } = manifest;
  if (sheets.length === 0) return emptyRegister(manifest);
  const onFirst = page.page === 1;
  const late = onFirst ? lateCorrections(sheets) : '';
  const lined = onFirst ? lineUpFigure(sheets) : '';
  let used = 0;
  const next = (): string => zoneLetter((used += 1));
  return (
    titleZone(manifest, page) +
    (lined === '' ? '' : `${zoneStart({ letter: next(), title: null, label: 'Line-up', className: 'zlineup' })}${lined}${ZONE_END}`) +
    `${zoneStart({ letter: next(), title: 'Newest sheets', label: 'Newest sheets', className: 'zregister' })}<h2 class="phone-title" id="${zoneLetter(used)}-t">${onFirst ? 'Newest sheets' : `Sheets, page ${page.page} of ${page.pages}`}</h2>${registerTable(sheets, page.sheets)}${pager(page)}${ZONE_END}` +
    (late === ''
      ? ''
      : sideZone(
          { letter: next(), title: 'Lately corrected', label: 'Lately corrected' },
          '<p>Changes to a published number, newest first. Each stands on its own sheet for good.</p>',
          late,
        )) +
    brokenZone(manifest, () => next())
  );
}

function titleZone(manifest: Manifest, page: RegisterPage): string {
  const { site } = manifest;
  const links = [
    ['/finder/', 'Find by size, power or parts'],
    ['/topologies/', 'Which design it is'],
    ['/parts/', 'Where a part is used'],
    ['/makers/', 'Who made which part'],
    ['/data/', 'All of it as data'],
    ...(site.address === null ? [] : [['/feed.xml', 'Feed of new sheets'] as const]),
  ] as const;
  const heading = `<div class="rt"><h1>Register of teardowns</h1><p class="summary">${escapeText(site.description)}</p><p class="ways" id="zones">${links.map(([address, words]) => `<a href="${address}">${words}</a>`).join(' ')}</p>${searchForm('')}</div>`;
  return `${zoneStart({ letter: 'A', title: null, label: 'Register', className: 'za' })}${heading}${page.page === 1 ? countBlock(manifest) : ''}${ZONE_END}`;
}

function countBlock({ site, sheets }: Manifest): string {
  const sum = (of: (sheet: SheetSummary) => number): number => sheets.reduce((total, sheet) => total + of(sheet), 0);
  const dates = sheets.flatMap((sheet) => [sheet.published, ...sheet.corrections.map((correction) => correction.date)]).sort();
  const families = new Set(sheets.map((sheet) => sheet.family)).size;
  const fields: readonly (readonly [string, string, boolean])[] = [
    ['Sheets', fixedNumber(sheets.length, 0), false],
    [
      'Parts identified',
      fixedNumber(
        sum((sheet) => sheet.partsIdentified),
        0,
      ),
      false,
    ],
    ['Topology families', String(families), false],
    ['Stresses over a limit', String(sum((sheet) => sheet.over)), false],
    ['Last issue', dates[dates.length - 1] ?? '–', true],
    ['Made by', site.author, true],
  ];
  return `<div class="tb"><dl>${fields.map(([label, value, small]) => `<div class="f-3${small ? ' rule' : ' large'}"><dt>${label}</dt><dd><span class="q wrap">${escapeText(value)}</span></dd></div>`).join('')}</dl></div>`;
}

function pager(page: RegisterPage): string {
  if (page.pages < 2) return '';
  const links = Array.from({ length: page.pages }, (_, index) => index + 1).map((number) =>
    number === page.page ? `<b aria-current="page">${number}</b>` : `<a href="${page.addressOf(number)}">${number}</a>`,
  );
  return `<nav class="pager" aria-label="Pages of the register">Pages ${links.join(' ')}</nav>`;
}

/** Latest corrections over all sheets, eight at most. */
function lateCorrections(sheets: readonly SheetSummary[]): string {
  const all = sheets.flatMap((sheet) => revisedCorrections(sheet.corrections).map((correction) => ({ sheet, correction })));
  all.sort((one, other) => (one.correction.date < other.correction.date ? 1 : one.correction.date > other.correction.date ? -1 : 0));
  const items = all.slice(0, 8).map(({ sheet, correction }) => {
    const change =
      correction.was === null || correction.is === null
        ? ''
        : `: <span class="q wrap">${escapeText(correction.is)}</span>, not <span class="q wrap">${escapeText(correction.was)}</span>`;
    return `<li><span class="mono">${escapeText(correction.date)}</span><a class="mono" href="/teardowns/${sheet.slug}/">${escapeText(sheet.number ?? sheet.name)} ${correction.revision}</a><span>${escapeText(sheet.name)}, ${escapeText(correction.where)}${change}. <span class="soft">${escapeText(correction.why)}</span></span></li>`;
  });
  return items.length === 0 ? '' : `<ul class="lines late">${items.join('')}</ul>`;
}

function brokenZone({ broken }: Manifest, next: () => string): string {
  if (broken.length === 0) return '';
  const items = broken.map(
    ({ slug, file, diagnostics }) =>
      `<li><a href="/teardowns/${slug}/">${escapeText(slug)}</a> <span class="soft">${counted(diagnostics.filter((d) => d.severity === 'error').length, 'error')} in</span> <span class="q wrap">${escapeText(file)}</span></li>`,
  );
  return sideZone(
    { letter: next(), title: 'Not shown yet', label: 'Not shown yet' },
    '<p>Entries with errors. Only you see this list: it is not part of a built site.</p>',
    `<ul class="lines">${items.join('')}</ul>`,
  );
}

/** A site without content says how to write the first entry. */
function emptyRegister(manifest: Manifest): string {
  const steps = [
    'Run <code>npx seamline new my-first-charger</code>. It writes <code>teardowns/my-first-charger/index.md</code> in your content folder, with a word on each field.',
    'Fill in what you know: the nameplate as printed, size and mass, the ports, the parts by stage. Leave out what you do not know; the sheet says so.',
    'Run <code>npx seamline check</code>. It names file, line and column of everything that cannot be right, and says why.',
    'Set <code>status: published</code>. The sheet appears here.',
  ];
  const side = '<p>No teardown is published yet.</p>';
  const matter = `<ol class="steps">${steps.map((step) => `<li>${step}</li>`).join('')}</ol>`;
  return (
    titleZone(manifest, { page: 2, pages: 1, sheets: [], addressOf: () => '/' }) +
    (manifest.broken.length === 0 ? '' : brokenZone(manifest, () => 'B')) +
    fullZone(
      { letter: manifest.broken.length === 0 ? 'B' : 'C', title: 'The first entry', label: 'The first entry' },
      side.replace(/<\/?p>/g, ''),
      matter,
    )
  );
}
