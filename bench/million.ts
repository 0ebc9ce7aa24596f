/**
 * Hard networks on demand: `node node_modules/.cache/bench/bench/million.js [COUNT] [FIRST SEED]`.
 *
 * A million of them by default, in slices on every core, with progress. Exits 1 if one is not solved, or is within
 * one atmosphere and not enclosed, and names its seed.
 */
import { fork } from 'node:child_process';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { HardNetworksOutcome } from '../packages/checks/src/networks/hard-networks.js';
import { tryHardNetworks } from '../packages/checks/src/networks/hard-networks.js';

const slice = 2000;

if (process.send === undefined) await runAll();
else {
  process.on('message', ([first, count]: [number, number]) => {
    process.send?.(tryHardNetworks(first, count));
  });
}

async function runAll(): Promise<void> {
  const count = Number(process.argv[2] ?? 1_000_000);
  const firstSeed = Number(process.argv[3] ?? 1);
  const outcomes: HardNetworksOutcome[] = [];
  let next = firstSeed;
  const began = performance.now();
  await Promise.all(
    cpus().map(
      () =>
        new Promise<void>((resolve, reject) => {
          const worker = fork(fileURLToPath(import.meta.url), { execArgv: process.execArgv });
          const feed = (): void => {
            const left = firstSeed + count - next;
            if (left <= 0) {
              worker.kill();
              resolve();
              return;
            }
            const size = Math.min(slice, left);
            worker.send([next, size]);
            next += size;
          };
          worker.on('error', reject);
          worker.on('message', (outcome: HardNetworksOutcome) => {
            outcomes.push(outcome);
            report(outcomes, { count, began });
            feed();
          });
          feed();
        }),
    ),
  );
  const failed = outcomes.flatMap((outcome) => outcome.failed);
  const open = outcomes.flatMap((outcome) => outcome.notEnclosed);
  console.log(
    `\nnot solved: ${failed.join(' ') || 'none'}\nnot enclosed: ${open.join(' ') || 'none'}`,
  );
  if (failed.length + open.length > 0) process.exitCode = 1;
}

function report(
  outcomes: readonly HardNetworksOutcome[],
  { count, began }: { readonly count: number; readonly began: number },
): void {
  const sum = (read: (outcome: HardNetworksOutcome) => number): number =>
    outcomes.reduce((total, outcome) => total + read(outcome), 0);
  const greatest = (read: (outcome: HardNetworksOutcome) => number): number =>
    Math.max(...outcomes.map(read));
  const tried = sum((outcome) => outcome.tried);
  const seconds = (performance.now() - began) / 1000;
  process.stdout.write(
    `\r${tried} of ${count} in ${seconds.toFixed(0)} s: ` +
      `${sum((outcome) => outcome.failed.length)} not solved, ` +
      `${sum((outcome) => outcome.notEnclosed.length)} not enclosed; ` +
      `${sum((outcome) => outcome.beyondAtmosphere)} beyond one atmosphere, ` +
      `${sum((outcome) => outcome.notEnclosedBeyond)} of them not enclosed; ` +
      `steps ${(sum((outcome) => outcome.iterations) / tried).toFixed(2)} on average, ` +
      `${greatest((outcome) => outcome.mostIterations)} at most; ` +
      `greatest relative radius ${greatest((outcome) => outcome.greatestRelativeRadius).toExponential(1)}   `,
  );
}
