// Examples and what they print.
//
// A program is any `examples/*.ts`; what it prints is recorded in `examples/recorded/<its name>.txt`.
// A command is an entry of `examples/commands.json`:
//
//   { "name": "tight-new-house", "command": ["evendraft", "assess", "tight-new-house.yaml"], "exitCode": 0 }
//
// recorded in `examples/recorded/<name>.txt` (or the file that `"recorded"` names there). Commands run
// in `examples`. What is recorded is standard output and, when there is any, a line `[stderr]` and standard
// error. The only things replaced before comparing are line ends and the library's version.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { commandScript } from './repository.mjs';
import { runNode } from './run-command.mjs';

/**
 * @typedef {object} Example
 * @property {string} name - unique
 * @property {string} shown - what a person would type
 * @property {readonly string[]} args - for Node
 * @property {number} exitCode - expected
 * @property {string} recordedPath - absolute path of the recorded output
 */

/**
 * @typedef {object} ExampleOutput
 * @property {number} exitCode
 * @property {string} text - as it would be recorded
 */

/**
 * Every program and command of the examples, in the order of their names.
 *
 * @param {string} root - the repository's top folder
 * @returns {Example[]} the examples
 */
export function listExamples(root) {
  const folder = join(root, 'examples');
  const recorded = join(folder, 'recorded');
  const tsx = commandScript('tsx', 'tsx', root);
  const programs = readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .map((file) => ({
      name: file.slice(0, -'.ts'.length),
      shown: `npx tsx --conditions=@evendraft/source ${file}`,
      args: [tsx, '--conditions=@evendraft/source', file],
      exitCode: 0,
      recordedPath: join(recorded, `${file.slice(0, -'.ts'.length)}.txt`),
    }));
  const examples = [...programs, ...listCommands(root, folder)].sort((a, b) =>
    a.name < b.name ? -1 : 1,
  );
  const twice = examples.find(({ name }, index) => examples[index - 1]?.name === name);
  if (twice !== undefined) throw new Error(`Two examples are called ${twice.name}.`);
  return examples;
}

/**
 * Runs one example.
 *
 * @param {string} root - the repository's top folder
 * @param {Example} example - which
 * @returns {Promise<ExampleOutput>} its exit code and what it printed
 */
export async function runExample(root, { args }) {
  const { exitCode, stdout, stderr } = await runNode(args, {
    cwd: join(root, 'examples'),
    env: { ...plainEnvironment(), NO_COLOR: '1', TZ: 'UTC', LC_ALL: 'C', COLUMNS: '80' },
    timeoutMs: 120_000,
  });
  /** @type {{ version: string }} */
  const { version } = JSON.parse(
    readFileSync(join(root, 'packages/evendraft/package.json'), 'utf8'),
  );
  const text = stderr === '' ? stdout : `${stdout}[stderr]\n${stderr}`;
  return { exitCode, text: withoutVersion(text.replaceAll('\r\n', '\n'), version) };
}

/**
 * @param {string} text - output
 * @param {string} version - the library's
 * @returns {string} the output with `<version>` in its place, so that a release changes nothing recorded
 */
function withoutVersion(text, version) {
  const whole = version.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return text.replace(new RegExp(`(?<![\\d.])${whole}(?![\\d.]*\\d)`, 'g'), '<version>');
}

/**
 * @param {string} root - the repository's top folder
 * @param {string} folder - of the examples
 * @returns {Example[]} those of commands.json
 */
function listCommands(root, folder) {
  const path = join(folder, 'commands.json');
  if (!existsSync(path)) return [];
  /** @type {{ name: string, command: string[], exitCode?: number, recorded?: string }[]} */
  const commands = JSON.parse(readFileSync(path, 'utf8'));
  return commands.map(({ name, command, exitCode = 0, recorded = `${name}.txt` }) => {
    const [program, ...args] = command;
    if (program !== 'evendraft') {
      throw new Error(`commands.json: ${name} must run "evendraft", not "${program}".`);
    }
    return {
      name,
      shown: command.join(' '),
      args: [join(root, 'packages/cli/bin/evendraft.js'), ...args],
      exitCode,
      recordedPath: join(folder, 'recorded', recorded),
    };
  });
}

/** @returns {NodeJS.ProcessEnv} this environment without what changes the look of an output */
function plainEnvironment() {
  const { FORCE_COLOR: _color, NODE_OPTIONS: _options, ...plain } = process.env;
  return plain;
}
