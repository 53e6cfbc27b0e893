import { work } from '../rules/work.ts';
import { isBesideThePoint } from './beside-the-point.ts';
import { cards } from './cards.generated.ts';
import { linkedCards } from './cards-linked.ts';
import { givenOf } from './facts.ts';
import type { Goal } from './goal.ts';
import { blank } from './refusal.ts';
import type { CardHit, Reply } from './reply.ts';
import type { CardPart, Scene } from './scene.ts';
import type { Card } from './search/card.ts';
import { cardsById } from './search/shelf.ts';
import { basisOf, filled, hitOf } from './search/shown.ts';
import { searchCards } from './search.ts';
import type { Sentence } from './sentence.ts';
import { cardGoal } from './spoken-before.ts';
import { figureAsks } from './wording/asking.ts';
import { cardWords } from './wording/cards.ts';
import { en } from './wording/en.ts';
import { isAfterNext, isWork } from './work-goals.ts';

/** Answers with a card: its text with the figures in it, what it rests on, and what to ask next. Throws RangeError for an unknown id. */
export function cardReply(scene: Scene, id: string): Reply {
  const card = cardsById.get(id);
  if (!card) throw new RangeError(`there is no card ${id}`);
  const opening = card.emergency ? [`${cardWords.ifItHappens} ${card.emergency.first}`] : [];
  const { voice, understood, engine, job } = scene;
  const goal = cardGoal(id);
  return {
    ...blank,
    kind: 'card',
    topic: id,
    text: [...opening, filled(card.text, voice), cardWords.basis(basisOf(card))].join('\n'),
    given: givenOf(understood.fresh),
    cards: cardsFor(scene, [...card.links, `card/${id}`]).filter((hit) => hit.id !== id),
    cautions: cautionsOf(card),
    next: nextOf(card, scene),
    rules: { version: engine.knowledge.version },
    job: goal && !job.goal ? { ...job, goal } : job,
  };
}

/** The card that a question asks for by name: "Card: pilot car", or its id. */
function cardNamed(question: unknown): string | undefined {
  if (typeof question !== 'string') return undefined;
  const name = /^\s{0,4}card:\s{0,4}(.{1,80}?)\s{0,4}$/i.exec(question)?.[1]?.toLowerCase();
  return name && cards.find(({ id, title }) => id === name || title.toLowerCase() === name)?.id;
}

/** How well a card must answer to be told in place of what a record answers. */
const thanRecord = 0.84;
/** And in place of the steps of a stage, which say something of all that is done there. */
const thanStep = 0.8;

/** With no record found: the fewer words of a question the cards know, the surer one must be, or everyday talk would be answered with a card. */
const thanAsking: readonly (readonly [words: number, score: number])[] = [
  [1, 0.9],
  [2, 0.6],
  [3, 0.5],
];

/**
 * The card that answers a question better than the record it was taken to be after: where no figure is given or asked for,
 * and a card is all but asked for by its own words, while it does not bear on that record. With no record found, a card that
 * the search is sure enough of. Never an emergency in place of a record: that is told while it happens.
 */
export function cardInstead(scene: Scene): string | undefined {
  const { goal, facts, sentence, isAnswer } = scene.understood;
  const open = !goal || scene.understood.isFaint || isBesideThePoint(scene);
  const term = asksMeaning(sentence) ? termIn(scene) : undefined;
  if (term) return term;
  const asksFigure = figureAsks.some((word) => sentence.places.has(word));
  const isFigured = asksFigure || facts.some((fact) => 'unit' in fact);
  const isJudged =
    !open &&
    ((sentence.places.has('@check') && (goal.kind === 'limit' || goal.kind === 'quantity')) || isToldOf(scene, goal));
  // "Why did that happen", after a fault: its causes again.
  if (scene.understood.goalKept && sentence.places.has('@why') && goal && isWork(goal.kind)) return undefined;
  if (!open && (isAnswer || isJudged || (isFigured && goal.kind !== 'step'))) return undefined;
  const { hits, heard } = searchCards(scene, 1);
  const [hit] = hits;
  if (!hit) return undefined;
  // Two figures and more are a patch that is told of, not a question for a card.
  const sizes = scene.understood.fresh.filter((fact) => 'unit' in fact).length;
  if (open && sizes > 1) return undefined;
  if (open) return thanAsking.some(([words, score]) => heard >= words && hit.score >= score) ? hit.id : undefined;
  const card = cardsById.get(hit.id)!;
  const about = goal.id.replace(/^done-/, '');
  const bearsOn = card.links.some((link) => link.endsWith(`/${about}`));
  if (card.emergency) return undefined;
  if (goal.kind === 'step') {
    const isBetter = heard > 1 && hit.score >= thanStep && (asksFigure || !bearsOn);
    return isBetter && isStage(goal.id, sentence) ? card.id : undefined;
  }
  return !ownReply.has(goal.kind) && !bearsOn && hit.score >= thanRecord ? card.id : undefined;
}

/** True for a rule where what it judges was just told: then it is judged, and not explained. */
function isToldOf({ understood, engine }: Scene, { kind, id }: Goal): boolean {
  const { limits, practices } = engine.knowledge;
  const rule = kind === 'limit' ? limits.get(id) : kind === 'practice' ? practices.get(id) : undefined;
  return rule !== undefined && understood.fresh.some(({ quantity }) => quantity === rule.on.id);
}

/** Words that ask what something means. */
const meaningAsked = ['mean', 'define', 'called', 'saying'];

/** "What do they mean by it", "crown of what?": a question what a word means. */
function asksMeaning({ places, tokens }: Sentence): boolean {
  const [of, what] = tokens.filter(({ kind }) => kind !== 'mark').slice(-2);
  const isOfWhat = of?.kind === 'word' && of.head === 'of' && what?.kind === 'word' && what.head === 'what';
  return isOfWhat || meaningAsked.some((word) => places.has(word));
}
/** How well a card must answer what a word means. */
const explains = 0.65;

/** The card that explains what a question asks the meaning of. A figure in it is judged or worked with, not explained. */
function termIn(scene: Scene): string | undefined {
  if (scene.understood.fresh.some((fact) => 'unit' in fact)) return undefined;
  const [hit] = searchCards(scene, 1).hits;
  return hit && hit.score >= explains && !cardsById.get(hit.id)!.emergency ? hit.id : undefined;
}

/**
 * The card that tells about a record, where a question about it gives nothing to judge or to work with: "who backs the
 * trucks" wants to hear the rule, not a question back. Of the cards that bear on it the one found best; else one that is
 * about nothing before it.
 */
export function cardAbout(scene: Scene, record: string): string | undefined {
  const { sentence, facts } = scene.understood;
  const told = sentence.tokens.filter((token) => token.kind === 'word' && !sentence.small.has(token.head));
  if (
    told.length < (record.startsWith('quantity/') ? fewestTold : fewestTold - 1) ||
    sentence.places.has('@check') ||
    facts.some((fact) => fact.fresh && 'unit' in fact)
  )
    return undefined;
  const bearing = new Set(
    cards.flatMap(({ id, kind, links }) => (kind !== 'emergency' && links.includes(record) ? [id] : [])),
  );
  const { hits } = searchCards(scene, cards.length);
  const [best] = hits;
  // All but asked for by its own words, it comes before the card of the record.
  if (best && best.score >= thanRecord && bearing.has(best.id)) return best.id;
  const own = record.slice(record.indexOf('/') + 1);
  if (bearing.has(own)) return own;
  const found = hits.find(({ id, score }) => bearing.has(id) && score >= bearsOn);
  return found?.id ?? cards.find(({ id, links }) => bearing.has(id) && links[0] === record)?.id;
}

/** Fewer words than this only name the quantity they ask for. */
const fewestTold = 3;
/** How well a card that bears on a record must answer to be told where nothing can be worked out. */
const bearsOn = 0.35;
/** A stage is spoken of, or is said to be over; what comes next is not what is asked. */
function isStage(id: string, sentence: Sentence): boolean {
  return (work.steps.has(id) || id.startsWith('done-')) && !isAfterNext(sentence);
}

/** What a record of these kinds answers is a reply of its own, told whole: the steps, or which repair. */
const ownReply: ReadonlySet<string> = new Set(['step', 'defect', 'repair']);

const mostCards = 3;
/** What a link is worth beside how well a card answers: to the first record an answer used, and to any other. */
const linked = { first: 0.5, other: 0.25 };

/**
 * The cards to show beside an answer: those that bear on the records it used (`kind/id`, the most important first), and
 * those that the question finds, the best first.
 */
export function cardsFor(scene: Scene, ids: readonly string[]): CardHit[] {
  const [first] = ids;
  const found = new Map(searchCards(scene, cards.length).hits.map(({ id, score }) => [id, score]));
  const used = new Set(ids);
  const worth = ({ id, links }: Card): number =>
    (found.get(id) ?? 0) +
    (first && links.includes(first) ? linked.first : links.some((link) => used.has(link)) ? linked.other : 0);
  return cards
    .filter(({ kind }) => kind !== 'emergency')
    .map((card) => ({ card, score: worth(card) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || a.card.links.length - b.card.links.length || (a.card.id < b.card.id ? -1 : 1))
    .slice(0, mostCards)
    .map(({ card, score }) => hitOf(card, Math.min(1, score), scene.voice));
}

function cautionsOf({ kind }: Card): string[] {
  if (kind === 'emergency') return [cardWords.notADoctor];
  if (kind === 'traffic') return [cardWords.plan, en.agencyFirst];
  return kind === 'trainer' ? [cardWords.noCertificate] : [en.agencyFirst];
}

const mostNext = 4;

/** Questions that the records it bears on answer, then the cards to read next, by their titles. */
function nextOf({ links }: Card, { engine }: Scene): string[] {
  const named = (kind: string): string[] =>
    links.filter((link) => link.startsWith(`${kind}/`)).map((link) => link.slice(kind.length + 1));
  const figures = named('quantity').flatMap((id) => engine.knowledge.quantities.get(id)?.asks ?? []);
  const titles = named('card').map((id) => en.cardNamed(cardsById.get(id)!.title));
  return [...figures, ...titles].slice(0, mostNext);
}

/** The cards and their search, as answers want them. */
export const cardPart: CardPart = {
  named: cardNamed,
  instead: cardInstead,
  about: cardAbout,
  reply: cardReply,
  linked: linkedCards,
  search: searchCards,
};
