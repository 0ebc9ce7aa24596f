import type { ActiveLinks, Kernel } from './kernel.js';

/** Arrays of a kernel that the compiled loops use. */
export type LoopArrays = Pick<
  Kernel,
  | 'pressure'
  | 'trial'
  | 'step'
  | 'bend'
  | 'residual'
  | 'through'
  | 'slopeSum'
  | 'interiorLink'
  | 'interiorEntry'
> & { readonly links: ActiveLinks };

/** Numbers in the record of a network. */
export const networkRecordLength = 23;

/** Writes where a network lies in memory: the fields of Network in `loops/network.ts`, in their order. */
export function writeNetworkRecord(record: Int32Array, zoneCount: number, of: LoopArrays): void {
  const { from, to, drivePa, state, otherKgPerS, chordSlope, chordFlow, zoneEnd, zoneLink } =
    of.links;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const arrays = [
    ...[from, to, drivePa, pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa, otherKgPerS],
    ...[chordSlope, chordFlow, zoneEnd, zoneLink],
    ...[of.pressure, of.trial, of.step, of.bend, of.residual, of.through, of.slopeSum],
    ...[of.interiorLink, of.interiorEntry],
  ];
  record.set([zoneCount, 0, 0, ...arrays.map((array) => array.byteOffset)]);
}

/** Writes how many links are on. */
export function writeLinkCounts({ record, activeCount, interiorCount }: Kernel): void {
  record[1] = activeCount;
  record[2] = interiorCount;
}
