import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compare, readHouse } from 'evendraft';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildIfNeeded } from '../../tools/build.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';
import { runNode } from '../../tools/run-command.mjs';
import { schemaFaults } from './published-schemas.js';

// A reader of JSON has the published schema alone, so its own validator reads what the command prints.

interface Listed {
  readonly name: string;
  readonly command: readonly string[];
  readonly exitCode: number;
}

const examples = join(repositoryRoot, 'examples');
const commands = JSON.parse(readFileSync(join(examples, 'commands.json'), 'utf8')) as Listed[];
const withResult = commands.filter(({ command }) => command[1] !== 'check');

beforeAll(async () => {
  const { succeeded, output } = await buildIfNeeded(repositoryRoot, ['packages/cli']);
  if (!succeeded) throw new Error(output);
}, 300_000);

describe('the JSON of every example', { timeout: 120_000 }, () => {
  it.each(withResult.map((each) => [each.name, each] as const))(
    '%s is what the published schema says, to the last key',
    async (_, { command, exitCode }) => {
      const [, ...args] = command;
      const ran = await runNode(
        [join(repositoryRoot, 'packages/cli/bin/evendraft.js'), ...args, '--json'],
        { cwd: examples, timeoutMs: 110_000 },
      );
      expect(ran.exitCode).toBe(exitCode);
      const result: unknown = JSON.parse(ran.stdout);
      expect(schemaFaults(result)).toEqual([]);
      expect(ran.stdout).not.toMatch(/NaN|Infinity|undefined|-0[,\n\]]/u);
    },
  );

  it('has commands of every kind that has a schema', () => {
    const kinds = new Set(withResult.map(({ command }) => command[1]));
    expect(kinds).toEqual(new Set(['assess', 'size', 'compare']));
  });
});

describe('a result that was stopped', () => {
  it('is what the published schema says where remedies were compared', async () => {
    const read = readHouse(readFileSync(join(examples, 'condensing-dryer.yaml')), {
      file: 'condensing-dryer.yaml',
    });
    if (!read.ok) throw new Error('the example cannot be read');
    const stop = new AbortController();
    const comparison = await compare(read.house, {
      signal: stop.signal,
      whenStopped: 'keep',
      onProgress: () => {
        stop.abort();
      },
    });
    expect(comparison.incomplete?.parts).toHaveLength(1);
    expect(schemaFaults(JSON.parse(JSON.stringify(comparison)))).toEqual([]);
  });
});

describe('schemaFaults', () => {
  it('finds an unknown key, a missing one and a kind that has no schema', () => {
    const faults = schemaFaults({ schema: 'evendraft-sizing', schemaVersion: 1, colour: 'red' });
    expect(faults.join('\n')).toContain('additional properties');
    expect(faults.join('\n')).toContain("required property 'result'");
    expect(schemaFaults({ schema: 'something' })).toEqual([
      'no schema is published for "something"',
    ]);
  });
});
