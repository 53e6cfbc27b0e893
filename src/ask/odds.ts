import { fromBase, toBase } from '../calc/quantity.ts';
import { restsOn } from '../calc/solve.ts';
import { conflicts } from '../rules/conflicts.ts';
import { isPlausible } from './as-role.ts';
import { clarifying } from './clarifying.ts';
import { compared } from './enough.ts';
import type { Fact } from './facts.ts';
import { needOf } from './need.ts';
import type { Choice, Reply } from './reply.ts';
import { say } from './say.ts';
import type { Scene } from './scene.ts';
import { saysOnly } from './stated.ts';
import { en } from './wording/en.ts';

/** Most figures that are told as what the others would make of them, and the digits they are sent back with. */
const mostImplied = 4;
const figuresKept = 5;

/** Figures that cannot all be so: each of them, what the others would make of it, and which of them is off asked back. */
export function atOdds(scene: Scene): Reply | undefined {
  const { voice, understood, engine } = scene;
  const { knowledge, solved } = voice;
  const { goal, facts, sentence } = understood;
  // Who asks whether a figure will do is told so; who only states them is told that they do not agree.
  const isChecked =
    sentence.places.has('@check') || sentence.places.has('@enough') || !saysOnly(sentence, engine.titles);
  if (goal && isChecked && compared(scene, goal.id)) return undefined;
  const near = restsOn(
    solved,
    facts.map(({ quantity }) => quantity),
  );
  for (const { method, implied } of conflicts(knowledge, solved, goal?.id, near)) {
    const record = knowledge.quantities.get(method.finds);
    if (!record) continue;
    const members = restsOn(solved, [method.finds, ...method.needs]);
    const given = figuresOf(
      facts.filter(({ quantity }) => members.has(quantity)),
      method.finds,
    );
    const wouldBe = given.flatMap((fact) => asImplied(scene, fact) ?? []).slice(0, mostImplied);
    const unit = voice.unit(record.id);
    const stated = en.fact(record.title, say(record, solved.get(record.id)!.value, unit, voice.isGiven(record.id)));
    const text =
      given.length > 1 && wouldBe.length > 0
        ? en.conflictOf(
            given.map((fact) => inWords(scene, fact)),
            wouldBe.map((each) => each.text),
          )
        : en.conflict(stated, say(record, (implied[0] + implied[1]) / 2, unit));
    return clarifying(scene, record.id, 'conflict', { quantity: record.id, text, choices: wouldBe });
  }
  return undefined;
}

type FigureFact = Extract<Fact, { readonly number: number }>;

/** The facts that are figures, the one that the relation finds first. */
const figuresOf = (facts: readonly Fact[], first: string): FigureFact[] =>
  facts
    .filter((fact): fact is FigureFact => 'unit' in fact)
    .sort((a, b) => Number(b.quantity === first) - Number(a.quantity === first));

const inWords = ({ voice }: Scene, { quantity, number, unit }: FigureFact): string => {
  const record = voice.knowledge.quantities.get(quantity)!;
  return en.fact(record.title, say(record, toBase(number, unit), unit, true));
};

/** What the other facts make of a figure, as a choice to send back; undefined where nothing leads there, or to none that it could be. */
function asImplied({ engine, understood, voice }: Scene, { quantity, unit }: FigureFact): Choice | undefined {
  const record = voice.knowledge.quantities.get(quantity)!;
  const found = needOf(engine, understood.facts, quantity);
  if (!found || found.need.assumed.includes(quantity)) return undefined;
  const number = Number(fromBase(found.need.value, unit).toPrecision(figuresKept));
  if (!(number > 0) || !isPlausible({ number }, unit, record)) return undefined;
  return {
    text: en.fact(record.title, say(record, found.need.value, unit)),
    send: en.fact(record.title, say(record, toBase(number, unit), unit, true)),
  };
}
