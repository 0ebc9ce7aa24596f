import { basename } from 'node:path';
import { runCommand } from './run-command.mjs';

/** @import { CommandResult } from './run-command.mjs' */

/**
 * Settings of an outer npm that must not reach an npm started from inside it: with them a fresh
 * clone would be installed without its tools, or in another folder.
 */
const outerSettings =
  /^(NODE_ENV|npm_config_(omit|include|only|production|dev|also|dry_run|global|location|workspaces?|include_workspace_root|local_prefix|prefix|package_lock_only))$/i;

/**
 * Runs npm in a folder, quietly, always with development dependencies allowed.
 *
 * @param {readonly string[]} args - npm's arguments
 * @param {{ cwd: string }} options - the folder
 * @returns {Promise<CommandResult>} exit code and output
 */
export function runNpm(args, { cwd }) {
  const env = npmEnvironment(process.env);
  // Inside `npm start` and `npm test` npm says which script it is, so the same npm is used again.
  const script = process.env['npm_execpath'];
  if (script !== undefined && basename(script) === 'npm-cli.js') {
    return runCommand(process.execPath, [script, ...args], { cwd, env });
  }
  return process.platform === 'win32'
    ? runCommand('cmd.exe', ['/d', '/c', 'npm', ...args], { cwd, env })
    : runCommand('npm', args, { cwd, env });
}

/**
 * The environment for an inner npm.
 *
 * @param {NodeJS.ProcessEnv} outer - this process's environment
 * @returns {NodeJS.ProcessEnv} the same without the settings that must stay outside
 */
export function npmEnvironment(outer) {
  return Object.fromEntries(
    Object.entries(outer).filter(([name]) => !outerSettings.test(name.replaceAll('-', '_'))),
  );
}
