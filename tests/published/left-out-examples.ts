import type { LeftOut } from './collected-examples.ts';

/** Results that are not counted as evidence, and why. */
export const LEFT_OUT: readonly LeftOut[] = [
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_ac', reason: 'its own inputs give 181.3 V, which design-walks checks' },
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_rms', reason: 'follows from the wrong 187.9 V and a bus voltage that was inferred' },
  { example: 'llc-slup263-cr-voltage', result: 'Vcr_peak', reason: 'follows from the wrong 187.9 V and a bus voltage that was inferred' },
  {
    example: 'flyback-uc2842-currents',
    result: 'Lp_calc',
    reason: 'printed 1.8 mH where its own equation gives 1.71 mH, which design-walks checks',
  },
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
  {
    example: 'buck-tps40192-cin',
    result: 'Cin',
    reason: 'the lowest input of 8 V was worked back from the printed capacitance, so it would check itself',
  },
  {
    example: 'buck-tps40192-outripple',
    result: 'dV_cap_ideal',
    reason: 'the printed value leaves out the eighth; design-walks checks 3.04 mV',
  },
  {
    example: 'bb-ltc3780-switch-losses',
    result: 'PA',
    reason: 'the hot factor of 1.5 was worked back from it; design-walks holds it inside of 1.2 to 1.6',
  },
  {
    example: 'bb-ltc3780-switch-losses',
    result: 'TjA',
    reason: 'follows from that loss; design-walks holds it inside of the same factors',
  },
  {
    example: 'bb-ltc3780-switch-losses',
    result: 'TjC',
    reason: 'printed from a loss of 1.08 W instead of its own 1.27 W; design-walks checks 120.6 °C',
  },
  {
    example: 'xcap-discharge-anp015',
    result: 'R_max',
    reason: 'starts from 283 V, no crest of the mains that it prints; design-walks checks the 222 kΩ of 253 V',
  },
  {
    example: 'acf-tida01622-duty',
    result: 'Dmax',
    reason: 'the bulk voltage of 60 V is not printed; active-clamp-65w holds 0.67 inside of the modelled valley',
  },
  {
    example: 'box-sealed-300w',
    result: 'dT_K',
    reason: 'read off a chart and changed from °F to K: no relation stands between its inputs and it',
  },
  {
    example: 'mosfet-hot-ipd50r500ce',
    result: 'R150_typ',
    reason: 'its factor is the ratio of two printed values: data, which design-tables checks, and no relation',
  },
  {
    example: 'mosfet-hot-ipan70r450p7s',
    result: 'R150_typ',
    reason: 'its factor is the ratio of two printed values: data, which design-tables checks, and no relation',
  },
  {
    example: 'pfc-ccm-inf1200-output-cap',
    result: 'C_hold',
    reason: 'needs 16.667 ms where 16.6 ms is printed; design-walks shows both',
  },
  {
    example: 'size-tida01622-density',
    result: 'density',
    reason: 'neither printed size gives 30 W/in³; reference-designs checks 32.05 and 31.04',
  },
];
