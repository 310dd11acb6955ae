import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/site/**'],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'site',
          include: ['test/site/**/*.test.ts'],
          globalSetup: './test/site/setup.ts',
          testTimeout: 120_000,
          hookTimeout: 240_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
