import { fanBySimilarity, standardPressure, type FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import { originOf, type Reading } from './reading.js';

/**
 * The law of a fan in the thinner air of an altitude, from its law in standard air.
 *
 * A fan moves the volume that it moves at sea level, at a pressure that falls with the density of the air; what its
 * duct takes falls likewise. So a hood draws a house in the mountains less deep, and a make-up fan gives less.
 *
 * @param law - law of the fan in standard air; what is no fan curve is left as it is
 * @param altitudeM - altitude of the house [m]
 * @returns the law
 *
 * Source: fan laws (as in `fanBySimilarity`); density by the standard atmosphere at one temperature.
 */
export function fanAtAltitude(law: FlowLawDescription, altitudeM: number): FlowLawDescription {
  if (law.kind !== 'fanCurve' || altitudeM === 0) return law;
  const densityRatio = standardPressure(altitudeM) / standardPressure(0);
  return { ...law, points: fanBySimilarity(law.points, { densityRatio }) };
}

/**
 * Notes that the pressures of a fan are taken as those of standard air; at sea level there is nothing to note.
 *
 * @param reading - where assumptions are collected
 * @param path - where the fan stands
 * @param altitudeM - altitude of the house [m]
 */
export function assumeStandardAir(reading: Reading, path: IssuePath, altitudeM: number): void {
  if (altitudeM === 0) return;
  reading.assumptions.push({
    origin: originOf(path),
    what: 'air of its fan’s pressures',
    value: 'standard air at sea level; at the altitude of the house they fall with the density',
    source: { document: 'makers rate fans in standard air; fan laws', status: 'memory' },
  });
}
