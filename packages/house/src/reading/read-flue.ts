import type { IssuePath } from '@evendraft/text';
import type { FlueInFile } from '../file/flue-file.js';
import type { Flue, FlueDamper, FlueStage } from '../flue.js';
import type { Appliance, TestPreparation, VentType } from '../house.js';
import { hasDraftHood, readFlueInlets } from './read-flue-inlets.js';
import { readFlueSections, type TypedFlue } from './read-flue-sections.js';
import { readFlueStages } from './read-flue-stages.js';
import { checkBelowCeiling, readOutlet, type HouseSoFar } from './read-place.js';
import { readStand } from './read-stand.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** Vents whose flue is an opening of the house. */
const openFlues: readonly VentType[] = [
  'natural draft',
  'fan assisted',
  'induced draft',
  'open hearth',
  'closed stove',
];

/** Height of the collar above the floor where none is given [m]. */
const assumedCollarM = { 'open hearth': 1, 'closed stove': 0.8, other: 1.5 };

/** A flue that was read, with what of its geometry the file gave, for the check of those that join. */
export interface FlueRead {
  readonly flue: Flue;
  readonly path: IssuePath;
  readonly collarGiven: boolean;
  readonly riseGiven: boolean;
}

/**
 * Reads the flue of an appliance.
 *
 * @param reading - where issues and assumptions are collected
 * @param house - zones, names, and the preparation of the test
 * @param of - what the file says, and the appliance that it belongs to
 * @returns the flue; `undefined` where it is wrong or no opening of the house, which is then reported
 */
export function readFlue(
  reading: Reading,
  house: HouseSoFar & { readonly preparation: ReadonlyMap<string, TestPreparation> },
  of: {
    readonly inFile: FlueInFile;
    readonly appliance: Omit<Appliance, 'flue'>;
    readonly path: IssuePath;
  },
): FlueRead | undefined {
  const { inFile, appliance, path } = of;
  const { vent } = appliance;
  const origin = originOf(path);
  if (!openFlues.includes(vent)) {
    report(reading, path, { code: 'flue.not-an-opening', parameters: { vent } });
    return undefined;
  }
  const room = house.zones.find(({ zone }) => zone.id === appliance.zone)?.zone;
  if (room === undefined) return undefined;
  const typed: TypedFlue = {
    inFile,
    vent,
    path,
    shared: appliance.sharesVentWith.length > 0,
    hasDraftHood: hasDraftHood(appliance, inFile),
  };
  const sections = readFlueSections(reading, typed);
  const to =
    inFile.to === undefined
      ? ({ kind: 'roof' } as const)
      : readOutlet(reading, house.names, { inFile, path });
  if (inFile.to === undefined) {
    const source = ourChoice('a chimney ends above the roof');
    reading.assumptions.push({ origin, what: 'where it ends', value: 'roof', source });
  }
  checkBelowCeiling(reading, room, { heightM: inFile.collarHeight, path, key: 'collarHeight' });
  const usualM =
    vent === 'open hearth' || vent === 'closed stove' ? assumedCollarM[vent] : assumedCollarM.other;
  const collarHeightM = givenOr(reading, inFile.collarHeight, {
    origin,
    what: 'height of its collar above the floor',
    value: { si: Math.min(usualM, room.heightM), dimension: 'length' },
    source: ourChoice('as such an appliance usually stands'),
  });
  const stages = readFlueStages(reading, typed, appliance);
  const duringTest = readStand(reading, house.preparation, {
    name: appliance.id,
    path,
    given: inFile.duringTest,
    assumed: 'open',
    matters: true,
  });
  if (sections === undefined || to === undefined) return undefined;
  const inlets = readFlueInlets(reading, { ...typed, fuel: appliance.fuel, stages }, sections);
  const damper = readDamper(inFile, appliance, stages);
  return {
    path,
    collarGiven: inFile.collarHeight !== undefined,
    riseGiven: inFile.connector?.rise !== undefined,
    flue: {
      collarHeightM,
      connector: sections.connector,
      chimney: sections.chimney,
      to,
      inlets,
      ...(damper === undefined ? {} : { damper }),
      stages,
      duringTest,
    },
  };
}

/** A damper of the flue, or one that closes the vent whenever the appliance does not fire. */
function readDamper(
  { damper }: FlueInFile,
  { ventDamper }: Pick<Appliance, 'ventDamper'>,
  stages: readonly FlueStage[],
): FlueDamper | undefined {
  if (damper !== undefined) return { shutAreaM2: damper.shutArea, shutIn: ['off'] };
  if (!ventDamper) return undefined;
  const idle = stages.filter(({ ventFlowKgPerS }) => ventFlowKgPerS === 0).map(({ name }) => name);
  return { shutAreaM2: 0, shutIn: ['off', ...idle] };
}
