import { fittingLosses, type DuctSection } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DuctInFile, DuctSectionInFile } from '../file/duct-file.js';
import type { PathPart } from '../house.js';
import { readDuctSection } from './read-duct-section.js';
import { checkLaw } from './read-law.js';
import { originOf, report, type Reading } from './reading.js';
import { sourceOf } from './sources.js';

/** A duct as it stands in the file, and what lies at its two ends. */
export interface TypedDuct {
  readonly inFile: DuctInFile;
  readonly path: IssuePath;
  /** What the part is called. */
  readonly name: string;
  /** Whether air enters it from a room or from outdoors, and not from a fan. */
  readonly begins: boolean;
  /** Whether air leaves it to a room or to outdoors, and not to a fan. */
  readonly ends: boolean;
  /** Which of its ends lies away from the house, where a cap or louvre would be. */
  readonly outside: 'beginning' | 'end';
}

/** A duct in SI with the area of its first stretch, which is that of a damper in it. */
export interface ReadDuct {
  readonly part: PathPart;
  readonly areaM2: number;
}

/** The most stretches of a duct; our choice. */
const mostSections = 20;

/**
 * A duct in SI. An entry or exit that it must have and that is not given is assumed and listed.
 *
 * @param reading - where issues and assumptions are collected
 * @param duct - what the file says, and what lies at its ends
 * @returns the duct; `undefined` where something is wrong, which is then reported
 */
export function readDuct(reading: Reading, duct: TypedDuct): ReadDuct | undefined {
  const { inFile, path, name } = duct;
  const isList = Array.isArray(inFile);
  const typed: readonly DuctSectionInFile[] = isList ? inFile : [inFile as DuctSectionInFile];
  if (typed.length === 0 || typed.length > mostSections) {
    const parameters = { found: typed.length, allowed: mostSections };
    report(
      reading,
      path,
      typed.length === 0
        ? { code: 'value.empty', parameters: { accepted: ['{ diameter: 6 in, length: 10 ft }'] } }
        : { code: 'section.too-many', parameters },
    );
    return undefined;
  }
  const read = typed.map((section, index) =>
    readDuctSection(reading, { inFile: section, path: isList ? [...path, index] : path }),
  );
  if (read.includes(undefined)) return undefined;
  const sections = withEnds(reading, duct, { typed, sections: read as readonly DuctSection[] });
  const law = checkLaw(reading, path, { kind: 'duct', sections });
  const first = sections[0];
  if (law === undefined || first === undefined) return undefined;
  const riseM = typed.reduce((sum, { rise = 0 }) => sum + rise, 0);
  return { part: { name, law, riseM }, areaM2: first.areaM2 };
}

function withEnds(
  reading: Reading,
  { path, begins, ends, outside }: TypedDuct,
  of: {
    readonly typed: readonly DuctSectionInFile[];
    readonly sections: readonly DuctSection[];
  },
): readonly DuctSection[] {
  const { typed, sections } = of;
  const given = (key: 'entry' | 'exit' | 'cap' | 'louver'): boolean =>
    typed.some((section) => section[key] !== undefined);
  const covered = (end: typeof outside): boolean =>
    outside === end && (given('cap') || given('louver'));
  const entry = begins && !given('entry') && !covered('beginning');
  const exit = ends && !given('exit') && !covered('end');
  return sections.map((section, index) => {
    const atEntry = entry && index === 0 ? assumedLoss('entry') : 0;
    const atExit = exit && index === sections.length - 1 ? assumedLoss('exit') : 0;
    return { ...section, lossCoefficient: section.lossCoefficient + atEntry + atExit };
  });

  function assumedLoss(end: 'entry' | 'exit'): number {
    const { lossCoefficient, ...provenance } =
      fittingLosses[end === 'entry' ? 'flush entry' : 'exit'];
    reading.assumptions.push({
      origin: originOf(path),
      what:
        end === 'entry' ? 'loss of its entry, taken as flush' : 'loss of its exit, taken as open',
      value: { si: lossCoefficient, dimension: 'ratio' },
      source: sourceOf(provenance),
    });
    return lossCoefficient;
  }
}
