import { isMap, isNode, isScalar, isSeq, type YAMLMap } from 'yaml';
import { didYouMean } from '../markdown/nearest-name.ts';
import { ROLES, roleOf } from '../roles/index.ts';
import { DERATING_POLICIES } from '../standards/derating/index.ts';
import { DIRECT_SUPPLY_FUSE, type DeratingPolicy, type DeratingRule } from '../standards/derating/policy.ts';
import { openYaml, type YamlFault } from './open-yaml.ts';

type Say = (at: unknown, message: string) => void;
type Quantity = DeratingRule['quantity'];

const POLICY_KEYS: readonly string[] = ['title', 'meaning', 'builds on', 'lines'];
const LINE_KEYS: readonly string[] = ['part class', 'roles', 'quantity', 'limit', 'caution', 'condition', 'source'];
const PART_CLASSES: readonly string[] = [...new Set([...ROLES.map((role) => role.partClass), DIRECT_SUPPLY_FUSE])];
const QUANTITIES: readonly Quantity[] = ['voltage', 'current', 'power', 'temperature'];

/** Ratio above which a limit is a slip of the pen: a percentage without its sign. */
const HIGHEST_LIMIT = 2;

/** The derating policy that a file of the site states, with what is wrong in it; null where nothing of it could be read. */
export function policyInText(
  text: string,
  id: string,
  file: string,
): { readonly policy: DeratingPolicy | null; readonly faults: readonly YamlFault[] } {
  const { map, faults: shut, placeOf } = openYaml(text, { file, schema: 'core', holds: 'lines like "title: Lines of this bench"' });
  if (map === null) return { policy: null, faults: shut };
  const faults: YamlFault[] = [];
  const say: Say = (at, message) => {
    faults.push({ message, ...placeOf(isNode(at) ? (at.range?.[0] ?? 0) : 0) });
  };
  return { policy: policyIn(map, id, file, say), faults };
}

function policyIn(map: YAMLMap, id: string, file: string, say: Say): DeratingPolicy {
  reportUnknownKeys(map, POLICY_KEYS, 'a policy', say);
  const list = map.get('lines', true);
  if (!isSeq(list) || list.items.length === 0) {
    say(list ?? map, '"lines" must be a list of lines such as { part class: transistor, quantity: voltage, limit: 0.75, source: … }');
  }
  const items = isSeq(list) ? list.items : [];
  const own = items.flatMap((item) => lineIn(item, file, say) ?? []);
  return {
    id,
    title: textOf(map, 'title', say) ?? id,
    meaning: textOf(map, 'meaning', say) ?? '',
    rules: [...own, ...inherited(map, own, say)],
    isOwn: true,
  };
}

/** Lines of the policy that this one builds on, but for what it answers itself. */
function inherited(map: YAMLMap, own: readonly DeratingRule[], say: Say): readonly DeratingRule[] {
  if (!map.has('builds on')) return [];
  const name = textOf(map, 'builds on', say);
  if (name === null) return [];
  const base = DERATING_POLICIES.find((policy) => policy.id === name);
  const known = DERATING_POLICIES.map((policy) => policy.id);
  if (base === undefined) {
    say(map.get('builds on', true), `There is no derating policy "${name}"${didYouMean(name, known) || `; known are ${known.join(', ')}`}`);
    return [];
  }
  const isAnswered = ({ partClass, quantity }: DeratingRule): boolean =>
    own.some((rule) => rule.roles === undefined && rule.partClass === partClass && rule.quantity === quantity);
  return base.rules.filter((rule) => !isAnswered(rule));
}

function lineIn(item: unknown, file: string, say: Say): DeratingRule | null {
  if (!isMap(item)) {
    say(item, 'A line must state part class, quantity, limit and source');
    return null;
  }
  reportUnknownKeys(item, LINE_KEYS, 'a line', say);
  const partClass = oneOf(item, 'part class', PART_CLASSES, say);
  const quantity = oneOf(item, 'quantity', QUANTITIES, say);
  const limit = ratioOf(item, 'limit', say);
  const caution = item.has('caution') ? ratioOf(item, 'caution', say) : undefined;
  const condition = item.has('condition') ? textOf(item, 'condition', say) : undefined;
  const roles = item.has('roles') ? rolesOf(item, say) : undefined;
  const words = textOf(item, 'source', say);
  if (caution !== undefined && caution !== null && limit !== null && caution <= limit) {
    say(item.get('caution', true), `"caution" is the second line and must be above the limit ${String(limit)}`);
    return null;
  }
  if (partClass === null || quantity === null || limit === null || words === null) return null;
  if (caution === null || condition === null || roles === null) return null;
  return {
    partClass,
    quantity,
    limit,
    ...(roles === undefined ? {} : { roles }),
    ...(caution === undefined ? {} : { caution }),
    ...(condition === undefined ? {} : { condition }),
    source: { title: words, section: `${file}, a line of this site’s own`, standing: 'common practice' },
  };
}

function reportUnknownKeys(map: YAMLMap, known: readonly string[], of: string, say: Say): void {
  for (const { key } of map.items) {
    const name = isScalar(key) ? String(key.value) : '?';
    if (!known.includes(name)) say(key, `"${name}" is not a field of ${of}${didYouMean(name, known)}`);
  }
}

function textOf(map: YAMLMap, key: string, say: Say): string | null {
  const node = map.get(key, true);
  if (isScalar(node) && typeof node.value === 'string' && node.value.trim() !== '') return node.value.trim();
  say(node ?? map, node === undefined ? `"${key}" is missing` : `"${key}" must be a text`);
  return null;
}

function oneOf<T extends string>(map: YAMLMap, key: string, known: readonly T[], say: Say): T | null {
  const text = textOf(map, key, say);
  const found = known.find((one) => one === text);
  if (text === null || found !== undefined) return found ?? null;
  say(map.get(key, true), `There is no ${key} "${text}"${didYouMean(text, known) || `; known are ${known.join(', ')}`}`);
  return null;
}

/** A ratio as a number, or with a percent sign. */
function ratioOf(map: YAMLMap, key: string, say: Say): number | null {
  const node = map.get(key, true);
  const value = isScalar(node) ? node.value : undefined;
  const percent = typeof value === 'string' ? /^(\d+(?:\.\d+)?)\s*%$/.exec(value)?.[1] : undefined;
  const ratio = percent === undefined ? value : Number(percent) / 100;
  if (typeof ratio === 'number' && ratio > 0 && ratio <= HIGHEST_LIMIT) return ratio;
  say(node ?? map, `"${key}" must be the share of the rating that is accepted, such as 0.8 or 80 %`);
  return null;
}

function rolesOf(map: YAMLMap, say: Say): readonly string[] | null {
  const node = map.get('roles', true);
  const ids = isSeq(node) ? node.items.map((item) => (isScalar(item) ? String(item.value) : '')) : [];
  const unknown = ids.find((id) => roleOf(id) === null);
  if (ids.length > 0 && unknown === undefined) return ids;
  say(
    node,
    unknown === undefined
      ? '"roles" must be a list of part roles'
      : `There is no part role "${unknown}"${didYouMean(
          unknown,
          ROLES.map(({ id }) => id),
        )}`,
  );
  return null;
}
