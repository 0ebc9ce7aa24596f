import { describe, expect, it } from 'vitest';
import { countsLine, runGates } from '../../tools/run-gates.mjs';

type Gate = Parameters<typeof runGates>[0][number];

/** A gate that does what the case says. */
function gate(name: string, run: Gate['run']): Gate {
  return { name, title: `what ${name} makes sure of`, run };
}

/** Runs gates and keeps what they print. */
async function run(gates: readonly Gate[]): Promise<{ total: object; printed: string }> {
  const lines: string[] = [];
  const total = await runGates(gates, { root: '.', write: (text) => lines.push(text) });
  return { total, printed: lines.join('\n') };
}

const good = gate('good', () => Promise.resolve({ passed: 3, failed: 0, skipped: 1 }));
const bad = gate('bad', () => Promise.resolve({ passed: 1, failed: 2, skipped: 0 }));

describe('the runner of the gates', () => {
  it('goes on after a gate that failed and sums up all of them', async () => {
    const { total, printed } = await run([bad, good]);
    expect(total).toEqual({ passed: 4, failed: 2, skipped: 1 });
    expect(printed).toContain('=== good: what good makes sure of');
  });

  it('counts a gate that crashes as one failure and says why', async () => {
    const { total, printed } = await run([
      gate('crash', () => Promise.reject(new Error('the disk is full'))),
      good,
    ]);
    expect(total).toEqual({ passed: 3, failed: 1, skipped: 1 });
    expect(printed).toContain('the disk is full');
  });

  it('counts a gate that throws before it returns a promise as one failure', async () => {
    const { total } = await run([
      gate('throw', () => {
        throw new Error('at once');
      }),
    ]);
    expect(total).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('counts a gate that checked nothing as one failure', async () => {
    const { total, printed } = await run([
      gate('empty', () => Promise.resolve({ passed: 0, failed: 0, skipped: 0 })),
    ]);
    expect(total).toEqual({ passed: 0, failed: 1, skipped: 0 });
    expect(printed).toContain('checked nothing');
  });

  it('counts a gate whose counts are not numbers as one failure', async () => {
    const { total } = await run([
      gate('odd', () => Promise.resolve({ passed: NaN, failed: 0, skipped: 0 })),
    ]);
    expect(total).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('closes with a line of plain words', () => {
    expect(countsLine({ passed: 12, failed: 0, skipped: 1 })).toBe(
      '12 passed, 0 failed, 1 skipped',
    );
  });
});
