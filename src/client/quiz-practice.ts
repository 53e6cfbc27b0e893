import { readAnswers } from '../ask/quiz/desk/answers.ts';
import { markItem } from '../ask/quiz/mark.ts';
import {
  noPractice,
  type PracticeList,
  type Practised,
  practiceTally,
  practised,
  readPractice,
  roundOf,
} from '../ask/quiz/practice.ts';
import { PracticeHome, PracticeQuestion } from '../ask/views/quiz/practice.tsx';
import { desk } from '../ask/wording/quiz-desk.en.ts';
import { knowledge } from '../rules/knowledge.ts';
import * as kept from './kept.ts';

const [shelf, place] = ['practice', 'list'];
const minute = 60_000;

/** Days since 1970 where the phone is. */
function today(): number {
  const now = new Date();
  return Math.floor((now.getTime() - now.getTimezoneOffset() * minute) / (24 * 60 * minute));
}

/** Fills the practice screen, where it stands. The list is kept on this phone and nowhere else. */
export function startPractice(): void {
  const section = document.getElementById('practice');
  if (section && !section.dataset.on) void new Practice(section).open();
}

class Practice {
  private readonly section: HTMLElement;
  private list: PracticeList = noPractice;
  private round: Practised[] = [];
  private at = 0;

  constructor(section: HTMLElement) {
    this.section = section;
    section.dataset.on = 'yes';
  }

  async open(): Promise<void> {
    this.list = readPractice(await kept.take(shelf, place));
    this.section.addEventListener('submit', (event) => void this.submitted(event));
    this.home();
  }

  private async submitted(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const does = form.dataset.practice;
    if (does === 'start') this.begin(String(new FormData(form).get('seat') ?? ''));
    else if (does === 'erase') await this.erase();
    else if (does === 'check') await this.check(new FormData(form));
    else this.next();
  }

  private begin(seat: string): void {
    const { seat: _, ...list } = this.list;
    this.list = seat ? { ...list, seat } : list;
    this.round = roundOf(knowledge, this.list, today());
    this.at = 0;
    this.ask();
  }

  /** What is missed comes again at the end of this round, once, and tomorrow. */
  private async check(fields: FormData): Promise<void> {
    const asked = this.round[this.at]!;
    const given = readAnswers([asked.item], fields)[0]!;
    const right = markItem(asked.item, given) === 'right';
    const again = this.round.findIndex(({ token }) => token === asked.token) < this.at;
    if (!right && !again) this.round.push(asked);
    if (!again) this.list = practised(this.list, asked.token, right, today());
    this.show(PracticeQuestion({ practised: asked, at: this.at, of: this.round.length, given }));
    await kept.keep(shelf, place, this.list);
  }

  private next(): void {
    this.at++;
    if (this.at < this.round.length) this.ask();
    else this.home(desk.practice.doneToday);
  }

  private ask(): void {
    this.show(PracticeQuestion({ practised: this.round[this.at]!, at: this.at, of: this.round.length }));
  }

  private async erase(): Promise<void> {
    this.list = noPractice;
    await kept.drop(shelf, place);
    this.home(desk.practice.erased);
  }

  private home(note?: string): void {
    const said = kept.trouble() ? desk.practice.notKept : note;
    this.show(
      PracticeHome({ ...practiceTally(this.list, today()), seat: this.list.seat, note: said }),
      note !== undefined,
    );
  }

  /** Views escape what they are given. */
  private show(view: { toString(): string } | null, focus = true): void {
    this.section.innerHTML = String(view);
    if (focus) this.section.querySelector<HTMLElement>('[tabindex="-1"]')?.focus();
  }
}
