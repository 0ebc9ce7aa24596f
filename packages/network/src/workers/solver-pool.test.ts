import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../build-network.js';
import type { BuiltNetwork } from '../built-network.js';
import { solveBatch } from '../solve-batch.js';
import { createAnswerer } from './answer-request.js';
import { createNodeWorker } from './node.js';
import { createSolverPool } from './solver-pool.js';
import type { CreateWorker } from './worker-port.js';

/** A worker in this thread, which answers after a number of turns that differs from worker to worker. */
function slowWorkers(): CreateWorker {
  let made = 0;
  return () => {
    const answer = createAnswerer();
    const turns = 1 + (made++ % 3) * 2;
    let listener: ((reply: never) => void) | undefined;
    let alive = true;
    return {
      postMessage(message) {
        const copy = structuredClone(message);
        const after = (left: number): void => {
          if (left > 0) {
            setTimeout(after, 0, left - 1);
            return;
          }
          const reply = answer(copy);
          if (reply !== undefined && alive) listener?.(structuredClone(reply) as never);
        };
        after(turns);
      },
      onMessage(heard) {
        listener = heard;
      },
      onError() {
        // This worker never fails by itself.
      },
      terminate() {
        alive = false;
      },
    };
  };
}

const count = 2000;
const batch = {
  count,
  boundaryPressuresPa: Float64Array.from({ length: count }, (_, row) => 10 * Math.sin(row)),
  linkScale: Float64Array.from({ length: 2 * count }, (_, k) => (k % 400 === 399 ? 0 : 1)),
};

describe('a pool of workers', () => {
  it('gives the same result, bit for bit, for any number of workers and none', async () => {
    const network = oneRoom();
    const alone = solveBatch(network, batch, { flows: true });
    for (const workers of [1, 2, 5]) {
      const pool = createSolverPool(network, { createWorker: slowWorkers(), workers });
      const progress: number[] = [];
      const result = await pool.solve(batch, {
        flows: true,
        onProgress: (done, rows) => {
          expect(rows).toBe(count);
          progress.push(done);
        },
      });
      pool.close();
      expect(result).toEqual(alone);
      expect(progress).toHaveLength(Math.ceil(count / 256));
      expect(progress[progress.length - 1]).toBe(count);
    }
  });

  it('stops with the reason of its signal, and goes on with the next batch', async () => {
    const pool = createSolverPool(oneRoom(), { createWorker: slowWorkers(), workers: 2 });
    const stop = new AbortController();
    const cancelled = pool.solve(batch, {
      signal: stop.signal,
      onProgress: () => {
        stop.abort(new Error('enough'));
      },
    });
    await expect(cancelled).rejects.toThrow('enough');
    const small = { count: 3, boundaryPressuresPa: Float64Array.of(1, 2, 3) };
    expect((await pool.solve(small)).status).toHaveLength(3);
    pool.close();
    await expect(pool.solve(small)).rejects.toThrow('closed');
  });

  const built = existsSync(new URL('../../dist/workers/node-worker.js', import.meta.url));
  it.skipIf(!built)('runs in threads of Node, from the built worker', async () => {
    const network = oneRoom();
    const pool = createSolverPool(network, { createWorker: createNodeWorker, workers: 2 });
    const result = await pool.solve(batch, { flows: true });
    pool.close();
    expect(result).toEqual(solveBatch(network, batch, { flows: true }));
  });
});

function oneRoom(): BuiltNetwork {
  const air = { temperatureC: 20, densityKgPerM3: 1.2 };
  const link = (id: string) => ({
    id,
    origin: id,
    from: 'room',
    to: 'out',
    fromHeightM: 0,
    toHeightM: 0,
  });
  const result = buildNetwork({
    outdoorAir: air,
    zones: [{ id: 'room', origin: 'room', heightM: 0, air }],
    boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air }],
    links: [
      { ...link('leak'), law: { kind: 'powerLaw', coefficientM3PerSPaN: 0.02, exponent: 0.65 } },
      { ...link('fan'), law: { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 } },
    ],
  });
  if (result.status === 'rejected') throw new Error(JSON.stringify(result.issues));
  return result.network;
}
