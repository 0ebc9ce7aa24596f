import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { nodeIsNewEnough } from '../../tools/prepare.mjs';

describe('the check of the Node that runs', () => {
  const said: string[] = [];

  beforeEach(() => {
    said.length = 0;
    vi.spyOn(console, 'error').mockImplementation((text: string) => void said.push(text));
  });

  afterEach(() => {
    vi.restoreAllMocks();
  });

  it.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('accepts %s in silence', (version) => {
    expect(nodeIsNewEnough(version)).toBe(true);
    expect(said).toEqual([]);
  });

  it.each(['20.18.9', '18.20.0'])('refuses %s and says what is needed', (version) => {
    expect(nodeIsNewEnough(version)).toBe(false);
    expect(said.join()).toContain(`needs Node 20.19 or newer; this is Node ${version}`);
  });
});
