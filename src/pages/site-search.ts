import { familySentence } from '../corpus/family-sentence.ts';
import { searchIndex, type SearchDocument, type SearchIndex } from '../corpus/search-index.ts';
import { searchTerms } from '../corpus/search-terms.ts';
import { FORMULAS } from '../formulas/index.ts';
import { SUBJECT_TITLES } from '../formulas/subject-titles.ts';
import { roleWords } from '../render/role-words.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import type { SiteCorpus } from './site-corpus.ts';

/** The search index over teardowns, parts, topologies and methods. */
export function siteSearch(corpus: SiteCorpus): SearchIndex {
  return searchIndex([...sheetDocuments(corpus), ...partDocuments(corpus), ...familyDocuments(corpus), ...methodDocuments()]);
}

function sheetDocuments({ manifest, across }: SiteCorpus): readonly SearchDocument[] {
  return manifest.sheets.map((sheet) => {
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

function partDocuments({ parts }: SiteCorpus): readonly SearchDocument[] {
  return parts.map((part) => {
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

function familyDocuments({ families }: SiteCorpus): readonly SearchDocument[] {
  return families.map((family) => ({
    group: 'Topologies',
    address: `/topologies/${family.id}/`,
    title: family.name,
    line: `${String(family.members.length)} ${family.members.length === 1 ? 'sheet' : 'sheets'}`,
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
      line: SUBJECT_TITLES[formula.subject] ?? sentenceCase(formula.subject),
      terms: {
        name: searchTerms(`${formula.title} | ${formula.id}`),
        data: searchTerms([formula.subject, ...symbols.flatMap((symbol) => [symbol.meaning, symbol.unit])].join(' | ')),
        text: searchTerms(formula.source.title),
      },
    };
  });
}
