import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { solveBatch } from '@evendraft/network';
import { build } from 'vite';
import { expect, it } from 'vitest';
import { startBrowser } from '../../tools/browser.mjs';
import { houseBatch } from './house-batch.js';
import type { PoolReport } from './pool-page.js';

const started = await startBrowser();
const why = started.reason === undefined ? '' : ` (skipped: ${started.reason})`;

it.skipIf(started.browser === undefined)(
  `a pool of workers in a browser gives what the page alone and Node give${why}`,
  async () => {
    const { browser } = started;
    if (browser === undefined) throw new Error('skipped without a browser');
    const served = await serve(await bundled());
    try {
      const page = await browser.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(String(error)));
      await page.goto(served.address);
      await page.waitForFunction('globalThis.poolReport !== undefined');
      const report = (await page.evaluate('globalThis.poolReport()')) as PoolReport;
      expect(errors).toEqual([]);
      expect(report).toMatchObject({ rows: 700, solved: 686, different: 0, workerStarts: 2 });
      const { network, batch } = houseBatch();
      const here = solveBatch(network, batch);
      expect(report.pressuresPa).toHaveLength(here.pressuresPa.length);
      report.pressuresPa.forEach((pressure, k) => {
        // Engines differ by units in the last place of their exponentials, which prepare the laws.
        const expected = here.pressuresPa[k]!;
        expect(pressure === expected || Math.abs(pressure - expected) < 1e-6).toBe(
          !Number.isNaN(expected),
        );
      });
    } finally {
      served.close();
      await browser.close();
    }
  },
);

/** The page's script and its worker, by the name under which each asks for the other. */
async function bundled(): Promise<ReadonlyMap<string, string>> {
  const result = await build({
    root: fileURLToPath(new URL('.', import.meta.url)),
    configFile: false,
    logLevel: 'error',
    resolve: { conditions: ['@evendraft/source', 'module', 'browser'] },
    worker: { format: 'es' },
    build: {
      write: false,
      modulePreload: false,
      rollupOptions: { input: fileURLToPath(new URL('pool-page.ts', import.meta.url)) },
    },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (output === undefined || !('output' in output)) throw new Error('vite returned no bundle');
  const scripts = new Map<string, string>();
  for (const part of output.output) {
    const text = part.type === 'chunk' ? part.code : part.source.toString();
    scripts.set(`/${part.fileName}`, text);
    if (part.type === 'chunk' && part.isEntry) {
      const page = `<!doctype html><meta charset="utf-8"><script type="module" src="/${part.fileName}"></script>`;
      scripts.set('/', page);
    }
  }
  return scripts;
}

async function serve(
  files: ReadonlyMap<string, string>,
): Promise<{ readonly address: string; close(): void }> {
  const server = createServer(({ url }, response) => {
    const body = files.get(url ?? '');
    const type = url === '/' ? 'text/html' : 'text/javascript';
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': type });
    response.end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
