/**
 * Atomic masses of what fuels and air are made of [g/mol].
 *
 * Source: IUPAC standard atomic weights, rounded (from memory).
 */
export const atomicMasses = Object.freeze({
  hydrogen: 1.008,
  carbon: 12.011,
  nitrogen: 14.007,
  oxygen: 15.999,
  sulphur: 32.06,
});
