import { join } from 'node:path';
import { isScalar, type Pair, type YAMLMap } from 'yaml';
import { didYouMean } from '../markdown/nearest-name.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { standsThere, staysInside } from './inside-content.ts';
import { openYaml } from './open-yaml.ts';
import { pipelineFinding, type FileFinding, type PipelineRuleId } from './pipeline-rule.ts';
import { DERATING_POLICIES } from '../standards/derating/index.ts';
import type { DeratingPolicy } from '../standards/derating/policy.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import { readText } from './read-text.ts';

/** Name of the settings file in the content folder. */
const SETTINGS_FILE = 'site.yaml';

/** What holds where the settings say nothing. */
const DEFAULT_SETTINGS: SiteSettings = {
  name: 'Teardowns',
  author: 'The author',
  description: 'Power adapters taken apart, measured and computed.',
  address: null,
  numberPrefix: 'T',
  licence: null,
  language: 'en',
  derating: null,
};

const KEYS: Readonly<Record<string, keyof SiteSettings>> = {
  name: 'name',
  author: 'author',
  description: 'description',
  address: 'address',
  'number prefix': 'numberPrefix',
  licence: 'licence',
  language: 'language',
  derating: 'derating',
};

/**
 * Reads `site.yaml`; every fault is a finding with its place, and the default stands in for what could not be read. `policies` are the
 * derating policies that the site wrote itself and may choose.
 */
export function readSettings(
  content: string,
  policies: readonly DeratingPolicy[] = [],
): { readonly settings: SiteSettings; readonly findings: readonly FileFinding[] } {
  const path = join(content, SETTINGS_FILE);
  const findings: FileFinding[] = [];
  const report = (finding: Finding): void => void findings.push({ file: SETTINGS_FILE, finding });
  if (!standsThere(path)) {
    report(pipelineFinding('site-settings-missing', 'There is no site.yaml; the site is called "Teardowns"'));
    return { settings: DEFAULT_SETTINGS, findings };
  }
  if (!staysInside(path, content, SETTINGS_FILE, findings)) return { settings: DEFAULT_SETTINGS, findings };
  const read = readText(path);
  if (!read.ok) {
    report(read.finding);
    return { settings: DEFAULT_SETTINGS, findings };
  }
  return { settings: settingsOf(read.text, policies, report), findings };
}

function settingsOf(text: string, policies: readonly DeratingPolicy[], report: (finding: Finding) => void): SiteSettings {
  const { map, faults, placeOf } = openYaml(text, { file: SETTINGS_FILE, schema: 'core', holds: 'lines like "name: My bench"' });
  for (const { message, line, column } of faults) report(pipelineFinding('site-settings-invalid', message, { in: 'file', line, column }));
  if (map === null) return DEFAULT_SETTINGS;
  return settingsIn(map, policies, (rule, offset, message) => {
    report(pipelineFinding(rule, message, { in: 'file', ...placeOf(offset) }));
  });
}

type Say = (rule: PipelineRuleId, offset: number, message: string) => void;

function settingsIn(map: YAMLMap, policies: readonly DeratingPolicy[], say: Say): SiteSettings {
  const settings: Record<keyof SiteSettings, string | null> = { ...DEFAULT_SETTINGS };
  for (const pair of map.items) {
    const { key, offset } = keyOf(pair);
    const name = Object.hasOwn(KEYS, key) ? KEYS[key] : undefined;
    if (name === undefined) {
      say('site-settings-unknown', offset, `"${key}" is not a setting of the site${didYouMean(key, Object.keys(KEYS))}`);
      continue;
    }
    const value = valueOf(pair, key, say);
    if (value !== null && (name !== 'derating' || isPolicy(value, policies, pair, say))) settings[name] = value;
  }
  const { name, author, description, numberPrefix, language } = settings;
  return {
    ...DEFAULT_SETTINGS,
    address: settings.address,
    licence: settings.licence,
    derating: settings.derating,
    ...(name === null ? {} : { name }),
    ...(author === null ? {} : { author }),
    ...(description === null ? {} : { description }),
    ...(numberPrefix === null ? {} : { numberPrefix }),
    ...(language === null ? {} : { language }),
  };
}

function isPolicy(id: string, own: readonly DeratingPolicy[], pair: Pair, say: Say): boolean {
  const known = [...DERATING_POLICIES, ...own].map((policy) => policy.id);
  if (known.includes(id)) return true;
  const offset = isScalar(pair.value) ? (pair.value.range?.[0] ?? 0) : 0;
  say('site-settings-invalid', offset, `There is no derating policy "${id}"${didYouMean(id, known) || `; known are ${known.join(', ')}`}`);
  return false;
}

function keyOf(pair: Pair): { readonly key: string; readonly offset: number } {
  const { key } = pair;
  return isScalar(key) ? { key: String(key.value), offset: key.range?.[0] ?? 0 } : { key: '?', offset: 0 };
}

function valueOf(pair: Pair, key: string, say: Say): string | null {
  const { value } = pair;
  const offset = isScalar(value) ? (value.range?.[0] ?? 0) : keyOf(pair).offset;
  if (!isScalar(value) || typeof value.value !== 'string' || value.value.trim() === '') {
    say(
      'site-settings-invalid',
      offset,
      `"${key}" must be a text${isScalar(value) && typeof value.value === 'number' ? ': put it into quotes' : ''}`,
    );
    return null;
  }
  const text = value.value.trim();
  if (key === 'address' && !(/^https?:\/\/[^/\s?#]+(?:\/[^\s?#]*)?$/.test(text) && URL.canParse(text))) {
    say(
      'site-settings-invalid',
      offset,
      `The address "${text}" must be the whole address of the published site, such as https://example.org/`,
    );
    return null;
  }
  if (key === 'language' && !/^[a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/.test(text)) {
    say('site-settings-invalid', offset, `The language "${text}" must be a language tag, such as en or en-GB`);
    return null;
  }
  return text;
}
