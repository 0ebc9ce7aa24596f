import { flowAt, type AirState } from '@evendraft/airflow';
import type { CollarInlet } from './vent-system.js';

/**
 * Pressure of the room above that of the collar at which its inlets pass a flow [Pa].
 *
 * Exact for one sharp-edged opening; else searched to rounding, because the flow of every way rises with the pressure.
 *
 * @param inlets - ways between room and collar
 * @param massFlowKgPerS - from the room into the flue [kg/s]
 * @param air - air of the room, and of the collar, which comes out where the flow is negative
 * @returns room minus collar, of the flow's sign; infinite where nothing is open for a flow [Pa]
 */
export function inletSuction(
  inlets: readonly CollarInlet[],
  massFlowKgPerS: number,
  air: { readonly room: AirState; readonly collar: AirState },
): number {
  if (massFlowKgPerS === 0) return 0;
  const sign = Math.sign(massFlowKgPerS);
  const entering = sign > 0 ? air.room : air.collar;
  const [only] = inlets;
  if (only === undefined) return sign * Infinity;
  if (inlets.length === 1 && only.law.kind === 'orifice') {
    const area = only.law.areaM2 * only.law.dischargeCoefficient;
    return (massFlowKgPerS * Math.abs(massFlowKgPerS)) / (2 * entering.densityKgPerM3 * area ** 2);
  }
  const ends = { from: air.room, to: air.collar };
  return sign * suctionOf(inlets, { massFlowKgPerS, sign, ends });
}

/** Pressure below which a flow is looked for [Pa]. */
const mostPa = 1e7;
/** Share of the flow within which one more step brings the rest to rounding [-]. */
const nearEnough = 1e-9;
const mostRounds = 200;

/**
 * Size of the pressure at which ways beside each other pass a flow; infinite where they do not below 10 MPa [Pa].
 *
 * Newton on logarithms, where an opening's law is a line; a gate that begins to open bends it, so that the step is taken
 * only inside the bracket and while the error halves, else the bracket is halved on logarithms.
 *
 * Source: Newton's method kept within a bracket, as in Press and others, Numerical Recipes, 9.4 (from memory).
 */
function suctionOf(
  inlets: readonly CollarInlet[],
  of: {
    readonly massFlowKgPerS: number;
    readonly sign: number;
    readonly ends: { readonly from: AirState; readonly to: AirState };
  },
): number {
  const { massFlowKgPerS, sign, ends } = of;
  let [low, high] = [0, Infinity];
  let pressurePa = 1;
  let before = Infinity;
  for (let round = 0; round < mostRounds; round++) {
    let flow = 0;
    let slope = 0;
    for (const { law } of inlets) {
      const { massFlowKgPerS: own, slopeKgPerSPa } = flowAt(law, sign * pressurePa, ends);
      flow += own;
      slope += slopeKgPerSPa;
    }
    // Infinite where nothing passes yet.
    const missing = Math.log(massFlowKgPerS / (sign * Math.abs(flow)));
    const next = pressurePa * Math.exp((missing * Math.abs(flow)) / (pressurePa * slope));
    if (Math.abs(missing) <= nearEnough) return next;
    if (missing < 0) high = pressurePa;
    else if (pressurePa >= mostPa) return Infinity;
    else low = pressurePa;
    const halves = Math.abs(missing) <= 0.5 * before;
    before = Math.abs(missing);
    if (halves && next > low && next < high) pressurePa = Math.min(next, mostPa);
    else if (high === Infinity) pressurePa = Math.min(64 * pressurePa, mostPa);
    else pressurePa = low > 0 ? Math.sqrt(low * high) : high / 64;
    // Nothing lies between the ends any more.
    if (!(pressurePa > low && pressurePa < high)) return high;
  }
  return high;
}
