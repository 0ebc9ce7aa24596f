import type { Balance, UnsolvedBalance } from './balance.js';
import type { BuiltNetwork } from './built-network.js';
import type { Kernel } from './internal/kernel.js';
import { flowOfActive } from './internal/link-flows.js';
import { factorize, solveFactorized } from './internal/zone-matrix.js';
import { fillMatrix, sweepLinks } from './internal/sweep.js';
import type { Scenario } from './scenario.js';
import { solveNetwork } from './solve-network.js';
import { UnknownIdError } from './unknown-id-error.js';

/** Something that can be read off a balance. */
export type Reading =
  | { readonly kind: 'zonePressure'; readonly zoneId: string }
  | { readonly kind: 'zoneDifference'; readonly zoneId: string; readonly otherZoneId: string }
  | { readonly kind: 'linkFlow'; readonly linkId: string };

/** How a reading answers to small changes, everything else as it is. */
export interface Sensitivities {
  readonly status: 'solved';
  readonly balance: Balance;
  /** The reading itself, in Pa or kg/s. */
  readonly value: number;
  /** By link: per change of the logarithm of its flow factor, so 0.01 of this for one per cent of size. */
  readonly perLogScale: Float64Array;
  /** By link: per pascal of offset. */
  readonly perOffsetPa: Float64Array;
  /** By boundary: per pascal of its pressure. */
  readonly perBoundaryPa: Float64Array;
}

/**
 * The derivative of one reading in every link and boundary, by one adjoint solve with the matrix at hand.
 *
 * With residuals F(p, q) = 0 and a reading v(p, q), dv/dq = ∂v/∂q − λ · ∂F/∂q where H λ = ∂v/∂p; H is its own
 * transpose.
 *
 * @param network - a built network
 * @param reading - what is read
 * @param scenario - what differs from the description
 * @returns the reading and its derivatives, or the reason why there is no balance
 */
export function readingSensitivities(
  network: BuiltNetwork,
  reading: Reading,
  scenario: Scenario = {},
): Sensitivities | UnsolvedBalance {
  const { kernel } = network;
  const places = readingPlaces(network, reading);
  const balance = solveNetwork(network, scenario, { enclosure: false });
  if (balance.status !== 'solved') return balance;

  sweepLinks(kernel, kernel.pressure);
  fillMatrix(kernel, kernel.matrix);
  const { zoneCount, linkCount, boundaryCount, activeFrom, activeTo, activeLink } = kernel;
  const { state } = kernel.links;
  const perLogScale = new Float64Array(linkCount);
  const perOffsetPa = new Float64Array(linkCount);
  const perBoundaryPa = new Float64Array(boundaryCount);
  // λ by node, zero at the boundaries.
  const adjoint = new Float64Array(zoneCount + boundaryCount);
  const readNode = (node: number, weight: number): void => {
    if (node < zoneCount) adjoint[node]! += weight;
    else perBoundaryPa[node - zoneCount]! += weight;
  };

  let value: number;
  if (places.link === undefined) {
    value = pressureOf(kernel, places.zone) - pressureOf(kernel, places.other);
    if (places.zone !== undefined) readNode(places.zone, 1);
    if (places.other !== undefined) readNode(places.other, -1);
  } else {
    const active = kernel.activePlace[places.link]!;
    value = active < 0 ? 0 : flowOfActive(kernel, active);
    if (active >= 0) {
      const slope = state.slopeKgPerSPa[active]!;
      perLogScale[places.link] = value;
      perOffsetPa[places.link] = slope;
      readNode(activeFrom[active]!, slope);
      readNode(activeTo[active]!, -slope);
    }
  }
  if (!factorize(kernel.matrix)) {
    return {
      status: 'not-unique',
      zones: [],
      worstZone: undefined,
      iterations: balance.proof.iterations,
      hint: 'the balance does not answer to small changes in some zone: look for flaps that are just closed',
    };
  }
  kernel.step.set(adjoint.subarray(0, zoneCount));
  solveFactorized(kernel.matrix, kernel.stepAddress);
  adjoint.set(kernel.step.subarray(0, zoneCount));

  for (let link = 0; link < kernel.activeCount; link++) {
    const from = activeFrom[link]!;
    const to = activeTo[link]!;
    const flow = flowOfActive(kernel, link);
    const slope = state.slopeKgPerSPa[link]!;
    const difference = adjoint[from]! - adjoint[to]!;
    perLogScale[activeLink[link]!]! -= difference * flow;
    perOffsetPa[activeLink[link]!]! -= difference * slope;
    if (from >= zoneCount) perBoundaryPa[from - zoneCount]! -= difference * slope;
    if (to >= zoneCount) perBoundaryPa[to - zoneCount]! += difference * slope;
  }
  return { status: 'solved', balance, value, perLogScale, perOffsetPa, perBoundaryPa };
}

/**
 * Standard deviation of a reading when each link's size is uncertain, to first order: a screen, for large
 * uncertainties shift the mean as well.
 *
 * @param sensitivities - of the reading
 * @param logDeviation - standard deviation of the logarithm of each link's size, by link [-]
 * @returns standard deviation in the reading's unit
 */
export function linearDeviation(
  { perLogScale }: Sensitivities,
  logDeviation: Float64Array,
): number {
  return Math.hypot(...perLogScale.map((slope, link) => slope * (logDeviation[link] ?? 0)));
}

interface Places {
  readonly zone?: number;
  readonly other?: number;
  readonly link?: number;
}

function readingPlaces({ kernel, zoneIndex, linkIndex }: BuiltNetwork, reading: Reading): Places {
  const zonePlace = (id: string): number => kernel.placeOfZone[indexOf(zoneIndex, id)]!;
  switch (reading.kind) {
    case 'zonePressure':
      return { zone: zonePlace(reading.zoneId) };
    case 'zoneDifference':
      return { zone: zonePlace(reading.zoneId), other: zonePlace(reading.otherZoneId) };
    case 'linkFlow':
      return { link: indexOf(linkIndex, reading.linkId) };
  }
}

function pressureOf({ pressure }: Kernel, place: number | undefined): number {
  return place === undefined ? 0 : pressure[place]!;
}

function indexOf(index: ReadonlyMap<string, number>, id: string): number {
  const found = index.get(id);
  if (found === undefined) throw new UnknownIdError(id);
  return found;
}
