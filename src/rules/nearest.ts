/** The known name nearest to one that was typed, for "did you mean"; undefined when none is near. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.max(2, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    const apart = candidate.includes(name) || name.includes(candidate) ? 1 : distance(name, candidate, least);
    if (apart >= least) continue;
    least = apart;
    best = candidate;
  }
  return best;
}

/** Letters to add, drop or change to make one word of the other (Levenshtein); `most` when it is that or more. */
function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) >= most) return most;
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next[j] = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1));
    }
    row = next;
  }
  return row[b.length]!;
}
