import { flowAt, type AirState } from '@evendraft/airflow';
import type { CollarInlet } from './vent-system.js';

/**
 * Pressure of the room above that of the collar at which its inlets pass a flow [Pa].
 *
 * Exact for one sharp-edged opening; several ways beside each other are searched, each rising with the pressure.
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
  const flowOf = (pressurePa: number): number =>
    inlets.reduce((sum, { law }) => sum + flowAt(law, pressurePa, ends).massFlowKgPerS, 0);
  return bracketed((pressurePa) => sign * flowOf(sign * pressurePa), sign * massFlowKgPerS) * sign;
}

/** Where a rising function from zero on reaches a value; infinite where it does not below 10 MPa. */
function bracketed(of: (x: number) => number, value: number): number {
  let low = 0;
  let high = 1e-3;
  while (of(high) < value) {
    low = high;
    high *= 4;
    if (high > 1e7) return Infinity;
  }
  for (let halving = 0; halving < 200; halving++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (of(middle) < value) low = middle;
    else high = middle;
  }
  return high;
}
