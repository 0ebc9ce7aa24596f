#!/usr/bin/env node
// The command's entry. It is committed, so that npm can link it before anything is built.
import { existsSync } from 'node:fs';

const built = new URL('../dist/main.js', import.meta.url);

// A reader such as `head` may close the pipe early; that is no fault of the command.
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') process.exit();
  console.error(`evendraft: the result could not be printed: ${error.message}`);
  process.exit(2);
});

if (!existsSync(built)) {
  console.error(
    'evendraft is not built yet. In the repository, run "npm start" (it builds what it needs) or "npm run build".',
  );
  process.exitCode = 2;
} else {
  try {
    await import(built.href);
  } catch (error) {
    console.error(
      `evendraft: a fault in the program, and no result: ${error instanceof Error ? error.message : String(error)}`,
    );
    if (process.env.EVENDRAFT_DEBUG) console.error(error);
    else console.error('To see where it happened, set EVENDRAFT_DEBUG=1 and run it again.');
    process.exitCode = 3;
  }
}
