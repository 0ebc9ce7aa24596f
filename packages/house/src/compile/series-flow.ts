import { referenceAir, type FlowLawDescription } from '@evendraft/airflow';
import { buildNetwork, solveNetwork } from '@evendraft/network';

/** One law in a chain. */
export interface ChainedLaw {
  readonly law: FlowLawDescription;
  /** Its flow is positive against the chain. */
  readonly reversed?: boolean;
}

/**
 * Mass flow through openings, ducts and dampers in series at a pressure difference over all of them, with
 * reference air everywhere [kg/s].
 *
 * The chain is solved as a network of its own. Fans are not allowed in it: without a pressure difference no
 * law may flow.
 *
 * @param laws - the laws in series
 * @param pressureDifferencePa - pressure at the beginning minus pressure at the end [Pa]
 * @returns mass flow, positive along the chain; 0 where a part is shut; NaN where no answer was found [kg/s]
 */
export function seriesFlow(laws: readonly ChainedLaw[], pressureDifferencePa: number): number {
  if (laws.length === 0) return 0;
  const air = referenceAir;
  const at = { origin: 'series', heightM: 0, air };
  const level = { origin: 'series', fromHeightM: 0, toHeightM: 0 };
  const end = (place: number): string =>
    place === 0 ? 'beginning' : place === laws.length ? 'end' : `place ${place}`;
  const built = buildNetwork({
    outdoorAir: air,
    // A zone beside the chain, with an opening of its own, so that a chain of one law is a network too.
    zones: [{ id: 'aside', ...at }, ...laws.slice(1).map((_, i) => ({ id: end(i + 1), ...at }))],
    boundaries: [
      { id: end(0), pressurePa: pressureDifferencePa, ...at },
      { id: end(laws.length), pressurePa: 0, ...at },
    ],
    links: [
      ...laws.map(({ law, reversed = false }, i) => ({
        id: `link ${i}`,
        law,
        from: end(reversed ? i + 1 : i),
        to: end(reversed ? i : i + 1),
        ...level,
      })),
      {
        id: 'aside',
        law: { kind: 'powerLaw', coefficientM3PerSPaN: 1, exponent: 1 },
        from: 'aside',
        to: end(laws.length),
        ...level,
      },
    ],
  });
  if (built.status === 'rejected') return Number.NaN;
  const solved = solveNetwork(built.network, {}, { enclosure: false });
  // Where a pressure between two parts is not determined, both are shut.
  if (solved.status === 'not-unique') return 0;
  if (solved.status !== 'solved') return Number.NaN;
  const flow = solved.links.massFlowKgPerS[0] ?? Number.NaN;
  // A zero has no direction.
  return (laws[0]?.reversed === true ? -flow : flow) + 0;
}
