import type Fraction from 'fraction.js';

import type { Dimension } from '../dimension.js';
import type { UnitDefinition } from '../unit-definition.js';
import { unitTable } from '../units-of.js';
import { exact, nearestDouble } from './exact.js';
import { normaliseText } from './normalise-text.js';

/** A unit with its exact size ready for arithmetic, and the doubles for printing derived from it. */
export interface IndexedUnit {
  readonly definition: UnitDefinition;
  readonly factor: Fraction;
  readonly offset: Fraction;
  /** This unit in one SI unit, and what is added: value = SI value × perSi + shift. */
  readonly perSi: number;
  readonly shift: number;
}

const indexed: readonly IndexedUnit[] = unitTable.map((definition) => {
  const factor = exact(definition.factor);
  const offset = exact(definition.offset);
  return {
    definition,
    factor,
    offset,
    perSi: nearestDouble(factor.inverse()),
    shift: nearestDouble(offset.div(factor).neg()),
  };
});

const byKey = new Map<string, IndexedUnit[]>();
const byLowerCaseKey = new Map<string, IndexedUnit[]>();
for (const unit of indexed) {
  const { symbol, printed, aliases } = unit.definition;
  for (const key of new Set([symbol, printed, ...aliases].map(unitKey))) {
    if (key !== '') add(byKey, key, unit);
  }
}
for (const [key, units] of byKey) {
  for (const unit of units) add(byLowerCaseKey, key.toLowerCase(), unit);
}

/** A spelling without what people vary: spaces, dots, `^`, and `per` for a stroke. */
export function unitKey(spelling: string): string {
  return normaliseText(spelling)
    .replace(/ per /gi, '/')
    .replace(/[\s.^]/g, '');
}

/** All units with this spelling, at most one a dimension; as typed first, else whatever the case. */
export function findUnits(spelling: string): readonly IndexedUnit[] {
  const key = unitKey(spelling);
  return byKey.get(key) ?? byLowerCaseKey.get(key.toLowerCase()) ?? [];
}

/** The unit with this spelling in one dimension; as typed first, else whatever the case. */
export function findUnit(spelling: string, dimension: Dimension): IndexedUnit | undefined {
  const key = unitKey(spelling);
  const measures = (unit: IndexedUnit): boolean => unit.definition.dimension === dimension;
  return byKey.get(key)?.find(measures) ?? byLowerCaseKey.get(key.toLowerCase())?.find(measures);
}

/** The units of some dimensions, in the order of the dimensions and of the table. */
export function unitsWithin(dimensions: readonly Dimension[]): readonly IndexedUnit[] {
  return dimensions.flatMap((dimension) =>
    indexed.filter((unit) => unit.definition.dimension === dimension),
  );
}

/** How the unit is written in its own keys, in lower case; for near misses. */
export function spellingKeys(unit: IndexedUnit): readonly string[] {
  return [unit.definition.symbol, ...unit.definition.aliases].map((alias) =>
    unitKey(alias).toLowerCase(),
  );
}

function add(index: Map<string, IndexedUnit[]>, key: string, unit: IndexedUnit): void {
  const units = index.get(key);
  if (!units) index.set(key, [unit]);
  else if (!units.includes(unit)) units.push(unit);
}
