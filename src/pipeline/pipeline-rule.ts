import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import type { Finding, Whereabouts } from '../diagnostics/finding.ts';
import { sourceInWords } from '../values/source-in-words.ts';
import type { Source } from '../values/value.ts';

/** Declaration of a rule about files and folders, which the pipeline reports before or after entries are read. */
export type PipelineRule = RuleDeclaration<Source>;

const COMMON_PRACTICE = { title: 'Common practice', section: '', standing: 'common practice' } as const satisfies Source;

/** Rules about the content folder as a whole, by id. */
export const PIPELINE_RULES = [
  {
    id: 'address-collision',
    title: 'Two entries have one address',
    severity: 'error',
    why: 'One page would replace the other without a word.',
    advice: 'Rename one of the folders.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'address-characters',
    title: 'A folder name does not make an address',
    severity: 'error',
    why: 'Addresses hold lower-case letters, digits and single hyphens, so that they survive every file system, feed and retyping.',
    advice: 'Rename the folder as suggested.',
    source: { ...COMMON_PRACTICE, section: 'names that differ in case only are one name on some file systems' },
  },
  {
    id: 'former-address-taken',
    title: 'A former address is in use, or no page can stand there',
    severity: 'error',
    why: 'An address leads to one page: a live page, a page of the site itself, or one teardown that moved.',
    advice: 'Take the address out of one of the lists; an address that cannot be kept needs its redirect at the host.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'published-address-lost',
    title: 'A published address leads nowhere any more',
    severity: 'error',
    why: 'Links from elsewhere, bookmarks and search results would end at a missing page.',
    advice:
      'List the old address under "former addresses" of the entry that moved; where a teardown is withdrawn for good, take its line out of published-addresses.txt.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'photo-missing',
    title: 'A photo is not beside its entry',
    severity: 'error',
    why: 'Its place on the page would be empty, with callouts that point at nothing.',
    advice: 'Put the file into the folder of the entry, or mend its name; upper and lower case count.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'photo-refused',
    title: 'A photo cannot be published',
    severity: 'error',
    why: 'A browser would not show it, or it would take more time and memory than a page should.',
    advice:
      'Export it as JPEG or PNG, as one picture that stands still, of at most 60 million pixels and 40 MB; camera raw files and TIFF too.',
    source: { ...COMMON_PRACTICE, section: 'what browsers show; limits of this program' },
  },
  {
    id: 'photo-name',
    title: 'The name of a photo says another kind than it is',
    severity: 'note',
    why: 'It is published as what it is; other programs go by the name.',
    advice: 'Rename it when you come by.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'folder-without-index',
    title: 'A teardown folder has no index.md',
    severity: 'error',
    why: 'The teardown would be missing from the site without a word.',
    advice: 'Write the entry in index.md in that folder, or remove the folder.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'stray-file',
    title: 'A file lies where only folders of teardowns are',
    severity: 'warning',
    why: 'It is not read and not published.',
    advice: 'Give the entry a folder of its own with an index.md in it, or move the file away.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'file-not-utf8',
    title: 'A file is not UTF-8 text',
    severity: 'error',
    why: 'Ω, µ and × would come out as other characters.',
    advice: 'Save the file as UTF-8.',
    source: { ...COMMON_PRACTICE, section: 'one encoding for all files' },
  },
  {
    id: 'file-unreadable',
    title: 'A file could not be read',
    severity: 'error',
    why: 'What it holds would be missing from the site.',
    advice: 'Check that it is a plain file and that you may read it.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'link-outside-content',
    title: 'A symbolic link leads out of the content folder',
    severity: 'error',
    why: 'Files from elsewhere on the machine would be published.',
    advice: 'Put a copy in the content folder.',
    source: { ...COMMON_PRACTICE, section: 'only what lies in the content folder is published' },
  },
  {
    id: 'site-settings-missing',
    title: 'There is no site.yaml',
    severity: 'note',
    why: 'The site is built with a plain name, and its feed has no absolute links.',
    advice: 'Write content/site.yaml with name, author, description and address.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'site-settings-invalid',
    title: 'A setting of the site is not what it must be',
    severity: 'error',
    why: 'The setting could not be used.',
    advice: 'Correct the line.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'site-settings-unknown',
    title: 'site.yaml has a key that is not a setting',
    severity: 'error',
    why: 'A misspelt setting would be ignored without a word.',
    advice: 'Correct the key or take it out.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'derating-policy-invalid',
    title: 'A derating policy of the site cannot be read',
    severity: 'error',
    why: 'Parts would be judged by fewer lines than the policy states, or by none.',
    advice: 'Correct the line; each needs part class, quantity, limit and the words of its source.',
    source: { ...COMMON_PRACTICE, section: 'every limit names the policy that it comes from' },
  },
  {
    id: 'parts-file-missing',
    title: 'The parts file is not beside the entry',
    severity: 'error',
    why: 'The parts would be missing from the page.',
    advice: 'Put the file into the folder of the entry, or correct its name.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'parts-file-row',
    title: 'A row of the parts file cannot be read',
    severity: 'error',
    why: 'A part would be missing or have the values of another column.',
    advice: 'Give every row as many cells as the heading has; put a cell with a comma or a quote into double quotes.',
    source: { ...COMMON_PRACTICE, section: 'comma-separated values with double quotes' },
  },
  {
    id: 'part-ratings-differ',
    title: 'One part number has two ratings',
    severity: 'warning',
    why: 'One of the entries misread the part, or one number stands for two versions of it.',
    advice: 'Look the part up again; where both are right, say so in an answer or keep a fact sheet in parts/.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'part-against-fact-sheet',
    title: 'An entry contradicts the fact sheet of a part',
    severity: 'warning',
    why: 'One of the two is wrong, and the fact sheet is used on other pages too.',
    advice: 'Correct the entry, or correct the fact sheet and list the correction there.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'part-spelling-variants',
    title: 'Two part numbers are perhaps one',
    severity: 'note',
    why: 'Two spellings have a page each, and neither shows all uses.',
    advice: 'Write both alike, or list the spelling under "also written" in the fact sheet of the part.',
    source: { ...COMMON_PRACTICE, section: 'case, hyphens and packing suffixes' },
  },
  {
    id: 'maker-spelling-variants',
    title: 'Two makers are perhaps one',
    severity: 'note',
    why: 'Two spellings have a page each, and neither shows all devices and parts.',
    advice: 'Write both alike, or answer the note where they are two companies.',
    source: { ...COMMON_PRACTICE, section: 'case, hyphens and company forms' },
  },
  {
    id: 'part-sheet-invalid',
    title: 'A fact sheet of a part cannot be read',
    severity: 'error',
    why: 'Every entry that uses the part would miss what it states.',
    advice: 'Correct the line.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'part-sheet-unused',
    title: 'A fact sheet of a part that no entry names',
    severity: 'note',
    why: 'It is shown nowhere; its number is perhaps misspelt.',
    advice: 'Compare its number with the one that the entries write.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'bench-invalid',
    title: 'Something on the bench cannot be read',
    severity: 'error',
    why: 'What was measured with it would be published without its uncertainty.',
    advice: 'Mend the line: an instrument has name, measures, accuracy by quantity, calibrated and note.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'instrument-unknown',
    title: 'An instrument that nobody knows',
    severity: 'warning',
    why: 'Its readings have no uncertainty, and readers cannot see what made them.',
    advice: 'Use a name of bench.yaml, or explain it under "instruments" of the entry.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'method-unknown',
    title: 'A method that is nearly one of the bench',
    severity: 'warning',
    why: 'It is shown as words of its own, and leads readers nowhere.',
    advice: 'Write the name as bench.yaml has it; a method of your own needs other words.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'internal-fault',
    title: 'A rule of this program failed',
    severity: 'error',
    why: 'What the rule would have said about this entry is not known.',
    advice: 'Report it with the entry that caused it; the fault is in this program.',
    source: COMMON_PRACTICE,
  },
] as const satisfies readonly PipelineRule[];

/** Id of a rule of the pipeline. */
export type PipelineRuleId = (typeof PIPELINE_RULES)[number]['id'];

/** A finding of the pipeline in one file, with its rule's reasons. */
export interface FileFinding {
  /** Path from the content folder, forward slashes. */
  readonly file: string;
  readonly finding: Finding;
}

/** Makes a finding of a declared rule; the place is the whole file unless given. */
export function pipelineFinding(rule: PipelineRuleId, message: string, where: Whereabouts = { in: 'file' }, advice?: string): Finding {
  const declared = PIPELINE_RULES.find((each) => each.id === rule);
  if (declared === undefined) return { rule, severity: 'error', where, message };
  return {
    rule,
    severity: declared.severity,
    where,
    message,
    why: declared.why,
    advice: advice ?? declared.advice,
    source: sourceInWords(declared.source),
  };
}
