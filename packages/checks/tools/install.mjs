import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { installReason } from './install-decision.mjs';
import { runNpm } from './npm-command.mjs';

/**
 * Installs what the repository needs, if something is missing, old or half there. Development
 * dependencies are always included, because the build needs them.
 *
 * @param {string} root - the repository's top folder
 * @returns {Promise<boolean>} false if it could not be installed; the reason has been printed
 */
export async function installIfNeeded(root) {
  if (reasonIn(root) === undefined) return true;
  console.error('Installing what Evendraft needs (once) …');
  const verb = existsSync(join(root, 'package-lock.json')) ? 'ci' : 'install';
  const { exitCode, stdout, stderr } = await runNpm(
    [verb, '--include=dev', '--no-fund', '--no-audit', '--loglevel=error'],
    { cwd: root },
  );
  if (exitCode !== 0) {
    console.error(
      [
        `The installation did not succeed. "npm ${verb} --include=dev" said:`,
        '',
        lastLines(`${stdout}${stderr}`, 30),
        '',
        'Check the connection to the package registry and the free space on the disk, then run the same command again.',
      ].join('\n'),
    );
    return false;
  }
  const remaining = reasonIn(root);
  if (remaining !== undefined) {
    console.error(`npm reports success, yet ${remaining}. Going on with what is there.`);
  }
  return true;
}

/**
 * @param {string} root - the repository's top folder
 * @returns {string | undefined} why an install is needed
 */
function reasonIn(root) {
  return installReason({
    locked: readJson(join(root, 'package-lock.json')),
    installed: readJson(join(root, 'node_modules/.package-lock.json')),
    versionAt: (path) => versionAt(join(root, path)),
  });
}

/**
 * @param {string} folder - an installed package
 * @returns {string | undefined} its version, if the package looks whole
 */
function versionAt(folder) {
  /** @type {{ version?: string, bin?: string | Record<string, string> } | undefined} */
  const manifest = readJson(join(folder, 'package.json'));
  if (manifest === undefined) return undefined;
  const { bin = {}, version = '0.0.0' } = manifest;
  const scripts = typeof bin === 'string' ? [bin] : Object.values(bin);
  return scripts.every((script) => existsSync(join(folder, script))) ? version : undefined;
}

/**
 * @param {string} path - a JSON file
 * @returns {any} its contents; undefined if there is no such file or it is not whole
 */
function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/**
 * @param {string} text - output of a command
 * @param {number} count - how many lines to keep
 * @returns {string} the last of its lines, without npm's own stack trace
 */
function lastLines(text, count) {
  const lines = text.split('\n').filter((line) => !/^npm error\s+at .*:\d+:\d+\)?$/.test(line));
  return lines.join('\n').trim().split('\n').slice(-count).join('\n');
}
