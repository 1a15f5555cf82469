import { POWER_CLASSES, powerClass } from '../power-class.ts';
import type { TopologyFamily } from '../topology-families.ts';

/** The families that have sheets of one power class, most sheets first. */
export interface PowerClassFamilies {
  readonly name: string;
  readonly families: readonly { readonly family: TopologyFamily; readonly sheets: number }[];
}

/** The families by power class, lowest class first; classes without a sheet are left out. */
export function familiesByPower(families: readonly TopologyFamily[]): readonly PowerClassFamilies[] {
  return POWER_CLASSES.flatMap((name) => {
    const found = families.flatMap((family) => {
      const sheets = family.members.filter((member) => powerClass(member.sheet.ratedWatts) === name).length;
      return sheets === 0 ? [] : [{ family, sheets }];
    });
    return found.length === 0 ? [] : [{ name, families: found.sort((one, other) => other.sheets - one.sheets) }];
  });
}
