import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded } from '../build.mjs';
import { bundleApp, runBundleWithoutNode } from '../bundle-app.mjs';
import { findBrowser } from '../find-browser.mjs';
import { firstDifference } from '../first-difference.mjs';
import { runNpm } from '../npm-command.mjs';
import { packDependencies, packPackages } from '../pack-packages.mjs';
import { commandScript } from '../repository.mjs';
import { runInBrowser } from '../run-in-browser.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate, GateCounts } from '../run-gates.mjs' */
/** @import { Tarball } from '../pack-packages.mjs' */

/** What a package may contain. */
const packable =
  /^(package\.json|LICENSE|README\.md|bin\/[^/]+\.js|dist\/.+\.(js|d\.ts)|schemas?\/.+\.json)$/;

/**
 * @typedef {object} Check
 * @property {string} title - what should be so
 * @property {() => Promise<string | undefined>} problem - what is wrong; undefined if nothing is
 */

/**
 * The packages work for whoever installs them: well formed, installable, usable in Node, by the
 * command and in a browser. Counts checks.
 *
 * @type {Gate}
 */
export const packagesGate = {
  name: 'packages',
  title: 'the packed packages work in Node, as a command and in a browser',
  async run({ root, write }) {
    const { succeeded, output } = await buildIfNeeded(root, ['packages']);
    if (!succeeded) {
      write(`The packages are not built:\n${output}`);
      return { passed: 0, failed: 1, skipped: 0 };
    }
    const folder = mkdtempSync(join(tmpdir(), 'evendraft packed '));
    try {
      const tarballs = await packPackages(root, folder);
      /** @type {GateCounts} */
      const counts = { passed: 0, failed: 0, skipped: 0 };
      /** @param {Check} check */
      const hold = async ({ title, problem }) => {
        const found = await problem().catch((error) => String(error?.stack ?? error));
        if (found === undefined) {
          counts.passed += 1;
        } else {
          counts.failed += 1;
          write(`✗ ${title}\n${found}`);
        }
        return found === undefined;
      };
      for (const tarball of tarballs) {
        await Promise.all(tarballChecks(root, tarball).map(hold));
      }
      const app = join(folder, 'app');
      if (!(await hold(installCheck({ root, folder, app, tarballs })))) return counts;
      for (const check of appChecks(app)) await hold(check);
      const browser = findBrowser(process.env['CHROMIUM_PATH']);
      if (browser.path === undefined) {
        write(`The run in a browser is skipped: ${browser.reason}.`);
        counts.skipped += 1;
      } else {
        await hold(browserCheck(app, browser.path));
      }
      return counts;
    } finally {
      rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
    }
  },
};

/**
 * @param {string} root - the repository's top folder
 * @param {Tarball} tarball - one package
 * @returns {Check[]} what must be so for it alone
 */
function tarballChecks(root, { name, path, files }) {
  return [
    {
      title: `${name} contains what is meant to be published and nothing else`,
      async problem() {
        const odd = files.filter((file) => !packable.test(file) || file.includes('.test.'));
        const missing = ['LICENSE', 'package.json'].filter((file) => !files.includes(file));
        if (!files.some((file) => file.startsWith('dist/'))) missing.push('dist/');
        const lines = [
          ...odd.map((file) => `  not meant: ${file}`),
          ...missing.map((file) => `  missing: ${file}`),
        ];
        return lines.length === 0 ? undefined : lines.join('\n');
      },
    },
    {
      title: `${name} is well formed (publint)`,
      problem: () =>
        problemOf(
          [commandScript('publint', 'publint', root), 'run', path, '--strict', '--pack', 'false'],
          root,
        ),
    },
    {
      title: `${name} gives its types to every importer (are the types wrong)`,
      problem: () =>
        problemOf(
          [
            commandScript('@arethetypeswrong/cli', 'attw', root),
            path,
            '--profile',
            'esm-only',
            '--no-color',
            '--no-emoji',
          ],
          root,
        ),
    },
  ];
}

/**
 * @param {{ root: string, folder: string, app: string, tarballs: readonly Tarball[] }} place - where
 * @returns {Check} the packages can be installed together, with no network
 */
function installCheck({ root, folder, app, tarballs }) {
  return {
    title: 'the packages can be installed from their tarballs',
    async problem() {
      cpSync(join(root, 'packages/checks/tools/consumer'), app, { recursive: true });
      const needed = join(folder, 'needed');
      mkdirSync(needed);
      const all = [...tarballs, ...(await packDependencies(root, needed))];
      const manifest = {
        name: 'packed-app',
        private: true,
        type: 'module',
        dependencies: Object.fromEntries(all.map(({ name, path }) => [name, `file:${path}`])),
      };
      writeFileSync(join(app, 'package.json'), JSON.stringify(manifest, null, 2));
      const { exitCode, stdout, stderr } = await runNpm(
        ['install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'],
        { cwd: app },
      );
      return exitCode === 0 ? undefined : `${stdout}${stderr}`;
    },
  };
}

/**
 * @param {string} app - an application in which the packages are installed
 * @returns {Check[]} what must be so in it, without a browser
 */
function appChecks(app) {
  return [
    {
      title: 'a program that imports evendraft runs',
      async problem() {
        const { exitCode, stdout, stderr } = await runNode(['program.js'], { cwd: app });
        return exitCode === 0 && stdout.trim() !== '' ? undefined : `${stdout}${stderr}`;
      },
    },
    {
      title: 'the evendraft command assesses a house',
      problem: () => commandProblem(app),
    },
    {
      title: 'a bundle runs without anything of Node and says the same as in Node',
      async problem() {
        const { code } = await bundleApp(app, 'page.js');
        return differenceFromNode(app, await runBundleWithoutNode(code));
      },
    },
    {
      title: 'an embedder who brings an object carries no YAML parser',
      async problem() {
        const { modules } = await bundleApp(app, 'bring-object.js');
        const parser = modules.filter((id) => id.includes('/node_modules/yaml/'));
        if (modules.length < 2) return 'the bundle is empty, so this check checks nothing';
        return parser.length === 0 ? undefined : parser.map((id) => `  ${id}`).join('\n');
      },
    },
  ];
}

/**
 * @param {string} app - an application in which the packages are installed
 * @returns {Promise<string | undefined>} what is wrong with the command
 */
async function commandProblem(app) {
  if (!existsSync(join(app, 'node_modules/.bin/evendraft'))) return 'npm has not linked evendraft';
  const { exitCode, stdout, stderr } = await runNode(
    ['node_modules/@evendraft/cli/bin/evendraft.js', 'assess', 'packed-row.yaml', '--json'],
    { cwd: app },
  );
  if (exitCode !== 0) return `exit code ${exitCode}\n${stdout}${stderr}`;
  /** @type {{ findings: readonly unknown[] }} */
  const { findings } = JSON.parse(stdout);
  return findings.length === 1 ? undefined : `${findings.length} findings for one appliance`;
}

/**
 * @param {string} app - an application in which the packages are installed
 * @param {string} browser - the browser's program
 * @returns {Check} the bundle runs in the browser and says the same as in Node
 */
function browserCheck(app, browser) {
  return {
    title: 'the bundle runs in a browser and says the same as in Node',
    async problem() {
      const { code } = await bundleApp(app, 'page.js');
      const profileFolder = join(app, 'profile');
      return differenceFromNode(app, await runInBrowser({ browser, profileFolder, code }));
    },
  };
}

/**
 * @param {string} app - an application in which the packages are installed
 * @param {string} report - what a bundle said
 * @returns {Promise<string | undefined>} where it differs from what the program in Node says
 */
async function differenceFromNode(app, report) {
  const { stdout } = await runNode(['program.js'], { cwd: app });
  return firstDifference(stdout.trimEnd(), report.trimEnd(), ['in Node', 'in the bundle']);
}

/**
 * @param {readonly string[]} args - a script and its arguments
 * @param {string} cwd - where it runs
 * @returns {Promise<string | undefined>} what it said, if it did not succeed
 */
async function problemOf(args, cwd) {
  const { exitCode, stdout, stderr } = await runNode(args, {
    cwd,
    env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' },
  });
  return exitCode === 0 ? undefined : `${stdout}${stderr}`.trim();
}
