// `npm start`: installs and builds what is needed, then assesses a house.
//   npm start                                  the bundled example
//   npm start -- my-house.yaml --units si      the reader's own file, then any flag of `evendraft assess`
import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded } from './build.mjs';
import { nodeIsNewEnough, whenInstalled } from './prepare.mjs';
import { repositoryRoot } from './repository.mjs';
import { bundledHouse, startArguments } from './start-arguments.mjs';

process.exitCode = await start();

/** @returns {Promise<number>} the exit code */
async function start() {
  if (!nodeIsNewEnough()) return 2;
  const built = await whenInstalled(repositoryRoot, () =>
    buildIfNeeded(repositoryRoot, ['packages/evendraft', 'packages/cli']),
  );
  if (built === undefined) return 2;
  if (!built.succeeded) {
    console.error(`The build did not succeed. The compiler said:\n\n${built.output}`);
    return 2;
  }
  // npm changes to the top folder; a relative path is meant from where the reader typed it.
  const cwd = process.env['INIT_CWD'] ?? process.cwd();
  const args = startArguments(process.argv.slice(2), {
    bundledHousePath: join(repositoryRoot, bundledHouse),
    outputPath: join(repositoryRoot, 'output'),
    cwd,
  });
  return runInteractively([join(repositoryRoot, 'packages/cli/bin/evendraft.js'), ...args], cwd);
}

/**
 * @param {readonly string[]} args - script and arguments
 * @param {string} cwd - where it runs
 * @returns {Promise<number>} its exit code
 */
function runInteractively(args, cwd) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd, stdio: 'inherit' });
    // A terminal sends its signals to the child as well; this process only waits for its answer.
    process.on('SIGINT', () => undefined);
    for (const signal of /** @type {const} */ (['SIGTERM', 'SIGHUP'])) {
      process.on(signal, () => child.kill(signal));
    }
    child.on('error', (error) => {
      console.error(`The command could not be started: ${error.message}`);
      resolve(2);
    });
    child.on('close', (code, signal) => {
      resolve(code ?? 128 + (signal === null ? 0 : constants.signals[signal]));
    });
  });
}
