import type { Knowledge } from '../../rules/knowledge.ts';
import type { Quiz } from '../reply.ts';
import { quiz } from '../wording/quiz.en.ts';
import { type Candidate, candidate, candidates, Dealer } from './choose.ts';
import { type Drafted, Maker } from './maker.ts';
import { placed } from './places.ts';
import { poolOf } from './pool.ts';
import { hashText, type Random, randomOf } from './random.ts';
import { faultIn, type QuizRequest } from './request.ts';
import type { Made, Point } from './shapes.ts';
import { markOf, tokenOf } from './tokens.ts';
import { seats } from './topics.ts';

/** What a set was asked for with, but for its seed and variant. */
export type Blueprint = Omit<QuizRequest, 'seed' | 'variant'>;

/** A set as it is kept and sent: what made it, and by which rules. */
export interface QuizSet extends Quiz {
  readonly variant: 'A' | 'B';
  readonly rules: { readonly version: string };
  readonly blueprint: Blueprint;
}

/** A set with what its checks need, or why there is none. */
export type Built = { readonly set: QuizSet; readonly made: readonly Made[] } | { readonly fault: string };

/**
 * Makes a set: the same request and seed give the same set, byte for byte. A request that cannot be met comes back as a
 * sentence that says what can be had; never throws on what a person asks for.
 */
export function buildQuiz(knowledge: Knowledge, request: QuizRequest): Built {
  const pool = poolOf(knowledge, request.units);
  const fault = faultIn(request, pool);
  if (fault !== undefined) return { fault };
  const { count, variant = 'A', swaps = [] } = request;
  const seed = seedOf(request);
  const first = new Maker(`${seed}|A`);
  first.fill(new Dealer(mustsOf(pool, request), randomOf(`${seed} musts`)), count);
  const fitting = candidates(pool, wantedIn(request));
  const order = randomOf(seed);
  first.fill(new Dealer(fitting, order), count);
  const last = new Dealer(fitting, order);
  first.fill(last, count, true);
  for (const token of swaps) first.swap(token, last);
  const { drafts } = variant === 'A' ? first : again(first.drafts, `${seed}|${variant}`);
  if (drafts.length < count) return { fault: quiz.fault.tooMany(inWords(request), count, drafts.length) };
  const made = finished(drafts, randomOf(`${seed}|${variant} order`), request, `${seed}|${variant}`);
  const title = titleOf(request, variant);
  const { seed: _, variant: __, ...blueprint } = request;
  const rules = { version: knowledge.version };
  return { set: { seed, title, variant, rules, blueprint, items: made.map(({ item }) => item) }, made };
}

/** The seed named, else a hash of the request: of what is asked about, not of the variant or the swaps in it. */
export function seedOf(request: QuizRequest): string {
  const { seed, variant: _, swaps: __, ...blueprint } = request;
  return seed ?? hashText(JSON.stringify(blueprint));
}

function wantedIn({ topics = [], seat, levels = [], kinds = [] }: QuizRequest) {
  return { topics: topics.length || seat === undefined ? topics : seats[seat]!.on, levels, kinds };
}

/** The same points, forms and answers to yes or no, with other figures; what comes to no other fair item stays as it is. */
function again(drafts: readonly Drafted[], salt: string): Maker {
  const maker = new Maker(salt);
  for (const { draft, ...same } of drafts) maker.keep(same, maker.make(same, draft.item.key === quiz.yes) ?? draft);
  return maker;
}

/** What has to be in a set: of a seat one item on each of its rules, whatever the levels wanted; and what was named. */
function mustsOf(pool: readonly Point[], { seat, about = [] }: QuizRequest): Candidate[] {
  const rules = new Set((seat === undefined ? [] : seats[seat]!.musts).map((id) => `practice/${id}`));
  const of = (point: Point, topic: string, forms: Point['forms']): Candidate[] =>
    forms.map((form) => ({ ...candidate(point, form, topic), must: true }));
  return pool.flatMap((point) => {
    if (rules.has(point.id))
      return of(
        point,
        'safety',
        point.forms.filter(({ level }) => level === 'easy'),
      );
    return about.includes(point.id) ? of(point, point.topics[0], point.forms) : [];
  });
}

function finished(drafts: readonly Drafted[], random: Random, { seat }: QuizRequest, salt: string): Made[] {
  const shuffled = random.shuffle(drafts);
  const even = placed(
    shuffled.map(({ draft }) => draft),
    random,
  );
  return shuffled.map(({ point, form, topic, must = false }, at) => {
    const draft = even[at]!;
    const id = `q${String(at + 1).padStart(2, '0')}-${markOf(salt, point, form)}`;
    const extra = { ...(seat === undefined ? {} : { seat }), ...(point.mustPass ? { mustPass: true } : {}) };
    const item = { id, ...draft.item, topic, level: form.level, ...extra };
    return { item, draft, point: point.group, token: tokenOf(point, form), must };
  });
}

function inWords({ topics = [], seat, levels = [], kinds = [] }: QuizRequest): string {
  const on = topics.length ? topics.join(', ') : seat === undefined ? quiz.everything : quiz.seatTitle(seat);
  return [on, ...levels, ...kinds].join(', ');
}

function titleOf({ topics = [], seat, levels = [], count }: QuizRequest, variant: string): string {
  const on = topics.length ? topics : [seat === undefined ? quiz.everything : quiz.seatTitle(seat)];
  return quiz.title(on, count, levels, variant);
}
