import type { Port } from '../../entry/entry.ts';
import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { settingsOf } from './port-settings.ts';

/** Current that a port must be able to give at its lowest voltage before the rules test it with less, A. */
const ABLE_TO_GIVE = 3;

/**
 * Voltage and current with which a rule tests a port of USB PD at its lowest voltage; null where the rule has no such test, or the port
 * has one voltage only, is no USB PD port as the rule defines it, or cannot give 3 A there.
 */
export function lowestVoltageTest(rule: EfficiencyRule, port: Port): { readonly volts: number; readonly amps: number } | null {
  const settings = settingsOf(port);
  const { lowestVoltageAmps, usbPdUpToVolts } = rule;
  const negotiates = port.connector === 'USB-C' && port.offers.some((offer) => offer.kind !== 'plain');
  if (lowestVoltageAmps === null || !negotiates || settings === null || settings.lowest === settings.highest) return null;
  if (usbPdUpToVolts !== null && settings.highest > usbPdUpToVolts) return null;
  const able = port.offers.some((offer) => offer.kind === 'fixed' && offer.volts === settings.lowest && offer.amps >= ABLE_TO_GIVE);
  return able ? { volts: settings.lowest, amps: lowestVoltageAmps } : null;
}
