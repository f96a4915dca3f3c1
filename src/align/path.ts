import { settings } from './settings.ts';

/**
 * Indices of the states that a clock creeps to from a state, itself among them: neighbours, for states are in order.
 * Every other state is a jump away.
 */
export type Near = readonly [first: number, last: number];

/**
 * The most likely way through windows, one state a window (Viterbi 1967), where a jump costs `jumpCost` and a creep
 * `creepCost`.
 *
 * @param likelihoods of each state, log-likelihoods of the windows
 * @param near of each state
 * @returns of each window, the index of its state
 */
export function likeliestPath(likelihoods: readonly Float64Array[], near: readonly Near[]): Int32Array {
  const states = likelihoods.length;
  const windows = likelihoods[0]!.length;
  const origins: Int32Array[] = [];
  let score = new Float64Array(states);
  for (let w = 0; w < windows; w++) {
    const { before, after } = bestAside(score);
    const origin = new Int32Array(states);
    const next = new Float64Array(states);
    for (let s = 0; s < states; s++) {
      const [first, last] = near[s]!;
      let from = s;
      let value = score[s]!;
      for (let other = first; other <= last; other++) {
        const crept = score[other]! - settings.creepCost;
        if (crept <= value) continue;
        from = other;
        value = crept;
      }
      const jump = better(
        score,
        first > 0 ? before[first - 1]! : s,
        last + 1 < states ? after[last + 1]! : s,
      );
      const jumped = score[jump]! - settings.jumpCost;
      if (jumped > value) {
        from = jump;
        value = jumped;
      }
      origin[s] = from;
      next[s] = value + likelihoods[s]![w]!;
    }
    origins.push(origin);
    score = next;
  }
  return backtrack(origins, highest(score));
}

/** Of each state, which has the highest score of those up to it, and of those from it on. */
function bestAside(score: Float64Array): { before: Int32Array; after: Int32Array } {
  const last = score.length - 1;
  const before = new Int32Array(score.length);
  const after = new Int32Array(score.length).fill(last);
  for (let s = 1; s <= last; s++) before[s] = better(score, before[s - 1]!, s);
  for (let s = last - 1; s >= 0; s--) after[s] = better(score, s, after[s + 1]!);
  return { before, after };
}

/** Which of two has the higher score; of equals the first. */
function better(score: Float64Array, one: number, other: number): number {
  return score[other]! > score[one]! ? other : one;
}

function highest(score: Float64Array): number {
  return score.indexOf(Math.max(...score));
}

function backtrack(origins: readonly Int32Array[], end: number): Int32Array {
  const path = new Int32Array(origins.length);
  let state = end;
  for (let w = origins.length - 1; w >= 0; w--) {
    path[w] = state;
    state = origins[w]![state]!;
  }
  return path;
}
