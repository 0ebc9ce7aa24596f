import { exitCode } from './exit-code.js';
import { runCommand } from './run-command.js';

// The first Ctrl-C stops the work, which gives what is done by then; a second one ends the process at once.
const stop = new AbortController();
process.on('SIGINT', () => {
  if (stop.signal.aborted) process.exit(exitCode.stopped);
  stop.abort();
});

// A terminal that does not tell its width, or says none, is taken for one of 80 columns.
process.exitCode = await runCommand(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  width: process.stdout.columns || 80,
  color: process.stdout.isTTY === true && (process.env['NO_COLOR'] ?? '') === '',
  progress: process.stderr.isTTY === true,
  progressWidth: process.stderr.columns || 80,
  signal: stop.signal,
});
