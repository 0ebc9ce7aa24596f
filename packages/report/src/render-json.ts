import { printableJson } from '@evendraft/text';
import type { Assessment } from './assessment.js';
import type { Comparison, Sizing } from './remedy-results.js';
import { ReportError } from './report-error.js';

/** The envelope comes first, so that a reader of the file sees what it is. */
const topKeys: readonly (keyof Assessment | keyof Sizing | keyof Comparison)[] = [
  'schema',
  'schemaVersion',
  'libraryVersion',
  'house',
  'incomplete',
  'limitSet',
  'findings',
  'houseFindings',
  'programmeTest',
  'beside',
  'cures',
  'draft',
  'air',
  'attribution',
  'screens',
  'uncertainty',
  'remedy',
  'targets',
  'result',
  'comparison',
  'worstCase',
  'assumptions',
  'notModelled',
  'cautions',
];

/**
 * A result as JSON, indented by two spaces, the same text for equal results.
 *
 * Keys stand in a fixed order: the envelope's at the top, all others by their characters. Numbers
 * are SI and unrounded.
 *
 * @param result - an assessment, a sizing or a comparison
 * @returns JSON, that of an assessment as the published schema describes it, ending in a line end
 * @throws ReportError `report.not-finite` for NaN or an infinity, `report.not-plain-data` for
 *   anything else that JSON cannot say
 */
export function renderJson(result: Assessment | Sizing | Comparison): string {
  const walk: Walk = { path: [result.schema.replace('evendraft-', '')], parents: new Set() };
  return `${printableJson(ordered(result, walk, topKeys))}\n`;
}

/** Where the writer is, and in what. */
interface Walk {
  readonly path: string[];
  readonly parents: Set<object>;
}

/** The same data with its keys in order; throws for what JSON would drop or change. */
function ordered(value: unknown, walk: Walk, first: readonly string[] = []): unknown {
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return value;
    case 'number':
      if (Number.isFinite(value)) return value;
      throw new ReportError('report.not-finite', `${walk.path.join('')} is ${value}.`);
    case 'object':
      return value === null ? null : orderedInside(value, walk, first);
    default:
      throw notPlain(walk, typeof value);
  }
}

function orderedInside(value: object, walk: Walk, first: readonly string[]): object {
  if (walk.parents.has(value)) throw notPlain(walk, 'inside itself');
  walk.parents.add(value);
  const result = Array.isArray(value)
    ? Array.from(value, (each: unknown, index) => step(`[${index}]`, each, walk))
    : orderedObject(value, walk, first);
  walk.parents.delete(value);
  return result;
}

function orderedObject(value: object, walk: Walk, first: readonly string[]): object {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) {
    throw notPlain(walk, 'an instance of a class');
  }
  // Without a prototype, so that a device called __proto__ is a key like any other.
  const result = Object.create(null) as Record<string, unknown>;
  // The plain sort is by UTF-16 code units, alike in every locale.
  const sorted = Object.keys(value).sort();
  const keys = first.length === 0 ? sorted : [...new Set([...first, ...sorted])];
  for (const key of keys) {
    if (!Object.hasOwn(value, key)) continue;
    result[key] = step(`.${key}`, (value as Record<string, unknown>)[key], walk);
  }
  return result;
}

function step(name: string, value: unknown, walk: Walk): unknown {
  walk.path.push(name);
  const result = ordered(value, walk);
  walk.path.pop();
  return result;
}

function notPlain({ path }: Walk, found: string): ReportError {
  return new ReportError('report.not-plain-data', `${path.join('')} is ${found}, no plain data.`);
}
