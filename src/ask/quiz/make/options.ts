import type { Random } from '../random.ts';
import { contentWords } from '../words.ts';

/** Share of the key that an option has to be off by, so that a near miss is no wrong answer. */
export const nearMiss = 0.08;
/** Two wrong answers stand at least this share of the key apart. */
const apart = 0.05;

export interface Figured {
  readonly text: string;
  readonly figure: number;
  readonly mistake: string;
}

/**
 * Two or three of the wrong figures, chosen so that the key stands at the place wished for in rising order where that can
 * be. Near misses and figures that read alike are left out. Undefined when fewer than two are left.
 */
export function chosen(
  random: Random,
  key: { readonly text: string; readonly figure: number; readonly tolerance: number },
  wrong: readonly Figured[],
  place: number,
): Figured[] | undefined {
  const fair: Figured[] = [];
  for (const each of random.shuffle(wrong)) {
    const gap = Math.abs(each.figure - key.figure);
    if (!Number.isFinite(each.figure) || each.figure <= 0 || each.text === key.text) continue;
    if (gap <= Math.max(key.tolerance, nearMiss * Math.abs(key.figure))) continue;
    const close = (other: Figured): boolean =>
      other.text === each.text || Math.abs(other.figure - each.figure) < apart * Math.abs(key.figure);
    if (!fair.some(close)) fair.push(each);
  }
  const below = fair.filter(({ figure }) => figure < key.figure);
  const above = fair.filter(({ figure }) => figure > key.figure);
  const many = Math.min(3, fair.length);
  if (many < 2) return undefined;
  const under = Math.min(Math.max(place, many - above.length), below.length, many);
  return [...below.slice(0, under), ...above.slice(0, many - under)];
}

/** Key and wrong figures as options, in rising order. */
export function risingOptions(key: { readonly text: string; readonly figure: number }, wrong: readonly Figured[]) {
  const all = [{ ...key, mistake: undefined }, ...wrong].sort((a, b) => a.figure - b.figure);
  return all.map(({ text, mistake }) => (mistake === undefined ? { text } : { text, mistake }));
}

/** Longest and shortest option may differ by this factor, or by so many characters: short words differ by chance. */
export const lengthRatio = 1.6;
export const lengthSlack = 12;

/** True when two texts are near enough in length that neither gives itself away. */
export function alike(a: string, b: string): boolean {
  const [short, long] = [Math.min(a.length, b.length), Math.max(a.length, b.length)];
  return long <= lengthRatio * short || long - short <= lengthSlack;
}

/** True when two texts are one thing in two wordings: most of the words that carry meaning are in both. */
export function saysAsMuch(a: string, b: string): boolean {
  const [one, other] = [contentWords(a), contentWords(b)];
  const shared = [...one].filter((word) => other.has(word)).length;
  return shared > 1 && shared >= 0.6 * Math.max(one.size, other.size);
}

/** Up to `many` texts that are alike in length among themselves and with the key; those near in meaning before others. */
export function alikeTo<T extends { readonly text: string; readonly near?: boolean }>(
  random: Random,
  key: string,
  from: readonly T[],
  many: number,
): T[] {
  const taken: T[] = [];
  const shuffled = random.shuffle(from);
  for (const each of [...shuffled.filter(({ near }) => near), ...shuffled.filter(({ near }) => !near)]) {
    if (taken.length === many) break;
    const others = [key, ...taken.map(({ text }) => text)];
    if (others.every((text) => text !== each.text && alike(text, each.text) && !saysAsMuch(text, each.text)))
      taken.push(each);
  }
  return taken;
}
