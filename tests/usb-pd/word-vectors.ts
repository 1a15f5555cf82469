import type { PowerDataObject } from '../../src/usb-pd/power-data-object.ts';

/** Where the words were seen. What is rebuilt or computed has only the fields that its source states; other flags are 0 there. */
export const WORD_SOURCES = {
  zephyrSink: 'Zephyr RTOS, samples/subsys/usb_c/sink README, console output',
  zephyrDualRole: 'Zephyr RTOS, samples/subsys/usb_c/drp README, console output',
  boardBoot: 'boot log of a single-board computer that prints word, mA and mV; public listing',
  ucsi: 'linux-usb mailing list, April 2024, UCSI GET_PDOS reply (two 64-bit numbers)',
  sinkBoard: 'serial log in the README of a CH32X035 PD sink board',
  messageLibrary: 'unit test of a public PD message library, packet captured from a charger',
  sourceFirmware: 'public source-port firmware, table of words with a comment per set',
  stackConfig: 'public PD stack, macro arguments for a 240 W source; word computed apart from this program',
  tcpmLog: 'linux-usb mailing list, December 2019, tcpm log; word rebuilt from the decoded text',
  tcpmPost: 'tcpm log in a mailing-list post; word rebuilt from the decoded text',
  bugReport: 'public bug report with decoder text; word rebuilt from it',
  deviceTree: 'linux-arm-kernel list, device tree source-pdos and sink-pdos as posted',
  testTable: 'test table of a public PD library, words with comments',
  testConstants: 'unit test constants with comments in a public PD library',
  testSource: 'unit test of a public source table',
} as const;

/** One word of a source's capabilities and what its fields hold. */
export interface WordVector {
  readonly word: number;
  readonly source: keyof typeof WORD_SOURCES;
  readonly object: PowerDataObject;
}

const NO_FLAGS = {
  peak: 0,
  reserved22: 0,
  eprCapable: 0,
  unchunked: 0,
  dualRoleData: 0,
  usbComm: 0,
  unconstrained: 0,
  usbSuspend: 0,
  dualRolePower: 0,
} as const;

/** Every distinct word of the collected capability sets. */
export const WORD_VECTORS: readonly WordVector[] = [
  {
    word: 0x0a01912c,
    source: 'zephyrSink',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, dualRoleData: 1, unconstrained: 1 },
  },
  { word: 0x0002d12c, source: 'zephyrSink', object: { kind: 'fixed', voltage_mV: 9000, current_mA: 3000, ...NO_FLAGS } },
  { word: 0x0004b12c, source: 'zephyrSink', object: { kind: 'fixed', voltage_mV: 15000, current_mA: 3000, ...NO_FLAGS } },
  { word: 0x000640e1, source: 'zephyrSink', object: { kind: 'fixed', voltage_mV: 20000, current_mA: 2250, ...NO_FLAGS } },
  { word: 0x0003c12c, source: 'zephyrDualRole', object: { kind: 'fixed', voltage_mV: 12000, current_mA: 3000, ...NO_FLAGS } },
  { word: 0x000641f4, source: 'zephyrDualRole', object: { kind: 'fixed', voltage_mV: 20000, current_mA: 5000, ...NO_FLAGS } },
  {
    word: 0xc1a42164,
    source: 'zephyrDualRole',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 21000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 5000 },
  },
  {
    word: 0x0a0191f4,
    source: 'boardBoot',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 5000, ...NO_FLAGS, dualRoleData: 1, unconstrained: 1 },
  },
  { word: 0x0003c0e1, source: 'boardBoot', object: { kind: 'fixed', voltage_mV: 12000, current_mA: 2250, ...NO_FLAGS } },
  { word: 0x0004b0b4, source: 'boardBoot', object: { kind: 'fixed', voltage_mV: 15000, current_mA: 1800, ...NO_FLAGS } },
  { word: 0x0801912c, source: 'ucsi', object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, unconstrained: 1 } },
  { word: 0x00064145, source: 'ucsi', object: { kind: 'fixed', voltage_mV: 20000, current_mA: 3250, ...NO_FLAGS } },
  {
    word: 0x0a81912c,
    source: 'sinkBoard',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, eprCapable: 1, dualRoleData: 1, unconstrained: 1 },
  },
  {
    word: 0xc9a43264,
    source: 'sinkBoard',
    object: { kind: 'pps', powerLimited: 1, reserved26_25: 0, max_mV: 21000, reserved16: 0, min_mV: 5000, reserved7: 0, current_mA: 5000 },
  },
  { word: 0x0008c1f4, source: 'sinkBoard', object: { kind: 'fixed', voltage_mV: 28000, current_mA: 5000, ...NO_FLAGS } },
  { word: 0xd230968c, source: 'sinkBoard', object: { kind: 'eprAvs', peak: 0, max_mV: 28000, reserved16: 0, min_mV: 15000, pdp_W: 140 } },
  {
    word: 0xc0dc213c,
    source: 'messageLibrary',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 3000 },
  },
  {
    word: 0x0802d0c8,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 9000, current_mA: 2000, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x0803c096,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 12000, current_mA: 1500, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0xc8dc2128,
    source: 'sourceFirmware',
    object: { kind: 'pps', powerLimited: 1, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 2000 },
  },
  {
    word: 0x0802d0fa,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 9000, current_mA: 2500, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x0803c0c8,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 12000, current_mA: 2000, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0xc8dc2132,
    source: 'sourceFirmware',
    object: { kind: 'pps', powerLimited: 1, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 2500 },
  },
  {
    word: 0x0802d12c,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 9000, current_mA: 3000, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x0803c0fa,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 12000, current_mA: 2500, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x0804b0b4,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 15000, current_mA: 1800, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x08064087,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 20000, current_mA: 1350, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0xc8dc213c,
    source: 'sourceFirmware',
    object: { kind: 'pps', powerLimited: 1, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 3000 },
  },
  {
    word: 0x0803c12c,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 12000, current_mA: 3000, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x0804b12c,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 15000, current_mA: 3000, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0x080640e1,
    source: 'sourceFirmware',
    object: { kind: 'fixed', voltage_mV: 20000, current_mA: 2250, ...NO_FLAGS, unconstrained: 1 },
  },
  {
    word: 0xc990212d,
    source: 'sourceFirmware',
    object: { kind: 'pps', powerLimited: 1, reserved26_25: 0, max_mV: 20000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 2250 },
  },
  {
    word: 0x0881912c,
    source: 'stackConfig',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, eprCapable: 1, unconstrained: 1 },
  },
  { word: 0x000b41f4, source: 'stackConfig', object: { kind: 'fixed', voltage_mV: 36000, current_mA: 5000, ...NO_FLAGS } },
  { word: 0x000f01f4, source: 'stackConfig', object: { kind: 'fixed', voltage_mV: 48000, current_mA: 5000, ...NO_FLAGS } },
  { word: 0xd3c096f0, source: 'stackConfig', object: { kind: 'eprAvs', peak: 0, max_mV: 48000, reserved16: 0, min_mV: 15000, pdp_W: 240 } },
  {
    word: 0xc0dc2164,
    source: 'tcpmLog',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 5000 },
  },
  {
    word: 0xc140213c,
    source: 'tcpmLog',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 16000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 3000 },
  },
  {
    word: 0xc1a4212d,
    source: 'tcpmLog',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 21000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 2250 },
  },
  { word: 0x0002d0c8, source: 'tcpmPost', object: { kind: 'fixed', voltage_mV: 9000, current_mA: 2000, ...NO_FLAGS } },
  {
    word: 0x2801912c,
    source: 'bugReport',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, unconstrained: 1, dualRolePower: 1 },
  },
  { word: 0x0006412c, source: 'bugReport', object: { kind: 'fixed', voltage_mV: 20000, current_mA: 3000, ...NO_FLAGS } },
  {
    word: 0xc1a4213c,
    source: 'bugReport',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 21000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 3000 },
  },
  {
    word: 0x380190c8,
    source: 'deviceTree',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 2000, ...NO_FLAGS, unconstrained: 1, usbSuspend: 1, dualRolePower: 1 },
  },
  {
    word: 0x3802d0c8,
    source: 'deviceTree',
    object: { kind: 'fixed', voltage_mV: 9000, current_mA: 2000, ...NO_FLAGS, unconstrained: 1, usbSuspend: 1, dualRolePower: 1 },
  },
  {
    word: 0x2c01912c,
    source: 'testTable',
    object: { kind: 'fixed', voltage_mV: 5000, current_mA: 3000, ...NO_FLAGS, usbComm: 1, unconstrained: 1, dualRolePower: 1 },
  },
  { word: 0x4f00f0b4, source: 'testConstants', object: { kind: 'battery', max_mV: 12000, min_mV: 3000, power_mW: 45000 } },
  { word: 0x8f01912c, source: 'testConstants', object: { kind: 'variable', max_mV: 12000, min_mV: 5000, current_mA: 3000 } },
  {
    word: 0xc0dc2128,
    source: 'testConstants',
    object: { kind: 'pps', powerLimited: 0, reserved26_25: 0, max_mV: 11000, reserved16: 0, min_mV: 3300, reserved7: 0, current_mA: 2000 },
  },
  {
    word: 0xe00515f4,
    source: 'testConstants',
    object: { kind: 'sprAvs', peak: 0, reserved25_20: 0, current15V_mA: 3250, current20V_mA: 5000 },
  },
  {
    word: 0xe00320c8,
    source: 'testConstants',
    object: { kind: 'sprAvs', peak: 0, reserved25_20: 0, current15V_mA: 2000, current20V_mA: 2000 },
  },
  { word: 0xf0001234, source: 'testConstants', object: { kind: 'reserved', bits: 4660 } },
  { word: 0x080191f4, source: 'testSource', object: { kind: 'fixed', voltage_mV: 5000, current_mA: 5000, ...NO_FLAGS, unconstrained: 1 } },
];
