import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      'packages/**/*.test.ts',
      'apps/*/src/**/*.test.{ts,tsx}',
      'bench/**/*.test.ts',
      'studies/**/*.test.ts',
      'tools/**/*.test.mjs',
    ],
    benchmark: { include: ['packages/**/*.bench.ts', 'apps/**/*.bench.ts'] },
    testTimeout: 60_000,
  },
});
