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
  for (const { name, values, width, least, most } of columns) {
    for (let index = row * width; index < (row + 1) * width; index++) {
      const value = values[index]!;
      if (!(value >= least && value <= most)) {
        return `${name}[${index}] is ${value}; allowed is ${least} to ${most}`;
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
}

/** The arrays that a batch gives. */
export function columnsOf(kernel: Kernel, batch: ScenarioBatch): Column[] {
  const { zoneCount, boundaryCount, linkCount } = kernel;
  const temperature = { least: -100, most: 1500 };
  const density = { least: 0.05, most: 10 };
  const pressure = { least: -1e6, most: 1e6 };
  const air = (name: 'outdoorAir' | 'zoneAir' | 'boundaryAir', width: number) => [
    { name: `${name}.temperatureC`, values: batch[name]?.temperatureC, width, ...temperature },
    { name: `${name}.densityKgPerM3`, values: batch[name]?.densityKgPerM3, width, ...density },
  ];
  const all = [
    {
      name: 'boundaryPressuresPa',
      values: batch.boundaryPressuresPa,
      width: boundaryCount,
      ...pressure,
    },
    { name: 'linkScale', values: batch.linkScale, width: linkCount, least: 0, most: 1e6 },
    { name: 'linkOffsetPa', values: batch.linkOffsetPa, width: linkCount, ...pressure },
    {
      name: 'columnDensityKgPerM3',
      values: batch.columnDensityKgPerM3,
      width: linkCount,
      ...density,
    },
    ...air('outdoorAir', 1),
    ...air('zoneAir', zoneCount),
    ...air('boundaryAir', boundaryCount),
  ];
  return all.flatMap(({ values, ...column }) =>
    values === undefined ? [] : [{ ...column, values }],
  );
}
