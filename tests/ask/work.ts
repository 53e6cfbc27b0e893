import { commandWords } from '../../src/ask/commands.ts';
import { type Engine, engine as shipped } from '../../src/ask/engine.ts';
import { knownFrom } from '../../src/ask/facts.ts';
import { goalIndex, goalsOf } from '../../src/ask/goal.ts';
import { emptyJob } from '../../src/ask/job.ts';
import { jobFacts } from '../../src/ask/facts.ts';
import type { Job, JobFact } from '../../src/ask/reply.ts';
import type { Scene } from '../../src/ask/scene.ts';
import { type Sentence, sentenceOf } from '../../src/ask/sentence.ts';
import { understand } from '../../src/ask/understand.ts';
import { unitsOf } from '../../src/ask/units.ts';
import { headOf, vocabularyOf } from '../../src/ask/vocabulary.ts';
import { suits, workGoals } from '../../src/ask/work-goals.ts';
import { read } from '../../src/calc/read/read.ts';
import { solve } from '../../src/calc/solve.ts';
import { knowledge, startOf } from '../../src/rules/knowledge.ts';
import { heads, plainWords, smallWords } from '../../src/rules/words.ts';

/** Every cue there is, those of figures and rules included: what is found is found against all of them. */
const rules = [...knowledge.quantities.values(), ...knowledge.limits.values(), ...knowledge.practices.values()];
const index = goalIndex([
  ...rules.map(({ kind, id, cues = [] }) => ({ kind, id: `${kind}/${id}`, cues })),
  // The index is told only the kinds it knows; the address keeps the rest apart.
  ...workGoals().map(({ kind, id, cues }) => ({ kind: 'practice' as const, id: `${kind}/${id}`, cues })),
], headOf(heads));
const vocabulary = vocabularyOf(heads, [
  ...index.words,
  ...shipped.byWord.keys(),
  ...shipped.options.words,
  ...commandWords,
  ...smallWords,
  ...plainWords,
]);
const engine: Engine = { ...shipped, vocabulary };

/** A question read into head words. */
export const sentence = (question: string): Sentence => sentenceOf(read(question, {}), vocabulary, new Set(smallWords));

const heard = (question: string) =>
  goalsOf(index, sentence(question)).filter(({ id, cue }) => {
    const [kind, of] = id.split('/') as [string, string];
    return suits({ kind, id: of, cue }, sentence(question));
  });

/** What a question is taken to be after, best first, as `kind/id`. */
export const goals = (question: string): string[] => heard(question).map(({ id }) => id);
/** The same with how well each fits. */
export const scored = (question: string): string[] => heard(question).map(({ id, score, cue }) => `${id} ${score.toFixed(1)} "${cue.text}"`);

/** All that an answer is made from, for a question asked in a job. */
export function sceneOf(question: string, past: Partial<Job> = {}): Scene {
  const request = { question };
  const job = { ...emptyJob, ...past };
  const understood = understand(engine, request, job);
  const solved = solve(knowledge.network, startOf(knowledge, knownFrom(understood.facts)));
  const isGiven = (id: string): boolean => understood.facts.some(({ quantity }) => quantity === id);
  const voice = { knowledge, solved, unit: unitsOf(engine, understood), isGiven };
  const next: Job = { ...job, turn: job.turn + 1, facts: jobFacts(understood.facts) };
  return { engine, understood, voice, job: next, request };
}

/** A fact of the job that is a figure. */
export const figure = (quantity: string, number: number, unit: 'in' | 'ft' | 'mm' | '1'): JobFact => ({ quantity, number, unit, turn: 0 });
