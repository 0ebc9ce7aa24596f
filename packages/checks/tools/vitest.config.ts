import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Packages resolve to each other's source, so that tests run without a build. */
const conditions = ['@evendraft/source'];

export default defineConfig({
  root: fileURLToPath(new URL('../../..', import.meta.url)),
  resolve: { conditions: [...conditions, 'module', 'node', 'development|production'] },
  ssr: { resolve: { conditions: [...conditions, 'module', 'node', 'development|production'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'packages/checks/published/**/*.test.ts'],
    // A fixed order and a fixed seed: a run that fails here fails everywhere in the same way.
    sequence: { shuffle: false },
    setupFiles: [fileURLToPath(new URL('property-seed.ts', import.meta.url))],
    pool: 'threads',
    maxWorkers: 2,
    // Pure functions share nothing, so a fresh module graph for each file would only cost time.
    isolate: false,
    // Some tests start a compiler or another tool, and the machine may be busy.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    coverage: { enabled: false },
  },
});
