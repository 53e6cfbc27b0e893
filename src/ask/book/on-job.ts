import { askIn, jobKnownTo } from '../answering.ts';
import { engine } from '../engine.ts';
import { jobFacts, merge } from '../facts.ts';
import { filesPart } from '../files-part.ts';
import { emptyJob } from '../job.ts';
import { blank } from '../refusal.ts';
import type { Job, JobFact, Reply, Request, TalkBook, TalkPatch } from '../reply.ts';
import type { Parts } from '../scene.ts';
import { readingsPart } from '../survey/part.ts';
import { understand } from '../understand.ts';
import { onJob as words } from '../wording/book-talk.en.ts';
import { type Book, fold, undoingAll } from './book.ts';
import { booked, laidOn } from './booked.ts';
import { type Change, stampAfter } from './change.ts';
import { heardOfBook, speaksOfJob } from './hear.ts';
import { ratesOf } from './machine-rates.ts';
import { engineFor, FileFault } from './reckon.ts';
import { mayMake, type Role } from './roles.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { bookReply } from './talk-reply.ts';

/** A job book that a talk is held on. */
export interface OnJob {
  readonly role: Role;
  readonly changes: readonly Change[];
  /** The book as whoever speaks has it before them; what is written takes the place of that. As it is now where it is left out. */
  readonly seen?: Book;
  /** A stamp for the next change, each later than the last. */
  readonly stamp: () => string;
  readonly by?: string | undefined;
  /** The day that lies so many days back: what went down is written under it. */
  readonly day?: ((back: number) => string) | undefined;
  /** Set where any question is answered, by the rules and the rates of the job. */
  readonly any?: true;
  /** What was written down last by saying it, for "undo". */
  readonly last?: readonly string[] | undefined;
}

export interface SaidOnJob {
  /** The answer; its job is the talk's own again, with nothing of the book in it. */
  readonly reply: Reply;
  /** What is to be written down. Nothing of it is done yet. */
  readonly changes: readonly Change[];
  /** What "undo" would take back once that is written. */
  readonly last: readonly string[];
}

const noQuiz: Parts['quiz'] = ({ job }) => ({
  ...blank,
  kind: 'unknown',
  topic: 'quiz',
  text: '',
  rules: { version: '' },
  job,
});

/**
 * Answers what is said of a job book, with what is to be written down in it: "we laid 42 tons on patch 3", "done with
 * patch 3", "what's left". Undefined for what does not speak of the job or of a patch of it. Nothing is written of a
 * question, of what the role may not write, or of what could not be read whole.
 */
export function saidOnJob(request: Request, on: OnJob): SaidOnJob | undefined {
  const talk = jobKnownTo(engine, request.job) ?? emptyJob;
  const { sentence } = understand(engine, request, emptyJob);
  const heard = heardOfBook(sentence, engine);
  if (!on.any && !speaksOfJob(heard)) return undefined;
  const { last = [] } = on;
  const now = fold(on.changes);
  const sheet = sheetOf(now, engine.knowledge);
  const name = [sheet.name ?? words.unnamed, sheet.road].filter(Boolean).join(', ');
  const say = (text: string): Reply => ({
    ...blank,
    kind: 'card',
    topic: 'job',
    rules: { version: engine.knowledge.version },
    job: talk,
    text: `${words.on(name)} ${text}`,
  });
  if (heard.command === 'undo') return takenBack(on, say);
  if (heard.command === 'clear') return { reply: say(words.notCleared), changes: [], last };
  const before = bookOf(sheet);
  const write = (next: TalkBook, stamp = on.stamp): Change[] => {
    const day = on.day?.(heard.daysBack);
    return booked({ sheet, now, seen: on.seen ?? now, before, next, stamp, by: on.by, day });
  };
  const facts = merge(talk.facts, sheet.facts);
  const own = engineFor(engine, sheet.rules);
  const reply = askIn(
    engine,
    {
      ...request,
      ...(own instanceof FileFault || request.agency || !sheet.rules ? {} : { agency: sheet.rules }),
      ...(request.rates || !ratesOf(sheet) ? {} : { rates: sheet.rates }),
    },
    { quiz: noQuiz, readings: readingsPart, book: { reply: bookReply }, files: filesPart },
    {
      facts: jobFacts(facts),
      book: before,
      sheetOf: (book) =>
        book === before ? sheet : sheetOf(fold([...on.changes, ...write(book, unstamped(now))]), engine.knowledge),
    },
  );
  if (reply.topic.startsWith('emergency-')) return on.any ? { reply, changes: [], last } : undefined;
  const next = reply.job.book ?? before;
  const kept = { ...reply, job: ownAgain(reply.job, talk, sheet) };
  // A check of how far the mix reaches asks; the loads are written down by themselves.
  const changes = next === before || heard.progress ? [] : write(next);
  if (!changes.every((change) => mayMake(on.role, change)))
    return { reply: say(words.mayNot(on.role)), changes: [], last };
  const day = changes.find(({ set }) => typeof set.day === 'string')?.set.day;
  const lines = [speaksOfJob(heard) ? `${words.on(name)} ${reply.text}` : reply.text];
  if (typeof day === 'string') lines.push(words.under(day));
  if (changes.length > 0) lines.push(words.takesBack);
  else if (heard.progress && next !== before) lines.push(words.notWritten);
  return {
    reply: { ...kept, text: lines.join('\n') },
    changes,
    last: changes.length > 0 ? changes.map(({ id }) => id) : last,
  };
}

/** Takes back what was said last, where it still stands as it was said. */
function takenBack(on: OnJob, say: (text: string) => Reply): SaidOnJob {
  const { last = [] } = on;
  const made = undoingAll(on.changes, last, () => ({ stamp: on.stamp(), by: on.by }));
  if (made.length === 0)
    return { reply: say(last.length > 0 ? words.changedSince : words.nothingToUndo), changes: [], last: [] };
  if (!made.every((change) => mayMake(on.role, change)))
    return { reply: say(words.mayNot(on.role)), changes: [], last };
  return { reply: say(words.undone), changes: made, last: [] };
}

/** The patches of a sheet as a talk has them: what is down on each is added up over its loads. */
function bookOf({ patches, loads }: Sheet): TalkBook {
  const down = laidOn(loads);
  return {
    patches: patches.map(({ line, label, done, facts }): TalkPatch => {
      const laid = down.get(line);
      return { label, facts: jobFacts(facts), ...laid, ...(done ? { done: true as const } : {}) };
    }),
  };
}

/** The facts of the talk itself: those of the job are read from the job each time, and not kept beside it. */
function ownAgain(job: Job, talk: Job, sheet: Sheet): Job {
  const injected = new Map(sheet.facts.map((fact) => [fact.quantity, JSON.stringify(figureOf(fact as JobFact))]));
  const had = new Map(talk.facts.map((fact) => [fact.quantity, fact]));
  const facts = job.facts.flatMap((fact): JobFact[] => {
    if (injected.get(fact.quantity) !== JSON.stringify(figureOf(fact))) return [fact];
    const before = had.get(fact.quantity);
    return before ? [before] : [];
  });
  const { book: _book, ...rest } = job;
  return { ...rest, facts, ...(talk.book ? { book: talk.book } : {}) };
}

const figureOf = (fact: JobFact) => ('unit' in fact ? [fact.number, fact.unit] : fact.choice);

/** Stamps for changes that are only looked at. */
function unstamped({ last }: Book): () => string {
  let stamp = last;
  return () => {
    stamp = stampAfter(stamp, 0, 'looked');
    return stamp;
  };
}
