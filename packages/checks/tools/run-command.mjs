import { spawn } from 'node:child_process';

/**
 * @typedef {object} CommandResult
 * @property {number} exitCode - the command's own exit code, 128 + signal number if it was killed, 127 if it did not start
 * @property {string} stdout
 * @property {string} stderr
 */

/**
 * @typedef {object} CommandOptions
 * @property {string} cwd - where the command runs
 * @property {NodeJS.ProcessEnv} [env] - the whole environment; this process's own if absent
 * @property {boolean} [echo] - also show the output while it comes
 * @property {number} [timeoutMs] - after this time the command is killed [ms]
 */

/**
 * Runs a command to its end with no input, and keeps what it wrote. Never rejects.
 *
 * @param {string} command - program to run
 * @param {readonly string[]} args - its arguments, passed without a shell
 * @param {CommandOptions} options - folder, environment, echo
 * @returns {Promise<CommandResult>} exit code and output
 */
export function runCommand(command, args, { cwd, env, echo = false, timeoutMs }) {
  return new Promise((resolve) => {
    let stdout = '';
    let stderr = '';
    const child = spawn(command, args, {
      cwd,
      env: env ?? process.env,
      stdio: ['ignore', 'pipe', 'pipe'],
      windowsHide: true,
      ...(timeoutMs === undefined ? {} : { timeout: timeoutMs, killSignal: 'SIGKILL' }),
    });
    child.stdout.setEncoding('utf8').on('data', (chunk) => {
      stdout += chunk;
      if (echo) process.stdout.write(chunk);
    });
    child.stderr.setEncoding('utf8').on('data', (chunk) => {
      stderr += chunk;
      if (echo) process.stderr.write(chunk);
    });
    child.on('error', (error) => {
      resolve({ exitCode: 127, stdout, stderr: `${stderr}${command}: ${error.message}\n` });
    });
    child.on('close', (code, signal) => {
      resolve({ exitCode: code ?? (signal === 'SIGKILL' ? 137 : 128), stdout, stderr });
    });
  });
}

/**
 * Runs a script of Node by the Node that runs this program.
 *
 * @param {readonly string[]} args - script and its arguments
 * @param {CommandOptions} options - folder, environment, echo
 * @returns {Promise<CommandResult>} exit code and output
 */
export function runNode(args, options) {
  return runCommand(process.execPath, args, options);
}
