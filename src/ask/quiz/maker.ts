import { quiz } from '../wording/quiz.en.ts';
import type { Candidate, Dealer } from './choose.ts';
import { lintItem } from './lint-item.ts';
import { mostOneSided } from './lint-set.ts';
import { placeOfKey } from './places.ts';
import { randomOf } from './random.ts';
import type { Draft } from './shapes.ts';
import { stemOf, tokenOf } from './tokens.ts';

/** A made item before the set has its order. */
export interface Drafted extends Candidate {
  readonly draft: Draft;
}

/** Times an item is drawn anew before its form is put aside. */
const tries = 8;
/** The same for another variant, which has no other form to take in its place. */
export const triesAgain = 48;

/** The stream that an item is drawn from, at a try. */
export const streamOf = (salt: string, { point, form }: Pick<Candidate, 'point' | 'form'>, at: number) =>
  randomOf(`${salt}|${point.id}|${form.id}|${at}`);

/** Makes the items of a set one after another, so that answers and places come out even and nothing is asked twice. */
export class Maker {
  readonly drafts: Drafted[] = [];
  private readonly stems = new Set<string>();
  private readonly groups = new Set<string>();
  private readonly places = [0, 0, 0, 0];
  private balance = 0;
  private yesOrNo = 0;
  private readonly salt: string;

  constructor(salt: string) {
    this.salt = salt;
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

  /** Puts another item in the place of one, as like it in topic, level and kind as can be had; none of a set's musts. */
  swap(token: string, dealer: Dealer): void {
    const place = this.drafts.findIndex(({ point, form, must }) => !must && tokenOf(point, form) === token);
    const old = this.drafts[place];
    if (!old) return;
    this.count(old.draft, -1);
    for (const candidate of dealer.like(old.keys)) {
      const draft = this.groups.has(candidate.point.group) ? undefined : this.make(candidate, undefined, true);
      if (!draft) continue;
      dealer.take(candidate);
      this.keep(candidate, draft, place);
      return;
    }
    this.count(old.draft, 1);
  }

  /** A fair item, or nothing. `answer` is what a yes-or-no item must have for its key; left out, yes and no come out even. */
  make(taken: Candidate, answer?: boolean, anyAnswer = false): Draft | undefined {
    for (let at = 0; at < (answer === undefined ? tries : triesAgain); at++) {
      const even = this.balance === 0 ? streamOf(`${this.salt}|yes`, taken, at).int(2) === 0 : this.balance < 0;
      const either = this.balance === 0 || (anyAnswer && Math.abs(this.balance) + 1 <= mostOneSided(this.yesOrNo + 1));
      const yes = answer ?? (either ? even !== (at % 2 === 1) : even);
      const draft = taken.form.make(streamOf(this.salt, taken, at), {
        yes,
        place: this.places.indexOf(Math.min(...this.places)),
      });
      if (draft && !this.stems.has(stemOf(draft)) && lintItem(draft).length === 0) return draft;
    }
    return undefined;
  }

  /** Takes an item into the set, at its end or in the place of another. */
  keep(taken: Candidate, draft: Draft, place = this.drafts.length): void {
    this.drafts[place] = { ...taken, draft };
    this.stems.add(stemOf(draft));
    this.groups.add(taken.point.group);
    this.count(draft, 1);
  }

  private count(draft: Draft, by: 1 | -1): void {
    if (draft.item.kind === 'true-false') {
      this.balance += draft.item.key === quiz.yes ? by : -by;
      this.yesOrNo += by;
    }
    if (draft.item.kind === 'one' && draft.order !== 'free') {
      const place = placeOfKey(draft.item);
      this.places[place] = (this.places[place] ?? 0) + by;
    }
  }
}
