import type { Options as Schema } from 'rehype-sanitize';

/**
 * HTML that the text of an entry may hold, whether it comes from Markdown or was written as HTML. Everything else is
 * removed with a finding. Ids are ours alone (footnotes here, headings later), so no author's id can shadow one of the page.
 */
export const ALLOWED_HTML: Schema = {
  tagNames: [
    'a', 'abbr', 'b', 'blockquote', 'br', 'caption', 'cite', 'code', 'dd', 'del', 'details', 'dfn', 'div', 'dl', 'dt', 'em', 'h1', 'h2', 'h3', 'h4',
    'h5', 'h6', 'hr', 'i', 'input', 'ins', 'kbd', 'li', 'mark', 'ol', 'p', 'pre', 'q', 's', 'samp', 'section', 'small', 'span', 'strong', 'sub',
    'summary', 'sup', 'table', 'tbody', 'td', 'tfoot', 'th', 'thead', 'time', 'tr', 'u', 'ul', 'var',
  ],
  attributes: {
    a: ['href', 'ariaLabel', 'ariaDescribedBy', 'dataFootnoteBackref', 'dataFootnoteRef', ['className', 'data-footnote-backref'], ['id', /^note-fnref-/]],
    code: [['className', /^language-[\w.-]+$/]],
    h2: [['className', 'footnotes-title'], ['id', 'footnote-label']],
    input: [['disabled', true], ['type', 'checkbox'], 'checked'],
    li: [['className', 'task-list-item'], ['id', /^note-fn-/]],
    ol: [['className', 'contains-task-list'], 'start', 'reversed'],
    section: ['dataFootnotes', ['className', 'footnotes']],
    table: [],
    td: ['align', 'colSpan', 'rowSpan', 'headers'],
    th: ['align', 'colSpan', 'rowSpan', 'headers', 'scope', 'abbr'],
    time: ['dateTime'],
    details: ['open'],
    ul: [['className', 'contains-task-list']],
    '*': ['title', 'lang', 'dir'],
  },
  ancestors: { caption: ['table'], tbody: ['table'], td: ['table'], th: ['table'], thead: ['table'], tfoot: ['table'], tr: ['table'] },
  clobber: [],
  protocols: { href: ['http', 'https', 'mailto'] },
  required: { input: { disabled: true, type: 'checkbox' } },
  strip: ['script', 'style', 'iframe', 'frame', 'noscript', 'noembed', 'noframes', 'object', 'embed', 'template', 'textarea', 'title', 'svg', 'math', 'xmp', 'select', 'form'],
};
