/**
 * One method on one set of networks in a process of its own.
 *
 *   run-method.ts METHOD ZONES LINKS EXPONENTS NETWORKS REPEATS SOLUTIONS
 *
 * METHOD is own, own-built (layout counted), textbook or floor. Prints the CPU time of a solve in
 * microseconds (median of the repeats) and how many failed, as peers/harness.c does.
 */
import { writeFileSync } from 'node:fs';
import { buildNetwork, solveNetwork } from '@evendraft/network';
import { benchmarkNetwork } from './cases/benchmark-network.js';
import { coldSolve } from './cases/solve-own.js';
import { textbookNewton } from './cases/textbook-newton.js';

/** Solves of one network in a row: few enough to see other networks' branches in between. */
const inARow = 4;

const [method, zones, links, exponents, networks, repeats, solutions] = process.argv.slice(2);
const size = {
  zones: Number(zones),
  links: Number(links),
  exponents: exponents === 'usual' ? 'usual' : 'any',
} as const;
const descriptions = Array.from({ length: Number(networks) }, (_, index) =>
  benchmarkNetwork(index + 1, size),
);

let failed = 0;
const pressures: ArrayLike<number>[] = [];
const median = measure(methodOf());
console.log(`${median.toFixed(6)} ${failed}`);
if (solutions !== undefined) {
  writeFileSync(solutions, pressures.map((row) => Array.from(row).join(' ')).join('\n') + '\n');
}

/** What runs once over all networks. */
function methodOf(): () => void {
  if (method === 'textbook') {
    const solvers = descriptions.map(textbookNewton);
    return () => {
      failed = 0;
      solvers.forEach((solver, index) => {
        const found = solver();
        if (found === undefined) failed++;
        pressures[index] = found ?? [];
      });
    };
  }
  if (method === 'own-built') {
    return () => {
      descriptions.forEach((description, index) => {
        const solver = coldSolve(built(description), 1);
        solver();
        pressures[index] = solver.pressuresPa();
      });
    };
  }
  if (method === 'floor') return floor();
  const solvers = descriptions.map((description) => coldSolve(built(description), inARow));
  return () => {
    solvers.forEach((solver, index) => {
      solver();
      pressures[index] = solver.pressuresPa();
    });
  };
}

/** Math.pow as often as our solver evaluates a power law, and nothing else. */
function floor(): () => void {
  const counts = descriptions.map((description) => {
    const network = built(description);
    const result = solveNetwork(network, {}, { enclosure: false });
    if (result.status !== 'solved') throw new Error(result.hint);
    const powers = description.links.filter((link) => link.law.kind === 'powerLaw').length;
    return powers * result.proof.lawSweeps;
  });
  const total = counts.reduce((sum, count) => sum + count, 0);
  const exponent = Float64Array.from({ length: 4096 }, (_, k) => 0.5 + ((k * 97) % 4096) / 8192);
  const base = Float64Array.from({ length: 4096 }, (_, k) => 0.01 + ((k * 37) % 4096) / 100);
  let sink = 0;
  return () => {
    for (let k = 0; k < total; k++) sink += Math.pow(base[k & 4095]!, exponent[k & 4095]!);
    if (Number.isNaN(sink)) throw new Error('unreachable, but keeps the loop');
  };
}

function built(description: (typeof descriptions)[number]) {
  const result = buildNetwork(description);
  if (result.status === 'rejected') throw new Error(JSON.stringify(result.issues));
  return result.network;
}

function measure(run: () => void): number {
  // The compiler has seen everything before the clock starts, and is done with it: four seconds of CPU time, however
  // busy the machine. Laying out a large network takes the longest.
  while (process.cpuUsage().user < 4e6) run();
  const each = descriptions.length * (method === 'own' ? inARow : 1);
  const times: number[] = [];
  for (let turn = 0; turn < Number(repeats); turn++) {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / each);
  }
  times.sort((a, b) => a - b);
  return times[times.length >> 1]!;
}
