import {
  ductRoughnesses,
  fittingLosses,
  flatOvalDuctSize,
  flexibleDuctFactor,
  freeAreaLossCoefficient,
  rectangularDuctSize,
  roundDuctSize,
  screenLossCoefficient,
  terminalOpenings,
  type DuctMaterial,
  type DuctSection,
  type DuctSize,
} from '@evendraft/airflow';
import { suggest, type IssuePath } from '@evendraft/text';
import { formatQuantity } from '@evendraft/units';
import type { DuctSectionInFile } from '../file/duct-file.js';
import { assumedDischargeCoefficient } from '../file/opening-law.js';
import type { AssumedDimension, Source } from '../house.js';
import { fittingByName, fittingNames } from './duct-fittings.js';
import { originOf, report, type Reading } from './reading.js';
import { dischargeSource, ourChoice, sourceOf } from './sources.js';

/** A stretch of duct as it stands in the file. */
export interface TypedSection {
  readonly inFile: DuctSectionInFile;
  readonly path: IssuePath;
}

/**
 * A stretch of duct in SI, with what is assumed of its wall and fittings.
 *
 * @param reading - where issues and assumptions are collected
 * @param typed - what the file says, and where
 * @returns the section of the duct law; `undefined` where something is wrong, which is then reported
 */
export function readDuctSection(reading: Reading, typed: TypedSection): DuctSection | undefined {
  const { inFile, path } = typed;
  const size = readSize(reading, typed);
  if (size === undefined) return undefined;
  const { areaM2, hydraulicDiameterM } = size;
  const fittings = readFittings(reading, typed, Math.sqrt((4 * areaM2) / Math.PI));
  if (fittings === undefined) return undefined;
  const opening = (key: 'cap' | 'louver'): number => openingLoss(reading, typed, { key, areaM2 });
  const screen = inFile.screen === undefined ? 0 : screenLossCoefficient(inFile.screen);
  if (inFile.screen !== undefined) {
    assume(reading, [...path, 'screen'], {
      what: 'loss of its screen',
      si: screen,
      source: { document: 'SMACNA HVAC Systems Duct Design, screen in a duct', status: 'memory' },
    });
  }
  const lossCoefficient =
    fittings.loss + end(reading, typed, 'entry') + end(reading, typed, 'exit');
  return {
    lengthM: inFile.length + fittings.equivalentLengthM,
    hydraulicDiameterM,
    areaM2,
    roughnessM: readRoughness(reading, typed),
    frictionMultiplier: flexibility(reading, typed, hydraulicDiameterM),
    lossCoefficient: lossCoefficient + opening('cap') + opening('louver') + screen,
  };
}

function readSize(reading: Reading, { inFile, path }: TypedSection): DuctSize | undefined {
  const keys = (['diameter', 'size', 'flatOval'] as const).filter(
    (key) => inFile[key] !== undefined,
  );
  if (keys.length !== 1) {
    const code = keys.length === 0 ? 'duct.size-missing' : 'duct.several-sizes';
    const at = keys.length === 0 ? path : [...path, keys[1] as string];
    const accepted = ['diameter: 6 in', 'size: 3 1/4 in x 10 in', 'flatOval: 6 in x 14 in'];
    report(reading, at, { code, parameters: { accepted, keys } });
    return undefined;
  }
  if (inFile.diameter !== undefined) return roundDuctSize(inFile.diameter);
  if (inFile.size !== undefined) {
    const [widthM, heightM] = inFile.size;
    return rectangularDuctSize({ widthM, heightM });
  }
  const axes = inFile.flatOval ?? [0, 0];
  return flatOvalDuctSize({ majorAxisM: Math.max(...axes), minorAxisM: Math.min(...axes) });
}

function readRoughness(reading: Reading, { inFile, path }: TypedSection): number {
  if (inFile.roughness !== undefined) {
    if (inFile.material !== undefined) {
      const parameters = { key: 'material', way: 'roughness' };
      report(reading, [...path, 'material'], { code: 'key.without-effect', parameters });
    }
    return inFile.roughness;
  }
  const galvanised: DuctMaterial =
    inFile.size === undefined ? 'galvanised, round, spiral seam' : 'galvanised, rectangular';
  const usual = inFile.flexible === undefined ? galvanised : 'flexible, fully extended';
  const given = inFile.material === 'galvanised' ? galvanised : inFile.material;
  if (given === undefined || inFile.material === 'galvanised') {
    const source = ourChoice(given === undefined ? 'no material is given' : 'no make is given');
    const value = given ?? usual;
    reading.assumptions.push({ origin: originOf(path), what: 'material', value, source });
  }
  const { roughnessM, ...provenance } = ductRoughnesses[given ?? usual];
  reading.assumptions.push({
    origin: originOf(path),
    what: 'roughness of its wall',
    // Lengths are printed to a millimetre, and a roughness is a fraction of one.
    value: formatQuantity(roughnessM, 'length', { system: 'si', unit: 'mm', decimals: 3 }),
    source: sourceOf(provenance),
  });
  return roughnessM;
}

function flexibility(
  reading: Reading,
  { inFile, path }: TypedSection,
  hydraulicDiameterM: number,
): number {
  if (inFile.flexible === undefined) return 1;
  const { compression } = inFile.flexible;
  const factor = flexibleDuctFactor({ diameterM: hydraulicDiameterM, compression });
  assume(reading, [...path, 'flexible'], {
    what: 'factor on its friction for lying compressed',
    si: factor,
    source: {
      document: 'Abushakra, Walker and Sherman, HVAC&R Research 10 (2004)',
      status: 'memory',
    },
  });
  return factor;
}

function readFittings(
  reading: Reading,
  { inFile, path }: TypedSection,
  diameterM: number,
): { readonly loss: number; readonly equivalentLengthM: number } | undefined {
  let loss = 0;
  let equivalentLengthM = 0;
  let whole = true;
  for (const [name, typed] of Object.entries(inFile.fittings ?? {})) {
    const at = [...path, 'fittings', name];
    const own = typeof typed === 'number' ? { count: typed } : typed;
    const count = own.count ?? 1;
    if (own.loss !== undefined && own.equivalentLength !== undefined) {
      const parameters = { key: 'equivalentLength', way: 'loss' };
      report(reading, [...at, 'equivalentLength'], { code: 'key.without-effect', parameters });
      whole = false;
    } else if (own.loss !== undefined) {
      loss += count * own.loss;
    } else if (own.equivalentLength !== undefined) {
      equivalentLengthM += count * own.equivalentLength;
    } else {
      const one = fittingByName(name, diameterM);
      if (one === undefined) {
        reportUnknownFitting(reading, at, name);
        whole = false;
      } else if ('loss' in one) {
        loss += count * one.loss;
        assume(reading, at, { what: `loss of one ${name}`, si: one.loss, source: one.source });
      } else {
        equivalentLengthM += count * one.equivalentLengthM;
        assume(reading, at, {
          what: `equivalent length of one ${name}`,
          si: one.equivalentLengthM,
          dimension: 'length',
          source: one.source,
        });
      }
    }
  }
  return whole ? { loss, equivalentLengthM } : undefined;
}

function reportUnknownFitting(reading: Reading, path: IssuePath, name: string): void {
  const suggestion = suggest(name, fittingNames);
  report(reading, path, {
    code: 'duct.fitting-unknown',
    parameters: {
      found: name,
      known: fittingNames,
      ...(suggestion === undefined ? {} : { suggestion }),
    },
  });
}

/** Loss coefficient of an entry or exit that is given; 0 where none is. */
function end(reading: Reading, { inFile, path }: TypedSection, key: 'entry' | 'exit'): number {
  const typed = inFile[key];
  if (typed === undefined || typed === 'none') return 0;
  if (typeof typed === 'object') return typed.loss;
  const { lossCoefficient, ...provenance } = fittingLosses[typed];
  assume(reading, [...path, key], {
    what: `loss of its ${key}`,
    si: lossCoefficient,
    source: sourceOf(provenance),
  });
  return lossCoefficient;
}

function openingLoss(
  reading: Reading,
  { inFile, path }: TypedSection,
  of: { readonly key: 'cap' | 'louver'; readonly areaM2: number },
): number {
  const { key, areaM2: ductAreaM2 } = of;
  const typed = inFile[key];
  const at = [...path, key];
  if (typed === undefined) return 0;
  if (typeof typed === 'string') {
    const { freeShare, dischargeCoefficient, ...provenance } = terminalOpenings[typed];
    const freeAreaM2 = freeShare * ductAreaM2;
    const si = freeAreaLossCoefficient({ ductAreaM2, freeAreaM2, dischargeCoefficient });
    assume(reading, at, { what: `loss of its ${key}`, si, source: sourceOf(provenance) });
    return si;
  }
  const ways = (['loss', 'freeArea', 'freeShare'] as const).filter(
    (way) => typed[way] !== undefined,
  );
  if (ways.length !== 1) {
    const code = ways.length === 0 ? 'duct.loss-missing' : 'duct.several-losses';
    const parameters = { keys: ways, accepted: ['loss: 2.5', 'freeArea: 60 in2'] };
    report(reading, at, { code, parameters });
    return 0;
  }
  if (typed.loss !== undefined) return typed.loss;
  const freeAreaM2 = typed.freeArea ?? (typed.freeShare ?? 1) * ductAreaM2;
  assume(reading, at, {
    what: 'discharge coefficient of its free area',
    si: assumedDischargeCoefficient,
    source: dischargeSource,
  });
  const dischargeCoefficient = assumedDischargeCoefficient;
  return freeAreaLossCoefficient({ ductAreaM2, freeAreaM2, dischargeCoefficient });
}

function assume(
  reading: Reading,
  path: IssuePath,
  of: {
    readonly what: string;
    readonly si: number;
    readonly dimension?: AssumedDimension;
    readonly source: Source;
  },
): void {
  const { what, si, dimension = 'ratio', source } = of;
  reading.assumptions.push({ origin: originOf(path), what, value: { si, dimension }, source });
}
