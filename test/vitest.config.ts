import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['test/**/*.test.ts'],
    // Ends what hangs, and says nothing of speed: on a machine that others use 20 s were too few for honest work.
    testTimeout: 60_000,
    // By itself it leaves one processor idle, and loads every module anew for each file: nothing in here changes a
    // module for the tests beside it, so that both only cost time.
    maxWorkers: '100%',
    isolate: false,
    reporters: ['default', './test/reporter.ts'],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      // Run by other programs, where coverage cannot see them: Node by itself, a page, `npm run`.
      exclude: ['src/bin/**', 'src/report/client/**', 'src/dev/**'],
      reporter: ['text-summary', 'html'],
      thresholds: { statements: 90, branches: 85, functions: 90, lines: 90 },
    },
  },
});
