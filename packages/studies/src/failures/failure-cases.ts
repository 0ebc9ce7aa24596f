import type { FlowLawDescription } from '@evendraft/airflow';
import { afterTest, type House, type PathPart } from '@evendraft/house';
import { largerLaw } from './larger-law.js';

/** What has gone wrong with one thing. */
export interface FailureCase {
  readonly item: string;
  readonly failure:
    | 'damper stuck shut'
    | 'damper stuck open'
    | 'gasket leaking'
    | 'filter clogged'
    | 'fan failed'
    | 'door left open';
  /** The house in that state. */
  readonly house: House;
}

/** How hard things fail; our choice where nothing is given. */
export interface FailureFactors {
  /** Leakage of a worn gasket by that of a good one; 10 when absent [-]. */
  readonly gasket?: number;
  /** Flow through a clogged filter by that through a clean one; 0.5 when absent [-]. */
  readonly filter?: number;
}

/**
 * The ways in which the make-up air, the supply fans and the doors of a house may fail, one at a time.
 *
 * A clogged filter is a factor on the flow of a supply fan, or on the openings and ducts of make-up air.
 *
 * What fails does so after the airtightness test, so that leaks stay as they were.
 *
 * @param asTested - the house
 * @param factors - how far a gasket leaks and a filter clogs
 * @returns each case with its house
 */
export function failureCases(
  asTested: House,
  factors: FailureFactors = {},
): readonly FailureCase[] {
  const { gasket = 10, filter = 0.5 } = factors;
  const house = afterTest(asTested);
  return [
    ...house.makeUpOpenings.flatMap((opening) =>
      makeUpFailures(house, opening, { gasket, filter }),
    ),
    ...house.openings.flatMap((opening) => flapFailures(house, opening, { gasket, filter })),
    ...house.devices.flatMap((device) => supplyFailures(house, device, filter)),
    ...house.ventilators.flatMap((ventilator) =>
      (
        [
          ['fan failed', 0],
          ['filter clogged', filter],
        ] as const
      ).map(([failure, share]) => {
        const supplyFlowM3PerS = share * ventilator.supplyFlowM3PerS;
        const ventilators = replaced(house.ventilators, { ...ventilator, supplyFlowM3PerS });
        return { item: ventilator.id, failure, house: { ...house, ventilators } };
      }),
    ),
    ...house.doors
      .filter(({ positions }) => !positions.includes('open'))
      .map((door): FailureCase => {
        const doors = replaced(house.doors, { ...door, positions: ['open'] });
        return { item: door.id, failure: 'door left open', house: { ...house, doors } };
      }),
  ];
}

function makeUpFailures(
  house: House,
  opening: House['makeUpOpenings'][number],
  { gasket, filter }: Required<FailureFactors>,
): readonly FailureCase[] {
  const { openLaw, closedLaw, parts } = opening;
  const failed = failing(house, opening.id, (changed: Partial<typeof opening> | undefined) => ({
    makeUpOpenings: changed
      ? replaced(house.makeUpOpenings, { ...opening, ...changed })
      : without(house.makeUpOpenings, opening.id),
  }));
  return [
    failed('damper stuck shut', closedLaw && { openLaw: closedLaw }),
    failed('damper stuck open', { closedLaw: openLaw }),
    ...(closedLaw ? [failed('gasket leaking', { closedLaw: largerLaw(closedLaw, gasket) })] : []),
    failed('filter clogged', { openLaw: largerLaw(openLaw, filter), ...clogged(parts, filter) }),
  ];
}

/** Failures of an opening behind a flap; none of a plain hole. */
function flapFailures(
  house: House,
  opening: House['openings'][number],
  { gasket, filter }: Required<FailureFactors>,
): readonly FailureCase[] {
  const { law, parts } = opening;
  const open = openFlap(law);
  if (open === undefined || (law.kind !== 'gravityDamper' && law.kind !== 'oneWayDamper'))
    return [];
  const { closedLeakage } = law;
  const failed = failing(house, opening.id, (changed: Partial<typeof opening> | undefined) => ({
    openings: changed
      ? replaced(house.openings, { ...opening, ...changed })
      : without(house.openings, opening.id),
  }));
  const leaking = closedLeakage && {
    ...closedLeakage,
    coefficientM3PerSPaN: closedLeakage.coefficientM3PerSPaN * gasket,
  };
  return [
    failed('damper stuck shut', closedLeakage && { law: { kind: 'powerLaw', ...closedLeakage } }),
    failed('damper stuck open', { law: open }),
    ...(leaking ? [failed('gasket leaking', { law: { ...law, closedLeakage: leaking } })] : []),
    failed('filter clogged', { law: largerLaw(law, filter), ...clogged(parts, filter) }),
  ];
}

function supplyFailures(
  house: House,
  device: House['devices'][number],
  filter: number,
): readonly FailureCase[] {
  const { direction, speeds, path } = device;
  if (direction !== 'supply' || speeds.length === 0) return [];
  const failed = failing(house, device.id, (changed: Partial<typeof device> | undefined) => ({
    devices: changed
      ? replaced(house.devices, { ...device, ...changed })
      : without(house.devices, device.id),
  }));
  const damped = [...(path?.before ?? []), ...(path?.after ?? [])].some(({ closed }) => closed);
  return [
    failed('fan failed', undefined),
    failed('filter clogged', {
      speeds: speeds.map((speed) => ({ ...speed, law: largerLaw(speed.law, filter) })),
    }),
    ...(path !== undefined && damped
      ? [
          failed('damper stuck open', {
            path: { ...path, before: stuckOpen(path.before), after: stuckOpen(path.after) },
          }),
          // No air passes a shut damper beyond what the house is tested with.
          failed('damper stuck shut', undefined),
        ]
      : []),
  ];
}

/** A case maker for one thing; undefined takes it out of the house. */
function failing<Change>(
  house: House,
  item: string,
  changed: (change: Change | undefined) => Partial<House>,
) {
  return (failure: FailureCase['failure'], change: Change | undefined): FailureCase => ({
    item,
    failure,
    house: { ...house, ...changed(change) },
  });
}

function replaced<Item extends { readonly id: string }>(
  items: readonly Item[],
  changed: Item,
): readonly Item[] {
  return items.map((each) => (each.id === changed.id ? changed : each));
}

function without<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: string,
): readonly Item[] {
  return items.filter((each) => each.id !== id);
}

function clogged(
  parts: readonly PathPart[] | undefined,
  filter: number,
): { readonly parts?: readonly PathPart[] } {
  return parts === undefined
    ? {}
    : { parts: parts.map((part) => ({ ...part, law: largerLaw(part.law, filter) })) };
}

function stuckOpen(parts: readonly PathPart[]): readonly PathPart[] {
  return parts.map((part) => (part.closed === undefined ? part : { ...part, closed: part.law }));
}

/** A flap that hangs open, as a hole both ways; undefined where the law is not that of a flap. */
function openFlap(law: FlowLawDescription): FlowLawDescription | undefined {
  switch (law.kind) {
    case 'gravityDamper':
      return {
        kind: 'orifice',
        areaM2: law.areaM2,
        dischargeCoefficient: 1 / Math.sqrt(law.openLossCoefficient),
      };
    case 'oneWayDamper': {
      const { coefficientM3PerSPaN, exponent } = law;
      return { kind: 'powerLaw', coefficientM3PerSPaN, exponent };
    }
    default:
      return undefined;
  }
}
