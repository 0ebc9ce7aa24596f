import { ventilatorFile } from '../file/ventilator-file.js';
import type { Ventilator } from '../house.js';
import { readZoneOf, type HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { originOf, readValue, report, type Reading } from './reading.js';

/**
 * Reads the balanced ventilators.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `ventilators`
 * @param house - zones and names
 * @returns ventilators in the order of the file; wrong ones are left out
 */
export function readVentilators(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar,
): readonly Ventilator[] {
  return items.flatMap(({ name, path, raw }) => {
    const read = readValue(reading, ventilatorFile, { path, raw });
    if (read === undefined) return [];
    const inFile = typeof read === 'number' ? { flow: read } : read;
    const zoneFor = (key: 'supplyZone' | 'exhaustZone'): string | undefined => {
      const own = inFile[key];
      const given = own ?? inFile.zone;
      return readZoneOf(reading, house, {
        given,
        path,
        key: own === undefined && given !== undefined ? 'zone' : key,
      });
    };
    const zoneWanted = inFile.supplyZone === undefined || inFile.exhaustZone === undefined;
    if (inFile.zone !== undefined && !zoneWanted) {
      const parameters = { key: 'zone', way: 'supplyZone and exhaustZone' };
      report(reading, [...path, 'zone'], { code: 'key.without-effect', parameters });
    }
    const supplyZone = zoneFor('supplyZone');
    // One `zone` serves both ways; a wrong one is reported once.
    const bothFromZone =
      inFile.zone !== undefined &&
      inFile.supplyZone === undefined &&
      inFile.exhaustZone === undefined;
    const exhaustZone = bothFromZone ? supplyZone : zoneFor('exhaustZone');
    const flows = readFlows(reading, inFile, path);
    if (supplyZone === undefined || exhaustZone === undefined || flows === undefined) return [];
    return [
      {
        id: name,
        origin: originOf(path),
        supplyZone,
        exhaustZone,
        ...flows,
        continuous: inFile.continuous ?? false,
      },
    ];
  });
}

function readFlows(
  reading: Reading,
  typed: {
    readonly flow?: number | undefined;
    readonly supply?: number | undefined;
    readonly exhaust?: number | undefined;
  },
  path: RawItem['path'],
): Pick<Ventilator, 'supplyFlowM3PerS' | 'exhaustFlowM3PerS'> | undefined {
  const { flow, supply, exhaust } = typed;
  if (flow !== undefined && (supply !== undefined || exhaust !== undefined)) {
    const keys = [
      'flow',
      ...(supply === undefined ? [] : ['supply']),
      ...(exhaust === undefined ? [] : ['exhaust']),
    ];
    report(reading, [...path, 'flow'], { code: 'device.several-flows', parameters: { keys } });
    return undefined;
  }
  const supplyFlowM3PerS = flow ?? supply;
  const exhaustFlowM3PerS = flow ?? exhaust;
  if (supplyFlowM3PerS !== undefined && exhaustFlowM3PerS !== undefined) {
    return { supplyFlowM3PerS, exhaustFlowM3PerS };
  }
  report(reading, path, {
    code: 'device.flow-missing',
    parameters: { accepted: ['110 cfm', 'supply: 110 cfm, exhaust: 100 cfm'] },
  });
  return undefined;
}
