import { workedOut } from '../ask/book/at-hand.ts';
import { fold } from '../ask/book/book.ts';
import { talkChanges } from '../ask/book/talk-changes.ts';
import { bookPage as words } from '../ask/wording/book-page.en.ts';
import { type KeptJob, keepUnsent, keptJobs, stampHere, unsentOf } from './book-kept.ts';
import { withUnsent } from './book-page.ts';

/** On the page where a job is begun: the jobs this phone has, each to be opened, or to take up what was talked of. */
export async function startListed(): Promise<void> {
  const jobs = await keptJobs();
  const form = document.querySelector<HTMLFormElement>('main form');
  if (jobs.length === 0 || !form) return;
  const talk = form.querySelector<HTMLInputElement>('input[name=talk]')?.value;
  const section = document.createElement('section');
  section.className = 'buttons here';
  const heading = document.createElement('h2');
  heading.textContent = words.start.here;
  section.append(heading);
  for (const job of jobs) section.append(talk === undefined ? await linkTo(job) : await buttonFor(job, talk));
  form.before(section);
}

async function nameOf(job: KeptJob): Promise<string> {
  const { sheet } = workedOut(withUnsent(job, await unsentOf(job.key)));
  return [sheet.name ?? words.unnamed, sheet.road].filter(Boolean).join(', ');
}

async function linkTo(job: KeptJob): Promise<HTMLAnchorElement> {
  return Object.assign(document.createElement('a'), { href: `/job/${job.key}`, textContent: await nameOf(job) });
}

async function buttonFor(job: KeptJob, talk: string): Promise<HTMLButtonElement> {
  const button = Object.assign(document.createElement('button'), {
    type: 'button',
    textContent: words.start.ontoThis(await nameOf(job)),
    disabled: job.role !== 'edit',
  });
  button.addEventListener('click', async () => {
    button.disabled = true;
    const onto = withUnsent(job, await unsentOf(job.key));
    const changes = talkChanges(talk, () => stampHere(fold(onto)), onto);
    if (await keepUnsent(job.key, changes)) location.assign(`/job/${job.key}`);
  });
  return button;
}
