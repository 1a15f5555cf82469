/** The inch is 2.54 cm by definition. */
export const CM3_PER_IN3 = 2.54 ** 3;
