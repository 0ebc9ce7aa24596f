import { runCommand } from './run-command.js';

process.exitCode = await runCommand(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  width: process.stdout.columns ?? 80,
  color: process.stdout.isTTY === true && process.env['NO_COLOR'] === undefined,
  progress: process.stderr.isTTY === true,
});
