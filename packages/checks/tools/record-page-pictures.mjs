// Draws the report's page and its drawings into `examples/recorded/*.png`:
//   node packages/checks/tools/record-page-pictures.mjs
// Look at the pictures before you commit them. No test compares them: fonts and browsers differ. What
// must hold of a page in a browser is in `packages/checks/src/page`.
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { startBrowser } from './browser.mjs';
import { buildIfNeeded } from './build.mjs';
import { repositoryRoot } from './repository.mjs';
import { runNode } from './run-command.mjs';

/** @import { Browser } from 'playwright-core' */

const widths = [360, 800, 1280];
const pictureHeight = 1300;
/** A sheet of letter paper without its margins, at 96 to the inch. */
const sheet = { width: 695, height: 920 };

process.exitCode = await record();

/** @returns {Promise<number>} the exit code */
async function record() {
  const { succeeded, output } = await buildIfNeeded(repositoryRoot, ['packages/cli']);
  if (!succeeded) {
    console.error(`The build did not succeed. The compiler said:\n\n${output}`);
    return 2;
  }
  const { browser, reason } = await startBrowser();
  if (browser === undefined) {
    console.error(`No pictures: ${reason}.`);
    return 2;
  }
  const folder = mkdtempSync(join(tmpdir(), 'evendraft-pictures-'));
  const recorded = join(repositoryRoot, 'examples/recorded');
  mkdirSync(recorded, { recursive: true });
  try {
    const file = join(folder, 'page.html');
    await assessExample('leaky-old-house', file);
    await pageAtWidths(browser, file, (width) => join(recorded, `page-${width}-wide.png`));
    await printedSheet(browser, file, join(recorded, 'page-in-print.png'));
    const invented = join(repositoryRoot, 'packages/report/recorded/everything.html');
    await drawings(browser, invented, join(recorded, 'page-drawings.png'));
    return 0;
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {string} example - a house file's name without its ending
 * @param {string} file - where its page goes
 */
async function assessExample(example, file) {
  const { exitCode, stderr } = await runNode(
    [
      join(repositoryRoot, 'packages/cli/bin/evendraft.js'),
      'assess',
      `${example}.yaml`,
      '--report',
      file,
    ],
    { cwd: join(repositoryRoot, 'examples'), env: process.env, timeoutMs: 120_000 },
  );
  if (exitCode !== 0 || !existsSync(file)) throw new Error(`no page of ${example}: ${stderr}`);
}

/**
 * @param {Browser} browser - started
 * @param {string} file - the page
 * @param {(width: number) => string} pathOf - where the picture of a width goes
 */
async function pageAtWidths(browser, file, pathOf) {
  for (const width of widths) {
    const page = await browser.newPage({ viewport: { width, height: pictureHeight } });
    await page.goto(pathToFileURL(file).href);
    await page.screenshot({ path: pathOf(width) });
    await page.close();
  }
}

/**
 * The first sheet in the dress of print, without its margins.
 *
 * @param {Browser} browser - started
 * @param {string} file - the page
 * @param {string} path - of the picture
 */
async function printedSheet(browser, file, path) {
  const page = await browser.newPage({ viewport: sheet });
  await page.emulateMedia({ media: 'print' });
  await page.goto(pathToFileURL(file).href);
  await page.screenshot({ path });
  await page.close();
}

/**
 * All drawings of a page on one picture, without colour, as a black and white printer shows them.
 *
 * @param {Browser} browser - started
 * @param {string} file - the page
 * @param {string} path - of the picture
 */
async function drawings(browser, file, path) {
  const page = await browser.newPage({ viewport: { width: 1420, height: 900 } });
  await page.goto(pathToFileURL(file).href);
  await page.evaluate(`(() => {
    const drawn = [...document.querySelectorAll('.wide svg')];
    document.body.replaceChildren(...drawn);
    document.body.style.cssText =
      'display:block;columns:2;column-gap:30px;padding:15px;filter:grayscale(1);background:#fff';
    for (const svg of drawn) svg.style.cssText = 'break-inside:avoid;display:block;margin-bottom:28px;max-width:100%';
  })()`);
  await page.screenshot({ path, fullPage: true });
  await page.close();
}
