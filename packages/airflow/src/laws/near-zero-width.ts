/**
 * Half-width of the cubic part of every law around zero flow [Pa].
 *
 * A power law with n < 1 has infinite slope at zero. Below this width d it is replaced by the odd cubic
 * m(d) s ((3 − n)/2 + (n − 1)/2 s²) with s = x/d: equal value and slope at d, slope at zero at most
 * 1.25 m(d)/d, and exact above d. A pressure computed with it differs from the exact law's by less than
 * a quarter of d, which is far below any gauge.
 */
export const nearZeroWidthPa = 1e-6;
