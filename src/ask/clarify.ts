import { tablesIn } from '../calc/expression.ts';
import { toBase } from '../calc/quantity.ts';
import { missing } from '../calc/solve.ts';
import { sayFigure } from '../calc/wording.ts';
import { choiceOf } from '../rules/knowledge.ts';
import type { LimitRecord, PracticeRecord } from '../rules/shapes.ts';
import { startOf } from '../rules/start.ts';
import { clarifying } from './clarifying.ts';
import { knownFrom } from './facts.ts';
import { wantingText } from './judging.ts';
import { refusedAs } from './out-of-range.ts';
import { refuse } from './refusal.ts';
import type { CardHit, Choice, Clarify, Reply } from './reply.ts';
import { capital, say } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** Asks for what is missing: of the smallest set that would answer, the one easiest to come by. */
export function askFor(scene: Scene, id: string): Reply {
  const { knowledge } = scene.engine;
  const settled = new Set(scene.understood.facts.flatMap((fact) => ('choice' in fact ? [fact.quantity] : [])));
  // What was said is not asked again: a cutback is no emulsion after all.
  const ease = settled.size
    ? new Map([...knowledge.ease].filter(([each]) => !settled.has(choiceOf(each) ?? '')))
    : knowledge.ease;
  const [wanted] =
    missing(
      knowledge.network,
      startOf(
        knowledge,
        knownFrom(scene.understood.facts.filter(({ quantity }) => quantity !== id)),
        scene.understood.open,
      ),
      id,
      ease,
    ) ?? [];
  const clarify = wanted && (askOption(scene, wanted) ?? askFigure(scene, wanted));
  const refused = wanted ? refusedAs(scene, wanted) : undefined;
  if (refused) return refused;
  const ended = wanted ? undefined : tableEnd(scene, id);
  if (ended) return refuse('out-of-range', ended, scene.job, scene.engine);
  if (!clarify) return refuse('no-rule', en.noWay(knowledge.quantities.get(id)?.title ?? id), scene.job, scene.engine);
  return clarifying(scene, id, 'missing-fact', clarify, clarify.quantity);
}

/** What is said past the end of a table that the answer needs, where all it is read by is known. */
function tableEnd(scene: Scene, id: string, seen = new Set<string>()): string | undefined {
  const { knowledge, solved } = scene.voice;
  if (seen.has(id)) return undefined;
  seen.add(id);
  for (const at of knowledge.network.finding.get(id) ?? []) {
    const { by, needs, relation, finds } = knowledge.network.methods[at]!;
    if (finds !== relation.finds.id) continue;
    const tables = needs.every((need) => solved.has(need))
      ? tablesIn(by).map((table) => knowledge.tables.get(table.id))
      : [];
    for (const table of tables) if (table?.kind === 'table' && table.beyond) return table.beyond;
    for (const need of needs) {
      const found = solved.has(need) ? undefined : tableEnd(scene, need, seen);
      if (found) return found;
    }
  }
  return undefined;
}

/** Asks for the first of what would settle a rule, where somebody can say it; of how a thing is done the rule itself is told with it. */
export function askNeed(
  scene: Scene,
  rule: LimitRecord | PracticeRecord,
  needs: readonly string[] = [],
): Reply | undefined {
  for (const need of needs) {
    const clarify = askFigure(scene, need) ?? askOption(scene, `${need}=`);
    if (!clarify) continue;
    const own = need === rule.on.id ? wantingText(rule, scene.voice) : undefined;
    const told = own ? { ...clarify, text: own } : clarify;
    return clarifying(scene, rule.id, 'missing-fact', told, clarify.quantity);
  }
  return undefined;
}

/** Asks for a figure, with a few that are common. */
export function askFigure(scene: Scene, id: string): Clarify | undefined {
  const record = scene.engine.knowledge.quantities.get(id);
  if (!record?.question) return undefined;
  const choices = record.question.choices.map(({ number, unit }): Choice => {
    const base = toBase(number, unit);
    const words =
      scene.understood.system === 'metric'
        ? say(record, base, record.units.metric)
        : sayFigure(base, unit, { given: true });
    return { text: words, send: words };
  });
  return { quantity: id, text: en.ask(record.question.text, en.known(factsInWords(scene))), choices };
}

/** Asks which way a choice is settled; `fact` is the settled choice that would help. */
function askOption(scene: Scene, fact: string): Clarify | undefined {
  const record = scene.engine.knowledge.choices.get(fact.split('=')[0]!);
  if (!record?.question || !fact.includes('=')) return undefined;
  const choices = record.options.map(({ title }): Choice => ({ text: title, send: title }));
  return { quantity: record.id, text: en.ask(record.question.text, en.known(factsInWords(scene))), choices };
}

/** Asks what the figures are for, when the question has figures and no aim. */
export function askWhat(scene: Scene): Reply {
  if (asksForForeign(scene)) return notOurs(scene);
  if (scene.understood.fresh.length === 0) {
    const near = scene.parts.cards?.search(scene).hits.filter(({ score }) => score >= likelyMeant) ?? [];
    if (near.length > 0) return whichCard(scene, near);
    return notOurs(scene);
  }
  const { quantities, records } = scene.engine.knowledge;
  const plain = records.quantities.filter((record) => record.plain);
  const first = [
    ...plain.filter(({ asks, bare }) => asks && bare === false),
    ...plain.flatMap(({ beside = [] }) => beside.map((id) => quantities.get(id))),
    ...records.quantities,
  ];
  const choices = [...new Set(first)]
    .filter((record) => record !== undefined)
    .filter((record) => record.asks && scene.voice.solved.get(record.id)?.by)
    .slice(0, 4)
    .map((record) => ({ text: record.asks!, send: record.asks! }));
  return clarifying(scene, 'no-goal', 'no-goal', {
    quantity: 'goal',
    text: en.whatFor(en.known(factsInWords(scene))),
    choices,
  });
}

const notOurs = (scene: Scene): Reply => ({
  ...refuse('out-of-scope', en.notUnderstood(en.scope, en.example), scene.job, scene.engine),
  cards: nearestCards(scene),
});

/** "How many bags": a count of something that no record speaks of. */
function asksForForeign({ understood, engine }: Scene): boolean {
  const { sentence } = understood;
  return (sentence.places.get('how-many') ?? []).some((at) => {
    const next = sentence.tokens[sentence.after(at)];
    return next?.kind === 'word' && next.many === true && !engine.vocabulary.isKnown(next.head);
  });
}

/** How well a card must answer for a question without an aim to be taken as one about it. */
const likelyMeant = 0.7;

/** Asks which of the cards is meant, where a question names something of the trade and says no more. */
function whichCard(scene: Scene, near: readonly CardHit[]): Reply {
  const choices = near.map(({ title }): Choice => ({ text: capital(title), send: en.cardNamed(title) }));
  const clarify = { quantity: 'goal', text: en.whatAbout(choices.map(({ text }) => text)), choices };
  return { ...clarifying(scene, 'no-goal', 'no-goal', clarify), cards: near };
}

/** Cards that come nearest to a question no card answers. */
function nearestCards(scene: Scene): readonly CardHit[] {
  const { hits, didYouMean } = scene.parts.cards?.search(scene) ?? { hits: [], didYouMean: [] };
  return hits.length > 0 ? hits : didYouMean;
}

function factsInWords({ understood, voice }: Scene): string[] {
  return understood.facts.flatMap((fact) => {
    const record = voice.knowledge.quantities.get(fact.quantity);
    return record && 'unit' in fact
      ? [en.fact(record.title, say(record, toBase(fact.number, fact.unit), fact.unit, true))]
      : [];
  });
}
