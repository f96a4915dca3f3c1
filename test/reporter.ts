import { writeSync } from 'node:fs';
import process from 'node:process';
import type { Reporter, TestModule } from 'vitest/node';

/** Ends the output with one line that any continuous integration can count. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string) => tests.filter((test) => test.result().state === state).length;
    // A file that could not even be loaded has no tests to count.
    const broken = modules.filter((module) => module.errors().length > 0).length;
    const line = `${count('passed')} passed, ${count('failed') + broken} failed, ${count('skipped')} skipped\n`;
    // At exit, because the coverage table is printed after the last reporter has spoken.
    process.once('exit', () => writeSync(process.stdout.fd, line));
  }
}
