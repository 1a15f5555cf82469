/** Energies are held in joules and printed in watt-hours. */
export const JOULES_PER_WATT_HOUR = 3600;
