import type { Assessment } from './assessment.js';
import { ReportError } from './report-error.js';

/** The envelope comes first, so that a reader of the file sees what it is. */
const topKeys: readonly (keyof Assessment)[] = [
  'schema',
  'schemaVersion',
  'libraryVersion',
  'house',
  'limitSet',
  'findings',
  'worstCase',
  'assumptions',
  'notModelled',
  'cautions',
];

/**
 * An assessment as JSON, indented by two spaces, the same text for equal assessments.
 *
 * Keys stand in a fixed order: the envelope's at the top, all others by their characters. Numbers
 * are SI and unrounded.
 *
 * @param assessment - what was found
 * @returns JSON that the published schema describes, ending in a line end
 * @throws ReportError `report.not-finite` for NaN or an infinity, `report.not-plain-data` for
 *   anything else that JSON cannot say
 */
export function renderJson(assessment: Assessment): string {
  const written = writeObject(assessment, {
    path: 'assessment',
    indent: '',
    order: topKeys,
    parents: new Set(),
  });
  return `${written}\n`;
}

interface Place {
  readonly path: string;
  readonly indent: string;
  readonly order?: readonly string[];
  readonly parents: ReadonlySet<unknown>;
}

function write(value: unknown, place: Place): string {
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return JSON.stringify(value);
    case 'number':
      if (!Number.isFinite(value)) {
        throw new ReportError('report.not-finite', `${place.path} is ${value}.`);
      }
      return JSON.stringify(value);
    case 'object':
      if (value === null) return 'null';
      return Array.isArray(value) ? writeArray(value, place) : writeObject(value, place);
    default:
      throw notPlain(place, typeof value);
  }
}

function writeArray(values: readonly unknown[], place: Place): string {
  const inside = placeInside(values, place);
  const parts = Array.from(values, (value, index) =>
    write(value, { ...inside, path: `${place.path}[${index}]` }),
  );
  return enclose(parts, place, '[]');
}

function writeObject(value: object, place: Place): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) {
    throw notPlain(place, 'an instance of a class');
  }
  const inside = placeInside(value, place);
  const order = place.order ?? [];
  const entries = Object.entries(value).sort(([a], [b]) => compareKeys(a, b, order));
  const parts = entries.map(([key, each]) => {
    const written = write(each, { ...inside, path: `${place.path}.${key}` });
    return `${JSON.stringify(key)}: ${written}`;
  });
  return enclose(parts, place, '{}');
}

function placeInside(parent: object, place: Place): Omit<Place, 'path'> {
  if (place.parents.has(parent)) throw notPlain(place, 'inside itself');
  return { indent: `${place.indent}  `, parents: new Set([...place.parents, parent]) };
}

function enclose(parts: readonly string[], { indent }: Place, brackets: string): string {
  if (parts.length === 0) return brackets;
  const [open, close] = brackets;
  return `${open}\n${parts.map((part) => `${indent}  ${part}`).join(',\n')}\n${indent}${close}`;
}

/** Keys of the given order first and in it; the rest by UTF-16 code units, alike in every locale. */
function compareKeys(a: string, b: string, order: readonly string[]): number {
  const [first, second] = [a, b].map((key) => {
    const index = order.indexOf(key);
    return index < 0 ? order.length : index;
  }) as [number, number];
  if (first !== second) return first - second;
  return a < b ? -1 : 1;
}

function notPlain({ path }: Place, found: string): ReportError {
  return new ReportError('report.not-plain-data', `${path} is ${found}; JSON cannot say that.`);
}
