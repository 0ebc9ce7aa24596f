/** The shapes that a value of a house file can have, in the words of a person who types it. */
export type Shape = 'text' | 'number' | 'flag' | 'list' | 'map' | 'nothing' | 'something else';

/**
 * The shape of a value.
 *
 * @param value - any value
 * @returns its shape; `something else` is what no YAML or JSON text can hold
 */
export function shapeOf(value: unknown): Shape {
  if (value === null || value === undefined) return 'nothing';
  switch (typeof value) {
    case 'string':
      return 'text';
    case 'number':
      return 'number';
    case 'boolean':
      return 'flag';
    case 'object':
      if (Array.isArray(value)) return 'list';
      return isPlainMap(value) ? 'map' : 'something else';
    default:
      return 'something else';
  }
}

/** What each shape is called in a message. */
export const shapeWords: Readonly<Record<Shape, string>> = {
  text: 'text',
  number: 'a number',
  flag: 'a yes or no',
  list: 'a list',
  map: 'a map of keys and values',
  nothing: 'nothing',
  'something else': 'something that no house file can hold',
};

/**
 * Whether a value is a map as parsers make them, and not a date, a Map or an instance of a class. One of another
 * frame or context has a root prototype of its own.
 */
function isPlainMap(value: object): value is Record<string, unknown> {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}
