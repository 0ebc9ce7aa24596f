// `npm test`: everything that is checked before a change is accepted, to the end even when something
// fails. The last line, alone, is `N passed, N failed, N skipped`.
//   npm test -- --only lint,tests     only these gates
import { nodeIsNewEnough, whenInstalled } from './prepare.mjs';
import { repositoryRoot } from './repository.mjs';
import { countsLine, runGates } from './run-gates.mjs';
import { buildGate } from './gates/build.mjs';
import { examplesGate } from './gates/examples.mjs';
import { formatGate } from './gates/format.mjs';
import { layersGate } from './gates/layers.mjs';
import { lintGate } from './gates/lint.mjs';
import { packagesGate } from './gates/packages.mjs';
import { testsGate } from './gates/tests.mjs';
import { typesGate } from './gates/types.mjs';
import { unusedGate } from './gates/unused.mjs';

const gates = [
  buildGate,
  typesGate,
  formatGate,
  lintGate,
  layersGate,
  unusedGate,
  testsGate,
  examplesGate,
  packagesGate,
];

process.exitCode = await test(process.argv.slice(2));

/**
 * @param {readonly string[]} args - what was typed after `npm test --`
 * @returns {Promise<number>} the exit code: 0 all passed, 1 something failed, 2 the gates could not run
 */
async function test(args) {
  const chosen = chosenGates(args);
  if (chosen === undefined || !nodeIsNewEnough()) return 2;
  const installed = await whenInstalled(repositoryRoot, () => Promise.resolve(true));
  if (installed === undefined) return 2;
  const total = await runGates(chosen, {
    root: repositoryRoot,
    write: (text) => console.log(text),
  });
  console.log(countsLine(total));
  return total.failed > 0 ? 1 : 0;
}

/**
 * @param {readonly string[]} args - what was typed
 * @returns {readonly import('./run-gates.mjs').Gate[] | undefined} the gates to run; undefined, with
 * a message, if the arguments make no sense
 */
function chosenGates(args) {
  if (args.length === 0) return gates;
  const names = gates.map(({ name }) => name);
  const [flag = '', ...rest] = args.flatMap((argument) => argument.split('='));
  const wanted = rest.flatMap((argument) => argument.split(',')).filter((name) => name !== '');
  const unknown = wanted.filter((name) => !names.includes(name));
  if (flag !== '--only' || wanted.length === 0 || unknown.length > 0) {
    console.error(
      [
        ...(unknown.length > 0 ? [`There is no gate called ${unknown.join(', ')}.`] : []),
        `Use: npm test, or npm test -- --only GATE,GATE with some of ${names.join(', ')}.`,
      ].join('\n'),
    );
    return undefined;
  }
  return gates.filter(({ name }) => wanted.includes(name));
}
