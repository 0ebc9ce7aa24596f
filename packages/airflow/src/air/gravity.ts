/**
 * Standard acceleration of free fall [m/s2].
 *
 * Source: 3rd General Conference on Weights and Measures (1901), conventional value (from memory).
 */
export const gravity = 9.80665;
