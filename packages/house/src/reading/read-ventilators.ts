import { ventilatorFile } from '../file/ventilator-file.js';
import type { Ventilator, VentilatorMode } from '../house.js';
import { readZoneOf, type HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { originOf, readValue, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

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
    const origin = originOf(path);
    const otherModes = readOtherModes(reading, { inFile, origin, flows });
    return [
      {
        id: name,
        origin,
        supplyZone,
        exhaustZone,
        ...flows,
        continuous: inFile.continuous ?? false,
        ...(otherModes.length === 0 ? {} : { otherModes }),
      },
    ];
  });
}

type VentilatorFlows = Pick<Ventilator, 'supplyFlowM3PerS' | 'exhaustFlowM3PerS'>;

function readOtherModes(
  reading: Reading,
  ventilator: {
    readonly inFile: {
      readonly defrost?: 'exhaust only' | 'supply only' | undefined;
      readonly dirtyFilter?: number | undefined;
    };
    readonly origin: string;
    readonly flows: VentilatorFlows;
  },
): readonly VentilatorMode[] {
  const { inFile, origin, flows } = ventilator;
  const { defrost, dirtyFilter } = inFile;
  const modes: VentilatorMode[] = [];
  const assume = (what: string, value: string, reason: string): void => {
    reading.assumptions.push({ origin, what, value, source: ourChoice(reason) });
  };
  assume(
    'its flows against the pressure of the house',
    'held, whatever the pressure',
    'its fans work against filters, core and ducts; under a deep suction it moves less out and more in',
  );
  if (defrost === undefined) {
    assume('frost protection', 'none that stops one of its flows', 'none is named');
  } else {
    const stopped = defrost === 'exhaust only' ? 'supplyFlowM3PerS' : 'exhaustFlowM3PerS';
    modes.push({ name: 'defrost', ...flows, [stopped]: 0 });
    assume('weathers in which it defrosts', 'all that are studied', 'the flow at its worst');
  }
  if (dirtyFilter === undefined) {
    assume('filters', 'clean, both flows as given', 'no loss by a dirty filter is named');
  } else {
    const supplyFlowM3PerS = flows.supplyFlowM3PerS * (1 - dirtyFilter);
    modes.push({ name: 'dirty filter', ...flows, supplyFlowM3PerS });
  }
  return modes;
}

function readFlows(
  reading: Reading,
  typed: {
    readonly flow?: number | undefined;
    readonly supply?: number | undefined;
    readonly exhaust?: number | undefined;
  },
  path: RawItem['path'],
): VentilatorFlows | undefined {
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
