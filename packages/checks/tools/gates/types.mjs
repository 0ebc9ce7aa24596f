import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { buildIfNeeded } from '../build.mjs';
import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/** What is type-checked beside the packages themselves, which the build checks. */
const projects = [
  { project: 'packages/tsconfig.tests.json', sources: /\.ts$/ },
  { project: 'packages/checks/tools/tsconfig.json', sources: /\.(mjs|cjs|ts)$/ },
  { project: 'examples/tsconfig.json', sources: /\.ts$/ },
  { project: 'bench/tsconfig.json', sources: /\.ts$/ },
];

/**
 * Tests, tools, examples and benchmarks are correctly typed. Counts one for each project.
 *
 * @type {Gate}
 */
export const typesGate = {
  name: 'types',
  title: 'tests, tools, examples and benchmarks are correctly typed',
  async run({ root, write }) {
    // They are checked against what the packages compile to; whether that succeeds is another gate.
    await buildIfNeeded(root, ['packages']);
    const counts = { passed: 0, failed: 0, skipped: 0 };
    const tsc = commandScript('typescript', 'tsc', root);
    for (const { project, sources } of projects) {
      if (!holdsSource(join(root, dirname(project)), sources)) {
        write(`${project}: skipped, it has no source yet.`);
        counts.skipped += 1;
        continue;
      }
      const { exitCode, stdout, stderr } = await runNode([tsc, '-p', project], { cwd: root });
      if (exitCode === 0) {
        counts.passed += 1;
      } else {
        write(`${project}:\n${stdout}${stderr}`);
        counts.failed += 1;
      }
    }
    return counts;
  },
};

/**
 * @param {string} folder - where a project lies
 * @param {RegExp} sources - names of its sources
 * @returns {boolean} whether there is anything to check
 */
function holdsSource(folder, sources) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).some(
    (path) => sources.test(path) && !path.includes('node_modules'),
  );
}
