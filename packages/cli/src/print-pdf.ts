import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** How long the browser may take before it counts as stuck [ms]. */
const patienceMs = 120_000;

/**
 * Prints a page with a browser that runs without a window.
 *
 * Page and print lie in a temporary folder of their own, which is removed.
 *
 * @param page - the HTML document; it needs nothing beside it
 * @param browser - the browser's program
 * @returns the PDF
 * @throws Error if the browser does not print
 */
export async function printPdf(page: string, browser: string): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'evendraft-print-'));
  try {
    const source = join(folder, 'page.html');
    const printed = join(folder, 'page.pdf');
    await writeFile(source, page);
    await run(browser, [
      '--headless',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--no-first-run',
      '--no-pdf-header-footer',
      '--generate-pdf-document-outline',
      // The browser cannot shut itself off from the system when an administrator starts it.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      `--user-data-dir=${join(folder, 'profile')}`,
      `--print-to-pdf=${printed}`,
      pathToFileURL(source).href,
    ]);
    const pdf = await readFile(printed).catch(() => undefined);
    if (pdf === undefined) throw new Error('the browser ended without printing');
    return pdf;
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

function run(program: string, args: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: 'ignore' });
    const timer = setTimeout(() => {
      child.kill('SIGKILL');
      reject(new Error('the browser did not answer in time'));
    }, patienceMs);
    child.on('error', (error) => {
      clearTimeout(timer);
      reject(error);
    });
    child.on('exit', (code) => {
      clearTimeout(timer);
      if (code === 0) resolve();
      else reject(new Error(`the browser ended with code ${code ?? 'none'}`));
    });
  });
}
