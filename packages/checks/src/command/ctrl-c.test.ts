import { spawn, type ChildProcess } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { assessmentSchema } from '@evendraft/report';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { buildIfNeeded } from '../../tools/build.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';
import { schemaFaults } from './published-schemas.js';

// The built command in a process of its own gets the signal that a terminal sends on Ctrl-C.

/** Invented: four thousand situations of two flues, some milliseconds each. */
const longHouse = `evendraft: 1
name: Plum Court 21
floorArea: 1450 ft2
airtightness: 900 cfm at 50 Pa
exhaust:
  hood: { low: 130 cfm, high: 350 cfm }
  dryer: 150 cfm
  bath one: { kind: bath fan, flow: 50 cfm }
  bath two: { kind: bath fan, flow: 60 cfm }
  bath three: { kind: bath fan, flow: 70 cfm }
  vacuum: { kind: central vacuum, flow: 110 cfm }
appliances:
  furnace: { vent: natural draft, fuel: gas, input: 75 kBtu/h, flue: { height: 16 ft, diameter: 6 in, collarHeight: 5 ft } }
  water heater: { vent: natural draft, fuel: gas, input: 38 kBtu/h, flue: { height: 16 ft, diameter: 4 in, collarHeight: 5 ft } }
weather:
${Array.from({ length: 40 }, (_, i) => `  - { name: w${i}, outdoorTemperature: ${i - 15} C }\n`).join('')}`;

const shortHouse = `evendraft: 1
name: Alder Row 14
floorArea: 2180 ft2
airtightness: 310 cfm at 50 Pa
exhaust: { hood: 300 cfm }
appliances: { boiler: { vent: natural draft, fuel: gas } }
`;

let folder: string;

beforeAll(async () => {
  const { succeeded, output } = await buildIfNeeded(repositoryRoot, ['packages/cli']);
  if (!succeeded) throw new Error(output);
}, 300_000);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'evendraft-stop-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

interface Running {
  readonly child: ChildProcess;
  readonly said: { out: string; err: string };
  readonly ended: Promise<number | null>;
}

function start(
  args: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): Running {
  const child = spawn(
    process.execPath,
    [join(repositoryRoot, 'packages/cli/bin/evendraft.js'), ...args],
    { env: { ...process.env, ...environment } },
  );
  const said = { out: '', err: '' };
  child.stdout.on('data', (chunk) => (said.out += String(chunk)));
  child.stderr.on('data', (chunk) => (said.err += String(chunk)));
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  return { child, said, ended };
}

/** A program that stands for a browser: it says who it is and then never answers. */
function stuckBrowser(): { readonly path: string; readonly pidFile: string } {
  const pidFile = join(folder, 'browser.pid');
  const path = file(
    'browser',
    `#!/bin/sh\necho $$ > "${pidFile}.new"\nmv "${pidFile}.new" "${pidFile}"\nexec sleep 300\n`,
  );
  chmodSync(path, 0o755);
  return { path, pidFile };
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 2000; tries += 1) {
    if (holds()) return;
    await pause(50);
  }
  throw new Error('it never came to that');
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

function alive(pidFile: string): boolean {
  try {
    process.kill(Number(readFileSync(pidFile, 'utf8')), 0);
    return true;
  } catch {
    return false;
  }
}

/** Waits until a process has worked for a while, however slow the machine is. */
async function underWay({ child }: Running): Promise<void> {
  const stat = `/proc/${child.pid}/stat`;
  if (!existsSync(stat)) {
    await pause(8000);
    return;
  }
  // The 14th field is the time in the process's own code, in hundredths of a second.
  await until(() => Number(readFileSync(stat, 'utf8').split(' ')[13]) > 400);
}

describe.skipIf(process.platform === 'win32')('Ctrl-C', { timeout: 120_000 }, () => {
  it('stops long work with what is done: printed, written whole, marked as incomplete, exit 130', async () => {
    const house = file('house.yaml', longHouse);
    const [page, csv, out] = ['page.html', 'tables', 'full'].map((name) => join(folder, name));
    const running = start([
      ...['assess', house, '--json', '--draft', 'never', '--cures', 'always'],
      ...['--report', page!, '--csv', csv!, '--out', out!],
    ]);
    const { child, said, ended } = running;
    await underWay(running);
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(said.err).toMatch(/^Stopped: what follows holds what was done by then\.\n/u);
    const printed: unknown = JSON.parse(said.out);
    expect(schemaFaults(printed)).toEqual([]);
    const { incomplete, worstCase } = assessmentSchema.parse(printed);
    const [part] = incomplete!.parts;
    expect(part).toMatchObject({ work: 'situations', of: 3840 });
    expect(part!.done).toBe(worstCase.stopped?.done);
    expect(part!.done).toBeGreaterThan(0);
    expect(part!.done).toBeLessThan(part!.of!);
    expect(readFileSync(join(out!, 'house.json'), 'utf8')).toBe(said.out);
    expect(readFileSync(page!, 'utf8')).toMatch(
      /Incomplete: the work was stopped[^]*<\/html>\s*$/u,
    );
    expect(readFileSync(join(csv!, 'incomplete.csv'), 'utf8')).toContain(
      `of ${part!.of!.toLocaleString('en-US')} situations`,
    );
    const left = [folder, csv!, out!].flatMap((each) => readdirSync(each));
    expect(left.filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('ends a print without a word of failure, and the browser with it', async () => {
    const house = file('house.yaml', shortHouse);
    const { path, pidFile } = stuckBrowser();
    const pdf = join(folder, 'house.pdf');
    const { child, said, ended } = start(['assess', house, '--pdf', pdf], { CHROMIUM_PATH: path });
    await until(() => existsSync(pidFile));
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(said.err).toBe(`Stopped: --pdf ${pdf} was not written.\n`);
    expect(said.out).toContain('Alder Row 14');
    expect(said.out).not.toContain('Incomplete');
    expect(existsSync(pdf)).toBe(false);
    await until(() => !alive(pidFile));
  });

  it('given again ends at once, with nothing half-written and no browser left', async () => {
    const house = file('house.yaml', longHouse);
    const { path, pidFile } = stuckBrowser();
    const running = start(
      ['assess', house, '--draft', 'never', '--pdf', join(folder, 'house.pdf')],
      { CHROMIUM_PATH: path, TMPDIR: folder },
    );
    const { child, ended } = running;
    await underWay(running);
    child.kill('SIGINT');
    // What is done is printed, though the work was stopped; that, too, can be ended.
    await until(() => existsSync(pidFile));
    const from = Date.now();
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(Date.now() - from).toBeLessThan(3000);
    expect(
      readdirSync(folder).filter((name) => /\.pdf|\.part|^evendraft-print-/u.test(name)),
    ).toEqual([]);
    await until(() => !alive(pidFile));
  });
});
