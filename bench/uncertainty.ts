/**
 * Rate of the uncertainty study beside the batch kernel's own:
 * `npx tsx --conditions @evendraft/source bench/uncertainty.ts [SAMPLES] [ROUNDS]`.
 *
 * Both solve the same situations of one house in one thread, in turns; the study draws, scales and collects
 * besides. Prints solves a second of both and their ratio, median of the rounds; exits 1 below one half.
 */
import {
  baselineOf,
  compileHouse,
  houseScenario,
  houseWeather,
  parseHouse,
} from '@evendraft/house';
import { batchStatuses, createBatchResult, solveBatch } from '@evendraft/network';
import { uncertaintyStudy, usualUncertainty } from '@evendraft/studies';

const samples = Number(process.argv[2] ?? 8000);
const rounds = Number(process.argv[3] ?? 5);

const parsed = parseHouse({
  evendraft: 1,
  name: 'invented',
  floorArea: '2180 ft2',
  airtightness: '310 cfm at 50 Pa',
  zones: {
    house: { area: '1200 ft2', height: '8 ft' },
    basement: { kind: 'basement', area: '980 ft2', height: '8 ft' },
  },
  exhaust: {
    hood: { low: '250 cfm', medium: '500 cfm', high: '900 cfm', zone: 'house' },
    dryer: { flow: '150 cfm', zone: 'basement' },
  },
  weather: [{ name: 'cold', outdoorTemperature: '-10 °C', wind: '5 m/s from 315 deg' }],
});
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const compile = compileHouse(parsed.house);
if (!compile.ok) throw new Error(JSON.stringify(compile.issues));
const { compiled } = compile;
const weather = houseWeather(compiled.house, compiled.house.weathers[0]!);
const doors = Object.fromEntries(
  compiled.house.doors.map(({ id, positions }) => [id, positions[0] ?? 'open']),
);
const situation = { state: { running: { hood: 'high', dryer: 'on' }, doors }, weather };
const asked = [situation, { ...situation, state: baselineOf(situation.state) }];

const ratios: number[] = [];
// The first round of both warms up the compiler and does not count.
await studyRate();
kernelRate();
for (let round = 1; round <= rounds; round += 1) {
  const study = await studyRate();
  const kernel = kernelRate();
  ratios.push(study / kernel);
  console.log(
    `round ${round}: study ${Math.round(study)} solves/s, kernel ${Math.round(kernel)} solves/s, ratio ${(study / kernel).toFixed(2)}`,
  );
}
ratios.sort((a, b) => a - b);
const median = ratios[Math.floor(ratios.length / 2)]!;
console.log(`median ratio ${median.toFixed(2)}; wanted is 0.5 or more`);
if (median < 0.5) process.exitCode = 1;

async function studyRate(): Promise<number> {
  const began = process.cpuUsage();
  const study = await uncertaintyStudy(
    compiled,
    { ranges: usualUncertainty(compiled.house), situations: [situation] },
    { samples },
  );
  if (study.failed > 0) throw new Error(`${study.failed} samples failed`);
  return study.solves / secondsSince(began);
}

/** The kernel alone on as many rows, whose leaks, fans and wind differ from row to row as in the study. */
function kernelRate(): number {
  const { network } = compiled;
  const rows = 2 * samples;
  const scenarios = asked.map(
    ({ state }) => houseScenario(compiled, { state, weather, airtightnessCase: 0 }).scenario,
  );
  const links = compiled.links.length;
  const places = weather.boundaryPressuresPa.length;
  const linkScale = new Float64Array(rows * links);
  const boundaryPressuresPa = new Float64Array(rows * places);
  // All rows of one situation stand together, as in the study.
  for (let row = 0; row < rows; row += 1) {
    const from = scenarios[row < samples ? 0 : 1]!;
    // Fractions of the golden ratio spread evenly and never repeat.
    const draw = (step: number): number => 0.8 + 0.4 * ((row * step * 0.6180339887) % 1);
    for (let link = 0; link < links; link += 1) {
      linkScale[row * links + link] = from.linkScale![link]! * draw(1 + (link % 5));
    }
    for (let place = 0; place < places; place += 1) {
      boundaryPressuresPa[row * places + place] = from.boundaryPressuresPa![place]! * draw(7);
    }
  }
  const into = createBatchResult(network, rows, false);
  const began = process.cpuUsage();
  solveBatch(network, { count: rows, linkScale, boundaryPressuresPa }, { into });
  const seconds = secondsSince(began);
  if (into.status.some((status) => batchStatuses[status] !== 'solved'))
    throw new Error('not solved');
  return rows / seconds;
}

/** CPU time of this process, which a busy machine disturbs less than the clock [s]. */
function secondsSince(began: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1e6;
}
