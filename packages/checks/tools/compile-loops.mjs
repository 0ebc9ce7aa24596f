// Compiles the loops of @evendraft/network into a file of its sources. A test compiles them anew and compares.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import asc from 'assemblyscript/asc';

const folder = fileURLToPath(new URL('../../network/loops', import.meta.url));

/** Where the result is kept. */
export const loopsCodeFile = fileURLToPath(
  new URL('../../network/src/internal/loops-code.ts', import.meta.url),
);

/** @returns {Promise<string>} the text of the file */
export async function compiledLoops() {
  let code = new Uint8Array();
  const arguments_ = ['index.ts', '--outFile', 'loops.wasm', '--baseDir', folder];
  const options = ['-O3', '--noAssert', '--runtime', 'stub', '--importMemory', '--enable', 'simd'];
  const { error, stderr } = await asc.main([...arguments_, ...options], {
    writeFile: (name, contents) => {
      if (name === 'loops.wasm') code = contents;
    },
  });
  if (error !== null) throw new Error(`The loops do not compile.\n${stderr.toString()}`);
  const lines = Buffer.from(code)
    .toString('base64')
    .match(/.{1,92}/g)
    .map((line) => `  '${line}'`);
  return `// Made from the sources in loops/ by npm run build:loops; not to be edited.

/** The compiled loops, as base64. */
export const loopsCode =
${lines.join(' +\n')};
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(loopsCodeFile, await compiledLoops());
}
