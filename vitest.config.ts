import { defineConfig } from 'vitest/config';
import LongestFirst from './tests/support/longest-first.ts';

// `--mode all` tries everything, else tests take samples (tests/support/samples.ts). React is the one that readers get.
export default defineConfig(({ mode }) => ({
  oxc: { jsx: { runtime: 'automatic', development: false } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    setupFiles: ['tests/support/one-seed.ts'],
    // What commands keep comes from this run alone.
    globalSetup: ['tests/support/one-kept.ts'],
    env: { FOLDWRIGHT_TESTS: process.env['FOLDWRIGHT_TESTS'] ?? (mode === 'all' ? 'all' : 'samples'), NODE_ENV: 'production' },
    // Only what never ends is broken off: machines may be slow and busy.
    testTimeout: 600_000,
    hookTimeout: 900_000,
    maxWorkers: 2,
    // Loading the rooms anew for every file would take a quarter of the time.
    isolate: false,
    sequence: { sequencer: LongestFirst },
  },
}));
