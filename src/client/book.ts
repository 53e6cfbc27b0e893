import { begin } from '../ask/book/begin.ts';
import { fold } from '../ask/book/book.ts';
import { bookToCsv } from '../ask/book/whole-csv.ts';
import { bookToJson } from '../ask/book/whole-json.ts';
import { engine } from '../ask/engine.ts';
import type { Dress } from '../ask/views/document.tsx';
import { bookPage as words } from '../ask/wording/book-page.en.ts';
import { keepJob, keepUnsent, newJobKey, stampHere, wordsForNext } from './book-kept.ts';
import { changesHere, documentOfJob, placeIn } from './book-page.ts';
import { ScreenOfJob } from './book-screen.ts';
import { startListed } from './book-start.ts';
import { syncJob } from './book-sync.ts';
import { fieldsOf } from './quiz-show.ts';
// What both share lies in one file, which packs smaller than many.
import './answers.ts';

/** A page of a job as the server would send it, from what is kept on this phone; undefined for what only the server has. */
export const documentAt = (address: URL, dress: Dress): Promise<string | undefined> => documentOfJob(address, dress);

const patience = 4000;
let started = false;

/** Takes over the forms of the pages of jobs: what is written down is kept here first, and sent when there is signal. */
export function start(): void {
  const place = placeIn(location.pathname);
  if (place?.page === 'start') void startListed();
  else if (place) void new ScreenOfJob(place).open();
  if (started) return;
  started = true;
  document.addEventListener('click', (event) => void saved(event));
  document.addEventListener('submit', (event) => void begun(event));
}

/** The form that starts a job: it begins here, with signal or without. Where this phone keeps nothing, the server starts it. */
async function begun(event: SubmitEvent): Promise<void> {
  const form = event.target as HTMLFormElement;
  if (form.method !== 'post' || new URL(form.action).pathname !== '/job') return;
  const fields = fieldsOf(form, event.submitter);
  const field = (name: string): string => {
    const value = fields.get(name);
    return typeof value === 'string' ? value : '';
  };
  if (field('link').trim() !== '') return;
  event.preventDefault();
  const done = begin(field, stampHere);
  if ('fault' in done) return tell(done.fault);
  const key = newJobKey();
  const whole =
    (await keepJob({ key, role: 'edit', server: [], begun: true, at: Date.now() })) &&
    (await keepUnsent(key, done.changes));
  if (!whole) return form.submit();
  wordsForNext.put(key, { said: done.said, draft: done.draft });
  // So that the server knows it when it is asked for the page; where there is no signal this phone makes it.
  await Promise.race([syncJob(key), new Promise((resolve) => setTimeout(resolve, patience))]);
  location.assign(`/job/${key}`);
}

/** What is wrong, over the form, which stays as it is. */
function tell(fault: string): void {
  document.getElementById('error')?.remove();
  const made = document.createElement('p');
  made.className = 'error';
  made.id = 'error';
  made.setAttribute('role', 'alert');
  document.querySelector('main h1')?.after(made);
  made.textContent = fault;
  made.scrollIntoView({ block: 'nearest' });
}

/** A job saved to a file is made here, with all that waits to be sent. */
async function saved(event: MouseEvent): Promise<void> {
  const link = (event.target as Element).closest<HTMLAnchorElement>('a[href]');
  const [, key, kind] = /^\/job\/([^/]+)\/export\.(csv|json)$/.exec(link ? new URL(link.href).pathname : '') ?? [];
  if (!key || !kind) return;
  event.preventDefault();
  const changes = await changesHere(key);
  const [text, type] =
    kind === 'csv'
      ? ([`\uFEFF${bookToCsv(fold(changes), engine.knowledge)}`, 'text/csv'] as const)
      : ([bookToJson(changes), 'application/json'] as const);
  const address = URL.createObjectURL(new Blob([text], { type }));
  Object.assign(document.createElement('a'), { href: address, download: words.file(kind) }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
