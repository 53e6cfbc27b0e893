/** A stream of numbers that its seed alone decides: the same on every machine. Nothing secret may rest on it. */
export interface Random {
  /** A whole number from 0 up to, and without, `below`. */
  readonly int: (below: number) => number;
  /** One of a list. Throws RangeError for an empty one. */
  readonly pick: <T>(list: readonly T[]) => T;
  /** The list in another order. */
  readonly shuffle: <T>(list: readonly T[]) => T[];
}

/** A stream for a seed of any text (mulberry32 over an FNV-1a hash; whole 32-bit arithmetic only, so no machine differs). */
export function randomOf(seed: string): Random {
  let state = hashOf(seed);
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (mixed ^ (mixed >>> 14)) >>> 0;
  };
  const int = (below: number): number => next() % below;
  return {
    int,
    pick: (list) => {
      if (list.length === 0) throw new RangeError('nothing to draw from: give a list with something in it');
      return list[int(list.length)]!;
    },
    shuffle: (list) => {
      const shuffled = [...list];
      for (let at = shuffled.length - 1; at > 0; at--) {
        const other = int(at + 1);
        [shuffled[at], shuffled[other]] = [shuffled[other]!, shuffled[at]!];
      }
      return shuffled;
    },
  };
}

/** A 32-bit hash of a text, mixed once more so that seeds that differ in their last letter start far apart. */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** The hash as eight letters and digits. */
export const hashText = (text: string): string => hashOf(text).toString(16).padStart(8, '0');
