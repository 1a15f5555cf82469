import type { Reporter, TestModule } from 'vitest/node';

/** Ends every run with one plain line, `N passed, N failed`, whatever else the runner prints. A module that cannot be loaded counts as failed. */
export function countReporter(): Reporter {
  return {
    onTestRunEnd(modules: readonly TestModule[], unhandledErrors) {
      let passed = 0;
      let failed = unhandledErrors.length;
      let skipped = 0;
      for (const module of modules) {
        failed += module.errors().length;
        for (const test of module.children.allTests()) {
          const state = test.result().state;
          if (state === 'passed') passed += 1;
          else if (state === 'failed') failed += 1;
          else skipped += 1;
        }
      }
      process.on('exit', () => {
        process.stdout.write(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`);
      });
    },
  };
}
