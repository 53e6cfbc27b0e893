import { longestQuestion } from '../ask/longest.ts';
import type { UnitSystem } from '../ask/reply.ts';
import type { Entry } from '../ask/views/entry.ts';
import { talkOf } from '../ask/views/talk.ts';
import { page as wording } from '../ask/wording/page.en.ts';
import { engine, whyNone } from './engine.ts';
import { jobInHand, takeInHand } from './in-hand.ts';
import { trouble } from './kept.ts';
import * as sheets from './sheets.ts';
import { say } from './status.ts';
import { type KeptTalk, keepTalk, lastTalk, newTalk } from './talks.ts';
import { en } from './wording/en.ts';

/** How long a question waits for what answers it here before it goes to the server. */
const patience = 4000;
/** Wet glass sends twice. */
const twice = 700;

/** Between two numbers of the talk lies what was said on a job. */
const besides = 0.001;

/** The conversation of this window, and what goes on at its question box. */
export class Desk {
  private entries: Entry[] = [];
  private readonly form: HTMLFormElement;
  private readonly box: HTMLTextAreaElement;
  private talk: KeptTalk;
  private sentLast = { question: '', at: 0 };
  /** What was asked before could not be asked again here: the server has it from the form. */
  private behind = false;
  /** Saving is done one after the other. */
  private saving: Promise<void> = Promise.resolve();

  constructor(form: HTMLFormElement, box: HTMLTextAreaElement) {
    this.form = form;
    this.box = box;
    this.talk = newTalk(document.documentElement.dataset.rules ?? '');
  }

  /** From here on the presses of the page are answered. */
  listen(): void {
    this.form.addEventListener('submit', (event) => this.submitted(event));
    this.box.addEventListener('keydown', (event) => this.pressed(event));
    this.form.addEventListener('change', ({ target }) => this.changed(target as HTMLInputElement));
    document.addEventListener('click', (event) => this.clicked(event));
    // Boxes of the checklist belong to the form but stand outside of it.
    document.addEventListener('change', ({ target }) => this.changed(target as HTMLInputElement));
  }

  /** Takes up what is on the page, or what was asked on this phone before. */
  async open(): Promise<void> {
    const asked = new URLSearchParams(location.search).get('q');
    if (await jobInHand()) void import('./on-job.ts').then(({ showJob }) => showJob());
    if (sheets.shown() > 0) await this.adopt();
    else if (asked) await this.take(asked);
    else await this.restore();
  }

  /** The page came from the server with answers on it: the same questions are asked here, and the sheets stay. */
  private async adopt(): Promise<void> {
    const talk = hidden(this.form, 'talk');
    const loaded = await engine();
    if (!loaded || !talk) return;
    const { first, start, turns } = JSON.parse(talk.value) as KeptTalk;
    this.talk = { ...newTalk(loaded.version, start), first };
    await this.replay(turns, start, first);
    await this.save();
  }

  private async restore(): Promise<void> {
    const before = await lastTalk();
    if (!before || before.turns.length === 0) return;
    const loaded = await engine();
    if (!loaded || this.entries.length > 0) return;
    this.talk = { ...before, version: loaded.version };
    for (const tick of before.ticks) sheets.ticks.add(tick);
    await this.replay(before.turns, before.start, before.first);
    sheets.showAll(loaded, this.entries);
    this.carry();
    say(before.version === loaded.version ? en.restored : wording.notices.rulesChanged);
  }

  /** Asks earlier questions again, a slice at a time so that the page stays quick to the touch. */
  private async replay(turns: KeptTalk['turns'], start: unknown, first: number): Promise<void> {
    const loaded = await engine();
    if (!loaded) return;
    let job = start;
    for (const [at, turn] of turns.entries()) {
      const reply = await loaded.answer({ ...turn, ...(job === undefined ? {} : { job }) }).catch(() => undefined);
      if (!reply) {
        this.entries = [];
        this.behind = true;
        return;
      }
      job = reply.job;
      this.entries.push({ number: first + at, ...turn, reply });
      await new Promise((resolve) => setTimeout(resolve));
    }
  }

  private submitted(event: SubmitEvent): void {
    const button = event.submitter as HTMLButtonElement | null;
    const action = button?.getAttribute('formaction');
    if (button?.name === 'change') {
      event.preventDefault();
      this.change(button.value);
    } else if (!action) {
      event.preventDefault();
      void this.take(button?.name === 'send' ? button.value : this.box.value, button);
    } else if (action === '/sheet' && navigator.serviceWorker?.controller && !(trouble() && navigator.onLine)) {
      // The sheet is made here, signal or not, from what is kept; where nothing is, the server makes it from the form.
      event.preventDefault();
      void this.save().then(() => location.assign('/sheet'));
    }
  }

  /** Enter sends; with Shift it begins a new line, and while a word is being composed it is not ours. */
  private pressed(event: KeyboardEvent): void {
    if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    this.form.requestSubmit();
  }

  /** Puts a fact into the box with its figure marked, to be typed over. */
  private change(fact: string): void {
    const typed = this.box.value.trim();
    this.box.value = typed === '' ? fact : `${typed}, ${fact}`;
    this.box.focus();
    const from = this.box.value.length - fact.length;
    const figure = /[\d.,/\u00bc-\u00be-]{1,20}(?: \d\/\d)?/.exec(fact);
    if (figure) this.box.setSelectionRange(from + figure.index, from + figure.index + figure[0].length);
    say(en.changeFigure);
  }

  /** Answers a question here; where what answers has not come, the form goes to the server as it would without script. */
  private async take(question: string, button?: HTMLButtonElement | null): Promise<void> {
    const fault = question.trim() === '' ? en.nothingTyped : tooLong(question);
    if (fault) return say(fault);
    const now = performance.now();
    if (question === this.sentLast.question && now - this.sentLast.at < twice) return;
    this.sentLast = { question, at: now };
    if (!whyNone()) say(en.working);
    const waiting = new Promise<undefined>((resolve) =>
      setTimeout(resolve, navigator.onLine ? patience : patience * 10),
    );
    const loaded = await Promise.race([engine(), waiting]);
    if (!loaded || this.behind) return this.sendToServer(question, button);
    const before = this.entries.at(-1);
    const job = before?.reply.job ?? this.talk.start;
    const units = this.units();
    const turn = { question, ...(units ? { units } : {}) };
    performance.mark('asked');
    const request = { ...turn, ...(job === undefined ? {} : { job }) };
    const told = (await jobInHand()) && (await (await import('./on-job.ts')).sayOnJob(request));
    const reply = told ?? (await loaded.answer(request).catch(() => undefined));
    if (!reply) return this.sendToServer(question, button);
    const number = before ? Math.floor(before.number) + 1 : this.talk.first;
    // What was said on a job is written there: it takes no number of the talk's own, which is asked again when it is opened.
    const entry: Entry = { number: told ? (before?.number ?? this.talk.first - 1) + besides : number, ...turn, reply };
    this.entries.push(entry);
    sheets.add(loaded, entry, before);
    performance.measure('answer', 'asked');
    if (!button?.name) this.box.value = '';
    say('');
    if (told) await (await import('./on-job.ts')).showJob();
    else if (!loaded.isStanding(reply) && loaded.isOfJob(question)) await this.offerJobs(question);
    this.carry();
    document.title = wording.title(question);
    // The answer gets the room that the keyboard took; with a real keyboard the cursor stays where it is.
    if (matchMedia('(pointer: coarse)').matches) this.box.blur();
    await this.save();
  }

  /** Told of a job where none is in hand: those of this phone are offered. */
  private async offerJobs(question: string): Promise<void> {
    const jobs = await (await import('./on-job.ts')).jobsToSayOn();
    if (jobs.length === 0) return;
    const act = (key: string) => () => {
      this.sentLast = { question: '', at: 0 };
      void takeInHand(key).then(() => this.take(question));
    };
    say(en.onWhichJob, ...jobs.map(({ key, name }) => ({ text: name, act: act(key) })));
  }

  private sendToServer(question: string, button?: HTMLButtonElement | null): void {
    // Without a worker to fall back on the browser would show a fault of its own in place of the page.
    if (!navigator.onLine && !navigator.serviceWorker?.controller) {
      this.sentLast = { question: '', at: 0 };
      say(en.noSignalYet);
      return;
    }
    say(whyNone() ?? en.noEngine);
    this.box.value = button?.name ? this.box.value : question;
    if (button?.name) this.form.append(field(button.name, button.value));
    this.form.submit();
  }

  private units(): UnitSystem | undefined {
    const value = new FormData(this.form).get('units');
    return value === 'us' || value === 'metric' ? value : undefined;
  }

  private changed(target: HTMLInputElement): void {
    if (target.name === 'units') void this.inOtherUnits();
    if (target.name !== 'tick') return;
    if (target.checked) sheets.ticks.add(target.value);
    else sheets.ticks.delete(target.value);
    void this.save();
  }

  /** The latest answer in the units just chosen; what was said before stays as it was said. */
  private async inOtherUnits(): Promise<void> {
    const last = this.entries.at(-1);
    const loaded = last && (await engine());
    if (!last || !loaded || !Number.isInteger(last.number)) return;
    const job = this.entries.at(-2)?.reply.job ?? this.talk.start;
    const units = this.units();
    const turn = { question: last.question, ...(units ? { units } : {}) };
    const reply = await loaded.answer({ ...turn, ...(job === undefined ? {} : { job }) });
    const entry: Entry = { number: last.number, ...turn, reply };
    this.entries[this.entries.length - 1] = entry;
    sheets.replaceLast(loaded, entry);
    this.carry();
    await this.save();
  }

  private clicked(event: MouseEvent): void {
    if (!(event.target as Element).closest('a.again')) return;
    event.preventDefault();
    void this.startOver();
  }

  /** The old talk stays kept; one press brings it back. */
  private async startOver(): Promise<void> {
    const loaded = await engine();
    if (!loaded) return location.assign('/');
    const before = { entries: this.entries, talk: this.talk, ticks: [...sheets.ticks] };
    this.entries = [];
    this.talk = newTalk(loaded.version);
    sheets.ticks.clear();
    sheets.showAll(loaded, []);
    this.carry();
    this.box.focus();
    say(en.cleared, {
      text: en.putBack,
      act: () => {
        this.entries = before.entries;
        this.talk = before.talk;
        for (const tick of before.ticks) sheets.ticks.add(tick);
        sheets.showAll(loaded, this.entries);
        this.carry();
        void this.save();
      },
    });
  }

  /** Puts the conversation into the form, so that it goes on if this script does not. */
  private carry(): void {
    const last = this.entries.at(-1);
    const talk = talkOf(this.entries, this.talk, this.talk.version);
    set(this.form, 'job', last ? JSON.stringify(last.reply.job) : '');
    set(this.form, 'talk', last ? JSON.stringify(talk) : '');
  }

  private save(): Promise<void> {
    this.saving = this.saving.then(async () => {
      if (this.entries.length === 0) return;
      const { talk, parted } = await keepTalk(this.talk, this.entries, sheets.ticks);
      this.talk = {
        ...talk,
        first: this.talk.first,
        ...(this.talk.start === undefined ? {} : { start: this.talk.start }),
      };
      if (parted) say(en.otherTab);
    });
    return this.saving;
  }
}

const tooLong = (question: string): string | undefined =>
  question.length > longestQuestion ? en.tooLong(longestQuestion) : undefined;

const hidden = (form: HTMLFormElement, name: string) =>
  form.querySelector<HTMLInputElement>(`input[type=hidden][name=${name}]`);

function set(form: HTMLFormElement, name: string, value: string): void {
  const before = hidden(form, name);
  if (value === '') before?.remove();
  else if (before) before.value = value;
  else form.append(field(name, value));
}

function field(name: string, value: string): HTMLInputElement {
  const made = document.createElement('input');
  Object.assign(made, { type: 'hidden', name, value });
  return made;
}
