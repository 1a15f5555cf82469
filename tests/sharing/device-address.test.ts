import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { devicesFromAddress, devicesToAddress } from '../../src/sharing/device-address.ts';
import { DEVICE_KINDS } from '../../src/sharing/device-need.ts';

describe('devices in an address', () => {
  test('read back as they were written, under the name of their kind', () => {
    const { devices, refused } = devicesFromAddress('65W20V_27W9VPPS_7.5W');
    expect(refused).toEqual([]);
    expect(devices.map(({ name }) => name)).toEqual(['Laptop, 65 W', 'Phone, 27 W with PPS', 'Device, 7.5 W']);
    expect(devicesToAddress(devices)).toBe('65W20V_27W9VPPS_7.5W');
  });

  test('every kind to pick survives the way there and back', () => {
    for (const kind of DEVICE_KINDS)
      expect(devicesFromAddress(devicesToAddress([kind])).devices).toEqual([{ name: kind.name, need: kind.need }]);
  });

  test('what names no device is given back, and so is a seventh one', () => {
    expect(devicesFromAddress('65W20V_laptop_0W_999W_5W99V').refused).toEqual(['laptop', '0W', '999W', '5W99V']);
    expect(devicesFromAddress('1W_2W_3W_4W_5W_6W_7W').refused).toEqual(['7W']);
    expect(devicesFromAddress('')).toEqual({ devices: [], refused: [] });
  });

  test('never throws and never loses a word', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { devices, refused } = devicesFromAddress(text);
        expect(devices.length + refused.length).toBe(text.split('_').filter((word) => word !== '').length);
      }),
      { seed: 20260304 },
    );
  });
});
