import type { FaultCause, FaultRecord } from '../../../rules/shapes-work.ts';
import { work } from '../../../rules/work.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { isFirm } from '../facts.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Form } from '../shapes.ts';
import { lookAlikes, topicsOf } from '../topics.ts';
import { sharesWord } from '../words.ts';
import { alikeTo } from './options.ts';
import { type Ground, manyOf, oneOf, type Wrong } from './text.ts';

/** Causes that a key may rest on: none recalled, none that is a template. */
const firmCauses = ({ causes }: FaultRecord): FaultCause[] =>
  causes.filter(({ source, text, remedy }) => isFirm([source]) && !/[[{]/.test(text + remedy));

/** The ways to ask about a fault: from what is seen to the cause, from the cause to what is seen, and what cures it. */
export function faultForms({ knowledge }: Desk, fault: FaultRecord): Form[] {
  const addressOf = (rule: string): string => `${knowledge.limits.has(rule) ? 'limit' : 'practice'}/${rule}`;
  const causes = firmCauses(fault);
  if (causes.length === 0) return [];
  const others = [...work.faults.values()].filter((other) => isApart(fault, other));
  const asked: Asked = {
    fault,
    causes,
    others,
    addressOf,
    strange: once(() => strangeCauses({ fault, others })),
    strangeCures: once(() => strangeCures({ fault, others })),
  };
  return [
    { id: 'cause', kind: 'one', level: 'easy', make: (random) => cause(asked, random) },
    { id: 'symptom', kind: 'one', level: 'medium', make: (random) => symptom(asked, random) },
    { id: 'cure', kind: 'one', level: 'hard', make: (random) => cure(asked, random) },
    ...(causes.length > 1
      ? [{ id: 'causes', kind: 'many', level: 'medium', make: (random: Random) => allCauses(asked, random) } as const]
      : []),
  ];
}

interface Asked {
  readonly fault: FaultRecord;
  /** Its causes that a key may rest on. */
  readonly causes: readonly FaultCause[];
  /** Faults that have no rule in common with it. */
  readonly others: readonly FaultRecord[];
  readonly addressOf: (rule: string) => string;
  /** Causes of other faults that are none of this one. */
  readonly strange: () => readonly Wrong[];
  /** Cures of other faults that cure nothing here. */
  readonly strangeCures: () => readonly Wrong[];
}

/** True when the two are no look-alikes, and no rule that was broken for the one was broken for the other. */
function isApart(fault: FaultRecord, other: FaultRecord): boolean {
  if (lookAlikes.some((group) => group.includes(fault.id) && group.includes(other.id))) return false;
  if (fault.id === other.id) return false;
  const rules = new Set(fault.causes.flatMap(({ rule }) => rule ?? []));
  return !other.causes.some(({ rule }) => rule && rules.has(rule));
}

const told = ({ causes, seen, title }: FaultRecord): string =>
  [seen, title, ...causes.map(({ text, remedy }) => `${text} ${remedy}`)].join(' ');

/** A cause that says "it" is clear only beside its own fault. */
const pointsBack = /\bit\b/;

/** Likeliest causes of other faults, none of which speaks of anything in this one. */
const strangeCauses = ({ fault, others }: Pick<Asked, 'fault' | 'others'>): Wrong[] =>
  others.flatMap((other) =>
    firmCauses(other)
      .slice(0, 1)
      .filter(({ text }) => !sharesWord(text, told(fault)) && !pointsBack.test(text))
      .map(({ text }): Wrong => ({ text: capital(text), mistake: 'other-fault', near: isNear(fault, other) })),
  );

/** Cures of other faults, for a cause that has no word in common with this one. */
const strangeCures = ({ fault, others }: Pick<Asked, 'fault' | 'others'>): Wrong[] =>
  others.flatMap((other) =>
    firmCauses(other)
      .filter(({ text, remedy }) => !sharesWord(`${text} ${remedy}`, told(fault)))
      .map(({ remedy }): Wrong => ({ text: capital(remedy), mistake: 'other-fault', near: isNear(fault, other) })),
  );

/** Works something out when it is first wanted. */
function once<T>(work_: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => {
    done ??= { value: work_() };
    return done.value;
  };
}

/** True for faults of one piece of work. */
function isNear(fault: FaultRecord, other: FaultRecord): boolean {
  const work_ = new Set(topicsOf(fault.id));
  return topicsOf(other.id).some((topic) => work_.has(topic));
}

function ground({ fault, addressOf }: Asked, { text, remedy, source, rule }: FaultCause, stem: string): Ground {
  return {
    stem,
    why: `${capital(text)}: ${remedy}. ${capital(fault.because)}`,
    rule: rule ? addressOf(rule) : `fault/${fault.id}`,
    source: saySource(source),
    rests: [source],
  };
}

function cause(asked: Asked, random: Random): Draft | undefined {
  const { fault, causes } = asked;
  const right = random.pick(causes);
  const wrong = asked.strange();
  return oneOf(random, ground(asked, right, quiz.cause(fault.seen)), capital(right.text), wrong);
}

function allCauses(asked: Asked, random: Random): Draft | undefined {
  const { fault, causes } = asked;
  const right = random
    .shuffle(causes)
    .slice(0, 2 + random.int(2))
    .map(({ text }) => ({ text: capital(text) }));
  const wrong = asked.strange();
  const [first, ...rest] = right;
  const alikeRight = [first!, ...alikeTo(random, first!.text, rest, 2)];
  const taken = alikeTo(random, first!.text, wrong, 5 - alikeRight.length);
  if (alikeRight.length < 2 || taken.length < 2) return undefined;
  const kept = causes.find(({ text }) => capital(text) === first!.text)!;
  return manyOf(
    ground(asked, kept, quiz.causes(fault.seen)),
    alikeRight.map(({ text }) => text),
    taken,
  );
}

function symptom(asked: Asked, random: Random): Draft | undefined {
  const { fault, causes, others } = asked;
  const right = random.pick(causes);
  const shared = [...work.faults.values()].filter(
    (other) => other.id !== fault.id && other.causes.some(({ text }) => text === right.text),
  );
  const wrong = others
    .filter((other) => !shared.includes(other) && !sharesWord(right.text, told(other)))
    .map((other): Wrong => ({ text: capital(other.seen), mistake: 'other-fault', near: isNear(fault, other) }));
  return oneOf(random, ground(asked, right, quiz.symptom(right.text)), capital(fault.seen), wrong);
}

function cure(asked: Asked, random: Random): Draft | undefined {
  const { fault, causes } = asked;
  const right = random.pick(causes);
  const stem = quiz.cure(fault.seen, right.text);
  return oneOf(random, ground(asked, right, stem), capital(right.remedy), asked.strangeCures());
}
