import type { DuctDescription, DuctSection } from '../flow-law-description.js';
import type { LawProblem } from '../flow-law.js';
import { rangeProblems } from './range-problem.js';

/** Ranges outside which a number is a mistake, not a duct. */
const ranges = [
  ['lengthM', 0, 1e5, 'm'],
  ['hydraulicDiameterM', 1e-4, 100, 'm'],
  ['areaM2', 1e-8, 1e4, 'm2'],
  ['roughnessM', 0, 1, 'm'],
  ['frictionMultiplier', 1, 100, '(-)'],
  ['lossCoefficient', 0, 1e6, '(-)'],
] as const;

/** Relative roughness above which the friction formula means nothing [-]. */
const mostRelativeRoughness = 0.3;

/** Resistance in velocity pressures below which a duct holds nothing back [-]. */
const leastResistance = 1e-6;

/** Problems of a duct: no section, a size that is none, no resistance at all. */
export function ductProblems(description: DuctDescription): LawProblem[] {
  const sections: readonly DuctSection[] = Array.isArray(description.sections)
    ? description.sections
    : [];
  if (sections.length === 0) {
    return [
      {
        code: 'DuctWithoutSections',
        severity: 'error',
        field: 'sections',
        found: 0,
        allowed: 'one section or more',
      },
    ];
  }
  const problems = sections.flatMap((section, index) => sectionProblems(section, index));
  if (problems.length > 0) return problems;
  const resistance = Math.max(
    ...sections.map(
      (section) => section.lossCoefficient + section.lengthM / section.hydraulicDiameterM,
    ),
  );
  if (resistance >= leastResistance) return [];
  return [
    {
      code: 'DuctWithoutResistance',
      severity: 'error',
      field: 'sections',
      found: resistance,
      allowed: `a section with L/Dh + K of ${leastResistance} or more`,
    },
  ];
}

function sectionProblems(section: DuctSection | null | undefined, index: number): LawProblem[] {
  const prefix = `sections.${index}.`;
  const problems = ranges.flatMap(([field, least, most, unit]) =>
    rangeProblems({
      field: `${prefix}${field}`,
      value: section?.[field] as number,
      least,
      most,
      unit,
    }),
  );
  if (problems.length > 0 || !section) return problems;
  return rangeProblems({
    field: `${prefix}roughnessM`,
    value: section.roughnessM,
    least: 0,
    most: mostRelativeRoughness * section.hydraulicDiameterM,
    unit: 'm, 0.3 of the hydraulic diameter',
  });
}
