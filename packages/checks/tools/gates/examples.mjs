import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { buildIfNeeded } from '../build.mjs';
import { firstDifference } from '../first-difference.mjs';
import { listExamples, runExample } from '../recorded-examples.mjs';

/** @import { Gate } from '../run-gates.mjs' */
/** @import { Example } from '../recorded-examples.mjs' */

/**
 * Every example prints what is recorded beside it. Counts examples.
 *
 * @type {Gate}
 */
export const examplesGate = {
  name: 'examples',
  title: 'every example prints what is recorded for it',
  async run({ root, write }) {
    const { succeeded, output } = await buildIfNeeded(root, ['packages']);
    if (!succeeded) {
      write(`The command is not built:\n${output}`);
      return { passed: 0, failed: 1, skipped: 0 };
    }
    const counts = { passed: 0, failed: 0, skipped: 0 };
    for (const example of listExamples(root)) {
      const problem = await exampleProblem(root, example);
      if (problem === undefined) {
        counts.passed += 1;
      } else {
        counts.failed += 1;
        write(`✗ ${example.name} (${example.shown}): ${problem}`);
      }
    }
    if (counts.failed > 0) {
      write('If the new output is right: node packages/checks/tools/record-examples.mjs');
    }
    return counts;
  },
};

/**
 * @param {string} root - the repository's top folder
 * @param {Example} example - which
 * @returns {Promise<string | undefined>} what is wrong; undefined if nothing is
 */
async function exampleProblem(root, example) {
  const { exitCode, text } = await runExample(root, example);
  if (exitCode !== example.exitCode) {
    return `ended with exit code ${exitCode} and not ${example.exitCode}\n${text}`;
  }
  if (!existsSync(example.recordedPath)) {
    return `nothing is recorded in ${basename(example.recordedPath)} yet`;
  }
  const recorded = readFileSync(example.recordedPath, 'utf8').replaceAll('\r\n', '\n');
  return firstDifference(recorded, text);
}
