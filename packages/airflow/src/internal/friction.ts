/** Reynolds number up to which flow in a duct is taken as laminar [-]. */
export const laminarEndReynolds = 2000;

/** Reynolds number from which flow in a duct is taken as turbulent [-]. */
export const turbulentStartReynolds = 4000;

/** Factor of a laminar friction factor, f = 64/Re [-]. */
export const laminarFactor = 64;

const logFactor = 2 / Math.LN10;
const roughnessDivisor = 3.7;
const smoothFactor = 2.51;

/**
 * The root 1/sqrt(f) of the turbulent friction factor [-].
 * x = -2 log10(e/3.7 + 2.51 x/Re), solved to rounding: two steps of Halley from x = 7 put into the right side
 * leave nothing to do for Reynolds numbers from 4000 to 1e9 and roughnesses from 0 to 0.3.
 * Source: Colebrook, J. Instn Civ. Engrs 11 (1939) 133-156, from memory.
 */
export function colebrookRoot(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / roughnessDivisor;
  const b = smoothFactor / reynolds;
  let x = -logFactor * Math.log(a + 7 * b);
  for (let step = 0; step < 2; step++) {
    const inside = a + b * x;
    const share = (logFactor * b) / inside;
    const slope = 1 + share;
    const newton = (x + logFactor * Math.log(inside)) / slope;
    // Halley's step: the bend of the logarithm is -share^2/logFactor.
    x -= newton / (1 + (newton * share * share) / (2 * logFactor * slope));
  }
  return x;
}

/**
 * Local exponent of the turbulent friction loss in the flow, d ln(f Re^2)/d ln Re [-].
 * From 1.7 (smooth) to 2 (fully rough), in closed form from the root.
 */
export function colebrookExponent(
  reynolds: number,
  relativeRoughness: number,
  root: number,
): number {
  const b = smoothFactor / reynolds;
  const inside = relativeRoughness / roughnessDivisor + b * root;
  return 2 - (2 * logFactor * b) / (inside + logFactor * b);
}

/**
 * Writes the two coefficients of the join between laminar and turbulent flow [-].
 * With t = Re - 2000, f Re^2 = 64 Re + second t^2 + third t^3 has the value and slope of its neighbours at
 * 2000 and 4000. Both end slopes are positive and below three times the mean slope, so that the loss rises
 * throughout (the condition of Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980, from memory).
 */
export function writeFrictionJoin(relativeRoughness: number, into: Float64Array, at: number): void {
  const reynolds = turbulentStartReynolds;
  const width = turbulentStartReynolds - laminarEndReynolds;
  const root = colebrookRoot(reynolds, relativeRoughness);
  const value = (reynolds / root) ** 2;
  const exponent = colebrookExponent(reynolds, relativeRoughness, root);
  const meanExcess = (value - laminarFactor * reynolds) / width;
  const endExcess = (exponent * value) / reynolds - laminarFactor;
  into[at] = (3 * meanExcess - endExcess) / width;
  into[at + 1] = (endExcess - 2 * meanExcess) / (width * width);
}
