import { inAskingPart } from './asking-part.ts';
import type { Cue } from './cue.ts';
import { type CueIndex, type CueTable, cueIndex, heardIn } from './cue-index.ts';
import type { Sentence } from './sentence.ts';

/** What a question can be after. */
export type GoalKind = 'quantity' | 'limit' | 'practice' | 'step' | 'fault' | 'defect' | 'repair';

export interface Goal {
  readonly kind: GoalKind;
  readonly id: string;
}

/** A goal with the cue that was heard and how well it fits. */
export interface Scored extends Goal {
  readonly score: number;
  readonly cue: Cue;
}

/** The cues of all records. */
export function goalIndex(
  records: () => readonly { kind: GoalKind; id: string; cues?: readonly string[] }[],
  reading: (line: string) => Cue,
  laid?: CueTable,
): CueIndex<Goal> {
  return cueIndex(
    () => records().flatMap(({ kind, id, cues = [] }) => cues.map((text) => ({ text, of: { kind, id } }))),
    reading,
    laid,
  );
}

/** What a sentence may be after, best first. */
export function goalsOf(index: CueIndex<Goal>, sentence: Sentence): Scored[] {
  const counted = countedIn(sentence);
  const heard = heardIn(index, sentence).map(({ of, cue, score }): Scored => {
    const more = counted.size > 0 && counts(cue, counted) ? ofCounted : 0;
    return { kind: of.kind, id: of.id, cue, score: score + more };
  });
  const best = new Map<string, Scored>();
  for (const goal of inAskingPart(heard, sentence)) {
    const key = goalText(goal);
    if (goal.score > (best.get(key)?.score ?? 0)) best.set(key, goal);
  }
  return [...best.values()].sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
}

/** A goal as a job carries it. */
export const goalText = ({ kind, id }: Goal): string => `${kind}/${id}`;

/** What it adds that the very thing is spoken of which stands after "how many": that is what is asked, whatever else is named. */
const ofCounted = 4;

/** The words that stand right after "how many". */
function countedIn(sentence: Sentence): ReadonlySet<string> {
  const counted = new Set<string>();
  for (const at of sentence.places.get('how-many') ?? []) {
    const next = sentence.after(at);
    for (const [word, places] of sentence.places) if (places.includes(next)) counted.add(word);
  }
  return counted;
}

/** True for a cue that asks how many there are of what is counted. */
const counts = ({ needs }: Cue, counted: ReadonlySet<string>): boolean =>
  needs.some(([first]) => first!.includes('how-many')) &&
  needs.some((term) => term.some((words) => words.some((word) => counted.has(word))));
