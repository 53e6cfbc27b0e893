import { nextAfter, sequence } from '../../../rules/procedure.ts';
import type { RepairRecord, StepRecord } from '../../../rules/shapes-work.ts';
import { work } from '../../../rules/work.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import type { Random } from '../random.ts';
import type { Draft, Form, Point } from '../shapes.ts';
import { inOrder, oneOf, type Wrong } from './text.ts';

const lifts = 2;
const entries = sequence(lifts);
/** Steps that could well be begun next, so that none of them is a wrong answer: a second coat, mix dumped lift by lift. */
const couldFollow: Readonly<Record<string, readonly string[]>> = {
  'first-lift': ['final-roll'],
  'roll-lift': ['tack', 'spread-premix', 'windrow'],
  'finish-lift': ['roll-lift'],
};
const titleOf = (id: string): string => capital(work.steps.get(id)!.title);

/** Steps whose place nobody disputes: what is planned before them, and what is written after, may go side by side. */
const settledSteps = entries
  .map(({ id }) => id)
  .filter((id) => !['survey-and-mark', 'order-and-check', 'brief-crew', 'record'].includes(id));

/** Everything that can be asked about the order of the work. */
export function stepPoints(): Point[] {
  const following = settledSteps.slice(0, -1).flatMap((id): Point[] => {
    const step = work.steps.get(id)!;
    return [
      point(`step/${id}`, [{ id: 'next', kind: 'one', level: 'easy', make: (random) => whatNext(step, random) }]),
    ];
  });
  const runs = [0, 3, settledSteps.length - 6].map((from, at): Point => {
    const make = (random: Random): Draft | undefined => order(settledSteps.slice(from, from + 6), random);
    return {
      ...point(`order/${at + 1}`, [{ id: 'order', kind: 'order', level: 'medium', make }]),
      group: 'order of steps',
    };
  });
  const parts = ['dig-out', 'hand-patch', 'cut-then-blade', 'crack-seal', 'fix-drainage-first'].map((id): Point => {
    const repair = work.repairs.get(id)!;
    const form: Form = { id: 'order', kind: 'order', level: 'hard', make: (random) => orderOfRepair(repair, random) };
    return { ...point(`order/${id}`, [form]), topics: ['repairs', 'steps'] };
  });
  return [...following, ...runs, ...parts];
}

const point = (id: string, forms: readonly Form[]): Point => ({
  id,
  group: id,
  topics: ['steps'],
  mustPass: false,
  forms,
});

function whatNext(step: StepRecord, random: Random): Draft | undefined {
  const entry = entries.find(({ id }) => id === step.id)!;
  const next = nextAfter(entry, lifts);
  if (typeof next === 'string') return undefined;
  const key = titleOf(next.entry.id);
  const at = settledSteps.indexOf(step.id);
  // The one after next could be begun early, and the opening and closing of traffic control are no place for a slip.
  const others = settledSteps.filter(
    (id, place) =>
      id !== step.id &&
      id !== next.entry.id &&
      Math.abs(place - at) <= 4 &&
      !id.startsWith('traffic-control') &&
      !couldFollow[step.id]?.includes(id),
  );
  const wrong = others.map((id): Wrong => ({ text: titleOf(id), mistake: 'other-step' }));
  return oneOf(random, ground(quiz.next(step.title, entry.lift), work.steps.get(next.entry.id)!), key, wrong);
}

function order(ids: readonly string[], random: Random): Draft | undefined {
  const drop = random.int(ids.length);
  const taken = ids.filter((_, at) => at !== drop);
  const titles = taken.map(titleOf);
  if (new Set(titles).size < titles.length) return undefined;
  const first = work.steps.get(taken[0]!)!;
  return inOrder(random, { ...ground(quiz.order, first), why: quiz.orderWhy(titles) }, titles);
}

function orderOfRepair(repair: RepairRecord, random: Random): Draft | undefined {
  const source = saySource(repair.sources[0]);
  const why = capital(repair.because);
  const stem = quiz.orderOf(repair.title);
  return inOrder(random, { stem, why, rule: `repair/${repair.id}`, source, rests: repair.sources }, repair.how);
}

function ground(stem: string, step: StepRecord) {
  return {
    stem,
    why: capital(step.because),
    rule: `step/${step.id}`,
    source: saySource(step.sources[0]),
    rests: step.sources,
  };
}
