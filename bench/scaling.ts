/**
 * Cost against size for networks shaped like buildings:
 * `node node_modules/.cache/bench/bench/scaling.js`.
 */
import { buildNetwork, solveNetwork } from '@evendraft/network';
import { benchmarkNetwork } from './cases/benchmark-network.js';

console.log('  zones   links   build ms   cold solve ms   us a link   steps   sweeps');
for (const zones of [8, 30, 120, 500, 1000, 2000, 5000, 10_000]) {
  const links = 5 * zones;
  const description = benchmarkNetwork(1, { zones, links });
  const built = buildNetwork(description);
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
  const builds = Array.from({ length: 15 }, () => cpuMs(() => buildNetwork(description)));
  const times: number[] = [];
  let line = '';
  for (let turn = 0; turn < 15; turn++) {
    const repeats = Math.max(1, Math.round(2000 / zones));
    const solve = (): void => {
      const result = solveNetwork(built.network, {}, { enclosure: false });
      if (result.status !== 'solved') throw new Error(result.hint);
      const { iterations, lawSweeps } = result.proof;
      line = `${String(iterations).padStart(5)}   ${String(lawSweeps).padStart(6)}`;
    };
    const all = cpuMs(() => {
      for (let k = 0; k < repeats; k++) solve();
    });
    times.push(all / repeats);
  }
  const ms = median(times);
  console.log(
    `${String(zones).padStart(7)} ${String(description.links.length).padStart(7)} ${median(builds)
      .toFixed(1)
      .padStart(
        10,
      )} ${ms.toFixed(3).padStart(15)} ${((1000 * ms) / links).toFixed(3).padStart(11)}   ${line}`,
  );
}

function cpuMs(run: () => void): number {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[values.length >> 1]!;
}
