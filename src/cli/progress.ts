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

/** Lines that a log gets of a whole run, and the least time between two of them, ms. */
const logLines = 20;
const logPause = 2000;

export interface Tally {
  now(done: number): void;
  clear(): void;
}

/** How many of so many are done, with the time left: a line that replaces itself, or plain lines in a log. */
export function tallyOn(io: Io, all: number): Tally {
  const began = performance.now();
  const line = progressOn(io);
  let said = began;
  let saidAt = 0;
  return {
    now(done) {
      const now = performance.now();
      const text = `${done} of ${all} audited, ${left(now - began, done, all)}`;
      if (io.stderr.isTTY === true) line.now(text);
      else if (now - said >= logPause && (done - saidAt) * logLines >= all && done < all) {
        io.stderr.write(`${text}\n`);
        said = now;
        saidAt = done;
      }
    },
    clear: () => line.clear(),
  };
}

/** From the time that the ones done took. */
function left(spent: number, done: number, all: number): string {
  const seconds = Math.ceil(((spent / done) * (all - done)) / 1000);
  if (seconds < 90) return `about ${seconds} s left`;
  const minutes = Math.ceil(seconds / 60);
  return minutes < 90 ? `about ${minutes} min left` : `about ${(minutes / 60).toFixed(1)} h left`;
}
