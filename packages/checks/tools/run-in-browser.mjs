import { spawn } from 'node:child_process';
import { createServer } from 'node:http';

/** How long a page may take before it counts as failed [ms]. */
const pageTimeoutMs = 60_000;

/**
 * @typedef {object} BrowserRun
 * @property {string} browser - the browser's program
 * @property {string} profileFolder - an empty folder that the browser may fill
 * @property {string} code - a classic script that leaves a text, or a promise of one, in `evendraftReport`
 */

/**
 * Runs a script in a page of a real browser. The page is served from this process and sends the text
 * back, so that any browser will do.
 *
 * @param {BrowserRun} run - browser and script
 * @returns {Promise<string>} the text that the script left; rejects if none came
 */
export async function runInBrowser({ browser, profileFolder, code }) {
  /** @type {(report: string) => void} */
  let receive = () => undefined;
  /** @type {Promise<string>} */
  const report = new Promise((resolve) => {
    receive = resolve;
  });
  const server = createServer((request, response) => {
    if (request.method !== 'POST') {
      response.setHeader('content-type', 'text/html; charset=utf-8');
      response.end(page(code));
      return;
    }
    let body = '';
    request.setEncoding('utf8').on('data', (chunk) => (body += chunk));
    request.on('end', () => {
      response.end();
      receive(body);
    });
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const child = spawn(
    browser,
    [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--no-first-run',
      `--user-data-dir=${profileFolder}`,
      `http://127.0.0.1:${port}/`,
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (chunk) => (said += chunk));
  /** @type {NodeJS.Timeout | undefined} */
  let timer;
  /** @type {Promise<never>} */
  const failure = new Promise((_resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (exitCode) =>
      reject(new Error(`the browser ended with exit code ${exitCode}\n${said.slice(-2000)}`)),
    );
    timer = setTimeout(
      () => reject(new Error(`the page sent no report\n${said.slice(-2000)}`)),
      pageTimeoutMs,
    );
  });
  try {
    return await Promise.race([report, failure]);
  } finally {
    clearTimeout(timer);
    failure.catch(() => undefined);
    child.removeAllListeners('exit');
    const gone = new Promise((resolve) => child.once('exit', resolve));
    if (child.kill('SIGKILL')) await gone;
    server.closeAllConnections();
    server.close();
  }
}

/**
 * @param {string} code - a classic script
 * @returns {string} a page that runs it and sends back what it left
 */
function page(code) {
  return `<!doctype html>
<meta charset="utf-8">
<title>Packed packages</title>
<script>
${code.replaceAll('</script', '<\\/script')}
</script>
<script>
Promise.resolve(globalThis.evendraftReport).then((report) =>
  fetch('/', { method: 'POST', body: String(report) }),
);
</script>
`;
}
