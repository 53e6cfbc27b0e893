import type { Random } from './random.ts';
import type { Form, ItemKind, Point } from './shapes.ts';

/** A form of a point, and the topic it is asked under. */
export interface Candidate {
  readonly point: Point;
  readonly form: Form;
  readonly topic: string;
  /** What it counts under. */
  readonly keys: readonly [topic: string, level: string, kind: string];
  /** It has to be in the set. */
  readonly must?: true;
}

/** What a set is to be made from. */
export interface Wanted {
  readonly topics: readonly string[];
  readonly levels: readonly string[];
  readonly kinds: readonly string[];
}

/** Every form that fits, with each of the wanted topics it can be asked under. */
export function candidates(pool: readonly Point[], { topics, levels, kinds }: Wanted): Candidate[] {
  const fits = (list: readonly string[], one: string): boolean => list.length === 0 || list.includes(one);
  return pool.flatMap((point) => {
    const under = topics.length === 0 ? [point.topics[0]] : topics.filter((topic) => point.topics.includes(topic));
    const forms = point.forms.filter(({ level, kind }) => fits(levels, level) && fits(kinds, kind));
    return under.flatMap((topic) => forms.map((form) => candidate(point, form, topic)));
  });
}

/** A form of a point under a topic. */
export const candidate = (point: Point, form: Form, topic: string): Candidate => ({
  point,
  form,
  topic,
  keys: [`topic ${topic}`, `level ${form.level}`, `kind ${form.kind}`],
});

/** What one more of a kind counts: the less it counts, the more of it a set has. */
const share: Readonly<Record<ItemKind, number>> = { one: 0.5, 'true-false': 0.8, number: 0.8, many: 1.5, order: 1.5 };

/** Hands out candidates so that topics, levels and kinds come out even, each group of points once. */
export class Dealer {
  private open: Candidate[];
  private readonly dealt = new Map<string, number>();

  constructor(all: readonly Candidate[], random: Random) {
    this.open = random.shuffle(all);
  }

  /** The candidate that the set has least of; undefined when there is none left. */
  next(): Candidate | undefined {
    let best: Candidate | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const candidate of this.open) {
      const had = this.had(candidate);
      if (had < least) [best, least] = [candidate, had];
    }
    return best;
  }

  /** Takes one into the set: its group is not asked about again. */
  take({ keys: [topic, level, kind], point, form }: Candidate): void {
    for (const key of [topic, level]) this.dealt.set(key, (this.dealt.get(key) ?? 0) + 1);
    this.dealt.set(kind, (this.dealt.get(kind) ?? 0) + share[form.kind]);
    this.open = this.open.filter((each) => each.point.group !== point.group);
  }

  /** What is left, those before others that count under the same keys. */
  like(keys: readonly string[]): readonly Candidate[] {
    const same = (candidate: Candidate): number => candidate.keys.filter((key) => keys.includes(key)).length;
    return [...this.open].sort((a, b) => same(b) - same(a));
  }

  /** Puts one aside that came to no fair item. */
  drop({ point, form }: Candidate): void {
    this.open = this.open.filter((each) => each.point !== point || each.form !== form);
  }

  private had({ keys }: Candidate): number {
    let sum = 0;
    for (const key of keys) sum += this.dealt.get(key) ?? 0;
    return sum;
  }
}
