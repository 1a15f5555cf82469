/** Zero kelvin in degrees Celsius, by definition. */
export const ABSOLUTE_ZERO = -273.15;
