import type { House } from '@evendraft/house';
import type { ArithmeticLine } from '../rule-finding.js';
import { minnesotaColumns, type MinnesotaColumn } from '../screens/minnesota-passive-openings.js';
import { amount, line } from './arithmetic-line.js';
import { burnersInside, burnsSolidFuel } from './burners.js';
import { exhaustSystems, highestFlow, suppliesWith } from './exhaust-systems.js';
import { siOf } from './si-of.js';

const dryerFlow = siOf('135 cfm', 'volumeFlow');
const exhaustShare = 0.8;

/**
 * The column of the state's tables, by the appliances inside.
 *
 * @param house - the house
 * @returns the column, and why it is that one
 */
export function minnesotaColumnOf(house: House): {
  readonly column: MinnesotaColumn;
  readonly why: string;
} {
  const burners = burnersInside(house);
  const atmospheric = burners.filter(
    (one) => one.vent === 'natural draft' || one.vent === 'open hearth' || burnsSolidFuel(one),
  ).length;
  const fanAssisted = burners.some(
    ({ vent }) => vent === 'fan assisted' || vent === 'induced draft',
  );
  const column = atmospheric > 1 ? 'D' : atmospheric === 1 ? 'C' : fanAssisted ? 'B' : 'A';
  return { column, why: `Column ${column}: ${minnesotaColumns[column].words}.` };
}

/**
 * Make-up air by the steps of the state's form: exhaust that counts, less what the house is taken to leak.
 *
 * @param house - the house
 * @param by - column, and the pressure factor with its words [m³/(s·m²)]
 * @returns the arithmetic, and the make-up air, negative where none is needed [m³/s]
 */
export function minnesotaWorksheet(
  house: House,
  by: { readonly column: MinnesotaColumn; readonly factor: number; readonly factorWords: string },
): { readonly arithmetic: readonly ArithmeticLine[]; readonly makeUpM3PerS: number } {
  const { column, factor, factorWords } = by;
  const infiltration = factor * house.floorAreaM2;
  const systems = exhaustSystems(house);
  const continuous = systems.filter((device) => device.continuous);
  const dryers = systems.filter(({ kind }) => kind === 'dryer');
  const rated = systems.filter(
    (device) =>
      !continuous.includes(device) &&
      device.kind !== 'dryer' &&
      !isMatched(house, device.id, highestFlow(device)),
  );
  // Column A has no second rating.
  const counted = rated.slice(0, column === 'A' ? 1 : 2);
  const parts = [
    ...continuous.map((device) =>
      line(device.id, 'continuous exhaust', amount.flow(highestFlow(device))),
    ),
    ...dryers.map(({ id }) => line(id, 'dryer, 135 cfm by the form', amount.flow(dryerFlow))),
    ...counted.map((device, index) =>
      line(
        device.id,
        `80 % of the ${index === 0 ? 'largest' : 'next largest'} exhaust rating`,
        amount.flow(exhaustShare * highestFlow(device)),
      ),
    ),
  ];
  const exhaust =
    continuous.reduce((sum, device) => sum + highestFlow(device), 0) +
    dryers.length * dryerFlow +
    counted.reduce((sum, device) => sum + exhaustShare * highestFlow(device), 0);
  return {
    makeUpM3PerS: exhaust - infiltration,
    arithmetic: [
      line('pressure factor', factorWords, amount.flowPerArea(factor)),
      line(
        'floor area',
        'conditioned, unfinished basement included',
        amount.area(house.floorAreaM2),
      ),
      line('infiltration', 'pressure factor × floor area', amount.flow(infiltration)),
      ...parts,
      line('exhaust', 'all of these', amount.flow(exhaust)),
      line('make-up air', 'exhaust less infiltration', amount.flow(exhaust - infiltration)),
    ],
  };
}

/**
 * Whether exhaust has powered make-up air that is interlocked and matched, so that it drops out of the form.
 *
 * @param house - the house
 * @param device - id of the exhaust
 * @param flow - its rated flow [m³/s]
 * @returns whether it drops out
 */
export function isMatched(house: House, device: string, flow: number): boolean {
  const supplied = suppliesWith(house, device)
    .filter(({ device: fan }) => fan.interlock !== undefined)
    .reduce((sum, { flowM3PerS }) => sum + flowM3PerS, 0);
  return supplied > 0 && supplied >= flow;
}
