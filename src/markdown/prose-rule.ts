import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import type { Source } from '../values/value.ts';

/** Declaration of a rule that a reader (and not a check of data) reports, so that it has its page and can be explained. */
export type ProseRule = RuleDeclaration<Source>;

const COMMON_PRACTICE = { title: 'Common practice', section: '', standing: 'common practice' } as const satisfies Source;

/** Rules that the reader of the Markdown text reports, by id. */
export const PROSE_RULES = [
  {
    id: 'prose-html-removed',
    title: 'HTML that a page does not carry is removed',
    severity: 'warning',
    why: 'Scripts, inline styles, frames, event handlers and data addresses are not published: the content policy of the site forbids them.',
    advice: 'Write it in Markdown, or leave it out.',
    source: { title: 'W3C, Content Security Policy Level 3', section: 'section 6', standing: 'memory' },
  },
  {
    id: 'prose-unknown-directive',
    title: 'A directive of the text is not one of ours',
    severity: 'warning',
    why: 'The words are published as written, colon and brackets included.',
    advice: 'Use value, part, port, photo, method, formula or table; write \\: for a plain colon.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-unknown-name',
    title: 'A directive names something that the entry does not have',
    severity: 'error',
    why: 'The page would show the directive in place of the value, part, port, method or table.',
    advice: 'Correct the name, or add what it names to the entry.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-value-missing',
    title: 'The text quotes a value that could not be computed',
    severity: 'warning',
    why: 'The sentence is published with "not known" in place of the number.',
    advice: 'Add what is missing to the entry, or take the quotation out.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-table-empty',
    title: 'A table is placed for which the entry has no data',
    severity: 'warning',
    why: 'Nothing is shown at that place.',
    advice: 'Add the data, or take the directive out.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-table-twice',
    title: 'A table is placed twice',
    severity: 'warning',
    why: 'Its rows carry anchors, which must be unique on the page; the second place stays empty.',
    advice: 'Keep one of the two.',
    source: { title: 'WHATWG, HTML', section: 'section 3.2.6, the id attribute', standing: 'memory' },
  },
  {
    id: 'prose-star-between-digits',
    title: 'Stars between digits are emphasis in Markdown',
    severity: 'warning',
    why: '68*52*29 mm is read by Markdown as 68, an emphasised 52, and 29. The text is published as written.',
    advice: 'Write the times sign: 68 × 52 × 29 mm.',
    source: { title: 'CommonMark 0.31.2', section: 'section 6.2', standing: 'memory' },
  },
  {
    id: 'prose-table-cells',
    title: 'A table row has more cells than its heading',
    severity: 'error',
    why: 'The cells beyond the heading are dropped without a trace.',
    advice: 'Write a bar inside a cell as \\|, or add a column to the heading.',
    source: { ...COMMON_PRACTICE, section: 'a bar in a cell of a Markdown table starts the next cell' },
  },
  {
    id: 'prose-too-deep',
    title: 'The text is nested too deeply to be read',
    severity: 'error',
    why: 'No reader follows quotations or lists of that depth, and reading them would take minutes; the text is left out.',
    advice: 'Take out the repeated marks at the start of the line.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-image-unlisted',
    title: 'A picture in the text is not among the photos',
    severity: 'warning',
    why: 'An original may carry the position where it was taken; only the photos of the entry are made anew without it, framed, and published.',
    advice: 'List it under photos; the text then leads to it, as :photo[3 B4] does.',
    source: { title: 'CIPA DC-008, Exif 2.32', section: 'GPS attribute information', standing: 'memory' },
  },
  {
    id: 'prose-image-remote',
    title: 'A picture from another host is left out',
    severity: 'warning',
    why: 'A page of this site asks no other host for anything.',
    advice: 'Put a copy that you may publish beside the entry.',
    source: { title: 'W3C, Content Security Policy Level 3', section: 'section 6', standing: 'memory' },
  },
  {
    id: 'prose-image-alt',
    title: 'A picture has no alternative text',
    severity: 'error',
    why: 'Readers who do not see the picture get nothing.',
    advice: 'Describe in the brackets what the picture shows: ![board, primary side](board.jpg).',
    source: { ...COMMON_PRACTICE, section: 'every picture is described for those who do not see it' },
  },
  {
    id: 'prose-image-missing',
    title: 'A picture of the text is not beside the entry',
    severity: 'error',
    why: 'The page would show a broken picture.',
    advice: 'Correct the file name, capital letters included.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-link-broken',
    title: 'A link leads to a page that the site does not have',
    severity: 'error',
    why: 'Readers get the page for missing addresses.',
    advice: 'Correct the address.',
    source: COMMON_PRACTICE,
  },
  {
    id: 'prose-link-draft',
    title: 'A link leads to a draft',
    severity: 'error',
    why: 'Drafts are not published, so the link would lead nowhere.',
    advice: 'Publish the other entry first, or take the link out.',
    source: COMMON_PRACTICE,
  },
] as const satisfies readonly ProseRule[];

/** Id of a rule of the Markdown reader. */
export type ProseRuleId = (typeof PROSE_RULES)[number]['id'];
