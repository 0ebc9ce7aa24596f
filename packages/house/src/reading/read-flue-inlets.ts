import {
  barometricRegulator,
  draftHoodRelief,
  typicalReliefArea,
  type FlowLawDescription,
} from '@evendraft/airflow';
import { assumedDischargeCoefficient } from '../file/opening-law.js';
import type { FlueInlet, FlueStage } from '../flue.js';
import type { Appliance } from '../house.js';
import { checkLaw } from './read-law.js';
import type { FlueSections, TypedFlue } from './read-flue-sections.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { dischargeSource, ourChoice, sourceOf } from './sources.js';

/** Draft at which a regulator opens where no setting is given: 0.03 in. w.c. [Pa]. */
const assumedSettingPa = 7.5;
/** Free area through an idle appliance without a draft hood [m2]. */
const assumedIdleAreaM2 = 0.003;
/** Opening of a hearth, 0.9 by 0.7 m, and of the door of a stove, 0.4 by 0.3 m [m2]. */
const assumedOpeningM2 = { 'open hearth': 0.63, 'closed stove': 0.12 };
/** What the air controls of a shut stove leave open [m2]. */
const assumedShutOpeningM2 = 0.001;

/** Words in the name of a stage in which the doors of a hearth or stove stand the other way than usual. */
export const doorsShut = ', doors shut';
/** See {@link doorsShut}. */
export const doorOpen = ', door open';

/**
 * Whether an appliance has a draft hood: as the file says, else if it burns gas by natural draft.
 *
 * @param appliance - vent and fuel
 * @param typed - what the file says of its flue
 * @returns whether it has one
 */
export function hasDraftHood(
  { vent, fuel }: Pick<Appliance, 'vent' | 'fuel'>,
  typed: TypedFlue['inFile'],
): boolean {
  const { draftHood } = typed;
  if (draftHood !== undefined) return draftHood !== false;
  return vent === 'natural draft' && fuel !== 'oil' && fuel !== 'wood' && fuel !== 'pellets';
}

/**
 * Reads the ways for room air into a flue.
 *
 * @param reading - where issues and assumptions are collected
 * @param flue - what the file says, with vent and fuel of its appliance and its stages
 * @param sections - its stretches
 * @returns the ways; wrong ones are left out
 */
export function readFlueInlets(
  reading: Reading,
  flue: TypedFlue & {
    readonly fuel: Appliance['fuel'];
    readonly stages: readonly FlueStage[];
  },
  sections: FlueSections,
): readonly FlueInlet[] {
  const { vent, inFile, path } = flue;
  const isFire = vent === 'open hearth' || vent === 'closed stove';
  const notWanted = isFire
    ? (['draftHood', 'barometricRegulator', 'idleOpening'] as const)
    : (['opening', 'shutOpening'] as const);
  for (const key of notWanted) {
    if (inFile[key] === undefined || inFile[key] === false) continue;
    const parameters = { key, way: `vent: ${vent}` };
    report(reading, [...path, key], { code: 'key.without-effect', parameters });
  }
  if (isFire) return readFire(reading, { ...flue, vent });
  const hood = readHood(reading, flue, sections);
  const regulator = readRegulator(reading, flue, sections);
  return [...hood, ...regulator, ...(flue.hasDraftHood ? [] : readIdle(reading, flue))];
}

type InletOf = TypedFlue & {
  readonly fuel: Appliance['fuel'];
  readonly stages: readonly FlueStage[];
};

function readHood(reading: Reading, flue: InletOf, sections: FlueSections): readonly FlueInlet[] {
  const { inFile, path, vent } = flue;
  if (!flue.hasDraftHood) return [];
  const origin = originOf(path);
  const { draftHood } = inFile;
  if (draftHood === undefined) {
    const source = ourChoice(`a gas appliance with ${vent}`);
    reading.assumptions.push({ origin, what: 'draft hood', value: 'has one', source });
  }
  const areaM2 = givenOr(
    reading,
    typeof draftHood === 'object' ? draftHood.reliefArea : undefined,
    {
      origin,
      what: 'free area of its draft hood’s relief opening',
      value: {
        si: typicalReliefArea.byOutletArea * sections.collarAreaM2,
        dimension: 'area',
      },
      source: sourceOf(typicalReliefArea),
    },
  );
  return [{ name: 'draft hood', law: draftHoodRelief(areaM2) }];
}

function readRegulator(
  reading: Reading,
  flue: InletOf,
  sections: FlueSections,
): readonly FlueInlet[] {
  const { inFile, path, fuel, vent } = flue;
  const { barometricRegulator: typed } = inFile;
  const origin = originOf(path);
  const usual = fuel === 'oil' && vent === 'natural draft' && !flue.hasDraftHood;
  if (typed === false || (typed === undefined && !usual)) return [];
  if (flue.hasDraftHood) {
    report(reading, [...path, 'barometricRegulator'], {
      code: 'flue.hood-and-regulator',
      parameters: {},
    });
    return [];
  }
  if (typed === undefined) {
    const source = ourChoice('an oil appliance with natural draft');
    reading.assumptions.push({ origin, what: 'barometric regulator', value: 'has one', source });
  }
  const full = typeof typed === 'object' ? typed : {};
  const settingPa = givenOr(reading, full.setting, {
    origin,
    what: 'draft at which its regulator opens',
    value: { si: assumedSettingPa, dimension: 'pressure' },
    source: ourChoice('0.03 in. w.c., between the usual 5 and 15 Pa'),
  });
  const diameterM = givenOr(reading, full.diameter, {
    origin,
    what: 'diameter of its regulator',
    value: { si: sections.collarDiameterM, dimension: 'length' },
    source: ourChoice('as wide as the connector'),
  });
  return [{ name: 'regulator', law: barometricRegulator({ settingPa, diameterM }) }];
}

/** Room air passes an idle appliance; while a burner or its fan holds the flow, that flow stands for it. */
function readIdle(reading: Reading, flue: InletOf): readonly FlueInlet[] {
  const { inFile, path, stages } = flue;
  const areaM2 = givenOr(reading, inFile.idleOpening, {
    origin: originOf(path),
    what: 'free area through the idle appliance',
    value: { si: assumedIdleAreaM2, dimension: 'area' },
    source: ourChoice('some 30 cm2 of burner and heat exchanger; no source'),
  });
  const held = stages.filter(({ gasFlowKgPerS }) => gasFlowKgPerS > 0).map(({ name }) => name);
  const open = ['off', ...stages.map(({ name }) => name)].filter((name) => !held.includes(name));
  return opening(reading, flue, { name: 'appliance', key: 'idleOpening', areaM2, stages: open });
}

function readFire(
  reading: Reading,
  flue: InletOf & { readonly vent: 'open hearth' | 'closed stove' },
): readonly FlueInlet[] {
  const { inFile, vent, stages, path } = flue;
  const origin = originOf(path);
  const openM2 = givenOr(reading, inFile.opening, {
    origin,
    what: vent === 'open hearth' ? 'opening of the hearth' : 'opening of the stove’s door',
    value: { si: assumedOpeningM2[vent], dimension: 'area' },
    source: ourChoice(vent === 'open hearth' ? '0.9 by 0.7 m' : '0.4 by 0.3 m'),
  });
  if (vent === 'open hearth' && inFile.shutOpening === undefined) {
    const source = ourChoice('none are named');
    reading.assumptions.push({ origin, what: 'doors of the hearth', value: 'none', source });
    return opening(reading, flue, { name: 'opening', key: 'opening', areaM2: openM2 });
  }
  const shutM2 = givenOr(reading, inFile.shutOpening, {
    origin,
    what: 'area of its air controls with the door shut',
    value: { si: assumedShutOpeningM2, dimension: 'area' },
    source: ourChoice('10 cm2; no source'),
  });
  const shut = ['off', ...stages.map(({ name }) => name)].filter((name) =>
    vent === 'open hearth' ? name === 'off' || name.endsWith(doorsShut) : !name.endsWith(doorOpen),
  );
  const open = stages.map(({ name }) => name).filter((name) => !shut.includes(name));
  return [
    ...opening(reading, flue, { name: 'opening', key: 'opening', areaM2: openM2, stages: open }),
    ...opening(reading, flue, {
      name: 'shut opening',
      key: 'shutOpening',
      areaM2: shutM2,
      stages: shut,
    }),
  ];
}

function opening(
  reading: Reading,
  { path }: InletOf,
  of: {
    readonly name: string;
    readonly key: string;
    readonly areaM2: number;
    readonly stages?: readonly string[];
  },
): readonly FlueInlet[] {
  const { name, key, areaM2, stages } = of;
  const sharp: FlowLawDescription = {
    kind: 'orifice',
    areaM2,
    dischargeCoefficient: assumedDischargeCoefficient,
  };
  reading.assumptions.push({
    origin: originOf(path),
    what: 'discharge coefficient of openings into its flue',
    value: { si: assumedDischargeCoefficient, dimension: 'ratio' },
    source: dischargeSource,
  });
  const law = checkLaw(reading, [...path, key], sharp);
  if (law === undefined) return [];
  return [{ name, law, ...(stages === undefined ? {} : { stages }) }];
}
