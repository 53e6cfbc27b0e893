import { defineConfig } from 'vitest/config';

/** Pure code has no state to leak, so its test files share one module graph and load it once. */
const pure = ['calc', 'rules', 'ask', 'corpus', 'talks', 'published'];

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    environment: 'node',
    pool: 'threads',
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: pure.map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`),
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'rest',
          testTimeout: 60_000,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...pure, 'site', 'store'].map((folder) => `tests/${folder}/**`),
          pool: 'forks',
        },
      },
      {
        extends: true,
        test: {
          name: 'store',
          include: ['tests/store/**/*.test.{ts,tsx}'],
          globalSetup: ['tests/store/postgres-setup.ts', 'tests/site/browser-setup.ts'],
          pool: 'forks',
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.{ts,tsx}'],
          globalSetup: 'tests/site/browser-setup.ts',
          pool: 'forks',
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
