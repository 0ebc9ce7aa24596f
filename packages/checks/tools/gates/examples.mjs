import { buildIfNeeded } from '../build.mjs';
import { exampleProblem } from '../example-problem.mjs';
import { listExamples } from '../recorded-examples.mjs';

/** @import { Gate } from '../run-gates.mjs' */

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
