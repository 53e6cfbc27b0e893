import { workedOut } from '../ask/book/at-hand.ts';
import { fold } from '../ask/book/book.ts';
import type { Change } from '../ask/book/change.ts';
import { saidOnJob } from '../ask/book/on-job.ts';
import type { Reply, Request } from '../ask/reply.ts';
import { changeWords } from '../ask/views/book/fields.tsx';
import { bookPage } from '../ask/wording/book-page.en.ts';
import { type KeptJob, keepUnsent, keptJob, keptJobs, stampHere, unsentOf } from './book-kept.ts';
import { withUnsent } from './book-page.ts';
import { syncJob } from './book-sync.ts';
import { dayHere } from './day.ts';
import { jobInHand, leaveJob, takeInHand } from './in-hand.ts';
import { en } from './wording/en.ts';
// What both share lies in one file, which packs smaller than many.
import './answers.ts';

/** Says something on the job in hand: what comes of it is kept here at once and sent when there is signal. Undefined for what is not about it. */
export async function sayOnJob(request: Request): Promise<Reply | undefined> {
  const hand = await jobInHand();
  const job = hand && (await keptJob(hand.key));
  if (!hand || !job) return undefined;
  const changes = withUnsent(job, await unsentOf(job.key));
  const now = fold(changes);
  const said = saidOnJob(request, {
    role: job.revoked ? 'look' : job.role,
    changes,
    stamp: () => stampHere(now),
    day: dayHere,
    last: hand.last,
  });
  if (!said) return undefined;
  if (said.changes.length > 0) {
    const whole = await keepUnsent(job.key, said.changes);
    await takeInHand(job.key, said.last);
    void syncJob(job.key).then(showJob);
    if (!whole) return { ...said.reply, text: `${said.reply.text}\n${bookPage.status.full}` };
  }
  return said.reply;
}

/** Jobs of this phone that something may be written in, for one that was told without a job in hand. */
export async function jobsToSayOn(): Promise<{ key: string; name: string }[]> {
  const open = (await keptJobs()).filter(({ role, revoked }) => role !== 'look' && !revoked);
  return Promise.all(
    open.slice(0, 4).map(async (job) => ({ key: job.key, name: nameOf(job, await unsentOf(job.key)) })),
  );
}

const nameOf = (job: KeptJob, waiting: readonly Change[]): string => {
  const { sheet } = workedOut(withUnsent(job, waiting));
  return [sheet.name ?? bookPage.unnamed, sheet.road].filter(Boolean).join(', ');
};

/** How often what waits is tried again while the page is in sight. */
const every = 15_000;
let watching = false;

/** Sends what waits when the signal comes back. */
function watch(): void {
  if (watching) return;
  watching = true;
  const again = async (): Promise<void> => {
    const hand = await jobInHand();
    if (!hand || (await unsentOf(hand.key)).length === 0) return;
    await syncJob(hand.key);
    await showJob();
  };
  addEventListener('online', () => void again());
  setInterval(() => document.visibilityState === 'visible' && void again(), every);
}

/** Shows at the question box which job is in hand, what was written in it last from here, and what of it waits for signal. */
export async function showJob(): Promise<void> {
  const label = document.querySelector('form#ask label[for=question]');
  const hand = await jobInHand();
  const job = hand && (await keptJob(hand.key));
  if (!label || !hand || !job) {
    document.getElementById('on-job')?.remove();
    return;
  }
  watch();
  const waiting = await unsentOf(job.key);
  const changes = withUnsent(job, waiting);
  const line = Object.assign(document.createElement('p'), { id: 'on-job', className: 'on-job' });
  const link = Object.assign(document.createElement('a'), {
    href: `/job/${job.key}`,
    textContent: nameOf(job, waiting),
  });
  const leave = Object.assign(document.createElement('button'), {
    type: 'button',
    className: 'do',
    textContent: en.leaveJob,
  });
  leave.addEventListener('click', () => void leaveJob().then(showJob));
  const { sheet } = workedOut(changes);
  const last = changes.filter(({ id }) => hand.last.includes(id)).map((change) => changeWords(change, sheet.patches));
  const told = [
    last.length > 0 ? en.lastWritten(last.join('; ')) : '',
    waiting.length > 0 ? bookPage.status.waiting(waiting.length) : '',
  ];
  const text = document.createElement('span');
  text.append(`${en.onJob} `, link, `. ${told.filter(Boolean).join(' ')}`);
  line.append(text, leave);
  // Taken away only now: two of these may be under way.
  document.getElementById('on-job')?.remove();
  (label.closest('.top') ?? label).before(line);
}
