import type {
  FlowLaw,
  FlowLawDescription,
  Preparation,
  TallyBlock,
  ZoneGroup,
  ZoneTally,
} from '@evendraft/airflow';
import type { Laggards } from './balance-laggards.js';
import type { ZoneMatrix } from './zone-matrix.js';

/**
 * The arrays in which one network is solved, allocated once.
 *
 * Places: zones come first, in an order that keeps the matrix narrow, then boundaries. Links that are
 * switched on are packed at the front, grouped by law, so that a link that is off costs nothing.
 */
export interface Kernel {
  readonly zoneCount: number;
  readonly boundaryCount: number;
  readonly linkCount: number;

  // What does not change.
  /** Place of each zone of the description. */
  readonly placeOfZone: Int32Array;
  /** Place of the `from` and `to` end of each link of the description. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly laws: readonly FlowLaw<FlowLawDescription>[];
  readonly descriptions: readonly FlowLawDescription[];
  /** The flow grows strictly with the pressure difference and has no bound either way; by link. */
  readonly twoWay: Uint8Array;
  readonly groups: readonly KernelGroup[];

  readonly described: DescribedNumbers;

  // The scenario in force.
  readonly nodeTemperatureC: Float64Array;
  readonly nodeDensityKgPerM3: Float64Array;
  readonly nodeLogDensityRatio: Float64Array;
  readonly nodeLogViscosityRatio: Float64Array;
  readonly scale: Float64Array;
  /** Added to p(from) − p(to): hydrostatics and offset; by link of the description [Pa]. */
  readonly drivePa: Float64Array;
  readonly preparation: Preparation;

  /** Which parts of the scenario in force were given, and so are to be set again. */
  readonly inForce: {
    zoneAir: boolean;
    boundaryAir: boolean;
    scale: boolean;
    drives: boolean;
    pressures: boolean;
  };
  /** What the graph of the links that are on said last. */
  verdict: GraphVerdict | undefined;

  // Links that are on, packed.
  activeCount: number;
  /** Index in the description. */
  readonly activeLink: Int32Array;
  /** Place among the active links, −1 when off; by link of the description. */
  readonly activePlace: Int32Array;
  readonly activeFrom: Int32Array;
  readonly activeTo: Int32Array;
  /** −1 where a link is turned in the tally, else 1. */
  readonly activeSign: Float64Array;
  /** What a sweep reads and writes. */
  readonly tally: ZoneTally;
  /** Sums of the flows of constant laws, by zone: where every sweep begins [kg/s]. */
  readonly constantResidual: Float64Array;
  readonly constantThrough: Float64Array;
  /** Links between two zones: place among the active, and their slot in the matrix. */
  interiorCount: number;
  readonly interiorLink: Int32Array;
  readonly interiorSlot: Int32Array;
  /** Factors of the matrix of the chords of the links that are on. */
  readonly chords: { state: 'unknown' | 'factorized' | 'singular'; readonly matrix: ZoneMatrix };

  readonly iteration: Iteration;
  /** For balancing the last zones of a large network one by one. */
  readonly laggards: Laggards | undefined;

  // The iterate. Pressures by place, boundaries included; the rest by zone place, steps with a 0 for boundaries.
  readonly pressure: Float64Array;
  /** The tally's: where the laws are evaluated; a 0 for boundaries after the zones. */
  readonly trial: Float64Array;
  readonly step: Float64Array;
  readonly bend: Float64Array;
  /** The tally's: net flow out of each zone [kg/s]. */
  readonly residual: Float64Array;
  /** The tally's: sum of the sizes of all flows at each zone [kg/s]. */
  readonly through: Float64Array;
  /** The tally's: sum of the slopes of all links at each zone, the diagonal of the matrix [kg/(s Pa)]. */
  readonly slopeSum: Float64Array;
  readonly rounding: Float64Array;
  readonly target: Float64Array;
  readonly matrix: ZoneMatrix;
}

/** Links of one law, of one record length and class. */
export interface KernelGroup extends ZoneGroup {
  readonly law: FlowLaw<FlowLawDescription>;
  /** Those of the law, at hand without asking objects of different shapes. */
  readonly constant: boolean;
  readonly tallyBlock: TallyBlock | undefined;
  readonly tallyStartBlock: TallyBlock | undefined;
  /** Indices in the description; links with an end at a boundary first. */
  readonly members: Int32Array;
  /** The same in the order of the description, in which its objects lie in memory. */
  readonly described: Int32Array;
}

/** Numbers of the description, by node place or by link. */
export interface DescribedNumbers {
  readonly temperatureC: Float64Array;
  readonly densityKgPerM3: Float64Array;
  readonly boundaryPressurePa: Float64Array;
  readonly outdoorDensityKgPerM3: number;
  /** Height of each link's opening above the height where its node's pressure is quoted [m]. */
  readonly fromRiseM: Float64Array;
  readonly toRiseM: Float64Array;
  /** Height of `to` above `from`, and the density of the air between them. */
  readonly columnRiseM: Float64Array;
  readonly columnDensityKgPerM3: Float64Array;
  /** Chord of each law over ±4 Pa in the air described, turned where the tally turns the link. */
  readonly chordSlope: Float64Array;
  readonly chordFlow: Float64Array;
}

/** How an iteration stands and how it ended. */
export interface Iteration {
  converged: boolean;
  iterations: number;
  lawSweeps: number;
  /** Greatest residual over what the stop test allows: at most 1 where it holds [-]. */
  excess: number;
  /** The least excess so far [-]. */
  leastExcess: number;
  /** Steps that may still be taken without proof that the potential has fallen. */
  credit: number;
}

/**
 * What the graph alone says of the scenario in force.
 *
 * - `unique`: every zone is tied to a boundary by links that answer to every pressure difference.
 * - `open`: balance is possible, but zones hang on one-way or flat links; the solution itself must tell.
 * - `not-unique`: zones that nothing but fixed flows ties to a boundary.
 * - `infeasible`: zones that take in more than they can lose, or lose more than they can take in.
 */
export interface GraphVerdict {
  readonly verdict: 'unique' | 'open' | 'not-unique' | 'infeasible';
  /** Places of the zones concerned. */
  readonly zones: readonly number[];
  /** What they lack, where infeasible. */
  readonly lacking?: 'an outlet' | 'an inlet' | 'both';
}
