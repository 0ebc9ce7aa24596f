import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { firstDifference } from './first-difference.mjs';
import { runExample } from './recorded-examples.mjs';

/** @import { Example } from './recorded-examples.mjs' */

/**
 * Runs an example and compares it with what is recorded for it.
 *
 * @param {string} root - the repository's top folder
 * @param {Example} example - which
 * @returns {Promise<string | undefined>} what is wrong; undefined if nothing is
 */
export async function exampleProblem(root, example) {
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
