import { fromBase } from '../calc/quantity.ts';
import type { Solution, Solved } from '../calc/solve.ts';
import { whatFollows } from '../rules/start.ts';
import { type Fact, givenOf, jobFacts, knownFrom, merge } from './facts.ts';
import type { Voice } from './judging.ts';
import { blank } from './refusal.ts';
import type { Reply, Request } from './reply.ts';
import { asValue, capital, say, tidy } from './say.ts';
import type { Scene } from './scene.ts';
import { type Understanding, understand } from './understand.ts';
import { en } from './wording/en.ts';
import { assumedBy, workingOf } from './working.ts';

/** What can be added up over patches: tons, gallons, areas, money and counts of loads. */
const summed = new Set(['mass', 'area', 'volume', 'money']);

/**
 * Unlike patches in one question, "12 x 40 at 2 in and another 10 x 60 at 1 in": each is worked by itself and the sum is
 * answered. Undefined when the question holds one patch, asks for what does not add up, or leaves a patch unsettled.
 */
export function patchesReply(scene: Scene): Reply | undefined {
  const { goal } = scene.understood;
  const record = goal?.kind === 'quantity' ? scene.engine.knowledge.quantities.get(goal.id) : undefined;
  const spans = record && summed.has(record.dimension) ? spansOf(scene) : [];
  if (!record || spans.length < 2) return undefined;
  const each = spans.map(([start, end]) => withoutCount(scene, placed(worked(scene, start, end), start), spans.length));
  const sides = new Set(scene.engine.sides.flatMap(({ id, inGroup }) => (inGroup === 'thinnest' ? [] : [id])));
  const alike = each.map(({ facts }) => facts.filter(({ quantity }) => !sides.has(quantity)));
  const solved = each.map(({ facts }, i) =>
    solveFor(
      scene,
      merge(
        alike
          .filter((_, j) => j !== i)
          .flat()
          .filter(({ quantity }) => !facts.some((fact) => fact.quantity === quantity)),
        facts,
      ),
    ),
  );
  const found = solved.map((all) => all.get(record.id));
  if (found.some((fact) => !fact?.by)) return undefined;
  return summedReply(scene, record.id, each, solved, found as Solved[]);
}

/** Where each patch stands in the question: from its size to the next one's. */
function spansOf({ understood: { sentence }, request: { question } }: Scene): [number, number][] {
  const starts: number[] = [];
  let last: number | undefined;
  for (const at of sentence.figures) {
    const token = sentence.tokens[at];
    if (token?.kind !== 'figure' || token.figure.group === undefined || token.figure.group === last) continue;
    last = token.figure.group;
    starts.push(token.at[0]);
  }
  return starts.map((start, i) => [i === 0 ? 0 : start, starts[i + 1] ?? question.length]);
}

function worked({ engine, request, job }: Scene, start: number, end: number): Understanding {
  const part: Request = { ...request, question: request.question.slice(start, end), job: undefined };
  return understand(engine, part, { v: 1, turn: job.turn - 1, facts: [], ...(job.goal ? { goal: job.goal } : {}) });
}

/** Facts of a part with their places in the whole question. */
const placed = (part: Understanding, start: number): Understanding => ({
  ...part,
  fresh: part.fresh.map((fact) => (fact.from ? { ...fact, from: [fact.from[0] + start, fact.from[1] + start] } : fact)),
});

/** "Two patches, one 100 x 10 and one 50 x 10": the count is of the parts themselves. */
function withoutCount({ engine: { knowledge } }: Scene, part: Understanding, parts: number): Understanding {
  const isCount = (fact: Fact): boolean =>
    'unit' in fact && fact.number === parts && knowledge.quantities.get(fact.quantity)?.counted === true;
  return { ...part, facts: part.facts.filter((fact) => !isCount(fact)) };
}

const solveFor = ({ engine: { knowledge } }: Scene, facts: readonly Fact[]) => whatFollows(knowledge, knownFrom(facts));

function summedReply(
  scene: Scene,
  id: string,
  each: readonly Understanding[],
  solved: readonly Solution[],
  found: readonly Solved[],
): Reply {
  const { voice, understood, job, engine } = scene;
  const record = engine.knowledge.quantities.get(id)!;
  const unit = voice.unit(id);
  const sum = (of: (fact: Solved) => number): number => found.reduce((total, fact) => total + of(fact), 0);
  const value = asValue(
    record,
    { value: sum((fact) => fact.value), low: sum((fact) => fact.low), high: sum((fact) => fact.high) },
    unit,
  );
  const voices = solved.map(
    (all, i): Voice => ({
      ...voice,
      solved: all,
      isGiven: (quantity) => each[i]!.facts.some((fact) => fact.quantity === quantity),
    }),
  );
  const parts = found.map((fact, i) => en.patch(i + 1, say(record, fact.value, unit)));
  const assumed = [
    ...new Map(voices.flatMap((own) => assumedBy([id], own)).map((fact) => [fact.quantity, fact])).values(),
  ];
  return {
    ...blank,
    kind: 'value',
    topic: id,
    text: [
      capital(en.figure(record.title, value.text)),
      en.patches(parts),
      assumed.length ? en.assumed(assumed.map(({ text }) => text)) : '',
    ]
      .filter(Boolean)
      .join('\n'),
    values: [
      value,
      ...found.map((fact) => ({
        quantity: id,
        unit,
        number: tidy(fromBase(fact.value, unit)),
        text: say(record, fact.value, unit),
      })),
    ],
    given: each.flatMap(({ fresh }) => givenOf(fresh)),
    assumed,
    working: voices.flatMap((own) => workingOf([id], own)),
    cautions: [en.agencyFirst],
    rules: { version: engine.knowledge.version },
    job: { ...job, facts: jobFacts(understood.facts.filter(({ fresh }) => !fresh)) },
  };
}
