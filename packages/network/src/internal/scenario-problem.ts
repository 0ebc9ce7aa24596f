import type { BuiltNetwork } from '../built-network.js';
import type { NodeAir, Scenario } from '../scenario.js';

/** What is wrong with a scenario's arrays, in words; undefined if nothing is. */
export function scenarioProblem({ kernel }: BuiltNetwork, scenario: Scenario): string | undefined {
  const { zoneCount, boundaryCount, linkCount } = kernel;
  const { outdoorAir } = scenario;
  return (
    arrayProblem('boundaryPressuresPa', scenario.boundaryPressuresPa, [boundaryCount, -1e6, 1e6]) ??
    arrayProblem('linkScale', scenario.linkScale, [linkCount, 0, 1e6]) ??
    arrayProblem('linkOffsetPa', scenario.linkOffsetPa, [linkCount, -1e6, 1e6]) ??
    arrayProblem('columnDensityKgPerM3', scenario.columnDensityKgPerM3, [linkCount, 0.05, 10]) ??
    airProblem('zoneAir', scenario.zoneAir, zoneCount) ??
    airProblem('boundaryAir', scenario.boundaryAir, boundaryCount) ??
    (outdoorAir === undefined
      ? undefined
      : airProblem(
          'outdoorAir',
          {
            temperatureC: Float64Array.of(outdoorAir.temperatureC),
            densityKgPerM3: Float64Array.of(outdoorAir.densityKgPerM3),
          },
          1,
        ))
  );
}

function airProblem(name: string, air: NodeAir | undefined, length: number): string | undefined {
  if (air === undefined) return undefined;
  return (
    arrayProblem(`${name}.temperatureC`, air.temperatureC, [length, -100, 1500]) ??
    arrayProblem(`${name}.densityKgPerM3`, air.densityKgPerM3, [length, 0.05, 10])
  );
}

function arrayProblem(
  name: string,
  values: Float64Array | undefined,
  [length, least, most]: readonly [number, number, number],
): string | undefined {
  if (values === undefined) return undefined;
  if (values.length !== length) return `${name} has ${values.length} numbers, it needs ${length}`;
  for (let index = 0; index < length; index++) {
    const value = values[index]!;
    if (!(value >= least && value <= most)) {
      return `${name}[${index}] is ${value}; allowed is ${least} to ${most}`;
    }
  }
  return undefined;
}
