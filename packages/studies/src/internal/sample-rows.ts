import type { CompiledHouse } from '@evendraft/house';
import { resolveColumns } from '../resolve-columns.js';
import {
  batchStatuses,
  createBatchResult,
  solveBatch,
  type BatchResult,
  type ScenarioBatch,
  type SolverPool,
} from '@evendraft/network';
import type { BalanceQuestion } from '../balance-study.js';
import { stackScenarios } from './stack-scenarios.js';
import type { Knob, Knobs } from './uncertain-knobs.js';

/** A situation, and which of its balances counts where air in shafts and flues may go either way. */
export interface AskedRow {
  readonly question: BalanceQuestion;
  readonly shown: 'lowest' | 'highest';
}

/** Situations and their baselines, each solved once a sample. */
export interface AskedRows {
  readonly rows: readonly AskedRow[];
  /** For each situation its row and that of its baseline. */
  readonly pairs: readonly { readonly row: number; readonly baseline: number }[];
}

/** What samples gave: by zone and sample the worst over the situations, by input and sample the value drawn. */
export interface SampleOutcome {
  readonly samples: number;
  readonly lowestPa: readonly Float64Array[];
  readonly highestPa: readonly Float64Array[];
  readonly largestFallPa: readonly Float64Array[];
  readonly largestRisePa: readonly Float64Array[];
  readonly inputs: Map<string, Float64Array>;
  readonly failed: Set<number>;
}

/** Solves blocks of samples on one network, in arrays that are made once. */
export interface SampleRows {
  /** Draws, solves and collects the samples from `first` on. */
  solve(block: {
    readonly first: number;
    readonly count: number;
    readonly signal: AbortSignal | undefined;
  }): Promise<void>;
}

/** What the rows are made from. */
export interface SampleSetting {
  readonly compiled: CompiledHouse;
  /** Value of the flow exponent in this network [-]. */
  readonly exponent: number;
  readonly knobs: Knobs;
  readonly asked: AskedRows;
  readonly outcome: SampleOutcome;
  readonly uniform: () => number;
  /** Most samples in a block. */
  readonly mostSamples: number;
  readonly pool: SolverPool | undefined;
}

/**
 * Prepares rows of samples: everything but what is drawn is written once. All samples of one situation stand
 * together, so that from row to row no link is switched on or off.
 *
 * @param setting - network, knobs, situations, and where results go
 * @returns how to solve a block
 */
export function sampleRows(setting: SampleSetting): SampleRows {
  const { compiled, knobs, asked, outcome, uniform, mostSamples, pool, exponent } = setting;
  const { network, links } = compiled;
  // Columns of shafts and flues stay as they stand in the situation without any change.
  const once = asked.rows.map(
    ({ question: { state, weather, airtightnessCase = 0 }, shown }) =>
      resolveColumns(compiled, { state, weather, airtightnessCase }, shown).scenario,
  );
  const scale = once.map((row) => row.linkScale ?? new Float64Array(links.length).fill(1));
  const wind = once.map((row) => row.boundaryPressuresPa ?? new Float64Array(0));
  const full = stackScenarios(
    once.flatMap((row) => Array.from({ length: mostSamples }, () => row)),
  ) as ScenarioBatch & { linkScale: Float64Array; boundaryPressuresPa: Float64Array };
  const outdoors = network.description.boundaries.map(({ id }) => id.startsWith('@'));
  const factors = new Float64Array(links.length);
  const into = pool === undefined ? createBatchResult(network, full.count, false) : undefined;

  const recordOf = ({ label }: Knob): Float64Array => {
    const values = outcome.inputs.get(label) ?? new Float64Array(outcome.samples);
    outcome.inputs.set(label, values);
    return values;
  };
  const turned = knobs.links.map((knob) => ({ ...knob, record: recordOf(knob) }));
  const shared = knobs.distribution.map((knob) => ({ ...knob, record: recordOf(knob) }));
  const total = knobs.weights.reduce((sum, weight) => sum + weight, 0);
  const windRecord = knobs.wind && recordOf(knobs.wind);
  const exponentRecord = knobs.exponent && recordOf(knobs.exponent);

  const turn = (turnedLinks: readonly number[], factor: number): void => {
    for (const link of turnedLinks) factors[link]! *= factor;
  };
  const draw = (sample: number, place: number): void => {
    factors.fill(1);
    for (const { at, links: own, record } of turned) turn(own, (record[sample] = at(uniform())));
    // Groups of leaks grow and shrink against each other; the house as a whole stays as tight as it is.
    let mean = 0;
    shared.forEach(({ at, record }, group) => {
      record[sample] = at(uniform());
      mean += (knobs.weights[group]! / total) * record[sample];
    });
    for (const { links: own, record } of shared) turn(own, (record[sample]! /= mean));
    const windFactor = knobs.wind?.at(uniform()) ?? 1;
    if (windRecord) windRecord[sample] = windFactor;
    if (exponentRecord) exponentRecord[sample] = exponent;
    for (let row = 0; row < once.length; row += 1) {
      const atLink = (row * mostSamples + place) * links.length;
      const ownScale = scale[row]!;
      for (let link = 0; link < links.length; link += 1) {
        full.linkScale[atLink + link] = ownScale[link]! * factors[link]!;
      }
      const atBoundary = (row * mostSamples + place) * outdoors.length;
      for (let boundary = 0; boundary < outdoors.length; boundary += 1) {
        const factor = outdoors[boundary] === true ? windFactor : 1;
        full.boundaryPressuresPa[atBoundary + boundary] = wind[row]![boundary]! * factor;
      }
    }
  };

  return {
    async solve({ first, count, signal }) {
      for (let place = 0; place < count; place += 1) draw(first + place, place);
      const result = into ?? (await pool!.solve(full, signal === undefined ? {} : { signal }));
      if (into !== undefined) {
        for (let row = 0; row < once.length; row += 1) {
          const from = row * mostSamples;
          solveBatch(network, full, { into, rows: [from, from + count] });
        }
      }
      for (let place = 0; place < count; place += 1) {
        collect(result, { setting, sample: first + place, place });
      }
    },
  };
}

function collect(
  result: BatchResult,
  of: { readonly setting: SampleSetting; readonly sample: number; readonly place: number },
): void {
  const { sample, place } = of;
  const solved = batchStatuses.indexOf('solved');
  const { compiled, asked, outcome, mostSamples } = of.setting;
  const nodes = compiled.network.description.zones.length;
  for (let row = 0; row < asked.rows.length; row += 1) {
    if (result.status[row * mostSamples + place] === solved) continue;
    outcome.failed.add(sample);
    return;
  }
  for (let zone = 0; zone < outcome.lowestPa.length; zone += 1) {
    let [lowest, highest, fall, rise] = [Infinity, -Infinity, Infinity, -Infinity];
    for (const { row, baseline } of asked.pairs) {
      const pressure = result.pressuresPa[(row * mostSamples + place) * nodes + zone]!;
      const change =
        pressure - result.pressuresPa[(baseline * mostSamples + place) * nodes + zone]!;
      lowest = Math.min(lowest, pressure);
      highest = Math.max(highest, pressure);
      fall = Math.min(fall, change);
      rise = Math.max(rise, change);
    }
    outcome.lowestPa[zone]![sample] = lowest;
    outcome.highestPa[zone]![sample] = highest;
    outcome.largestFallPa[zone]![sample] = fall;
    outcome.largestRisePa[zone]![sample] = rise;
  }
}
