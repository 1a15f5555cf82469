import type { DataPath } from '../diagnostics/finding.ts';
import type { PartClass, Role } from '../roles/role.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity, Rating } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** What no electrical part is rated in: a unit of these is a slip of the ear or the keyboard ("140 mL" for 140 mΩ). */
const NEVER_RATED: ReadonlySet<Dimension> = new Set<Dimension>(['volume', 'mass', 'area', 'power density', 'specific power', 'heat flux']);

/** Dimensions that only some classes of parts have; a transistor has capacitances and a gate charge too. */
const ONLY_OF: Readonly<Partial<Record<Dimension, readonly PartClass[]>>> = {
  capacitance: [
    'safety capacitor',
    'film capacitor',
    'ceramic capacitor',
    'aluminium electrolytic',
    'polymer capacitor',
    'capacitor',
    'transistor',
    'rectifier',
    'varistor',
    'isolator',
    'integrated circuit',
  ],
  inductance: ['magnetic', 'capacitor', 'film capacitor'],
  charge: ['cell', 'transistor', 'rectifier'],
};

/** Reports quantities of a rating that its role is never rated in, with what was probably meant. `shift` is where the rating starts. */
export function reportStrangeDimensions(context: ReadingContext, role: Role, rating: Rating | null, path: DataPath, shift = 0): void {
  for (const quantity of rating?.quantities ?? []) {
    if (role.rates.includes(quantity.dimension)) continue;
    const never = NEVER_RATED.has(quantity.dimension) && role.partClass !== 'mechanical';
    const classes = ONLY_OF[quantity.dimension];
    if (!never && (classes === undefined || classes.includes(role.partClass))) continue;
    const span = { start: quantity.span.start + shift, end: quantity.span.end + shift };
    const message = `${quantity.written} is a ${quantity.dimension}; ${article(role.name)} is rated in ${role.rates.join(', ')}.`;
    const meant = probablyMeant(quantity, role, rating);
    context.findings.push(
      readingFinding(never ? 'unreadable-value' : 'value-remark', atValue(path, span), message, {
        severity: never ? 'error' : 'warning',
        ...(meant === null ? {} : { advice: `Did you mean "${meant}"?` }),
      }),
    );
  }
}

/** The suggestion of the quantity reader for the first dimension that the role has and the rating lacks. */
function probablyMeant(quantity: Quantity, role: Role, rating: Rating | null): string | null {
  const given = new Set(rating?.quantities.map(({ dimension }) => dimension));
  for (const dimension of role.rates.filter((candidate) => !given.has(candidate))) {
    const suggestion = readQuantity(quantity.written, dimension).remarks.find((remark) => remark.suggestion !== null)?.suggestion;
    if (suggestion !== undefined && suggestion !== null) return suggestion;
  }
  return null;
}

function article(name: string): string {
  return `${/^[aeiou]/iu.test(name) || /^[XFHLMNRS](?:\b|[A-Z])/u.test(name) ? 'an' : 'a'} ${name}`;
}
