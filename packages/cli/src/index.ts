/**
 * The command: files, arguments, progress and exit codes around the library. It computes nothing.
 *
 * Central function: {@link runCommand}. Read next: `run-command.ts`.
 */
export { runCommand } from './run-command.js';
export type { CommandStreams } from './command-streams.js';
