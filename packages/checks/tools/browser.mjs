import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from './find-browser.mjs';

/**
 * @typedef {{ browser: import('playwright-core').Browser, reason?: undefined } | { browser?: undefined, reason: string }} StartedBrowser
 * a browser to be closed by the caller, or why none could be started
 */

/**
 * Starts a browser without a window: the one that CHROMIUM_PATH names, an installed one, or the one that
 * comes as a package.
 *
 * @returns {Promise<StartedBrowser>} the browser, or why none could be started
 */
export async function startBrowser() {
  const named = process.env['CHROMIUM_PATH'];
  const found = findBrowser(named);
  if (found.path === undefined && named !== undefined && named !== '') return found;
  try {
    const { chromium } = await import('playwright-core');
    const browser = await chromium.launch({
      executablePath: found.path ?? (await packagedBrowser()),
      // The package's own list of arguments would put everything into one process.
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
    return { browser };
  } catch (error) {
    const [said] = String(error).split('\n');
    return { reason: `no browser could be started: ${said}` };
  }
}

/**
 * @returns {Promise<string>} the program of the packaged browser, unpacked once into a folder of its version
 */
async function packagedBrowser() {
  const { default: packaged } = await import('@sparticuz/chromium');
  /** @type {{ devDependencies: Record<string, string> }} */
  const { devDependencies } = createRequire(import.meta.url)('../package.json');
  const folder = join(tmpdir(), `packaged-chromium-${devDependencies['@sparticuz/chromium']}`);
  await mkdir(folder, { recursive: true });
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  try {
    return await packaged.executablePath();
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}
