import { describe, expect, test } from 'vitest';
import { openYaml } from '../../src/pipeline/open-yaml.ts';

const faultsOf = (text: string): readonly string[] => {
  const { map, faults } = openYaml(text, { file: 'bench.yaml', schema: 'failsafe', holds: '"instruments:" and "methods:"' });
  expect(map === null).toBe(faults.length > 0);
  return faults.map(({ line, column, message }) => `${String(line)}:${String(column)} ${message}`);
};

describe('a file of YAML', () => {
  test('that holds fields is opened', () => {
    expect(faultsOf('instruments:\n  meter: { name: power meter }\n')).toEqual([]);
  });

  test.each<[string, string, readonly string[]]>([
    ['is not well-formed: each fault at its place', 'a: [\nb', ['2:1 bench.yaml is not valid YAML']],
    ['says a key twice', 'a: 1\na: 2\n', ['2:1 bench.yaml is not valid YAML: Map keys must be unique']],
    ['is a list', '- a\n', ['1:1 bench.yaml must hold "instruments:" and "methods:"']],
    ['is empty', '', ['1:1 bench.yaml must hold "instruments:" and "methods:"']],
    ['has an alias', 'a: &x { name: meter }\nb: *x\n', ['2:4 bench.yaml uses the alias *x of YAML; write the value out']],
    ['has a group as a key', '? [a, b]\n: c\n', ['1:3 bench.yaml has a group where the name of a field belongs']],
    ['has a tag', 'a: !!binary aGVsbG8=\n', ['1:13 bench.yaml uses the tag tag:yaml.org,2002:binary of YAML; write the value out']],
  ])('that %s', (_, text, faults) => {
    const said = faultsOf(text);
    faults.forEach((fault, index) => {
      expect(said[index]).toContain(fault);
    });
    expect(said.length).toBeGreaterThan(0);
  });

  test('of many aliases, an alias of nothing, or nested beyond the stack is a fault and no crash', () => {
    expect(faultsOf(`a: &x [b]\n${Array.from({ length: 200 }, (_, index) => `b${String(index)}: *x\n`).join('')}`)).toHaveLength(200);
    expect(faultsOf('a: *nothing\n')[0]).toContain('1:4 bench.yaml');
    expect(faultsOf(`a: ${'['.repeat(20_000)}${']'.repeat(20_000)}\n`)[0]).toContain('nested too deeply');
  });
});
