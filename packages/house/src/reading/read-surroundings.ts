import { surroundingFile } from '../file/surrounding-file.js';
import type { Surrounding } from '../house.js';
import type { Basics } from './read-basics.js';
import type { RawItem } from './read-section.js';
import { givenOr, originOf, readValue, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/**
 * Reads what lies beyond the house with a pressure and a temperature of its own.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `surroundings`
 * @param basics - the indoor temperature
 * @returns surroundings in the order of the file; wrong ones are left out
 */
export function readSurroundings(
  reading: Reading,
  items: readonly RawItem[],
  basics: Basics,
): readonly Surrounding[] {
  return items.flatMap(({ name, path, raw }) => {
    const inFile = readValue(reading, surroundingFile, { path, raw: raw ?? {} });
    if (inFile === undefined) return [];
    const origin = originOf(path);
    return [
      {
        id: name,
        origin,
        pressurePa: givenOr(reading, inFile.pressure, {
          origin,
          what: 'pressure minus outdoors',
          value: { si: 0, dimension: 'pressure' },
          source: ourChoice('as outdoors where none is given'),
        }),
        temperatureC: givenOr(reading, inFile.temperature, {
          origin,
          what: 'temperature',
          value: { si: basics.indoorTemperatureC, dimension: 'temperature' },
          source: ourChoice('as indoors where none is given'),
        }),
      },
    ];
  });
}
