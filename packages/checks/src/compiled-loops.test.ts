import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compiledLoops, loopsCodeFile } from '../tools/compile-loops.mjs';

it('the compiled loops of the solver are those that their sources give', () => {
  expect(readFileSync(loopsCodeFile, 'utf8')).toBe(compiledLoops());
}, 60_000);
