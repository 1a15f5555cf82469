import type { Device } from '../src/sharing/device-need.ts';
import { planDevices } from '../src/sharing/planner.ts';
import type { LayoutRow, PortLayout } from '../src/sharing/port-layout.ts';
import type { OfferBody } from '../src/usb-pd/offer.ts';

/** Milliseconds within which the page has to answer for six ports and six devices. */
const LIMIT = 50;
const RUNS = 40;

const PORTS = ['C1', 'C2', 'C3', 'C4', 'C5', 'A1'];

function offersUpTo(amps: number): OfferBody[] {
  return [
    { kind: 'fixed', volts: 5, amps: 3 },
    { kind: 'fixed', volts: 9, amps: 3 },
    { kind: 'fixed', volts: 15, amps: 3 },
    { kind: 'fixed', volts: 20, amps },
  ];
}

/** All 63 sets of six ports, no two shares alike, so that nothing falls out as equal; `pooled` puts the last two on one power. */
function layout(pooled: boolean): PortLayout {
  const ports = PORTS.map((id, index) => ({ id, connector: 'USB-C' as const, offers: offersUpTo(index < 2 ? 5 : 3.25) }));
  const rows = Array.from({ length: 63 }, (_, index) => rowOf(index + 1, pooled));
  return { ports, rows, unknown: [] };
}

function rowOf(mask: number, pooled: boolean): LayoutRow {
  const used = PORTS.filter((_, place) => (mask >> place) & 1);
  const own = pooled && used.includes('C5') && used.includes('A1') ? used.slice(0, -2) : used;
  const shares = own.map((port, place) => ({ ports: [port], watts: 120 / used.length + place + mask / 100 }));
  return { ports: used, order: null, shares: own.length === used.length ? shares : [...shares, { ports: ['C5', 'A1'], watts: 15 }] };
}

const devices: Device[] = [65, 100, 45, 27, 30, 5].map((watts) => ({ name: `${watts} W`, need: { watts, volts: watts >= 45 ? 20 : 9 } }));

for (const pooled of [false, true]) {
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    planDevices(layout(pooled), devices);
    return performance.now() - start;
  });
  const first = times[0] ?? NaN;
  const sorted = times.toSorted((one, other) => one - other);
  const median = sorted[Math.floor(RUNS / 2)] ?? NaN;
  const words = `6 ports, 6 devices${pooled ? ', one pool' : ''}: first ${first.toFixed(1)} ms, median ${median.toFixed(1)} ms, limit ${LIMIT} ms`;
  console.log(`${words}${median > LIMIT ? ': TOO SLOW' : ''}`);
}
