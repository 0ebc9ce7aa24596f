import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const require = createRequire(import.meta.url);
const axe = await readFile(require.resolve('axe-core/axe.min.js'), 'utf8');

/**
 * Which rules of accessibility a page breaks.
 *
 * @param page - an open page
 * @returns one line a rule; empty where all are kept
 */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return await page.evaluate<string[]>(
    `axe.run(document, { resultTypes: ['violations'] }).then(({ violations }) =>
      violations.map(({ id, nodes }) => id + ': ' + nodes[0].html.slice(0, 120)))`,
  );
}

/**
 * Drawings without words for who cannot see them: a title, a description, and a table in the same section.
 *
 * @param page - an open page
 * @returns one line a fault, and how many drawings there are
 */
export async function drawingFaults(
  page: Page,
): Promise<{ readonly drawings: number; readonly faults: readonly string[] }> {
  return await page.evaluate(`(() => {
    const drawings = [...document.querySelectorAll('.wide svg')];
    const faults = drawings.flatMap((svg) => {
      const name = svg.querySelector('title')?.textContent ?? '';
      return [
        ...(name.length < 5 ? ['a drawing without a title'] : []),
        ...((svg.querySelector('desc')?.textContent ?? '').length < 10 ? [name + ': no description'] : []),
        ...(svg.closest('section').querySelector('table') ? [] : [name + ': no table']),
        ...(svg.querySelectorAll('text').length < 2 ? [name + ': no words'] : []),
      ];
    });
    return { drawings: drawings.length, faults };
  })()`);
}
