import type { Part } from '../src/entry/entry.ts';

/** Lines printed on a part: its marking where the entry reads one, else the rating or the tail of its number. */
export function markingLines(part: Part, reference: string): readonly string[] {
  if (part.role === 'transformer') return (part.marking ?? reference).split(/ (?=\d)/u);
  if (part.marking !== null) return part.marking.split(' ');
  if (/capacitor|varistor/u.test(part.role)) return ratingLines(part);
  if (/fuse/u.test(part.role)) return ratingLines(part).slice(0, 1);
  if (/resistor$/u.test(part.role)) return [resistorCode(part)];
  if (/inductor|choke/u.test(part.role)) return [inductorCode(part)];
  if (part.number !== null) return [part.number.replace(/^[A-Z]{3}-/u, '')];
  return [];
}

function ratingLines(part: Part): readonly string[] {
  const written = (part.rating?.written ?? '').replace(/^\d+ × /u, '');
  const words = written.replace(/(\d) (?=[a-zµΩ°])/giu, '$1').split(' ');
  return words.filter((word) => word !== 'polymer' && word !== 'datasheet' && word !== 'measured').slice(0, 3);
}

/** Resistors in the letter code of IEC 60062: 0.1 Ω is R10, 5 mΩ is R005, 1.5 MΩ is 155. */
function resistorCode(part: Part): string {
  const ohms = part.rating?.quantities.find(({ dimension }) => dimension === 'resistance')?.nominal;
  if (ohms === undefined) return '';
  if (ohms < 1)
    return `R${String(Math.round(ohms * 1000))
      .padStart(3, '0')
      .replace(/0$/u, '')}`;
  if (ohms < 10)
    return String(Math.round(ohms * 10) / 10)
      .replace('.', 'R')
      .padEnd(2, 'R');
  const exponent = Math.floor(Math.log10(ohms)) - 1;
  return `${Math.round(ohms / 10 ** exponent)}${exponent}`;
}

/** Inductors in microhenries: 8.2 µH is 8R2, 10 µH is 100. */
function inductorCode(part: Part): string {
  const henries = part.rating?.quantities.find(({ dimension }) => dimension === 'inductance')?.nominal;
  if (henries === undefined) return '';
  const micro = henries * 1e6;
  if (micro < 10)
    return String(Math.round(micro * 10) / 10)
      .replace('.', 'R')
      .padEnd(3, 'R0');
  const exponent = Math.floor(Math.log10(micro) + 1e-9) - 1;
  return `${Math.round(micro / 10 ** exponent)}${exponent}`;
}
