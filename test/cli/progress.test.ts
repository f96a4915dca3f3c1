import { expect, it, onTestFinished, vi } from 'vitest';
import { progressOn } from '../../src/cli/progress.ts';

function shownBy(isTTY: boolean, milliseconds: number): string {
  const written: string[] = [];
  const stderr = { write: (text: string) => written.push(text), isTTY, columns: 20 };
  const clock = vi.spyOn(performance, 'now').mockReturnValue(0);
  onTestFinished(() => clock.mockRestore());
  const progress = progressOn({ stdout: stderr, stderr, env: {}, cwd: '' });
  clock.mockReturnValue(milliseconds);
  progress.now('reading a recording with a long name');
  progress.clear();
  progress.clear();
  return written.join('');
}

it('is one line on a terminal that replaces itself and goes away, only when it takes long', () => {
  expect(shownBy(true, 1000)).toBe('\r\u001b[2Kreading a recordin…\r\u001b[2K');
  expect(shownBy(true, 100)).toBe('');
  expect(shownBy(false, 1000)).toBe('');
});
