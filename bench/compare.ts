/**
 * Our solver beside others on the same networks: `npm run build -w bench`, then
 * `node node_modules/.cache/bench/bench/compare.js [ROUNDS]`.
 *
 * Every measurement is a fresh process; methods take turns, so that a busy machine slows all alike; ratios are
 * taken within a round, and their median is printed. Answers are compared with ours. The C peers want gcc and
 * the Debian packages libsundials-dev and libgsl-dev, SciPy wants python3-scipy; what is missing is left out
 * with a word.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { benchmarkNetwork } from './cases/benchmark-network.js';
import { networkAsReference, networksAsText } from './cases/write-networks.js';

interface Case {
  readonly zones: number;
  readonly links: number;
  readonly exponents: 'any' | 'usual';
  readonly networks: number;
  readonly repeats: number;
  readonly methods: readonly string[];
}

const small = ['own', 'floor', 'textbook', 'c-own', 'kinsol', 'kinsol-klu', 'gsl-hybrid', 'scipy'];
const cases: readonly Case[] = [
  { zones: 1, links: 10, exponents: 'any', networks: 200, repeats: 60, methods: small },
  { zones: 8, links: 40, exponents: 'any', networks: 200, repeats: 30, methods: small },
  { zones: 8, links: 40, exponents: 'usual', networks: 200, repeats: 30, methods: small },
  { zones: 30, links: 200, exponents: 'any', networks: 200, repeats: 10, methods: small },
  {
    zones: 2000,
    links: 10_000,
    exponents: 'any',
    networks: 1,
    repeats: 5,
    methods: ['own', 'own-built', 'kinsol-klu'],
  },
];
const rounds = Number(process.argv[2] ?? 5);
const folder = mkdtempSync(join(tmpdir(), 'evendraft-bench-'));
const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const source = (name: string): string => join('bench', name);
const harness = compileHarness();

console.log(
  `Node ${process.version}, ${cpus().length} cores, ${cpus()[0]?.model ?? ''}; ${rounds} rounds.`,
);
console.log(
  'time: CPU microseconds of one cold solve; ratio: its time over ours in the same round.',
);
for (const one of cases) compare(one);

function compare(one: Case): void {
  const { zones, links, exponents, networks } = one;
  const descriptions = Array.from({ length: networks }, (_, index) =>
    benchmarkNetwork(index + 1, one),
  );
  const text = join(folder, `${zones}-${exponents}.txt`);
  writeFileSync(text, networksAsText(descriptions));
  const reference = descriptions.map((description, index) =>
    networkAsReference(`bench${index + 1}`, description),
  );
  writeFileSync(join(folder, `${zones}-${exponents}.json`), JSON.stringify(reference));

  const times = new Map<string, number[]>();
  const failures = new Map<string, string>();
  for (let round = 0; round < rounds; round++) {
    for (const method of one.methods) {
      const measured = run(method, one, text);
      if (measured === undefined) continue;
      times.set(method, [...(times.get(method) ?? []), measured.time]);
      failures.set(method, measured.failed);
    }
  }
  console.log(`\n${zones} zones, ${links} links, exponents ${exponents}, ${networks} networks`);
  const own = times.get('own')!;
  for (const [method, values] of times) {
    const ratios = values.map((value, round) => value / own[round]!);
    console.log(
      `  ${method.padEnd(11)} ${median(values).toFixed(2).padStart(10)} us   ratio ${median(ratios)
        .toFixed(2)
        .padStart(
          7,
        )}   failed ${failures.get(method)}   greatest difference ${difference(method, one)}`,
    );
  }
}

function run(
  method: string,
  one: Case,
  text: string,
): { time: number; failed: string } | undefined {
  const out = solutionsOf(method, one);
  try {
    const printed =
      method === 'scipy'
        ? execFileSync('/usr/bin/python3', [source('peers/scipy-hybr.py'), text, out, '1'])
        : ['own', 'own-built', 'floor', 'textbook'].includes(method)
          ? execFileSync(process.execPath, [
              here('run-method.js'),
              method,
              String(one.zones),
              String(one.links),
              one.exponents,
              String(one.networks),
              String(method === 'textbook' ? 3 : one.repeats),
              out,
            ])
          : harness === undefined
            ? undefined
            : execFileSync(harness, [
                method === 'c-own' ? 'own' : method,
                text,
                out,
                String(one.repeats),
              ]);
    const [time, failed] = String(printed ?? '').split(' ');
    return printed === undefined ? undefined : { time: Number(time), failed: failed?.trim() ?? '' };
  } catch (error) {
    console.log(`  ${method} left out: ${String(error).split('\n')[0]}`);
    return undefined;
  }
}

/** Greatest difference to our pressures, in Pa, over the networks that the method solved. */
function difference(method: string, one: Case): string {
  if (method === 'floor') return '-';
  const read = (name: string): number[][] =>
    readFileSync(solutionsOf(name, one), 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.trim().split(' ').map(Number));
  const ours = read('own');
  const errors = read(method).map((row, network) =>
    Math.max(...row.map((value, zone) => Math.abs(value - ours[network]![zone]!))),
  );
  const within = errors.filter((error) => error < 1e-3).length;
  return `${median(errors).toExponential(0)} Pa at the median, ${within} of ${errors.length} within 1 mPa`;
}

function solutionsOf(method: string, one: Case): string {
  return join(folder, `${one.zones}-${one.exponents}-${method}.solutions`);
}

function compileHarness(): string | undefined {
  const program = join(folder, 'harness');
  const libraries =
    '-lsundials_kinsol -lsundials_nvecserial -lsundials_sunlinsoldense -lsundials_sunlinsolklu -lsundials_sunmatrixdense -lsundials_sunmatrixsparse -lgsl -lgslcblas -lm';
  try {
    execFileSync('gcc', [
      '-O3',
      '-march=native',
      '-o',
      program,
      source('peers/harness.c'),
      '-I/usr/include/suitesparse',
      ...libraries.split(' '),
    ]);
    return program;
  } catch {
    console.log('The C peers are left out: gcc, libsundials-dev and libgsl-dev are needed.');
    return undefined;
  }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? NaN;
}
