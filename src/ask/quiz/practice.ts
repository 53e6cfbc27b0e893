import type { Knowledge } from '../../rules/knowledge.ts';
import type { QuizItem } from '../reply.ts';
import { lintItem } from './lint-item.ts';
import { streamOf } from './maker.ts';
import { poolOf } from './pool.ts';
import { randomOf } from './random.ts';
import { type Form, levels, type Point } from './shapes.ts';
import { tokenOf } from './tokens.ts';
import { seats } from './topics.ts';

/** What one person has practised: for each question its step and the day it comes back. */
export interface PracticeList {
  readonly v: 1;
  readonly seat?: string;
  readonly cards: Readonly<Record<string, PracticeCard>>;
}
interface PracticeCard {
  /** How often in a row it was right, as a step of `daysUntil`. */
  readonly step: number;
  /** Day it comes back, counted from any fixed day. */
  readonly due: number;
}

export const noPractice: PracticeList = { v: 1, cards: {} };

/** Days until a question comes back: missed tomorrow, then later and later. */
export const daysUntil = [1, 2, 4, 8, 16, 32, 64] as const;

/** A question of a round. */
export interface Practised {
  readonly token: string;
  readonly item: QuizItem;
}

/** Questions in a round. */
export const roundSize = 8;

/**
 * The questions of a round: those that come back today, the longest overdue first, then new ones, easy before hard. The same
 * list on the same day makes the same round; another day draws other figures.
 */
export function roundOf(knowledge: Knowledge, list: PracticeList, day: number, size = roundSize): Practised[] {
  const asked = candidatesFor(knowledge, list.seat);
  const known = new Map(asked.map((each) => [each.token, each]));
  const due = Object.entries(list.cards)
    .filter(([token, card]) => card.due <= day && known.has(token))
    .sort(([a, one], [b, other]) => one.due - other.due || (a < b ? -1 : 1))
    .map(([token]) => known.get(token)!);
  const fresh = randomOf(`practice ${day}`)
    .shuffle(asked.filter(({ token }) => !Object.hasOwn(list.cards, token)))
    .sort((a, b) => levels.indexOf(a.form.level) - levels.indexOf(b.form.level));
  const round: Practised[] = [];
  const groups = new Set<string>();
  for (const each of [...due, ...fresh]) {
    if (round.length === size) break;
    if (groups.has(each.point.group)) continue;
    const item = drawn(each, day);
    if (!item) continue;
    groups.add(each.point.group);
    round.push({ token: each.token, item });
  }
  return round;
}

interface Asked {
  readonly point: Point;
  readonly form: Form;
  readonly token: string;
}

/** Everything that can be asked, or what a seat needs. */
function candidatesFor(knowledge: Knowledge, seat: string | undefined): Asked[] {
  const on = seat !== undefined && Object.hasOwn(seats, seat) ? new Set<string>(seats[seat]!.on) : undefined;
  return poolOf(knowledge)
    .filter(({ topics, mustPass }) => !on || mustPass || topics.some((topic) => on.has(topic)))
    .flatMap((point) => point.forms.map((form) => ({ point, form, token: tokenOf(point, form) })));
}

const tries = 12;

function drawn(asked: Asked, day: number): QuizItem | undefined {
  const random = randomOf(`practice ${day} ${asked.token}`);
  for (let at = 0; at < tries; at++) {
    const wish = { yes: random.int(2) === 0, place: random.int(4) };
    const draft = asked.form.make(streamOf(`practice ${day}`, asked, at), wish);
    if (!draft || lintItem(draft).length > 0) continue;
    const { point, form, token } = asked;
    const options = draft.order === 'free' ? random.shuffle(draft.item.options) : draft.item.options;
    return { id: `p-${token}`, ...draft.item, options, topic: point.topics[0], level: form.level };
  }
  return undefined;
}

/** The list after an answer: right, and it comes back later than before; missed, and it comes back tomorrow. */
export function practised(list: PracticeList, token: string, right: boolean, day: number): PracticeList {
  const before = list.cards[token];
  const step = right ? Math.min((before?.step ?? 0) + 1, daysUntil.length - 1) : 0;
  return { ...list, cards: { ...list.cards, [token]: { step, due: day + daysUntil[step]! } } };
}

/** How many come back today, and how many are known: right at least once since they were last missed. */
export function practiceTally(list: PracticeList, day: number): { readonly due: number; readonly known: number } {
  const cards = Object.values(list.cards);
  return { due: cards.filter(({ due }) => due <= day).length, known: cards.filter(({ step }) => step > 0).length };
}

/** A list as it was kept; anything else is no list. */
export function readPractice(kept: unknown): PracticeList {
  if (typeof kept !== 'object' || kept === null || !('cards' in kept) || !('v' in kept) || kept.v !== 1)
    return noPractice;
  const { cards, seat } = kept as { cards: unknown; seat?: unknown };
  if (typeof cards !== 'object' || cards === null) return noPractice;
  const whole = Object.entries(cards).filter(
    ([, card]) =>
      Number.isInteger(card?.step) && Number.isInteger(card?.due) && card.step >= 0 && card.step < daysUntil.length,
  );
  return {
    v: 1,
    ...(typeof seat === 'string' && Object.hasOwn(seats, seat) ? { seat } : {}),
    cards: Object.fromEntries(whole.map(([token, { step, due }]) => [token, { step, due }])),
  };
}
