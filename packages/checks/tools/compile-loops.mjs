// Compiles the loops of @evendraft/network into a file of its sources. A test compiles them anew and compares.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = (/** @type {string} */ path) => fileURLToPath(new URL(path, import.meta.url));
const compiler = here('../../../node_modules/assemblyscript/bin/asc.js');
const loops = here('../../network/loops');

/** Where the result is kept. */
export const loopsCodeFile = here('../../network/src/internal/loops-code.ts');

/** @returns {string} the text of that file */
export function compiledLoops() {
  const folder = mkdtempSync(join(tmpdir(), 'evendraft-loops-'));
  try {
    const result = join(folder, 'loops.wasm');
    const options = [
      '-O3',
      '--noAssert',
      '--runtime',
      'stub',
      '--importMemory',
      '--enable',
      'simd',
    ];
    execFileSync(process.execPath, [compiler, 'index.ts', '-o', result, ...options], {
      cwd: loops,
    });
    const code = readFileSync(result).toString('hex');
    const lines = (code.match(/.{1,92}/g) ?? []).map((line) => `  '${line}'`);
    return `// Made from the sources in loops/ by npm run build:loops; not to be edited.

/** The compiled loops, two hexadecimal digits a byte. */
export const loopsCode =
${lines.join(' +\n')};
`;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(loopsCodeFile, compiledLoops());
}
