/**
 * A year of hours × 100 samples of a house of 8 zones, in a pool of workers:
 * `node node_modules/.cache/bench/bench/year.js [SAMPLES] [WORKERS]`.
 */
import { cpus } from 'node:os';
import { buildNetwork, createSolverPool } from '@evendraft/network';
import { createNodeWorker } from '@evendraft/network/workers/node';
import { randomNumbers } from '../packages/checks/src/networks/random-numbers.js';
import { benchmarkNetwork } from './cases/benchmark-network.js';

const samples = Number(process.argv[2] ?? 100);
const workers = Number(process.argv[3] ?? cpus().length);
const hours = 8760;
const description = benchmarkNetwork(1, { zones: 8, links: 40, exponents: 'usual' });
const built = buildNetwork(description);
if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
const pool = createSolverPool(built.network, { createWorker: createNodeWorker, workers });
const boundaries = description.boundaries.length;
const links = description.links.length;
const random = randomNumbers(1);

const weather = Float64Array.from({ length: hours * boundaries }, (_, k) => {
  const hour = Math.floor(k / boundaries);
  return 6 * Math.sin(hour / 24 + (k % boundaries)) + random.between(-1, 1);
});
const began = performance.now();
const cpuBefore = process.cpuUsage();
let solved = 0;
for (let sample = 0; sample < samples; sample++) {
  const scale = Float64Array.from({ length: links }, () => Math.exp(random.between(-0.5, 0.5)));
  const linkScale = new Float64Array(hours * links);
  for (let hour = 0; hour < hours; hour++) linkScale.set(scale, hour * links);
  const result = await pool.solve({ count: hours, boundaryPressuresPa: weather, linkScale });
  solved += result.status.filter((status) => status === 1).length;
}
const seconds = (performance.now() - began) / 1000;
const { user, system } = process.cpuUsage(cpuBefore);
console.log(
  `${solved} of ${hours * samples} solved by ${workers} workers in ${seconds.toFixed(1)} s, ` +
    `${((user + system) / 1e6).toFixed(1)} s of CPU time: ${((user + system) / solved).toFixed(2)} us each`,
);
pool.close();
