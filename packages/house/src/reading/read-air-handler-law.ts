import { typicalFanCurve, type FanPoint, type FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { ForcedAirInFile } from '../file/forced-air-file.js';
import { assumeStandardAir, fanAtAltitude } from './fan-at-altitude.js';
import { readConstantFlow } from './read-constant-flow.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { withReverseFlow } from './reverse-flow.js';
import { ourChoice } from './sources.js';

/** Pressure of the ducts at which the blower of a furnace or air handler moves nothing, where it is not given [Pa]. */
const assumedShutOffPa = 350;
/** Points of the typical curve this close to the rated flow give way to the rated point, as a share of it [-]. */
const nextToRated = 0.01;

/**
 * The law of an air handler that runs, from its return ducts to its supply ducts.
 *
 * Its flow is held by no pressure: with doors shut, or in a house under suction, the blower moves less. It is a
 * parabola through its flow at the pressures of its ducts and through shut-off, unless a control holds the flow.
 *
 * @param reading - where issues and assumptions are collected
 * @param typed - what the file says, and the rise that its ducts take at its flow [Pa]
 * @returns the law; `undefined` where something is wrong, which is then reported
 *
 * Source: the assumed shut-off is our choice: blowers lose about a quarter of their flow as the pressure outside the
 * cabinet grows from 125 to 225 Pa (from memory, no document), which gives 350 Pa with a parabola.
 */
export function readAirHandlerLaw(
  reading: Reading,
  typed: {
    readonly inFile: ForcedAirInFile;
    readonly path: IssuePath;
    readonly risePa: number;
    readonly altitudeM: number;
  },
): FlowLawDescription | undefined {
  const { inFile, path, risePa, altitudeM } = typed;
  const { flow, constantFlow = false, shutOffPressure } = inFile;
  if (constantFlow !== false) {
    const law = readConstantFlow(reading, { constantFlow, shutOffPressure, path })?.(flow);
    return law && withReverseFlow(law);
  }
  if (shutOffPressure !== undefined && shutOffPressure <= risePa) {
    report(reading, [...path, 'shutOffPressure'], {
      code: 'device.rating-above-shut-off',
      parameters: { ratingPa: risePa, shutOffPa: shutOffPressure },
    });
    return undefined;
  }
  const strongDucts = assumedShutOffPa < 2 * risePa;
  const shutOffPressurePa = givenOr(reading, shutOffPressure, {
    origin: originOf(path),
    what: 'shut-off pressure of its blower, between its supply and return ducts',
    value: { si: strongDucts ? 2 * risePa : assumedShutOffPa, dimension: 'pressure' },
    source: ourChoice(
      strongDucts
        ? 'twice the pressures of its ducts'
        : 'blowers lose about a quarter of their flow from 125 to 225 Pa outside the cabinet; no document',
    ),
  });
  assumeStandardAir(reading, path, altitudeM);
  const curve = typicalFanCurve({
    ratedFlowM3PerS: flow,
    ratingPressurePa: risePa,
    shutOffPressurePa,
    ductPressurePa: 0,
  });
  const rated: FanPoint = { pressureRisePa: risePa, volumeFlowM3PerS: flow };
  const points = [
    ...curve.filter(
      ({ volumeFlowM3PerS }) => Math.abs(volumeFlowM3PerS - flow) > nextToRated * flow,
    ),
    rated,
  ];
  const law = withReverseFlow({ kind: 'fanCurve', points, beyondShutOff: 'blocked' });
  return fanAtAltitude(law, altitudeM);
}
