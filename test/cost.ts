/*
 * A machine that others use slows now this, now that: what counts is the fastest of several rounds. While it is
 * not below `enough` more rounds are made, up to a limit that what really takes longer does not outlast.
 */

/** How long something takes, ms. */
export function millisecondsOf(action: () => unknown, enough: number): number {
  let least = took(action);
  for (let again = 0; again < 9 && least >= enough; again++) least = Math.min(least, took(action));
  return least;
}

/** How many times as long one thing takes as another, done in turn, so that both meet the same machine. */
export function timesAsLong(much: () => unknown, little: () => unknown, enough: number): number {
  let [longest, shortest] = [took(much), took(little)];
  for (let round = 0; round < 5 || (round < 40 && longest >= enough * shortest); round++) {
    longest = Math.min(longest, took(much));
    shortest = Math.min(shortest, took(little));
  }
  return longest / shortest;
}

function took(action: () => unknown): number {
  const began = performance.now();
  action();
  return performance.now() - began;
}
