import type {
  FlowLaw,
  FlowLawDescription,
  LawGroup,
  LinkState,
  Preparation,
} from '@evendraft/airflow';
import type { Loops } from './loops.js';
import type { ZoneMatrix } from './zone-matrix.js';

/**
 * The arrays in which one network is solved, allocated once, in one memory with the compiled loops.
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
  /** What a sweep reads and writes. */
  readonly links: ActiveLinks;
  /** Links between two zones: place among the active, and their entry in the matrix. */
  interiorCount: number;
  readonly interiorLink: Int32Array;
  readonly interiorEntry: Int32Array;
  /** Factors of the matrix of the chords of the links that are on. */
  readonly chords: { state: 'unknown' | 'factorized' | 'singular'; readonly matrix: ZoneMatrix };

  readonly iteration: Iteration;
  /** For balancing the last zones of a large network one by one. */
  readonly laggards: Laggards | undefined;

  // The iterate. Pressures by place, boundaries included; the rest by zone place, steps with a 0 for boundaries.
  readonly pressure: Float64Array;
  /** Where the laws are evaluated; a 0 for boundaries after the zones. */
  readonly trial: Float64Array;
  readonly step: Float64Array;
  readonly bend: Float64Array;
  /** Net flow out of each zone [kg/s]. */
  readonly residual: Float64Array;
  /** Sum of the sizes of all flows at each zone [kg/s]. */
  readonly through: Float64Array;
  /** Sum of the slopes of all links at each zone, the diagonal of the matrix [kg/(s Pa)]. */
  readonly slopeSum: Float64Array;
  readonly rounding: Float64Array;
  readonly target: Float64Array;
  readonly matrix: ZoneMatrix;

  readonly loops: Loops;
  /** What the compiled loops read of all this, and its address. */
  readonly record: Int32Array;
  readonly address: number;
  readonly stepAddress: number;
  readonly bendAddress: number;
}

/** The links that are on, by place among them. */
export interface ActiveLinks {
  /** Zones of their ends; the place after the zones, where nothing presses, stands for every boundary. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Pressure difference at zero pressure in the zones [Pa]. */
  readonly drivePa: Float64Array;
  readonly state: LinkState;
  /** What its tangent carries elsewhere, or leaves out there [kg/s]. */
  readonly otherKgPerS: Float64Array;
  /** Chord of each law, for the start: slope [kg/(s Pa)] and flow at no pressure difference [kg/s]. */
  readonly chordSlope: Float64Array;
  readonly chordFlow: Float64Array;
  /** Where the links of each zone end in `zoneLink`, which holds twice their places, and one more where they enter it. */
  readonly zoneEnd: Int32Array;
  readonly zoneLink: Int32Array;
}

/** Links of one law and record length. */
export interface KernelGroup extends LawGroup {
  readonly law: FlowLaw<FlowLawDescription>;
  /** Those of the law, at hand without asking objects of different shapes. */
  readonly constant: boolean;
  readonly compiled: boolean;
  readonly inverts: boolean;
  /** Address of the records. */
  readonly address: number;
  /** Indices in the description. */
  readonly members: Int32Array;
  /** The same in the order of the description, in which its objects lie in memory. */
  readonly described: Int32Array;
}

/** Room to evaluate the links of one zone. */
export interface Laggards {
  readonly queue: Int32Array;
  readonly queued: Uint8Array;
  /** The part of each group that is at the zone, laid out for its law. */
  readonly parts: readonly (LawGroup & { readonly law: KernelGroup['law'] })[];
  readonly state: LinkState;
  /** By link of the zone: 1 where it leaves the zone, −1 where it enters; what it sees beside that; its flow before. */
  readonly sign: Float64Array;
  readonly drivePa: Float64Array;
  readonly before: Float64Array;
  readonly other: Int32Array;
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
