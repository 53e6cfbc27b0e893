import { screenAt } from '../ask/quiz/desk/at.tsx';
import { screens } from '../ask/quiz/desk/call.ts';
import { type Around, keptScreen, setIn, takeScreen } from '../ask/quiz/desk/screen.tsx';
import { fileOf, isFormat } from '../ask/quiz/export/file.ts';
import type { Dress } from '../ask/views/document.tsx';
import { knowledge } from '../rules/knowledge.ts';
import { dressOfPage } from './dress.ts';
import { isClassForm, sendToClass, sendWaiting } from './quiz-class.ts';
import { startPractice } from './quiz-practice.ts';
import { fieldsOf, showScreen } from './quiz-show.ts';
// What both share lies in one file, which packs smaller than many.
import './answers.ts';

const around = (dress: Dress): Around => ({ knowledge, dress });
/** On a page of the server the styles are there already. */
const here = (): Around => around(dressOfPage() ?? { stylesheet: '', quiz: '', icon: '' });

/** A screen of the desk as the server would send it; undefined for what only the server has. */
export const documentAt = ({ pathname, searchParams }: URL, dress: Dress): string | undefined =>
  screenAt(around(dress), pathname, searchParams)?.html;

let started = false;

/** Marks answers, opens saved sets and makes files on the phone, with signal or without; sends what waits for a class. */
export function start(): void {
  void sendWaiting();
  startPractice();
  if (started) return;
  started = true;
  addEventListener('online', () => void sendWaiting());
  document.addEventListener('submit', (event) => void submitted(event));
  document.addEventListener('click', clicked);
}

async function submitted(event: SubmitEvent): Promise<void> {
  const form = event.target as HTMLFormElement;
  const path = new URL(form.action, location.href).pathname;
  if (form.method !== 'post') return;
  if (path === screens.take) {
    event.preventDefault();
    const fields = fieldsOf(form, event.submitter);
    const ends = fields.get('do') === 'mark';
    showScreen(takeScreen(here(), fields, true).html, ends ? 'result' : 'question');
  } else if (path === screens.kept) {
    event.preventDefault();
    const file = new FormData(form).get('set');
    showScreen(keptScreen(here(), file instanceof File ? await file.text() : '').html);
  } else if (isClassForm(form)) {
    event.preventDefault();
    await sendToClass(form, event.submitter);
  }
}

/** A file of a set is made here: the same bytes as the server's. */
function clicked(event: MouseEvent): void {
  const link = (event.target as Element).closest<HTMLAnchorElement>('a[download]');
  const { pathname, searchParams } = new URL(link?.href ?? location.href);
  const format = searchParams.get('format') ?? '';
  if (!link || pathname !== screens.file || !isFormat(format)) return;
  const built = setIn(knowledge, searchParams);
  if ('fault' in built) return;
  event.preventDefault();
  const { name, type, content } = fileOf(built.set, format);
  const address = URL.createObjectURL(new Blob([content], { type }));
  const made = Object.assign(document.createElement('a'), { href: address, download: name });
  made.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
