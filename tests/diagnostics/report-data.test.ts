import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { reportJson } from '../../src/diagnostics/report-json.ts';
import { reportSarif } from '../../src/diagnostics/report-sarif.ts';
import { aDiagnostic } from './a-diagnostic.ts';

const error = aDiagnostic({
  line: 7,
  column: 3,
  endColumn: 9,
  severity: 'error',
  message: 'The sum is 75 W and the total 65 W.',
  why: 'It cannot be.',
});
const answered = aDiagnostic({ line: 2, answer: 'Measured twice.' });
const described = { id: 'port-above-own-limit', title: 'A port above its own limit', why: 'It cannot be.', severity: 'error' } as const;

describe('the report for programs', () => {
  test('is an array of the nine fields, sorted, without answered findings', () => {
    expect(JSON.parse(reportJson([error, answered]))).toEqual([
      {
        file: 'teardowns/lm-q100/index.md',
        line: 7,
        column: 3,
        endLine: 7,
        endColumn: 9,
        severity: 'error',
        rule: 'port-above-own-limit',
        message: 'The sum is 75 W and the total 65 W.',
        source: null,
      },
    ]);
    expect(reportJson([])).toBe('[]\n');
  });
});

describe('the SARIF 2.1.0 log', () => {
  const schema: unknown = JSON.parse(readFileSync(new URL('sarif-schema-2.1.0.json', import.meta.url), 'utf8'));
  const validate = new Ajv({ strict: false, validateFormats: false, validateSchema: false, unicodeRegExp: false }).compile(
    withoutDraft(schema),
  );

  test('validates against the published schema, with findings, with an odd file name, and empty', () => {
    const odd = aDiagnostic({ file: 'teardowns/65 W: ä%.md', rule: 'undescribed' });
    for (const log of [reportSarif([error, answered, odd], [described]), reportSarif([])]) {
      expect(validate(JSON.parse(log)), JSON.stringify(validate.errors)).toBe(true);
    }
  });

  test('the schema refuses a log that is not one', () => {
    expect(validate(JSON.parse(reportSarif([{ ...error, line: 0 }])))).toBe(false);
    expect(validate({ version: '2.1.0' })).toBe(false);
  });

  test('places a finding, names its rule, and keeps an answer as a suppression', () => {
    const log: unknown = JSON.parse(reportSarif([error, answered], [described]));
    expect(log).toMatchObject({
      runs: [
        {
          tool: { driver: { rules: [{ id: 'port-above-own-limit', shortDescription: { text: 'A port above its own limit' } }] } },
          results: [
            { level: 'warning', suppressions: [{ kind: 'inSource', justification: 'Measured twice.' }] },
            {
              ruleId: 'port-above-own-limit',
              ruleIndex: 0,
              level: 'error',
              message: { text: 'The sum is 75 W and the total 65 W. It cannot be.' },
              locations: [{ physicalLocation: { region: { startLine: 7, startColumn: 3, endLine: 7, endColumn: 9 } } }],
            },
          ],
        },
      ],
    });
  });

  test('a file name is written as a relative URI', () => {
    expect(reportSarif([aDiagnostic({ file: 'teardowns/65 W/index.md' })])).toContain('"uri": "teardowns/65%20W/index.md"');
  });
});

/** The validator knows draft 7, which reads everything this draft-4 schema uses but the name of its draft and `id`. */
function withoutDraft(schema: unknown): object {
  if (typeof schema !== 'object' || schema === null) throw new Error('the schema is not an object');
  return Object.fromEntries(Object.entries(schema).filter(([key]) => key !== '$schema' && key !== 'id'));
}
