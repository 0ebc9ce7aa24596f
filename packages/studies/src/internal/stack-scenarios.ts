import type { NodeAir, Scenario, ScenarioBatch } from '@evendraft/network';

/**
 * Puts scenarios of one compiled house into a batch, a row each. All of them give the same fields.
 *
 * @param scenarios - at least one
 * @returns the batch, rows in the order given
 */
export function stackScenarios(scenarios: readonly Scenario[]): ScenarioBatch {
  const rows = (of: (scenario: Scenario) => Float64Array | undefined): Float64Array | undefined => {
    const first = scenarios[0] === undefined ? undefined : of(scenarios[0]);
    if (first === undefined) return undefined;
    const all = new Float64Array(first.length * scenarios.length);
    scenarios.forEach((scenario, row) => {
      all.set(of(scenario) ?? first, row * first.length);
    });
    return all;
  };
  const air = (of: (scenario: Scenario) => NodeAir | undefined): NodeAir | undefined => {
    const temperatureC = rows((scenario) => of(scenario)?.temperatureC);
    const densityKgPerM3 = rows((scenario) => of(scenario)?.densityKgPerM3);
    return temperatureC && densityKgPerM3 && { temperatureC, densityKgPerM3 };
  };
  const fields = {
    boundaryPressuresPa: rows((scenario) => scenario.boundaryPressuresPa),
    columnDensityKgPerM3: rows((scenario) => scenario.columnDensityKgPerM3),
    linkScale: rows((scenario) => scenario.linkScale),
    linkOffsetPa: rows((scenario) => scenario.linkOffsetPa),
    zoneAir: air((scenario) => scenario.zoneAir),
    boundaryAir: air((scenario) => scenario.boundaryAir),
    outdoorAir: air(
      ({ outdoorAir }) =>
        outdoorAir && {
          temperatureC: Float64Array.of(outdoorAir.temperatureC),
          densityKgPerM3: Float64Array.of(outdoorAir.densityKgPerM3),
        },
    ),
  };
  const given = Object.entries(fields).filter(([, value]) => value !== undefined);
  return {
    count: scenarios.length,
    ...(Object.fromEntries(given) as Partial<typeof fields>),
  } as ScenarioBatch;
}
