import type { NodeAir, Scenario, ScenarioBatch } from '../scenario.js';
import type { Kernel } from './kernel.js';

/** A scenario as a batch of one row. */
export function asBatch({ outdoorAir, ...arrays }: Scenario): ScenarioBatch {
  if (outdoorAir === undefined) return { count: 1, ...arrays };
  return {
    count: 1,
    ...arrays,
    outdoorAir: {
      temperatureC: Float64Array.of(outdoorAir.temperatureC),
      densityKgPerM3: Float64Array.of(outdoorAir.densityKgPerM3),
    },
  };
}

/** Rows of a batch as a batch of its own, with copies of its numbers: a view would take its whole array to another thread. */
export function rowsOf(
  kernel: Kernel,
  batch: ScenarioBatch,
  { first, count }: { readonly first: number; readonly count: number },
): ScenarioBatch {
  const columns = columnsOf(kernel, batch);
  const part = (name: string): Float64Array | undefined => {
    const column = columns.find((candidate) => candidate.name === name);
    return column?.values.slice(first * column.width, (first + count) * column.width);
  };
  const air = (name: string): NodeAir | undefined => {
    const temperatureC = part(`${name}.temperatureC`);
    const densityKgPerM3 = part(`${name}.densityKgPerM3`);
    return temperatureC && densityKgPerM3 && { temperatureC, densityKgPerM3 };
  };
  const parts = {
    boundaryPressuresPa: part('boundaryPressuresPa'),
    linkScale: part('linkScale'),
    linkOffsetPa: part('linkOffsetPa'),
    columnDensityKgPerM3: part('columnDensityKgPerM3'),
    outdoorAir: air('outdoorAir'),
    zoneAir: air('zoneAir'),
    boundaryAir: air('boundaryAir'),
  };
  return {
    count,
    ...Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined)),
  };
}

/** One row of a batch as a scenario. */
export function rowOf(kernel: Kernel, batch: ScenarioBatch, row: number): Scenario {
  const { count: _, outdoorAir, ...arrays } = rowsOf(kernel, batch, { first: row, count: 1 });
  if (outdoorAir === undefined) return arrays;
  return {
    ...arrays,
    outdoorAir: {
      temperatureC: outdoorAir.temperatureC[0]!,
      densityKgPerM3: outdoorAir.densityKgPerM3[0]!,
    },
  };
}

/** What is wrong with the length of a batch's arrays, in words; undefined if nothing is. */
export function lengthProblem(columns: readonly Column[], count: number): string | undefined {
  const wrong = columns.find(({ values, width }) => values.length !== count * width);
  return wrong === undefined
    ? undefined
    : `${wrong.name} has ${wrong.values.length} numbers, it needs ${count * wrong.width}`;
}

/** What is wrong with the numbers of one row, in words; undefined if nothing is. */
export function rowProblem(columns: readonly Column[], row: number): string | undefined {
  for (const { name, values, width, least, most, orZero } of columns) {
    for (let index = row * width; index < (row + 1) * width; index++) {
      const value = values[index]!;
      if (!(value >= least && value <= most) && !(value === 0 && orZero)) {
        return `${name}[${index}] is ${value}; allowed is ${orZero ? '0 or ' : ''}${least} to ${most}`;
      }
    }
  }
  return undefined;
}

/** One array that a batch gives, with what it may hold. */
export interface Column {
  readonly name: string;
  readonly values: Float64Array;
  /** Numbers a row. */
  readonly width: number;
  readonly least: number;
  readonly most: number;
  /** Zero is allowed besides. */
  readonly orZero: boolean;
}

type Range = Pick<Column, 'least' | 'most' | 'orZero'>;

const temperatureRange: Range = { least: -100, most: 1500, orZero: false };
const densityRange: Range = { least: 0.05, most: 10, orZero: false };
const pressureRange: Range = { least: -1e6, most: 1e6, orZero: false };
/** Less than this part of a link is no link; flows of such a part would vanish among the doubles. */
export const leastScale = 1e-12;
const scaleRange: Range = { least: leastScale, most: 1e6, orZero: true };

/** The arrays that a batch gives. */
export function columnsOf(kernel: Kernel, batch: ScenarioBatch): Column[] {
  const { zoneCount, boundaryCount, linkCount } = kernel;
  const columns: Column[] = [];
  const add = (
    values: Float64Array | undefined,
    column: Pick<Column, 'name' | 'width'>,
    range: Range,
  ): void => {
    if (values !== undefined) columns.push({ values, ...column, ...range });
  };
  const addAir = (name: 'outdoorAir' | 'zoneAir' | 'boundaryAir', width: number): void => {
    const air = batch[name];
    if (air === undefined) return;
    add(air.temperatureC, { name: `${name}.temperatureC`, width }, temperatureRange);
    add(air.densityKgPerM3, { name: `${name}.densityKgPerM3`, width }, densityRange);
  };
  const addLinks = (
    name: 'linkScale' | 'linkOffsetPa' | 'columnDensityKgPerM3',
    range: Range,
  ): void => {
    add(batch[name], { name, width: linkCount }, range);
  };
  add(
    batch.boundaryPressuresPa,
    { name: 'boundaryPressuresPa', width: boundaryCount },
    pressureRange,
  );
  addLinks('linkScale', scaleRange);
  addLinks('linkOffsetPa', pressureRange);
  addLinks('columnDensityKgPerM3', densityRange);
  addAir('outdoorAir', 1);
  addAir('zoneAir', zoneCount);
  addAir('boundaryAir', boundaryCount);
  return columns;
}
