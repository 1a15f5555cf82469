import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { partAddress } from '../corpus/address.ts';
import { familyFigures, type FamilyFigure } from '../corpus/family/family-figures.ts';
import { familySignature, type FamilySignature } from '../corpus/family/family-signature.ts';
import type { TopologyFamily } from '../corpus/topology-families.ts';
import { escapeText } from '../figures/markup.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { sideZone, type ZoneFrame } from './zone.ts';

/** Medians, spreads and outliers of a family, how its members vary, and the controllers met most. */
export function familyNumbersZone(zone: ZoneFrame, family: TopologyFamily): string {
  const figures = familyFigures(family);
  const signature = familySignature(family);
  const table = figures.length === 0 ? '<p>One sheet so far; a spread needs two.</p>' : figureTable(figures);
  return sideZone(zone, signatureList(signature), table + controllerWords(signature) + outlierList(figures));
}

function signatureList({ isolated, rectification, fanOut }: FamilySignature): string {
  const shared = [...rectification, ...fanOut].map(
    ({ words, sheets }) => `<li>${escapeText(sentenceCase(words))} <span class="soft">${counted(sheets, 'sheet')}</span></li>`,
  );
  return `<ul class="lines"><li>${isolated ? 'Isolated' : 'Not isolated'}</li>${shared.join('')}</ul>`;
}

function figureTable(figures: readonly FamilyFigure[]): string {
  const heads = ['Figure', ['Lowest', 'n'], ['Median', 'n'], ['Highest', 'n'], 'Unit', ['Sheets', 'n']] as const;
  const rows = figures.map(
    ({ name, unit, decimals, spread }) =>
      `<tr><th scope="row" class="full role">${escapeText(name)}</th>${stackCell('Lowest', spread.low.toFixed(decimals), 'n')}` +
      `${stackCell('Median', spread.median.toFixed(decimals), 'n')}${stackCell('Highest', spread.high.toFixed(decimals), 'n')}` +
      `${stackCell('Unit', escapeText(unit), 'm1')}${stackCell('Sheets', spread.count, 'n')}</tr>`,
  );
  return stackTable(heads, `<tbody>${rows.join('')}</tbody>`);
}

function controllerWords({ controllers }: FamilySignature): string {
  if (controllers.length === 0) return '';
  const links = controllers.map(
    ({ words, sheets }) =>
      `<a class="mono" href="/parts/${partAddress(words)}/">${escapeText(words)}</a> <span class="soft">on ${String(sheets)}</span>`,
  );
  return `<p class="under">Controllers on two sheets or more: ${links.join(', ')}.</p>`;
}

function outlierList(figures: readonly FamilyFigure[]): string {
  const items = figures.flatMap(({ name, unit, decimals, outliers }) =>
    outliers.map(({ sheet, figure, side }) => {
      const link = `<a href="/teardowns/${sheet.slug}/">${escapeText(`${sheet.maker} ${sheet.name}`)}</a>`;
      const value = escapeText(`${figure.toFixed(decimals)} ${unit}`.trim());
      return `<li>${link}: ${escapeText(name.toLowerCase())} ${side} at <span class="q">${value}</span></li>`;
    }),
  );
  if (items.length === 0) return '';
  return `<p class="under">Worth a look, since they lie far from the rest of the family:</p><ul class="dashed-list">${items.join('')}</ul>`;
}
