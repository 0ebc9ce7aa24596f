import type { Ventilator, VentilatorMode } from './house.js';

/**
 * Every way in which a ventilator runs, its usual one first.
 *
 * @param ventilator - the ventilator
 * @returns modes with their flows; the usual one is called `on`
 */
export function ventilatorModes(ventilator: Ventilator): readonly VentilatorMode[] {
  const { supplyFlowM3PerS, exhaustFlowM3PerS, otherModes = [] } = ventilator;
  return [{ name: 'on', supplyFlowM3PerS, exhaustFlowM3PerS }, ...otherModes];
}
