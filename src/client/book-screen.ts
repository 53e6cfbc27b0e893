import { actOn } from '../ask/book/at-hand.ts';
import { fold } from '../ask/book/book.ts';
import type { Change } from '../ask/book/change.ts';
import type { JobPage } from '../ask/views/book/forms.tsx';
import { bookPage as words } from '../ask/wording/book-page.en.ts';
import { carryOver, keyOfForm } from './book-forms.ts';
import { type KeptJob, keepJob, keepUnsent, keptJob, stampHere, unsentOf, wordsForNext } from './book-kept.ts';
import { type PlaceOfJob, pageOf, withUnsent } from './book-page.ts';
import { type Outcome, syncJob } from './book-sync.ts';
import { dayHere } from './day.ts';
import { dressOfPage } from './dress.ts';
import { jobInHand, takeInHand } from './in-hand.ts';
import { trouble } from './kept.ts';
import { fieldsOf } from './quiz-show.ts';

/** How often a page in sight asks for what others wrote. */
const every = 15_000;

/** A page of a job that stands on the phone. */
export class ScreenOfJob {
  private readonly place: PlaceOfJob;
  private job: KeptJob | undefined;
  private waiting: readonly Change[] = [];
  /** What the page shows; its forms were made from it. */
  private shown: readonly Change[] = [];
  /** Forms that were being filled in while the page changed under them: what they were made from. */
  private readonly older = new WeakMap<HTMLFormElement, readonly Change[]>();
  private outcome: Outcome | undefined;
  private by = '';
  /** Shown as this phone has it; until then the server does what a form asks for. */
  private ready = false;
  /** Forms whose changes are being kept: wet glass sends twice. */
  private readonly sending = new WeakSet<HTMLFormElement>();

  constructor(place: PlaceOfJob) {
    this.place = place;
  }

  async open(): Promise<void> {
    await this.load();
    if (this.job) {
      this.job = { ...this.job, at: Date.now() };
      await keepJob(this.job);
      await this.inHand();
      const first = wordsForNext.take(this.place.key) as Partial<JobPage> | undefined;
      // What the server has just sent is newer than what is here, unless something waits.
      const byPhone = document.documentElement.dataset.page === 'shell';
      const now = withUnsent(this.job, this.waiting);
      if (byPhone && !first && countShown() === now.length) {
        this.shown = now;
        this.ready = true;
        this.tell();
      } else if (byPhone || first || this.waiting.length > 0) this.draw(first);
    }
    document.addEventListener('submit', (event) => void this.submitted(event));
    const again = (): void => void this.sync();
    addEventListener('online', again);
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && again());
    setInterval(() => document.visibilityState === 'visible' && again(), every);
    await this.sync();
  }

  /** What is said where one asks goes to the job that was opened last. */
  private async inHand(): Promise<void> {
    if ((await jobInHand())?.key !== this.place.key) await takeInHand(this.place.key);
  }

  private async load(): Promise<void> {
    this.job = await keptJob(this.place.key);
    this.waiting = await unsentOf(this.place.key);
  }

  /** Sends and fetches; the page is drawn anew when there is something new to see. */
  private async sync(): Promise<void> {
    this.outcome = await syncJob(this.place.key);
    const first = !this.job;
    await this.load();
    if (first && this.job) await this.inHand();
    if (this.job) {
      const now = withUnsent(this.job, this.waiting);
      if (!this.ready) this.shown = now.slice(0, countShown());
      if (sameIds(now, this.shown)) {
        this.shown = now;
        this.ready = true;
      } else this.draw();
    }
    this.tell();
  }

  private async submitted(event: SubmitEvent): Promise<void> {
    const form = event.target as HTMLFormElement;
    const address = `/job/${this.place.key}`;
    if (this.place.page !== 'job' || form.method !== 'post' || new URL(form.action).pathname !== address) return;
    // Until this phone has the job, the server does what the form asks for.
    if (!this.job || !this.ready) return;
    event.preventDefault();
    if (this.sending.has(form)) return;
    this.sending.add(form);
    const fields = fieldsOf(form, event.submitter);
    const file = fields.get('file');
    if (file instanceof File && file.size > 0) fields.set('text', await file.text());
    const text = (name: string): string => {
      const value = fields.get(name);
      return typeof value === 'string' ? value : '';
    };
    await this.load();
    const changes = withUnsent(this.job, this.waiting);
    const now = fold(changes);
    this.by = text('initials') || text('by') || this.by;
    const done = actOn(text, {
      role: this.job.role,
      changes,
      seen: this.older.get(form) ?? this.shown,
      stamp: () => stampHere(now),
      day: dayHere,
    });
    if ('fault' in done) return this.refuse(form, done.fault);
    if (!(await keepUnsent(this.place.key, done.changes))) this.outcome = { state: 'no-room' };
    await this.load();
    const made = done.changes.map(({ id }) => id).join(' ');
    this.draw(
      {
        said: done.said,
        draft: done.draft,
        ...(made && text('do') !== 'undo' ? { takeBack: made } : {}),
      },
      form,
    );
    void this.sync();
  }

  /** Says at the form what is wrong with it; what was typed stays. */
  private refuse(form: HTMLFormElement, fault: string): void {
    this.sending.delete(form);
    document.getElementById('error')?.remove();
    const made = document.createElement('p');
    made.className = 'error';
    made.id = 'error';
    made.setAttribute('role', 'alert');
    form.before(made);
    made.textContent = fault;
    made.scrollIntoView({ block: 'nearest' });
  }

  /** Draws the page from what is kept. Forms that somebody is filling in stay as they are, and know what they were made from. */
  private draw(more: Partial<JobPage> = {}, sent?: HTMLFormElement): void {
    const main = document.querySelector<HTMLElement>('main');
    if (!this.job || !main) return;
    const dress = dressOfPage() ?? { stylesheet: '', quiz: '', icon: '' };
    const html = pageOf(this.place, this.job, this.waiting, dress, { by: this.by, ...more });
    const made = new DOMParser().parseFromString(html, 'text/html');
    const fresh = made.querySelector<HTMLElement>('main');
    if (!fresh) return;
    document.title = made.title;
    const shown = this.shown;
    carryOver(main, document.adoptNode(fresh), sent, (form) => {
      if (!this.older.has(form)) this.older.set(form, shown);
    });
    this.shown = withUnsent(this.job, this.waiting);
    this.ready = true;
    this.tell();
    if (sent && more.said && more.said.length > 0)
      document.querySelector('main .notice')?.scrollIntoView({ block: 'nearest' });
    else if (sent) focusOn(keyOfForm(sent));
  }

  /** How it stands with the server, in words. */
  private tell(): void {
    const place = document.getElementById('sync');
    if (!place) return;
    const { status } = words;
    const count = this.waiting.length;
    const state = this.outcome?.state;
    // What could not be put on the disk is not said to be kept.
    const noRoom = state === 'no-room' || (count > 0 && trouble());
    const parts = [
      this.job || state === 'revoked' || state === 'unknown' ? '' : status.notYet,
      state === 'revoked' || this.job?.revoked ? status.revoked : '',
      state === 'unknown' ? status.unknown : '',
      noRoom ? status.full : '',
      state === 'no-signal' && !noRoom ? status.offline : '',
      this.outcome?.state === 'refused' ? status.refused(this.outcome.why) : '',
      count > 0 ? `${noRoom ? '' : status.kept}${status.waiting(count)}` : state === 'whole' ? status.all : '',
    ];
    const text = parts.filter(Boolean).join(' ');
    if (place.textContent !== text) place.textContent = text;
  }
}

/** How much of the book the server's page was made from; its forms carry it. */
const countShown = (): number => Number(document.querySelector<HTMLElement>('main[data-count]')?.dataset.count ?? 0);

const sameIds = (a: readonly Change[], b: readonly Change[]): boolean => {
  const ids = new Set(b.map(({ id }) => id));
  return a.length === b.length && a.every(({ id }) => ids.has(id));
};

/** After a form was sent the reader goes on at its heading, which is folded again. */
function focusOn(key: string): void {
  for (const form of document.querySelectorAll<HTMLFormElement>('main form'))
    if (keyOfForm(form) === key) {
      form.closest('details')?.querySelector<HTMLElement>('summary')?.focus({ preventScroll: true });
      return;
    }
}
