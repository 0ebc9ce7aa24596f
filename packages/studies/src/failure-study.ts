import { compileHouse, type Device, type House, type MakeUpOpening } from '@evendraft/house';
import type { FlowLawDescription } from '@evendraft/airflow';
import { pressureRangeStudy, type ZoneRange } from './pressure-range-study.js';

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

/** The pressures of a house in which one thing has failed. */
export interface FailureResult {
  readonly item: string;
  readonly failure: FailureCase['failure'];
  readonly zones: readonly ZoneRange[];
  readonly proved: boolean;
}

/** How hard things fail; our choice where nothing is given. */
export interface FailureFactors {
  /** Leakage of a worn gasket by that of a good one; 10 when absent [-]. */
  readonly gasket?: number;
  /** Flow through a clogged filter by that through a clean one; 0.5 when absent [-]. */
  readonly filter?: number;
}

/**
 * The ways in which the make-up air, the fans and the doors of a house may fail, one at a time.
 *
 * A clogged filter is a factor on the flow of a supply fan or on the opening of a make-up duct.
 *
 * @param house - the house
 * @param factors - how far a gasket leaks and a filter clogs
 * @returns each case with its house
 */
export function failureCases(house: House, factors: FailureFactors = {}): readonly FailureCase[] {
  const { gasket = 10, filter = 0.5 } = factors;
  const failed = (
    item: string,
    failure: FailureCase['failure'],
    change: Partial<House>,
  ): FailureCase => ({ item, failure, house: { ...house, ...change } });
  return [
    ...house.makeUpOpenings.flatMap((opening) => {
      const { id, openLaw, closedLaw } = opening;
      const replaced = (law: Partial<MakeUpOpening>): Partial<House> => ({
        makeUpOpenings: house.makeUpOpenings.map((each) =>
          each.id === id ? { ...each, ...law } : each,
        ),
      });
      const removed: Partial<House> = {
        makeUpOpenings: house.makeUpOpenings.filter((each) => each.id !== id),
      };
      return [
        failed(id, 'damper stuck shut', closedLaw ? replaced({ openLaw: closedLaw }) : removed),
        failed(id, 'damper stuck open', replaced({ closedLaw: openLaw })),
        ...(closedLaw
          ? [failed(id, 'gasket leaking', replaced({ closedLaw: larger(closedLaw, gasket) }))]
          : []),
        failed(id, 'filter clogged', replaced({ openLaw: larger(openLaw, filter) })),
      ];
    }),
    ...house.devices
      .filter(({ direction, speeds }) => direction === 'supply' && speeds.length > 0)
      .flatMap((device) => {
        const others = house.devices.filter(({ id }) => id !== device.id);
        const slow: Device = {
          ...device,
          speeds: device.speeds.map((speed) => ({ ...speed, law: larger(speed.law, filter) })),
        };
        return [
          failed(device.id, 'fan failed', { devices: others }),
          failed(device.id, 'filter clogged', {
            devices: house.devices.map((each) => (each.id === device.id ? slow : each)),
          }),
        ];
      }),
    ...house.doors
      .filter(({ positions }) => !positions.includes('open'))
      .map((door) =>
        failed(door.id, 'door left open', {
          doors: house.doors.map((each) =>
            each.id === door.id ? { ...each, positions: ['open'] } : each,
          ),
        }),
      ),
  ];
}

/**
 * Pressures with each failure: every case is a house of its own, and all its situations are covered.
 *
 * @param cases - the cases; one whose house does not compile is left out
 * @param options - signal and progress
 * @returns results in the order of the cases
 */
export async function failureStudy(
  cases: readonly FailureCase[],
  options: {
    readonly signal?: AbortSignal;
    readonly onProgress?: (done: number, of: number) => void;
  } = {},
): Promise<readonly FailureResult[]> {
  const { signal, onProgress } = options;
  const results: FailureResult[] = [];
  for (const [index, { item, failure, house }] of cases.entries()) {
    const result = compileHouse(house);
    if (result.ok) {
      const range = await pressureRangeStudy(result.compiled, signal ? { signal } : {});
      results.push({ item, failure, zones: range.zones, proved: range.coverage.proved });
    }
    onProgress?.(index + 1, cases.length);
  }
  return results;
}

/** The law of something that carries so many times as much at every pressure. */
function larger(law: FlowLawDescription, factor: number): FlowLawDescription {
  switch (law.kind) {
    case 'powerLaw':
      return { ...law, coefficientM3PerSPaN: law.coefficientM3PerSPaN * factor };
    case 'orifice':
      return { ...law, areaM2: law.areaM2 * factor };
    case 'duct':
      // Pressure grows with the square of the flow, so the flow falls with the root of what resists it.
      return {
        ...law,
        sections: law.sections.map((section) => ({
          ...section,
          frictionMultiplier: Math.max(1, section.frictionMultiplier / factor ** 2),
          lossCoefficient: section.lossCoefficient / factor ** 2,
        })),
      };
    case 'fanCurve':
      return {
        ...law,
        points: law.points.map((point) => ({
          ...point,
          volumeFlowM3PerS: point.volumeFlowM3PerS * factor,
        })),
      };
    case 'fixedFlow':
      return law.volumeFlowM3PerS === undefined
        ? { ...law, massFlowKgPerS: (law.massFlowKgPerS ?? 0) * factor }
        : { ...law, volumeFlowM3PerS: law.volumeFlowM3PerS * factor };
    default:
      return law;
  }
}
