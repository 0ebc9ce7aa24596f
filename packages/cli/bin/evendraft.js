#!/usr/bin/env node
// The command's entry. It is committed, so that npm can link it before anything is built.
import { existsSync } from 'node:fs';

const built = new URL('../dist/main.js', import.meta.url);

if (existsSync(built)) {
  await import(built.href);
} else {
  console.error(
    'evendraft is not built yet. In the repository, run "npm start" (it builds what it needs) or "npm run build".',
  );
  process.exitCode = 2;
}
