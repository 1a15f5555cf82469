import { describe, expect, test } from 'vitest';
import { contentFolder } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

describe('settings of the site', () => {
  const settings = async (text: string): Promise<string[]> => {
    const { diagnostics } = await prepareIn(contentFolder({ 'site.yaml': text }));
    return diagnostics.map(({ line, column, message }) => `${String(line)}:${String(column)} ${message}`);
  };

  test('all of them', async () => {
    const text =
      'name: A\nauthor: B\ndescription: C\naddress: https://example.org/sub/\nnumber prefix: RWB\nlicence: CC BY 4.0\nlanguage: en-GB\nderating: mil-std-975m\n';
    const { manifest, diagnostics } = await prepareIn(contentFolder({ 'site.yaml': text }));
    expect(diagnostics).toEqual([]);
    expect(manifest.site).toEqual({
      name: 'A',
      author: 'B',
      description: 'C',
      address: 'https://example.org/sub/',
      numberPrefix: 'RWB',
      licence: 'CC BY 4.0',
      language: 'en-GB',
      derating: 'mil-std-975m',
    });
  });

  test.each([
    ['nmae: A', '1:1 "nmae" is not a setting of the site; did you mean "name"?'],
    ['name: A\nauthor: 12', '2:9 "author" must be a text: put it into quotes'],
    [
      'address: example.org',
      '1:10 The address "example.org" must be the whole address of the published site, such as https://example.org/',
    ],
    [
      'address: javascript:alert(1)',
      '1:10 The address "javascript:alert(1)" must be the whole address of the published site, such as https://example.org/',
    ],
    ['address: "https://[/"', '1:10 The address "https://[/" must be the whole address'],
    ['language: English please', '1:11 The language "English please" must be a language tag, such as en or en-GB'],
    ['derating: mil-std-975', '1:11 There is no derating policy "mil-std-975"; did you mean "mil-std-975m"'],
    ['name: [a', '1:9'],
    ['- a', '1:1 site.yaml must hold lines like "name: My bench"'],
    ['', '1:1 site.yaml must hold lines like "name: My bench"'],
    ['name: A\nname: B', '2:1 site.yaml is not valid YAML: Map keys must be unique'],
    ['__proto__: A', '1:1 "__proto__" is not a setting of the site'],
    ['name:', '1:6 "name" must be a text'],
  ])('%j', async (text, message) => {
    expect(await settings(text)).toEqual([expect.stringContaining(message)]);
  });
});
