import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../../tools/browser.mjs';
import { accessibilityFaults, drawingFaults } from './accessibility-faults.js';
import { pdfTexts } from './pdf-texts.js';
import { sheetFaults } from './sheet-faults.js';
import { textFaults } from './text-faults.js';

// The pages that the report package records: everything a page can hold, hostile names, and a crowd
// of devices with names that are too long. They are opened from disk, as whoever receives one does.
const recorded = new URL('../../../report/recorded/', import.meta.url);
const pages = ['everything', 'hostile', 'crowded'] as const;
const widths = [360, 800, 1280] as const;

const started = await startBrowser();
const why = started.reason === undefined ? '' : ` (skipped: ${started.reason})`;

describe.skipIf(started.browser === undefined)(`the report's page in a browser${why}`, () => {
  let browser: Browser;

  beforeAll(() => {
    if (started.browser === undefined) throw new Error('skipped without a browser');
    browser = started.browser;
  });

  afterAll(async () => {
    await browser.close();
  });

  /** A page opened from disk at a width, and all that it complained about or asked for. */
  async function opened(name: string, width: number): Promise<{ page: Page; said: string[] }> {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    const address = new URL(`${name}.html`, recorded).href;
    const said: string[] = [];
    page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => said.push(String(error)));
    page.on('request', (request) => {
      if (request.url() !== address) said.push(`asked for ${request.url()}`);
    });
    await page.goto(address);
    return { page, said };
  }

  it.each(pages.flatMap((name) => widths.map((width) => [name, width] as const)))(
    '%s, %i px wide: says nothing to the console, fetches nothing, no text overlaps or is cut off',
    async (name, width) => {
      const { page, said } = await opened(name, width);
      expect(await textFaults(page)).toEqual([]);
      expect(said).toEqual([]);
      await page.close();
    },
  );

  it('finds texts that overlap, are cut off or too small where there are some', async () => {
    const page = await browser.newPage({ viewport: { width: 360, height: 900 } });
    await page.setContent(
      '<p style="position:absolute;top:0;left:0">one text</p><p style="position:absolute;top:4px;left:9px">another</p>' +
        '<p style="margin-top:80px;font-size:5px">tiny</p><p style="width:900px">wide</p>' +
        '<p style="height:9px;overflow:hidden">cut off</p>' +
        '<svg width="50" viewBox="0 0 50 20"><text x="30" y="15">outside</text></svg>',
    );
    const found = (await textFaults(page)).join('\n');
    for (const kind of ['overlap', 'too small', 'wider than', 'cut off below', 'outside its']) {
      expect(found).toContain(kind);
    }
    await page.close();
  });

  it('finds a broken rule of accessibility and a drawing without words where there are some', async () => {
    const page = await browser.newPage();
    await page.setContent(
      '<html><body><section><div class="wide"><svg><text>a</text></svg></div><img src="data:,"></section></body></html>',
    );
    expect((await accessibilityFaults(page)).join()).toContain('image-alt');
    const { drawings, faults } = await drawingFaults(page);
    expect(drawings).toBe(1);
    for (const word of ['title', 'description', 'table', 'words']) {
      expect(faults.join()).toContain(word);
    }
    await page.close();
  });

  it.each(pages)('%s has nothing that is wider than a sheet', async (name) => {
    const { page } = await opened(name, 1280);
    expect(await sheetFaults(page)).toEqual([]);
    await page.setContent('<p style="width:900px">wide</p>');
    expect(await sheetFaults(page)).toHaveLength(2);
    await page.close();
  });

  it.each(pages)('%s keeps the rules of accessibility', async (name) => {
    const { page } = await opened(name, 1280);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.close();
  });

  it.each(
    pages.flatMap((name) => (['Letter', 'A4'] as const).map((format) => [name, format] as const)),
  )(
    '%s prints on %s with numbered pages, whole rows, and heads that repeat',
    async (name, format) => {
      const { page } = await opened(name, 1280);
      const { rows, firstRows } = await page.evaluate<{ rows: number; firstRows: number[] }>(
        markRows,
      );
      const printed = pdfTexts(await page.pdf({ format, preferCSSPageSize: false }));
      const texts = printed.map((text) => text.replaceAll('\u200b', ''));
      expect(texts.length).toBeGreaterThan(3);
      texts.forEach((text, index) => {
        expect(text).toContain(`Page ${index + 1} of ${texts.length}`);
      });
      const pageOf = (mark: string): number => texts.findIndex((text) => text.includes(mark));
      const cut: string[] = [];
      for (let row = 0; row < rows; row += 1) {
        const [begins, ends] = [pageOf(`(row ${row} begins)`), pageOf(`(row ${row} ends)`)];
        if (begins < 0 || begins !== ends) cut.push(`row ${row}: from page ${begins} to ${ends}`);
      }
      expect(rows).toBeGreaterThan(20);
      expect(cut).toEqual([]);
      // No table has its head at the foot of one page and all of its rows on the next.
      const headAlone = firstRows.filter(
        (row, table) => pageOf(`(head ${table} of all)`) !== pageOf(`(row ${row} begins)`),
      );
      expect(firstRows.length).toBeGreaterThan(5);
      expect(headAlone).toEqual([]);
      // A page that begins within a table repeats its head: the same mark stands on several pages.
      const heads = texts.filter((text) => text.includes('(head of the longest table)'));
      if (name === 'crowded') expect(heads.length).toBeGreaterThan(1);
      expect(heads.length).toBeGreaterThan(0);
      await page.close();
    },
  );

  it('has answer, every verdict and the recommended make-up air on the first sheet', async () => {
    const { page } = await opened('everything', 1280);
    const [first = ''] = pdfTexts(await page.pdf({ format: 'Letter', preferCSSPageSize: false }));
    const text = first.replaceAll('\u200b', '').replace(/\s+/gu, ' ');
    expect(text).toContain('the recommended make-up air: Make-up fan of 600 cfm');
    const appliances = await page.locator('table:has(#table-findings) tbody th').allTextContents();
    expect(appliances.length).toBeGreaterThan(3);
    for (const name of appliances) expect(text).toContain(name);
    expect(text).toContain('Margin, Pa');
    await page.close();
  });

  it('prints in black and white what it says in colour: verdicts are words', async () => {
    const { page } = await opened('everything', 1280);
    const words = await page.locator('.tag').allTextContents();
    expect(new Set(words)).toEqual(
      new Set(['beyond the limit', 'near the limit', 'not judged', 'within the limit']),
    );
    await page.close();
  });
});

/**
 * Marks the first and the last line of every row with words that stand nowhere else, and the head of
 * the longest table and of all; returns how many rows there are, and the first row of each table. Runs in the page.
 */
const markRows = `(() => {
  const rows = [...document.querySelectorAll('tbody tr')];
  rows.forEach((row, index) => {
    for (const [place, word] of [['afterbegin', 'begins'], ['beforeend', 'ends']]) {
      const mark = document.createElement('span');
      mark.textContent = '(row ' + index + ' ' + word + ')';
      mark.style.cssText = 'display:block;white-space:nowrap;font-size:6pt';
      const cells = [...row.cells];
      const tallest = cells.reduce((most, cell) =>
        cell.firstChild && cell.textContent.length > most.textContent.length ? cell : most);
      (word === 'begins' ? cells[0] : tallest).insertAdjacentElement(place, mark);
    }
  });
  const tables = [...document.querySelectorAll('table')];
  const longest = tables.reduce((most, table) => (table.rows.length > most.rows.length ? table : most));
  const head = document.createElement('span');
  head.textContent = '(head of the longest table)';
  head.style.cssText = 'display:block;white-space:nowrap;font-size:6pt';
  longest.tHead.rows[0].cells[0].append(head);
  const withRows = tables.filter((table) => table.tHead && table.tBodies[0]?.rows.length);
  withRows.forEach((table, index) => {
    const mark = document.createElement('span');
    mark.textContent = '(head ' + index + ' of all)';
    mark.style.cssText = 'display:block;white-space:nowrap;font-size:6pt';
    table.tHead.rows[0].cells[0].append(mark);
  });
  const firstRows = withRows.map((table) => rows.indexOf(table.tBodies[0].rows[0]));
  return { rows: rows.length, firstRows };
})()`;
