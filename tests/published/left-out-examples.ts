import type { LeftOut } from './collected-examples.ts';

/** Results that are not counted as evidence, and why. */
export const LEFT_OUT: readonly LeftOut[] = [
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_ac', reason: 'its own inputs give 181.3 V, which design-walks checks' },
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_rms', reason: 'follows from the wrong 187.9 V and a bus voltage that was inferred' },
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_peak', reason: 'follows from the wrong 187.9 V and a bus voltage that was inferred' },
  { example: 'flyback-uc2842-currents', result: 'Lp_calc', reason: 'printed 1.8 mH where its own equation gives 1.71 mH' },
  {
    example: 'flyback-u165-outcap',
    result: 'Icap_rms',
    reason: 'the winding current stands where the ripple is meant; design-walks checks the 10.04 A',
  },
  {
    example: 'buck-tps40192-cin',
    result: 'Icin_exact',
    reason: 'the printed 2.37 A is the wrong form; design-walks checks the exact 3.36 A',
  },
  { example: 'buck-tps40192-cin', result: 'Cin', reason: 'the input voltage was worked back from the printed capacitance' },
  {
    example: 'buck-tps40192-outripple',
    result: 'dV_cap_ideal',
    reason: 'the printed value leaves out the eighth; design-walks checks 3.04 mV',
  },
  { example: 'bb-ltc3780-switch-losses', result: 'PA', reason: 'the hot factor was worked back from the printed loss' },
  { example: 'bb-ltc3780-switch-losses', result: 'TjA', reason: 'follows from a loss whose hot factor was worked back' },
  {
    example: 'bb-ltc3780-switch-losses',
    result: 'TjC',
    reason: 'printed from a loss of 1.08 W instead of its own 1.27 W; design-walks checks 120.6 °C',
  },
  {
    example: 'xcap-discharge-anp015',
    result: 'R_max',
    reason: 'the starting voltage does not match the printed mains and may have been fitted',
  },
  { example: 'acf-tida01622-duty', result: 'Dmax', reason: 'the bulk voltage was worked back from the printed duty' },
  { example: 'buck-rohm-losses', result: 'P_H', reason: 'the inductance was worked back from the printed losses' },
  { example: 'buck-rohm-losses', result: 'P_L', reason: 'the inductance was worked back from the printed losses' },
  { example: 'buck-rohm-losses', result: 'P_DCR', reason: 'the inductance was worked back from the printed losses' },
  { example: 'box-sealed-300w', result: 'dT_K', reason: 'a change of units from a chart, no relation of ours' },
  {
    example: 'mosfet-hot-ipd50r500ce',
    result: 'R150_typ',
    reason: 'the factor is the ratio of the two printed values: data, kept as such',
  },
  {
    example: 'mosfet-hot-ipan70r450p7s',
    result: 'R150_typ',
    reason: 'the factor is the ratio of the two printed values: data, kept as such',
  },
  {
    example: 'pfc-ccm-inf1200-output-cap',
    result: 'C_hold',
    reason: 'the hold-up time was chosen to fit: 16.6 ms printed, 16.667 ms needed',
  },
  {
    example: 'size-tida01622-density',
    result: 'density',
    reason: 'neither printed size gives 30 W/in³; reference-designs checks 32.05 and 31.04',
  },
];
