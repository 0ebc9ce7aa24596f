import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, it, vi } from 'vitest';
import { holdLock, lockFolder } from '../../tools/hold-lock.mjs';

describe('the lock around installing and building', () => {
  it('lets one piece of work end before the next begins', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const steps: string[] = [];
    const work = (name: string) => async () => {
      steps.push(`${name} begins`);
      await wait(50);
      steps.push(`${name} ends`);
    };
    await Promise.all([
      holdLock('/planted/busy', work('one')),
      holdLock('/planted/busy', work('two')),
    ]);
    expect(steps).toEqual(['one begins', 'one ends', 'two begins', 'two ends']);
    expect(said).toHaveBeenCalledTimes(1);
    said.mockRestore();
  });

  it('is given back when the work fails', async () => {
    const failing = holdLock('/planted/failing', () => Promise.reject(new Error('no space')));
    await expect(failing).rejects.toThrow('no space');
    expect(existsSync(lockFolder('/planted/failing'))).toBe(false);
  });

  it('is taken over from a process that is gone', async () => {
    const folder = lockFolder('/planted/left-behind');
    mkdirSync(folder, { recursive: true });
    // No process has this number: it is above the largest that Linux gives.
    writeFileSync(join(folder, 'pid'), '4194305');
    expect(await holdLock('/planted/left-behind', () => Promise.resolve('done'))).toBe('done');
    expect(existsSync(folder)).toBe(false);
  });
});
