import { expect, test } from 'vitest';
import { baseReminder } from '../../src/cli/base-reminder.ts';

test.each([
  [null, '/'],
  ['https://example.org', '/'],
  ['https://example.org/', '/'],
  ['https://example.org/tear', '/tear/'],
  ['https://example.org/a/b/', '/a/b/'],
])('%s built for %s is in order', (address, base) => {
  expect(baseReminder(address, base)).toBeNull();
});

test.each([
  ['https://example.org/tear/', '/', '--base /tear/'],
  ['https://example.org/', '/sub/', '--base /,'],
])('%s built for %s: the base path that fits is named', (address, base, right) => {
  expect(baseReminder(address, base)).toContain(right);
});
