import { describe, expect, it } from 'vitest';
import { reading } from './reading.ts';

const PORTS = 'ports: { C1: { connector: USB-C }, C2: { connector: USB-C }, A1: { connector: USB-A } }\n';

describe('a condition that cannot be read', () => {
  it.each([
    ['thermal: [{ value: 61 °C, place: case top, ambient: warm }]', '"warm" is no temperature.'],
    ['thermal: [{ value: 61 °C, place: case top, after: a while }]', '"a while" is no time.'],
    ['ripple: [{ value: 40 mV, output: 5 V, bandwidth: full }]', '"full" is no frequency.'],
    ['sustained power: { soon: 60 W }', '"soon" is no time.'],
  ])('is said where it stands: %s', (text, expected) => {
    const { findings } = reading(`${PORTS}measurements: { ${text} }`);
    expect(findings).toEqual([expect.stringContaining(expected)]);
  });
});

describe('the port of a measured figure', () => {
  it.each(['regulation', 'droop', 'ripple', 'sustained power', 'delivered energy'])('of %s is one that the entry has', (subject) => {
    const value = subject === 'sustained power' ? '60 W' : subject === 'delivered energy' ? '30 Wh' : '5.02 V';
    const { findings } = reading(`${PORTS}measurements: { ${subject}: [{ value: ${value}, port: C11 }] }`);
    expect(findings).toEqual([expect.stringContaining('There is no port "C11".')]);
  });

  it('is kept by the name that the entry gives it, several with plus signs', () => {
    const { entry, findings } = reading(
      `${PORTS}measurements: { regulation: [{ value: 5.02 V, port: usb-c1 }], ripple: [{ value: 38 mV, port: "C1, C2", output: 5 V }] }`,
    );
    expect(findings).toEqual([]);
    expect(entry.measurements.map(({ conditions }) => conditions['port']).toSorted()).toEqual(['C1', 'C1 + C2']);
  });
});
