import type { FlowLawDescription } from '@evendraft/airflow';

/**
 * The law of something that carries about so many times as much at every pressure.
 *
 * What leaks where a damper is shut stays as it is.
 *
 * @param law - the law
 * @param factor - by which the flow grows, above 0 [-]
 * @returns the law with that flow; a doorway stays as it is
 */
export function largerLaw(law: FlowLawDescription, factor: number): FlowLawDescription {
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
    case 'quadratic':
      return {
        ...law,
        linearPaSPerM3: law.linearPaSPerM3 / factor,
        quadraticPaS2PerM6: law.quadraticPaS2PerM6 / factor ** 2,
      };
    case 'gravityDamper':
      return { ...law, areaM2: law.areaM2 * factor };
    case 'oneWayDamper':
      return { ...law, coefficientM3PerSPaN: law.coefficientM3PerSPaN * factor };
    case 'doorway':
      return law;
  }
}
