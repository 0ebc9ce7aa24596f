import { houseWeather } from '@evendraft/house';
import { createSolverPool, solveBatch } from '@evendraft/network';
import type { WorkerPort, WorkerReply, WorkerRequest } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  fan,
  inventedHouse,
  weather,
} from '../test-data/invented-house.js';
import type { PressureTarget } from './pressure-target.js';
import { uncertainInputIssues, usualUncertainty, type UncertainInput } from './uncertain-input.js';
import { uncertaintyStudy } from './uncertainty-study.js';

const source = { document: 'invented for this test', status: 'our choice' } as const;
const range = (kind: UncertainInput['kind'], low: number, high: number): UncertainInput => ({
  kind,
  low,
  high,
  shape: 'bell',
  source,
});

const oneRoom = compiled(
  inventedHouse({ devices: [device('dryer', { on: constantFlow(0.07) }, { zone: 'hall' })] }, [
    'hall',
  ]),
);
const twoRooms = compiled(
  inventedHouse({
    devices: [
      device('dryer', { on: fan(0.07) }),
      device('hood', { on: fan(0.2) }, { zone: 'hall' }),
    ],
    weathers: [weather('windy', 0, 6)],
  }),
);
const asked = (network: typeof oneRoom) => ({
  state: {
    running: Object.fromEntries(network.house.devices.map(({ id }) => [id, 'on'])),
    doors: Object.fromEntries(network.house.doors.map(({ id }) => [id, 'shut' as const])),
  },
  weather: houseWeather(network.house, network.house.weathers[0]!),
});
const target = (limitPa: number): PressureTarget => ({
  id: 'water heater',
  zone: 'hall',
  quantity: 'change from baseline',
  limitPa,
  side: 'not below',
});

describe('uncertainty', () => {
  it('has the spread that the law of one leak gives', async () => {
    // Fall = −50 (Q / (f Q50))^(1/n): the median at f = 1, and the logarithm spreads by sigma / n.
    const study = await uncertaintyStudy(
      oneRoom,
      {
        ranges: [range('airtightness', 0.8, 1.25)],
        situations: [asked(oneRoom)],
        targets: [target(-50 * (0.07 / 0.2) ** (1 / 0.65))],
      },
      { samples: 4000, seed: 3 },
    );
    const { percentiles } = study.zones[0]!.changePa;
    const sigma = Math.log(1.25) / 1.959964 / 0.65;
    const median = -50 * (0.07 / 0.2) ** (1 / 0.65);
    // 4,000 samples know these percentiles to about one in a hundred.
    expect(percentiles[2] / median).toBeCloseTo(1, 1);
    expect(
      Math.abs(Math.log(percentiles[0] / percentiles[4]) / (2 * 1.644854 * sigma) - 1),
    ).toBeLessThan(0.06);
    const [{ probability, between }] = study.targets as [(typeof study.targets)[number]];
    expect(Math.abs(probability - 0.5)).toBeLessThan(0.03);
    expect(between[0]).toBeLessThan(probability);
    expect(between[1]).toBeGreaterThan(probability);
    expect(study.zones[0]!.inputs).toEqual([
      { input: 'airtightness of the house', rankCorrelation: 1, share: 1 },
    ]);
  });

  it('draws everything, keeps the leaks together, and repeats with its seed', async () => {
    const question = { ranges: usualUncertainty(twoRooms.house), situations: [asked(twoRooms)] };
    const study = await uncertaintyStudy(twoRooms, question, { samples: 512, seed: 9 });
    expect(study.failed).toBe(0);
    expect(study.exponents).toHaveLength(8);
    expect(study.exponents[0]).toBeGreaterThan(0.58);
    expect(study.zones[0]!.inputs.map(({ input }) => input).sort()).toEqual([
      'airtightness of the house',
      'flow exponent of the leaks',
      'flow of the dryer',
      'flow of the hood',
      'share of the leaks of hall walls',
      'share of the leaks of utility walls',
      'wind pressure on the house',
    ]);
    expect(study.zones[0]!.inputs[0]!.share).toBeGreaterThan(0.2);
    expect(await uncertaintyStudy(twoRooms, question, { samples: 512, seed: 9 })).toEqual(study);
    const other = await uncertaintyStudy(twoRooms, question, { samples: 512, seed: 10 });
    expect(other.zones[0]!.pressurePa.mean).not.toBe(study.zones[0]!.pressurePa.mean);
  });

  it('gives the same with workers as without', async () => {
    const question = { ranges: usualUncertainty(twoRooms.house), situations: [asked(twoRooms)] };
    const alone = await uncertaintyStudy(twoRooms, question, { samples: 300 });
    const together = await uncertaintyStudy(twoRooms, question, {
      samples: 300,
      createPool: (network) =>
        createSolverPool(network, { workers: 3, createWorker: () => stubWorker(network) }),
    });
    expect(together).toEqual(alone);
  });

  it('stops when asked', async () => {
    const stop = new AbortController();
    const study = uncertaintyStudy(
      oneRoom,
      { ranges: usualUncertainty(oneRoom.house), situations: [asked(oneRoom)] },
      { samples: 100_000, signal: stop.signal, onProgress: () => stop.abort(new Error('enough')) },
    );
    await expect(study).rejects.toThrow('enough');
  });

  it('keeps the draws that are done where a stop is to keep them, spread over the exponents', async () => {
    const stop = new AbortController();
    const drawn: number[] = [];
    const study = await uncertaintyStudy(
      oneRoom,
      { ranges: usualUncertainty(oneRoom.house), situations: [asked(oneRoom)] },
      {
        samples: 800,
        signal: stop.signal,
        whenStopped: 'keep',
        onProgress: (done) => {
          drawn.push(done);
          if (done >= 200) stop.abort();
        },
      },
    );
    expect(drawn).toEqual([100, 200]);
    expect(study.stopped).toEqual({ done: 200, of: 800 });
    expect([study.samples, study.failed, study.solves]).toEqual([200, 0, 400]);
    const [low, high, ...more] = study.exponents;
    expect(more).toEqual([]);
    // One from each half of the range.
    expect(low).toBeLessThan(0.65);
    expect(high).toBeGreaterThan(0.65);
    expect(study.zones[0]!.pressurePa.percentiles.every(Number.isFinite)).toBe(true);
  });

  it('names every range that makes no sense', async () => {
    const ranges = [
      range('airtightness', 1.2, 0.8),
      range('flow exponent', 0.3, 0.6),
      { ...range('device flow', 0.9, 1.1), device: 'sauna' },
      range('airtightness', 0.8, 1.2),
    ];
    expect(
      uncertainInputIssues(ranges, oneRoom.house).map(({ code, index }) => [code, index]),
    ).toEqual([
      ['range.upside-down', 0],
      ['range.out-of-bounds', 1],
      ['range.unknown-device', 2],
      ['range.twice', 3],
    ]);
    await expect(
      uncertaintyStudy(oneRoom, { ranges, situations: [asked(oneRoom)] }),
    ).rejects.toMatchObject({ code: 'StudyArgument', argument: 'ranges.0' });
  });
});

/** A worker in this thread: solves what it is sent when asked, and answers later. */
function stubWorker(network: Parameters<typeof solveBatch>[0]): WorkerPort {
  let answer: (reply: WorkerReply) => void = () => undefined;
  return {
    postMessage(request: WorkerRequest) {
      if (request.kind !== 'chunk') return;
      const result = solveBatch(network, structuredClone(request.batch), {
        tolerance: request.tolerance,
        maximumIterations: request.maximumIterations,
        flows: request.flows,
      });
      queueMicrotask(() => {
        answer({ ticket: request.ticket, result });
      });
    },
    onMessage(listen) {
      answer = listen;
    },
    onError: () => undefined,
    terminate: () => undefined,
  };
}
