// Rewrites the recorded output of every example, or of the named ones, from what it prints now:
//   node packages/checks/tools/record-examples.mjs [name …]
// Read the difference before you commit it: recorded output is what a user will see. How examples are
// listed is told in `recorded-examples.mjs`.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { buildIfNeeded } from './build.mjs';
import { listExamples, runExample } from './recorded-examples.mjs';
import { repositoryRoot } from './repository.mjs';

process.exitCode = await record(process.argv.slice(2));

/**
 * @param {readonly string[]} names - which examples; all if empty
 * @returns {Promise<number>} the exit code: 1 if one ended with another exit code than expected
 */
async function record(names) {
  const { succeeded, output } = await buildIfNeeded(repositoryRoot, ['packages/cli']);
  if (!succeeded) {
    console.error(`The build did not succeed. The compiler said:\n\n${output}`);
    return 2;
  }
  let wrong = 0;
  for (const example of listExamples(repositoryRoot)) {
    if (names.length > 0 && !names.includes(example.name)) continue;
    const { exitCode, text } = await runExample(repositoryRoot, example);
    if (exitCode !== example.exitCode) {
      console.error(
        `${example.name}: not recorded. It ended with exit code ${exitCode} and not ${example.exitCode}:\n${text}`,
      );
      wrong += 1;
      continue;
    }
    const before = existsSync(example.recordedPath)
      ? readFileSync(example.recordedPath, 'utf8')
      : undefined;
    mkdirSync(dirname(example.recordedPath), { recursive: true });
    writeFileSync(example.recordedPath, text);
    console.log(
      `${example.name}: ${before === undefined ? 'recorded' : before === text ? 'unchanged' : 'changed'}`,
    );
  }
  return wrong > 0 ? 1 : 0;
}
