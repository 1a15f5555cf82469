import { expect, test } from 'vitest';
import { hotSpots } from '../../../src/derived/heat/hot-spots.ts';
import { isMissing } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

/** Material and limit of a place on a case of this material. */
function touched(material: string, place: string): readonly unknown[] {
  const { entry } = checkText(
    'lm',
    `---\ntitle: Invented\ndevice: { maker: Larkmoor, model: LM, kind: wall charger }\nbody: { material: ${material} }\nmeasurements: { thermal: [{ value: 61 °C, place: ${place}, ambient: 25 °C }] }\n---\n`,
  );
  const [spot] = entry === null ? [] : hotSpots(entry);
  return spot === undefined ? [] : [spot.isOutside, spot.material, isMissing(spot.limit) ? null : spot.limit.nominal];
}

test.each([
  ['PC', 'case top', 'plastic', 77],
  ['PC', 'USB-C shell', 'metal', 60],
  ['PC', 'metal band of the case', 'metal', 60],
  ['PC', 'case over the metal shield', 'plastic', 77],
  ['PC', 'painted metal band', 'plastic', 77],
  ['aluminium', 'case top', 'metal', 60],
  ['aluminium', 'plastic lid', 'plastic', 77],
])('on a case of %s, %s is touched as %s: %s °C', (material, place, as, limit) => {
  expect(touched(material, place)).toEqual([true, as, limit]);
});
