import { defineConfig } from 'vitest/config';

// `--mode all` tries everything, else tests take samples (tests/support/samples.ts). React is the one that readers get.
export default defineConfig(({ mode }) => ({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    env: { FOLDWRIGHT_TESTS: process.env['FOLDWRIGHT_TESTS'] ?? (mode === 'all' ? 'all' : 'samples'), NODE_ENV: 'production' },
    testTimeout: 120_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
  },
}));
