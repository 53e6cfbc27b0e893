import { screens } from '../ask/quiz/desk/call.ts';
import { desk } from '../ask/wording/quiz-desk.en.ts';
import * as kept from './kept.ts';
import { fieldsOf, notice, showScreen } from './quiz-show.ts';

const shelf = 'class-answers';

/** Answers that wait for signal: where they go, and the fields of the form. */
interface Waiting {
  readonly action: string;
  readonly fields: readonly (readonly [string, string])[];
}

/** True for a form with answers for a class. */
export const isClassForm = (form: HTMLFormElement): boolean =>
  new URL(form.action).pathname.startsWith(`${screens.classes}/`) && form.elements.namedItem('sheet') !== null;

/** Sends answers to their class; without signal they are kept on the phone until there is some. */
export async function sendToClass(form: HTMLFormElement, button: HTMLElement | null): Promise<void> {
  const fields = [...fieldsOf(form, button)].flatMap(([name, value]) =>
    typeof value === 'string' ? [[name, value] as const] : [],
  );
  const waiting: Waiting = { action: form.action, fields };
  const answer = await post(waiting);
  if (answer) return showScreen(await answer.text(), 'result');
  const sheet = fields.find(([name]) => name === 'sheet')?.[1] ?? '';
  notice((await kept.keep(shelf, sheet, waiting)) ? desk.waiting.kept : desk.waiting.notKept);
}

/** Sends what waits; what the server does not take for good is let go with it. */
export async function sendWaiting(): Promise<void> {
  for (const { id, value } of await kept.all(shelf)) {
    const answer = await post(value as Waiting);
    // A fault of the server passes; the sheet has a name, so that sending it again does no harm.
    if (!answer || answer.status >= 500) return;
    await kept.drop(shelf, id);
    if (answer.ok) notice(desk.waiting.sent);
  }
}

async function post({ action, fields }: Waiting): Promise<Response | undefined> {
  const body = new URLSearchParams(fields.map(([name, value]) => [name, value]));
  return fetch(action, { method: 'POST', body }).catch(() => undefined);
}
