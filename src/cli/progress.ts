import type { Io } from './io.ts';

/** A run shorter than this shows no progress, ms. */
const patience = 400;
const clearLine = '\r\u001b[2K';

export interface Progress {
  /** Says what is being done now, in a few words. */
  now(what: string): void;
  /** Takes the line away again. Called before anything else is written, and at the end. */
  clear(): void;
}

/** One line on standard error that replaces itself; nothing at all where that is no terminal. */
export function progressOn({ stderr }: Io): Progress {
  if (stderr.isTTY !== true) return { now: () => {}, clear: () => {} };
  const began = performance.now();
  let shown = false;
  return {
    now(what) {
      if (performance.now() - began < patience) return;
      shown = true;
      const room = Math.max(10, (stderr.columns ?? 80) - 2);
      stderr.write(`${clearLine}${what.slice(0, room)}…`);
    },
    clear() {
      if (shown) stderr.write(clearLine);
      shown = false;
    },
  };
}
