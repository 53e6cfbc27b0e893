import type { Entry } from '../ask/views/entry.ts';

type Answers = typeof import('./answers.ts');

/** Boxes that are ticked on the page. */
export const ticks = new Set<string>();

const log = (): HTMLElement => document.querySelector<HTMLElement>('[role=log]')!;

/** How many answers are on the page. */
export const shown = (): number => document.querySelectorAll('.entry').length;

/** Puts an answer at the end of the log, spoken once and whole. The focus stays where it is. */
export function add(answers: Answers, entry: Entry, before: Entry | undefined): void {
  document.querySelector('.opening')?.remove();
  const region = log();
  region.setAttribute('aria-busy', 'true');
  if (before) notLatest(region);
  // Those that have stood as they are for a turn keep their size, and cost nothing while they are out of sight.
  for (const each of [...list().children].slice(0, -1)) each.className = 'seen';
  list().append(item(answers.sheetHtml(entry, true, ticks)));
  region.setAttribute('aria-busy', 'false');
  showKnown(answers, entry);
  const latest = document.getElementById('latest');
  latest?.scrollIntoView({ block: 'start' });
  if (before && latest) calm(region, latest);
}

/** Puts another answer in the place of the last one. */
export function replaceLast(answers: Answers, entry: Entry): void {
  list().lastElementChild?.replaceWith(item(answers.sheetHtml(entry, true, ticks)));
  showKnown(answers, entry);
}

/** Shows a whole conversation at once; it is not read out. */
export function showAll(answers: Answers, entries: readonly Entry[]): void {
  const region = log();
  region.setAttribute('aria-live', 'off');
  if (entries.length > 0) document.querySelector('.opening')?.remove();
  list().replaceChildren(
    ...entries.map((entry, at) => item(answers.sheetHtml(entry, at === entries.length - 1, ticks))),
  );
  showKnown(answers, entries.at(-1));
  document.getElementById('latest')?.scrollIntoView({ block: 'start' });
  requestAnimationFrame(() => region.removeAttribute('aria-live'));
}

function list(): HTMLOListElement {
  const before = log().querySelector<HTMLOListElement>('.entries');
  if (before) return before;
  const made = document.createElement('ol');
  made.className = 'entries';
  log().append(made);
  return made;
}

/** The entries before the latest offer nothing to send any more; what can be changed in them still can. They are out of sight, and what is read stays where it is. */
function calm(region: HTMLElement, latest: HTMLElement): void {
  const at = latest.getBoundingClientRect().top;
  for (const each of region.querySelectorAll('li:not(:last-child) > .entry :is(.buttons, .gap)')) each.remove();
  scrollBy(0, latest.getBoundingClientRect().top - at);
}

function notLatest(region: HTMLElement): void {
  const heading = region.querySelector('#latest');
  heading?.removeAttribute('id');
  heading?.removeAttribute('tabindex');
}

function item(html: string): HTMLLIElement {
  const made = document.createElement('li');
  made.append(parsed(html));
  return made;
}

function showKnown(answers: Answers, entry: Entry | undefined): void {
  document.querySelector('.known')?.replaceWith(parsed(answers.knownHtml(entry?.reply.job)));
}

/** Our own markup: the views escape everything that anybody typed. */
function parsed(html: string): DocumentFragment {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content;
}
