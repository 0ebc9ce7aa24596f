import { suggest, type IssuePath } from '@evendraft/text';
import type { KindTable } from '../kind-names.js';
import { distinctKinds } from '../kind-names.js';
import { plainWord } from '../file/schema/word.js';
import { originOf, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/**
 * The kind of an item: as given, or as its name says if the name is in the published list.
 *
 * @param reading - where issues and assumptions are collected
 * @param table - published names of the section
 * @param item - its name, its place, and the kind that the user gave
 * @returns the kind; `undefined` where the name does not say it, which is then reported
 */
export function readKind<Kind extends string>(
  reading: Reading,
  table: KindTable<Kind>,
  item: { readonly name: string; readonly path: IssuePath; readonly given: Kind | undefined },
): Kind | undefined {
  if (item.given !== undefined) return item.given;
  const plain = plainWord(item.name);
  const name = Object.keys(table).find((each) => plainWord(each) === plain);
  const kind = name === undefined ? undefined : table[name];
  if (kind !== undefined) {
    reading.assumptions.push({
      origin: originOf(item.path),
      what: 'kind',
      value: kind,
      source: ourChoice('its name stands in the list of kind names'),
    });
    return kind;
  }
  const suggestion = suggest(item.name, Object.keys(table));
  const kinds = distinctKinds(table);
  report(
    reading,
    item.path,
    suggestion === undefined
      ? { code: 'kind.missing', parameters: { name: item.name, kinds } }
      : { code: 'kind.near-miss', parameters: { name: item.name, kinds, suggestion } },
  );
  return undefined;
}
