import { toBase } from '../calc/quantity.ts';
import { holds } from '../rules/decide.ts';
import { type Entry, mostLifts } from '../rules/procedure.ts';
import { isQuantity } from '../rules/shapes.ts';
import type { Need, Occasion, StepRecord } from '../rules/shapes-work.ts';
import { figuresIn, fillClauses } from './clauses.ts';
import { figureOf, type Voice } from './judging.ts';
import type { Step } from './reply.ts';
import { capital, say } from './say.ts';
import { en } from './wording/en.ts';

/** A step of the checklist with what it rests on. */
export interface Viewed {
  readonly entry: Entry;
  readonly record: StepRecord;
  readonly step: Step;
  /** What must be so first and is not. */
  readonly unmet: readonly Need[];
}

/** Number of lifts of the job, while it is known and no more than a checklist is written out for. */
export function liftsOf({ solved }: Voice): number | undefined {
  const count = solved.get('lift-count')?.value;
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= mostLifts ? count : undefined;
}

/** A step with its figures filled in from the job. */
export function viewStep(record: StepRecord, entry: Entry, voice: Voice): Viewed {
  const lifts = liftsOf(voice);
  const fill = filler(entry, voice);
  const also = alsoSaid(record, entry, voice);
  const needs = record.before ?? [];
  const unmet = needs.filter(({ met }) => holds(met, voice.solved) === false);
  const open = needs.filter(({ met }) => holds(met, voice.solved) === undefined);
  const step: Step = {
    id: record.id,
    ...(entry.lift === undefined ? {} : { lift: entry.lift }),
    title: capital(en.steps.title(record.title, entry.lift, lifts)),
    text: [...unmet.map((need) => en.steps.notYet(need.unmet)), ...[record.text, ...also].map(fill)]
      .filter(Boolean)
      .join(' '),
    checks: [...[...unmet, ...open].map(({ text }) => text), ...record.checks.map(fill)].filter(Boolean),
    cautions: record.cautions,
  };
  return { entry, record, step, unmet };
}

/** The quantities whose figures stand in a step. */
export function figuresShown({ record, entry }: Viewed, voice: Voice): string[] {
  const templates = [record.text, ...alsoSaid(record, entry, voice), ...record.checks];
  return [...new Set(templates.flatMap(figuresIn))].filter(
    (name) => voice.solved.has(name) && voice.knowledge.quantities.has(name),
  );
}

/** What a step says besides on this occasion. */
const alsoSaid = (record: StepRecord, entry: Entry, voice: Voice): string[] =>
  (record.also ?? []).filter(({ on }) => isOn(on, entry, liftsOf(voice), voice)).map(({ text }) => text);

/** Fills a template of the work from the job. */
export function filler({ lift }: Entry, voice: Voice): (template: string) => string {
  return (template) =>
    fillClauses(
      template,
      (name) => (name === 'lift' ? lift?.toString() : (boundOf(name, voice) ?? figureSaid(name, voice))),
      en.unsettled,
    );
}

/** A figure in words; one that nothing worked out is said as it stands. */
export function figureSaid(id: string, voice: Voice): string | undefined {
  const record = voice.knowledge.quantities.get(id);
  const fact = voice.solved.get(id);
  return record && fact && !fact.by ? say(record, fact.value, voice.unit(id), true) : figureOf(id, voice);
}

/** The bound of a limit in words: `max:flush-finish`. */
function boundOf(name: string, voice: Voice): string | undefined {
  const [end, id] = name.split(':');
  const rule = id === undefined ? undefined : voice.knowledge.limits.get(id);
  const bound = end === 'max' ? rule?.max : rule?.min;
  if (!rule || !bound) return undefined;
  return isQuantity(bound)
    ? figureOf(bound.id, voice)
    : say(rule.on, toBase(bound.number, bound.unit), bound.unit, isShort(bound.number));
}

function isOn({ lift, lifts, choice }: Occasion, entry: Entry, count: number | undefined, { solved }: Voice): boolean {
  const even = (number: number | undefined, wanted: 'odd' | 'even'): boolean =>
    number !== undefined && number % 2 === (wanted === 'even' ? 0 : 1);
  if (lift === 'first' && entry.lift !== 1) return false;
  if ((lift === 'odd' || lift === 'even') && !even(entry.lift, lift)) return false;
  if (lifts === 'one' && count !== 1) return false;
  if ((lifts === 'odd' || lifts === 'even') && !even(count, lifts)) return false;
  return !choice || holds(choice, solved) === true;
}

/** True for a figure that is said as it stands; one that was divided out (20 / 12) is rounded. */
const isShort = (number: number): boolean => Number.isInteger(Math.round(number * 1e9) / 1e6);
