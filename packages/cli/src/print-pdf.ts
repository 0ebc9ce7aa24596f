import { spawn, type ChildProcess } from 'node:child_process';
import { rmSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { cleanUpOnExit } from './clean-up-on-exit.js';

/** How long the browser may take before it counts as stuck [ms]. */
const patienceMs = 120_000;

/**
 * Prints a page with a browser that runs without a window.
 *
 * Page and print lie in a temporary folder of their own, which is removed.
 *
 * @param page - the HTML document; it needs nothing beside it
 * @param browser - the browser's program
 * @param signal - ends the browser; the promise then rejects with the signal's reason
 * @returns the PDF
 * @throws Error if the browser does not print
 */
export async function printPdf(
  page: string,
  browser: string,
  signal?: AbortSignal,
): Promise<Uint8Array> {
  signal?.throwIfAborted();
  const folder = await mkdtemp(join(tmpdir(), 'evendraft-print-'));
  const removed = cleanUpOnExit(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  try {
    const source = join(folder, 'page.html');
    const printed = join(folder, 'page.pdf');
    await writeFile(source, page);
    await run(
      browser,
      [
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
      ],
      signal,
    );
    const pdf = await readFile(printed).catch(() => undefined);
    if (pdf === undefined) throw new Error('the browser ended without printing');
    return pdf;
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    removed();
  }
}

/** In a group of its own, so that Ctrl-C in the terminal reaches this program alone, which then ends the browser. */
const ownGroup = process.platform !== 'win32';

function run(program: string, args: readonly string[], signal?: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: 'ignore', detached: ownGroup });
    const timer = setTimeout(() => {
      fail(new Error('the browser did not answer in time'));
    }, patienceMs);
    const ended = cleanUpOnExit(() => {
      kill(child);
    });
    const stop = (): void => {
      fail(signal?.reason);
    };
    const settle = (): void => {
      clearTimeout(timer);
      signal?.removeEventListener('abort', stop);
      ended();
    };
    const fail = (reason: unknown): void => {
      settle();
      kill(child);
      reject(reason as Error);
    };
    signal?.addEventListener('abort', stop);
    child.on('error', fail);
    child.on('exit', (code) => {
      settle();
      if (code === 0) resolve();
      else reject(new Error(`the browser ended with code ${code ?? 'none'}`));
    });
  });
}

/** Ends the browser with all of its processes. */
function kill(child: ChildProcess): void {
  if (child.pid === undefined || child.exitCode !== null) return;
  try {
    if (ownGroup) process.kill(-child.pid, 'SIGKILL');
    else child.kill('SIGKILL');
  } catch {
    // It has ended by itself.
  }
}
