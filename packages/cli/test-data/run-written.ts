import type { CommandStreams } from '../src/command-streams.js';
import type { ExitCode } from '../src/exit-code.js';
import { runCommand } from '../src/run-command.js';

/** What a command wrote to a terminal of 80 columns without colour, and its exit code. */
export interface Written {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** Runs a command with streams that are kept, but for those given. */
export async function runWith(
  streams: Partial<CommandStreams>,
  ...args: readonly string[]
): Promise<Written> {
  const written = { out: '', err: '' };
  const code = await runCommand(args, {
    out: (text) => {
      written.out += text;
    },
    err: (text) => {
      written.err += text;
    },
    width: 80,
    color: false,
    progress: false,
    ...streams,
  });
  return { code, ...written };
}

/** Runs a command with streams that are kept. */
export async function run(...args: readonly string[]): Promise<Written> {
  return runWith({}, ...args);
}
