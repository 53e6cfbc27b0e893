import type { AssumedFact, Check, Job, JobFact, Load, Place, Reply, Request, Step, Value } from './reply.ts';
import { jobSheet as words } from './wording/job-sheet.en.ts';

/** One patch of a job as it is put on paper. */
export interface SheetPatch {
  /** What the crew calls it. */
  readonly label: string;
  readonly facts: readonly JobFact[];
  readonly parts: readonly SheetPart[];
  readonly layout: readonly Place[];
  /** What the truck has to bring. */
  readonly carried: readonly Load[];
  readonly steps: readonly Step[];
  readonly assumed: readonly AssumedFact[];
  /** Rules that are broken or cannot be told first. */
  readonly checks: readonly Check[];
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  /** What is still to be said, in the words of the questions. */
  readonly open: readonly string[];
}

export interface SheetPart {
  readonly heading: string;
  readonly values: readonly Value[];
}

type Ask = (request: Request) => Reply;

/** A patch: what it is called, and the job as the last reply gave it. */
export interface PatchOfJob {
  readonly label: string;
  readonly job: unknown;
}

/** The patches of a conversation: those put on the job, or the one that is talked of. */
export function patchesOf(job: Job | undefined): PatchOfJob[] {
  if (!job) return [];
  const { book, ...rest } = job;
  if (!book || book.patches.length === 0) return [{ label: '1', job: rest }];
  return book.patches.map(({ label, facts }) => {
    const own = new Set(facts.map(({ quantity }) => quantity));
    return { label, job: { ...rest, facts: [...rest.facts.filter(({ quantity }) => !own.has(quantity)), ...facts] } };
  });
}

/**
 * The sheet of a job: the same engine asked, one question after the other, with what is known of each patch. Nothing on it
 * is worked out otherwise, so what is printed is what is answered.
 */
export function jobSheet(ask: Ask, patches: readonly PatchOfJob[]): SheetPatch[] {
  return patches.map((patch) => sheetOfPatch(ask, patch));
}

function sheetOfPatch(ask: Ask, { label, job }: PatchOfJob): SheetPatch {
  const told = new Set<string>();
  const asked = words.parts.map(({ heading, questions }) => ({
    heading,
    replies: questions.map((question) => ask({ question, ...(job === undefined ? {} : { job }) })),
  }));
  const replies = asked.flatMap((part) => part.replies);
  const given = replies.filter(({ kind }) => kind === 'value' || kind === 'verdict' || kind === 'steps');
  return {
    label,
    facts: replies[0]?.job.facts ?? [],
    parts: asked
      .map((part) => ({
        heading: part.heading,
        values: part.replies
          .flatMap(({ kind, values }) => (kind === 'value' ? values : []))
          .filter(({ quantity }) => !told.has(quantity) && told.add(quantity)),
      }))
      .filter(({ values }) => values.length > 0),
    layout: given.flatMap(({ layout }) => layout),
    carried: given.flatMap(({ load }) => load),
    steps: replies.find(({ kind }) => kind === 'steps')?.steps ?? [],
    assumed: unlike(
      given.flatMap(({ assumed }) => assumed),
      ({ text }) => text,
    ),
    checks: worstFirst(
      unlike(
        given.flatMap(({ checks }) => checks),
        ({ text }) => text,
      ),
    ),
    cautions: unlike(
      given.flatMap(({ cautions }) => cautions),
      (text) => text,
    ),
    sources: unlike(
      given.flatMap(({ checks, working }) => [...checks, ...working].map(({ source }) => source)),
      (text) => text,
    ),
    open: unlike(
      replies.flatMap(({ clarify }) => (clarify ? [clarify.text] : [])),
      (text) => text,
    ),
  };
}

const order: readonly Check['status'][] = ['stop', 'caution', 'cannot-tell', 'ok', 'not-applicable'];

const worstFirst = (checks: readonly Check[]): Check[] =>
  checks
    .filter(({ status }) => status !== 'not-applicable')
    .sort((a, b) => order.indexOf(a.status) - order.indexOf(b.status));

function unlike<T>(all: readonly T[], textOf: (each: T) => string): T[] {
  const seen = new Set<string>();
  return all.filter((each) => {
    const text = textOf(each);
    return !seen.has(text) && seen.add(text);
  });
}
