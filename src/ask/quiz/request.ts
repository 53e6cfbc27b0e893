import { quiz } from '../wording/quiz.en.ts';
import { kinds, levels, type Point } from './shapes.ts';
import { seats, topics } from './topics.ts';

/** Which set is wanted. Lists that are empty or absent leave it open. */
export interface QuizRequest {
  readonly topics?: readonly string[];
  /** A seat brings its own topics, and the items that must be right in it. */
  readonly seat?: string;
  readonly levels?: readonly string[];
  readonly kinds?: readonly string[];
  readonly count: number;
  /** Any text; absent, a hash of the request. */
  readonly seed?: string;
  /** A, or B for the same blueprint with other figures in another order. */
  readonly variant?: 'A' | 'B';
  /** Absent, the US units that the manuals have. */
  readonly units?: 'metric';
  /** Items put aside for another one, by their tokens, in the order they were put aside. */
  readonly swaps?: readonly string[];
  /** Addresses of records that are asked about first, `fault/washboards`: what the crew met last week. */
  readonly about?: readonly string[];
}

/** Most items that a set has. */
export const mostItems = 100;
/** Most swaps that one set takes. */
export const mostSwaps = 60;

/** What cannot be had, in a sentence that says what can. Undefined for a request that makes sense. */
export function faultIn(
  { topics: asked = [], seat, levels: wanted = [], kinds: sorts = [], about = [], swaps = [], count }: QuizRequest,
  pool: readonly Point[],
): string | undefined {
  if (!Number.isInteger(count) || count < 1 || count > mostItems) return quiz.fault.count(mostItems);
  const topic = asked.find((each) => !(topics as readonly string[]).includes(each));
  if (topic !== undefined) return quiz.fault.topic(topic, topics);
  if (seat !== undefined && !Object.hasOwn(seats, seat)) return quiz.fault.seat(seat, Object.keys(seats));
  const level = wanted.find((each) => !(levels as readonly string[]).includes(each));
  if (level !== undefined) return quiz.fault.level(level, levels);
  const kind = sorts.find((each) => !(kinds as readonly string[]).includes(each));
  if (kind !== undefined) return quiz.fault.kind(kind, kinds);
  const strange = about.find((id) => !pool.some((point) => point.id === id));
  if (strange !== undefined) return quiz.fault.about(strange);
  if (swaps.length > mostSwaps) return quiz.fault.swaps(mostSwaps);
  const musts = seat === undefined ? 0 : seats[seat]!.musts.length;
  return count < musts ? quiz.fault.tooFew(seat!, musts) : undefined;
}
