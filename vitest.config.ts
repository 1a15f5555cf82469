import { defineConfig } from 'vitest/config';
import { countReporter } from './tests/count-reporter.ts';

export default defineConfig({
  test: {
    reporters: ['default', countReporter()],
    projects: [
      { test: { name: 'core', include: ['tests/**/*.test.ts'], exclude: ['tests/site/**'], testTimeout: 30_000, hookTimeout: 30_000 } },
      // Builds sites and drives a browser: one file after another, so that two cores are not asked for more than they have.
      { test: { name: 'site', include: ['tests/site/**/*.test.ts'], fileParallelism: false, testTimeout: 180_000, hookTimeout: 240_000 } },
    ],
  },
});
