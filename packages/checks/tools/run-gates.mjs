/**
 * @typedef {object} GateCounts
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped - each with its reason printed by the gate
 */

/**
 * @typedef {object} GateContext
 * @property {string} root - the repository's top folder
 * @property {(text: string) => void} write - prints one or more lines
 */

/**
 * @typedef {object} Gate
 * @property {string} name - one word, for `npm test -- --only <name>`
 * @property {string} title - what it makes sure of
 * @property {(context: GateContext) => Promise<GateCounts>} run - prints what is wrong and counts
 */

/**
 * Runs every gate to its end, whatever the others did, and sums up what they counted. A gate that
 * crashes, or that counts nothing at all, is one failure: silence is never success.
 *
 * @param {readonly Gate[]} gates - in the order in which they run
 * @param {GateContext} context - folder and where to print
 * @returns {Promise<GateCounts>} the sums over all gates
 */
export async function runGates(gates, context) {
  const total = { passed: 0, failed: 0, skipped: 0 };
  /** @type {string[]} */
  const summary = [];
  for (const gate of gates) {
    context.write(`\n=== ${gate.name}: ${gate.title}`);
    const startMs = performance.now();
    const counts = await runGate(gate, context);
    const line = `${gate.name}: ${countsLine(counts)} (${seconds(performance.now() - startMs)})`;
    context.write(`--- ${line}`);
    summary.push(`${counts.failed > 0 ? '✗' : '✓'} ${line}`);
    total.passed += counts.passed;
    total.failed += counts.failed;
    total.skipped += counts.skipped;
  }
  context.write(['', '=== All gates', ...summary, ''].join('\n'));
  return total;
}

/**
 * The line that closes a run, and nothing else does.
 *
 * @param {GateCounts} counts - of one gate or of all
 * @returns {string} such as `12 passed, 0 failed, 1 skipped`
 */
export function countsLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed, ${skipped} skipped`;
}

/**
 * @param {Gate} gate - the gate
 * @param {GateContext} context - folder and where to print
 * @returns {Promise<GateCounts>} its counts, or one failure
 */
async function runGate(gate, context) {
  try {
    const counts = await gate.run(context);
    const numbers = [counts.passed, counts.failed, counts.skipped];
    if (!numbers.every((count) => Number.isInteger(count) && count >= 0)) {
      context.write(`The gate returned counts that are not counts: ${JSON.stringify(counts)}`);
      return { passed: 0, failed: 1, skipped: 0 };
    }
    if (numbers.every((count) => count === 0)) {
      context.write('The gate checked nothing, which counts as a failure.');
      return { passed: 0, failed: 1, skipped: 0 };
    }
    return counts;
  } catch (error) {
    context.write(
      `The gate crashed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
    );
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/**
 * @param {number} durationMs - [ms]
 * @returns {string} such as `3.2 s`
 */
function seconds(durationMs) {
  return `${(durationMs / 1000).toFixed(1)} s`;
}
