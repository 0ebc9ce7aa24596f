import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compiledLoops, loopsCodeFile } from '../tools/compile-loops.mjs';

it('the compiled loops of the solver are those that their sources give', async () => {
  expect(readFileSync(loopsCodeFile, 'utf8')).toBe(await compiledLoops());
}, 60_000);
