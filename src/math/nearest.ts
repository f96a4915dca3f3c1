/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours.
 * Strings are a stranger's and compared in full, so both are cut to `longest` characters first.
 */
export function editDistance(a: string, b: string): number {
  const longest = 64;
  const from = a.slice(0, longest);
  const to = b.slice(0, longest);
  let before = new Uint8Array(to.length + 1);
  let last = Uint8Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const row = new Uint8Array(to.length + 1);
    row[0] = i;
    for (let j = 1; j <= to.length; j++) {
      const differs = from[i - 1] === to[j - 1] ? 0 : 1;
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + differs);
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]) {
        least = Math.min(least, before[j - 2]! + 1);
      }
      row[j] = least;
    }
    before = last;
    last = row;
  }
  return last[to.length]!;
}

/** The known word that a misspelt or shortened one most likely meant, or null when none is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const plain = (text: string) => text.toLowerCase().replace(/[\s_-]/g, '');
  const meant = plain(word);
  let best: string | null = null;
  let least = Math.min(3, Math.floor((meant.length + 1) / 3)) + 1;
  for (const candidate of known) {
    const beginsSo = meant.length >= 3 && plain(candidate).startsWith(meant);
    const distance = beginsSo ? 1 : editDistance(meant, plain(candidate));
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}
