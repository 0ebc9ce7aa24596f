import { describe, expect, it } from 'vitest';
import { progressBar } from './progress-bar.js';

function barWith(width = 80) {
  let time = 0;
  const drawn: string[] = [];
  const bar = progressBar({
    write: (text) => drawn.push(text),
    width,
    noun: 'situations',
    now: () => time,
  });
  const at = (ms: number, done: number, of: number): string | undefined => {
    time = ms;
    const before = drawn.length;
    bar.update(done, of);
    return drawn.length > before ? drawn.at(-1)?.replace('\r\u001b[K', '') : undefined;
  };
  return { bar, at, drawn };
}

describe('progressBar', () => {
  it('shows a bar, the count and the time left at the pace so far', () => {
    const { at } = barWith();
    expect(at(1000, 250, 1000)).toBe(
      `[${'='.repeat(8)}${' '.repeat(22)}] 250 of 1000 situations, 3 s left`,
    );
    expect(at(301_000, 500, 1000)).toContain('6 min left');
  });

  it('stays silent for short work and is not drawn too often', () => {
    const { at, drawn } = barWith();
    expect(at(100, 1, 10)).toBeUndefined();
    expect(at(500, 2, 10)).toBeDefined();
    expect(at(550, 3, 10)).toBeUndefined();
    expect(at(650, 3, 10)).toBeDefined();
    expect(drawn).toHaveLength(2);
  });

  it('takes itself away, and only if it was drawn', () => {
    const silent = barWith();
    silent.bar.clear();
    expect(silent.drawn).toEqual([]);
    const shown = barWith();
    shown.at(1000, 1, 2);
    shown.bar.clear();
    shown.bar.clear();
    expect(shown.drawn).toHaveLength(2);
    expect(shown.drawn[1]).toBe('\r\u001b[K');
  });

  it('never wraps, however narrow the terminal', () => {
    for (const width of [10, 30, 45, 80]) {
      expect(barWith(width).at(1000, 1, 3)?.length).toBeLessThan(width);
    }
  });
});
