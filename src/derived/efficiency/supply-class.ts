import type { Port } from '../../entry/entry.ts';
import { outputClass, type OutputClass } from '../../standards/efficiency/efficiency-rule.ts';
import { settingsOf } from './port-settings.ts';

/** Ports that give power. */
export function outputsOf(ports: readonly Port[]): readonly Port[] {
  return ports.filter((port) => port.direction !== 'input');
}

/**
 * Class of a supply: one output, or several that all have one and the same voltage, by what it delivers there; several that can give
 * different voltages at once are a multiple-voltage supply, whatever one of them would be alone.
 */
export function supplyClass(outputs: readonly Port[], volts: number, watts: number): OutputClass {
  const voltages = new Set(
    outputs
      .flatMap((port) => settingsOf(port))
      .map((settings) => (settings === null ? null : `${String(settings.lowest)}–${String(settings.highest)}`)),
  );
  const isOneVoltage = outputs.length === 1 || (voltages.size === 1 && outputs.every(hasOneVoltage));
  return isOneVoltage ? outputClass(volts, watts / volts) : 'multiple voltage';
}

function hasOneVoltage(port: Port): boolean {
  const settings = settingsOf(port);
  return settings !== null && settings.lowest === settings.highest;
}
