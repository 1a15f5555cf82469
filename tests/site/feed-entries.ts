/** Entries of an Atom feed as text by element; `link` is its address. Throws where an element does not close in its order. */
export function feedEntries(xml: string): Map<string, string>[] {
  const open: string[] = [];
  const entries: Map<string, string>[] = [];
  for (const [, close = '', name = '', attributes = '', empty = '', text = ''] of xml.matchAll(
    /<(\/?)([a-z]+)((?:\s[^<>]*?)?)(\/?)>([^<]*)/g,
  )) {
    if (close !== '') {
      if (open.pop() !== name) throw new Error(`</${name}> closes another element`);
      continue;
    }
    if (name === 'entry') entries.push(new Map());
    if (open.includes('entry')) entries.at(-1)?.set(name, name === 'link' ? (/href="([^"]*)"/.exec(attributes)?.[1] ?? '') : plain(text));
    if (empty === '') open.push(name);
  }
  if (open.length > 0) throw new Error(`<${open.join('><')}> is not closed`);
  return entries;
}

function plain(text: string): string {
  if (/&(?!(?:amp|lt|gt|quot|apos);)/.test(text)) throw new Error(`An entity of XML is none: ${text}`);
  return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&apos;', "'").replaceAll('&amp;', '&');
}
