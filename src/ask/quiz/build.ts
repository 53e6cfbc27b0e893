import type { Knowledge } from '../../rules/knowledge.ts';
import type { Quiz } from '../reply.ts';
import { quiz } from '../wording/quiz.en.ts';
import { type Candidate, candidate, candidates, Dealer } from './choose.ts';
import { lintItem } from './lint-item.ts';
import { mostOneSided } from './lint-set.ts';
import { placed, placeOfKey } from './places.ts';
import { poolOf } from './pool.ts';
import { hashText, type Random, randomOf } from './random.ts';
import { faultIn, type QuizRequest } from './request.ts';
import type { Draft, Made, Point } from './shapes.ts';
import { seats } from './topics.ts';

/** A set as it is kept and sent: what made it, and by which rules. */
export interface QuizSet extends Quiz {
  readonly variant: 'A' | 'B';
  readonly rules: { readonly version: string };
}

/** A set with what its checks need, or why there is none. */
export type Built = { readonly set: QuizSet; readonly made: readonly Made[] } | { readonly fault: string };

/** A made item before the set has its order. */
interface Drafted extends Candidate {
  readonly draft: Draft;
}

/**
 * Makes a set: the same request and seed give the same set, byte for byte. A request that cannot be met comes back as a
 * sentence that says what can be had; never throws on what a person asks for.
 */
export function buildQuiz(knowledge: Knowledge, request: QuizRequest): Built {
  const fault = faultIn(request);
  if (fault !== undefined) return { fault };
  const { count, variant = 'A' } = request;
  const seed = request.seed ?? hashText(JSON.stringify(request));
  const wanted = {
    topics: request.topics?.length ? request.topics : request.seat === undefined ? [] : seats[request.seat]!.on,
    levels: request.levels ?? [],
    kinds: request.kinds ?? [],
  };
  const first = new Maker(seed, 'A');
  const pool = poolOf(knowledge);
  if (request.seat !== undefined) first.fill(new Dealer(mustsOf(pool, request.seat), randomOf(`${seed} musts`)), count);
  const fitting = candidates(pool, wanted);
  const order = randomOf(seed);
  first.fill(new Dealer(fitting, order), count);
  first.fill(new Dealer(fitting, order), count, true);
  const { drafts } = variant === 'A' ? first : again(first.drafts, seed, variant);
  if (drafts.length < count) return { fault: quiz.fault.tooMany(inWords(request), count, drafts.length) };
  const made = finished(drafts, randomOf(`${seed}|${variant} order`), request, `${seed}|${variant}`);
  const title = titleOf(request, variant);
  return {
    set: { seed, title, variant, rules: { version: knowledge.version }, items: made.map(({ item }) => item) },
    made,
  };
}

/** The same points, forms and answers to yes or no, with other figures; what comes to no other fair item stays as it is. */
function again(drafts: readonly Drafted[], seed: string, variant: string): Maker {
  const maker = new Maker(seed, variant);
  for (const { draft, ...same } of drafts) maker.keep(same, maker.make(same, draft.item.key === quiz.yes) ?? draft);
  return maker;
}

/** What must be right in a seat: one item on each of its rules, whatever the levels wanted. */
function mustsOf(pool: readonly Point[], seat: string): Candidate[] {
  const rules = new Set(seats[seat]!.musts.map((id) => `practice/${id}`));
  return pool
    .filter(({ id }) => rules.has(id))
    .flatMap((point) =>
      point.forms.filter(({ level }) => level === 'easy').map((form) => candidate(point, form, 'safety')),
    );
}

/** Times an item is drawn anew before its form is put aside. */
const tries = 8;
/** The same for another variant, which has no other form to take in its place. */
const triesAgain = 48;

class Maker {
  readonly drafts: Drafted[] = [];
  private readonly stems = new Set<string>();
  private readonly groups = new Set<string>();
  private readonly places = [0, 0, 0, 0];
  private balance = 0;
  private yesOrNo = 0;
  private readonly seed: string;
  private readonly variant: string;

  constructor(seed: string, variant: string) {
    this.seed = seed;
    this.variant = variant;
  }

  /** Fills up to `count` from a dealer. `anyAnswer`: yes and no may come out as uneven as a set may be. */
  fill(dealer: Dealer, count: number, anyAnswer = false): void {
    while (this.drafts.length < count) {
      const best = dealer.next();
      if (!best) return;
      const draft = this.groups.has(best.point.group) ? undefined : this.make(best, undefined, anyAnswer);
      if (!draft) dealer.drop(best);
      else {
        dealer.take(best);
        this.keep(best, draft);
      }
    }
  }

  /** A fair item, or nothing. `answer` is what a yes-or-no item must have for its key; left out, yes and no come out even. */
  make({ point, form }: Candidate, answer?: boolean, anyAnswer = false): Draft | undefined {
    for (let at = 0; at < (answer === undefined ? tries : triesAgain); at++) {
      const random = randomOf(`${this.seed}|${this.variant}|${point.id}|${form.id}|${at}`);
      const even = this.balance === 0 ? random.int(2) === 0 : this.balance < 0;
      const either = this.balance === 0 || (anyAnswer && Math.abs(this.balance) + 1 <= mostOneSided(this.yesOrNo + 1));
      const yes = answer ?? (either ? even !== (at % 2 === 1) : even);
      const draft = form.make(random, { yes, place: this.places.indexOf(Math.min(...this.places)) });
      if (draft && !this.stems.has(draft.item.stem) && lintItem(draft).length === 0) return draft;
    }
    return undefined;
  }

  keep(taken: Candidate, draft: Draft): void {
    this.drafts.push({ ...taken, draft });
    this.stems.add(draft.item.stem);
    this.groups.add(taken.point.group);
    if (draft.item.kind === 'true-false') {
      this.balance += draft.item.key === quiz.yes ? 1 : -1;
      this.yesOrNo++;
    }
    if (draft.item.kind === 'one' && draft.order !== 'free') {
      const place = placeOfKey(draft.item);
      this.places[place] = (this.places[place] ?? 0) + 1;
    }
  }
}

function finished(drafts: readonly Drafted[], random: Random, { seat }: QuizRequest, salt: string): Made[] {
  const shuffled = random.shuffle(drafts);
  const even = placed(
    shuffled.map(({ draft }) => draft),
    random,
  );
  return shuffled.map(({ point, form, topic }, at) => {
    const draft = even[at]!;
    const id = `q${String(at + 1).padStart(2, '0')}-${hashText(`${salt}|${point.id}|${form.id}`)}`;
    const extra = { ...(seat === undefined ? {} : { seat }), ...(point.mustPass ? { mustPass: true } : {}) };
    return { item: { id, ...draft.item, topic, level: form.level, ...extra }, draft, point: point.group };
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
