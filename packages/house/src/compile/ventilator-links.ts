import type { House, Ventilator, VentilatorMode } from '../house.js';
import { ventilatorModes } from '../ventilator-modes.js';
import { floorOf } from './floor-of.js';
import type { HouseLink } from './house-link.js';
import { linkId } from './link-id.js';

/**
 * Links of the balanced ventilators: a held flow each way in each of their modes; a stopped flow has no link.
 *
 * @param house - the house
 * @returns links in the order of the ventilators and their modes, supply before exhaust
 */
export function ventilatorLinks(house: House): readonly HouseLink[] {
  return house.ventilators.flatMap((ventilator) =>
    ventilatorModes(ventilator).flatMap((mode) =>
      (['supply', 'exhaust'] as const).flatMap((way) => oneWay(house, { ventilator, mode, way })),
    ),
  );
}

function oneWay(
  house: House,
  of: {
    readonly ventilator: Ventilator;
    readonly mode: VentilatorMode;
    readonly way: 'supply' | 'exhaust';
  },
): readonly HouseLink[] {
  const { ventilator, mode, way } = of;
  const supplies = way === 'supply';
  const volumeFlowM3PerS = supplies ? mode.supplyFlowM3PerS : mode.exhaustFlowM3PerS;
  if (volumeFlowM3PerS === 0) return [];
  const zone = supplies ? ventilator.supplyZone : ventilator.exhaustZone;
  const heightM = floorOf(house, zone);
  return [
    {
      description: {
        id: linkId('ventilator', ventilator.id, mode.name, way),
        origin: ventilator.origin,
        from: supplies ? '@outdoors' : zone,
        to: supplies ? zone : '@outdoors',
        fromHeightM: heightM,
        toHeightM: heightM,
        law: { kind: 'fixedFlow', volumeFlowM3PerS },
      },
      role: { kind: 'ventilator', id: ventilator.id, mode: mode.name },
    },
  ];
}
