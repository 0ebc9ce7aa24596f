import { StudyArgumentError } from './study-argument-error.js';

/** A door that a pressure difference holds shut or pushes open. */
export interface DoorLeaf {
  readonly widthM: number;
  readonly heightM: number;
  /** From the handle to the latch edge [m]. */
  readonly handleToEdgeM: number;
  /** Force at the handle that its closer, hinges and latch need without any pressure [N]. */
  readonly closerN: number;
}

/** A usual inside door without a closer; our choice. */
export const usualDoorLeaf: DoorLeaf = {
  widthM: 0.81,
  heightM: 2.03,
  handleToEdgeM: 0.07,
  closerN: 0,
};

/**
 * Force at the handle of a door under a pressure difference [N].
 *
 * F = F_closer + dP A W/(2 (W − d)): the pressure acts at the middle of the leaf, the hand at W − d from the
 * hinges. It holds a door that opens against the higher pressure; one that opens away from it flies open.
 *
 * @param pressureDifferencePa - between the two sides, its sign does not matter [Pa]
 * @param leaf - the door
 * @returns force to pull it open against the pressure [N]
 * @throws StudyArgumentError where the handle is at the hinges or beyond
 *
 * Source: ASHRAE Handbook HVAC Applications, fire and smoke control, door-opening forces, from memory.
 *
 * @example
 * doorForce(30, { widthM: 0.9, heightM: 2, handleToEdgeM: 0.07, closerN: 0 }); // => 29.277
 */
export function doorForce(pressureDifferencePa: number, leaf: DoorLeaf = usualDoorLeaf): number {
  const { widthM, heightM, handleToEdgeM, closerN } = leaf;
  if (!(handleToEdgeM < widthM)) {
    throw new StudyArgumentError('handleToEdgeM', handleToEdgeM, `below the width, ${widthM}`);
  }
  const areaM2 = widthM * heightM;
  return (
    closerN + (Math.abs(pressureDifferencePa) * areaM2 * widthM) / (2 * (widthM - handleToEdgeM))
  );
}
