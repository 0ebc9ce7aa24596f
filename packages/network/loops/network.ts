/**
 * Where the numbers of one network lie in memory: counts and addresses, in the order in which
 * `src/internal/network-record.ts` writes them.
 */
@unmanaged
export class Network {
  zoneCount: i32;
  /** Links that are on, packed; those between two zones. */
  linkCount: i32;
  interiorCount: i32;

  // By link that is on. Every boundary is the one place after the zones, where nothing presses.
  from: usize;
  to: usize;
  /** Pressure difference at zero pressure in the zones [Pa]. */
  drive: usize;
  /** Where the law is evaluated [Pa], what it carries there [kg/s], and its slope [kg/(s Pa)]. */
  difference: usize;
  flow: usize;
  slope: usize;
  /** What a tangent carries elsewhere, or leaves out there [kg/s]. */
  other: usize;
  /** Its chord: slope [kg/(s Pa)] and flow at no pressure difference [kg/s]. */
  chordSlope: usize;
  chordFlow: usize;

  // By zone.
  /** Where each zone's links end in `zoneLink`, which holds twice their places, and one more where they enter it. */
  zoneEnd: usize;
  zoneLink: usize;
  /** Pressures that are held, and those at which the laws are evaluated [Pa]. */
  pressure: usize;
  trial: usize;
  step: usize;
  bend: usize;
  /** Sums over the links of a zone: flows out less flows in, sizes of the flows [kg/s], slopes [kg/(s Pa)]. */
  residual: usize;
  through: usize;
  slopeSum: usize;

  // By link between two zones: its place among those that are on, and that of its entry in the matrix.
  interiorLink: usize;
  interiorEntry: usize;
}

/** The place of a number in an array of 8 bytes each. */
export function at(array: usize, place: usize): usize {
  return array + (place << 3);
}

/** A number of an array of integers. */
export function integer(array: usize, place: usize): i32 {
  return load<i32>(array + (place << 2));
}
