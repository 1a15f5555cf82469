import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { finderRegister, type FinderRegister } from '../../corpus/finder-row.ts';
import { searchIndex, type SearchDocument, type SearchIndex } from '../../corpus/search-index.ts';
import { searchTerms } from '../../corpus/search-terms.ts';
import { FORMULAS } from '../../formulas/index.ts';
import type { AcrossFacts } from '../../pipeline/entry-record.ts';
import type { Manifest } from '../../corpus/prepared.ts';
import { corpusOf } from './corpus-of-site.ts';
import { familySentence } from '../../corpus/family-sentence.ts';
import { roleWords } from '../../render/role-words.ts';
import { counted } from '../../units/counted.ts';

let held: { readonly stamp: string; readonly across: Readonly<Record<string, AcrossFacts>> } | null = null;

/** What the preparing step kept of every sheet for lists across them; read once, and again when it was written anew (`dev`). */
export function readAcross(): Readonly<Record<string, AcrossFacts>> {
  const path = join(process.env['SEAMLINE_PREPARED'] ?? '', 'across.json');
  if (!existsSync(path)) return {};
  const { mtimeMs, size } = statSync(path);
  const stamp = `${path} ${String(mtimeMs)} ${String(size)}`;
  // Written by our own preparing step a moment ago; its shape is that step's contract.
  if (held?.stamp !== stamp) held = { stamp, across: JSON.parse(readFileSync(path, 'utf8')) as Readonly<Record<string, AcrossFacts>> };
  return held.across;
}

const REGISTERS = new WeakMap<Manifest, FinderRegister>();

/** All devices as the finder knows them. */
export function finderOf(manifest: Manifest): FinderRegister {
  const known = REGISTERS.get(manifest);
  if (known !== undefined) return known;
  const across = readAcross();
  const families = Object.fromEntries(corpusOf(manifest).families.map((family) => [family.id, family.name]));
  const register = finderRegister(manifest.sheets, (slug) => across[slug]?.facts ?? null, families);
  REGISTERS.set(manifest, register);
  return register;
}

const INDEXES = new WeakMap<Manifest, SearchIndex>();

/** The search index over teardowns, parts, topologies and methods. */
export function searchIndexOf(manifest: Manifest): SearchIndex {
  const known = INDEXES.get(manifest);
  if (known !== undefined) return known;
  const index = searchIndex([...sheetDocuments(manifest), ...partDocuments(manifest), ...familyDocuments(manifest), ...methodDocuments()]);
  INDEXES.set(manifest, index);
  return index;
}

function sheetDocuments({ sheets }: Manifest): readonly SearchDocument[] {
  const across = readAcross();
  return sheets.map((sheet) => {
    const terms = across[sheet.slug]?.terms ?? { name: '', data: '', text: '' };
    return {
      group: 'Teardowns',
      address: `/teardowns/${sheet.slug}/`,
      title: sheet.name.startsWith(sheet.maker) ? sheet.name : `${sheet.maker} ${sheet.name}`,
      line: [sheet.recall === null ? '' : 'Recalled', sheet.number, sheet.kind, sheet.topology]
        .filter((piece) => piece !== null && piece !== '')
        .join(' · '),
      terms: {
        name: wordsOf(terms.name),
        data: [...wordsOf(terms.data), ...(sheet.recall === null ? [] : ['recalled', 'recall'])],
        text: wordsOf(terms.text),
      },
    };
  });
}

function wordsOf(joined: string): readonly string[] {
  return joined === '' ? [] : joined.split(' ');
}

function partDocuments(manifest: Manifest): readonly SearchDocument[] {
  return corpusOf(manifest).parts.map((part) => {
    const roles = part.roles.map(roleWords);
    const ratings = part.ratings.map((rating) => rating.written);
    return {
      group: 'Parts',
      address: `/parts/${part.address}/`,
      title: part.number,
      line: [part.makers.join(', '), roles[0] ?? '', ratings[0] ?? ''].filter((piece) => piece !== '').join(' · '),
      terms: { name: searchTerms(part.number), data: searchTerms([...part.makers, ...roles, ...ratings].join(' | ')), text: [] },
    };
  });
}

function familyDocuments(manifest: Manifest): readonly SearchDocument[] {
  return corpusOf(manifest).families.map((family) => ({
    group: 'Topologies',
    address: `/topologies/${family.id}/`,
    title: family.name,
    line: counted(family.members.length, 'sheet'),
    terms: {
      name: searchTerms(family.name),
      data: searchTerms(family.chain.map((block) => block.name).join(' | ')),
      text: searchTerms(`${familySentence(family)} ${family.chain.map((block) => block.meaning ?? '').join(' ')}`),
    },
  }));
}

function methodDocuments(): readonly SearchDocument[] {
  return FORMULAS.map((formula) => {
    const symbols = [formula.output, ...Object.values(formula.inputs)];
    return {
      group: 'Methods',
      address: `/methods/${formula.id}/`,
      title: formula.title,
      line: formula.subject.replaceAll('-', ' '),
      terms: {
        name: searchTerms(`${formula.title} | ${formula.id}`),
        data: searchTerms([formula.subject, ...symbols.flatMap((symbol) => [symbol.meaning, symbol.unit])].join(' | ')),
        text: searchTerms(formula.source.title),
      },
    };
  });
}
