import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '../bench/random.ts';

/** Where the demo's teardowns are. */
const TEARDOWNS = join(import.meta.dirname, '../demo/teardowns');

/** Text of a log, ready to be written. */
interface MadeLog {
  readonly file: string;
  readonly text: string;
}

/** Reading noise of a bench instrument: the sum of three even ones is close to normal. */
function noiseOf(seed: number): (size: number) => number {
  const next = seededRandom(seed);
  return (size) => (next() + next() + next() - 1.5) * size;
}

/** An hour at 20 V and 5 A in a closed box of 38 °C: the station tells the load to take 65 W after twelve minutes. */
export function boxLog(): MadeLog {
  const noise = noiseOf(20_251_104);
  const rows = ['Logger LX-4, two channels, thermocouple', 'Zeit [s];U [V];I [A];T1 [°C]'];
  let surface = 38;
  for (let second = 0; second <= 3620; second += 2) {
    const isOn = second >= 10 && second <= 3612;
    const isFolded = second - 10 >= 720;
    const amps = isOn ? (isFolded ? 3.25 : 5) : 0;
    const watts = 20.05 * amps;
    // The box settles with a time constant of eleven minutes to 0.31 K for each watt that is delivered.
    surface += ((38 + 0.31 * watts - surface) * 2) / 660;
    const volts = 20.12 - 0.018 * amps + noise(0.004);
    rows.push(
      [second, volts.toFixed(3), Math.max(0, amps + (isOn ? noise(0.003) : 0)).toFixed(3), (surface + noise(0.1)).toFixed(1)].join(';'),
    );
  }
  return { file: 'fennimoor-deskway-100/c1-in-a-box.csv', text: `${rows.join('\r\n').replace(/(\d)\.(\d)/g, '$1,$2')}\r\n` };
}

/** A discharge at 5 V and 2 A from full to empty, a row every five seconds. */
export function dischargeLog(): MadeLog {
  const noise = noiseOf(20_260_203);
  const rows = ['stamp,volt_V,curr_mA,cell_temp_C'];
  let [joules, second, temperature] = [0, 0, 22];
  while (joules < WATT_HOURS * 3600) {
    const amps = second === 0 ? 0 : 2;
    const volts = 5.11 - 0.021 * amps - 0.02 * (joules / (WATT_HOURS * 3600)) + noise(0.003);
    temperature += ((second === 0 ? 22 : 31.5) - temperature) * (5 / 1500);
    joules += volts * amps * 5;
    rows.push(
      `${stamp(second)},${volts.toFixed(3)},${(amps * 1000 + (amps === 0 ? 0 : noise(2))).toFixed(0)},${(temperature + noise(0.1)).toFixed(1)}`,
    );
    second += 5;
  }
  for (const last of [0, 5]) rows.push(`${stamp(second + last)},0.002,0,${temperature.toFixed(1)}`);
  return { file: 'crossgarth-bothy-45/discharge-5v-2a.csv', text: `${rows.join('\n')}\n` };
}

/** Forty seconds of C1 at 20 V and 4.7 A, fifty rows a second; at twenty seconds a second laptop goes into C2. */
export function plugLog(): MadeLog {
  const noise = noiseOf(20_260_628);
  const rows = ['t/ms,U/V,I/A'];
  for (let millisecond = 0; millisecond <= 40_000; millisecond += 20) {
    const since = millisecond - 20_140;
    const isDown = since >= 0 && since < 640;
    // Down to 5 V and back in 30 ms each; the load takes next to nothing until the new contract stands.
    const low = isDown ? Math.min(1, (since + 20) / 30, (640 - since) / 30) : 0;
    const amps = isDown || (since >= 640 && since < 900) ? 0.08 : 4.7;
    const volts = 20.14 - 0.016 * amps - 15.02 * low + noise(0.006);
    rows.push([millisecond, volts.toFixed(3), (amps + noise(0.004)).toFixed(3)].join(','));
  }
  return { file: 'ostlewick-lantern-140/c1-second-laptop.csv', text: `${rows.join('\n')}\n` };
}

/** What the entry gives as measured. */
const WATT_HOURS = 30.9;

/** Date and time of a row; the test began at twenty past six in the evening. */
function stamp(second: number): string {
  const at = 18 * 3600 + 20 * 60 + second;
  const two = (number: number): string => String(Math.floor(number)).padStart(2, '0');
  return `2026-02-03 ${two(at / 3600)}:${two((at / 60) % 60)}:${two(at % 60)}`;
}

if (import.meta.main) for (const { file, text } of [boxLog(), dischargeLog(), plugLog()]) writeFileSync(join(TEARDOWNS, file), text);
