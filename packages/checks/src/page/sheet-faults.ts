import type { Page } from 'playwright-core';

/** A4 and Letter without the margins of the page's own style, at 96 to the inch [px]. */
const sheetWidths = [673, 695] as const;

/**
 * What is wider than a printed sheet: a browser then prints the whole page smaller.
 *
 * @param page - an open page; it is left in the dress of print
 * @returns one line a fault; empty where all fits
 */
export async function sheetFaults(page: Page): Promise<readonly string[]> {
  const faults: string[] = [];
  await page.emulateMedia({ media: 'print' });
  for (const width of sheetWidths) {
    await page.setViewportSize({ width, height: 900 });
    const wide = await page.evaluate<string[]>(
      `[...document.querySelectorAll('body *')]
        .filter((each) => !each.closest('svg') && each.getBoundingClientRect().right > innerWidth + 1)
        .map((each) => each.tagName + ' ' + (each.caption ?? each).textContent.slice(0, 60))`,
    );
    faults.push(...wide.slice(0, 3).map((fault) => `wider than a sheet of ${width} px: ${fault}`));
  }
  return faults;
}
