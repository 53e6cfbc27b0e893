import type { Dress } from '../ask/views/document.tsx';
import { page as wording } from '../ask/wording/page.en.ts';
import { dressOfPage } from './dress.ts';

/** A screen that the phone fills by itself: the whole document at an address, as the server would send it. */
export interface Place {
  readonly documentAt: (address: URL, dress: Dress) => string | undefined | Promise<string | undefined>;
  /** What begins when it stands. */
  readonly start?: () => void;
}

/** Screens by the first word of their address, each loaded when it is opened. The background worker has the same words. */
const places: Readonly<Record<string, () => Promise<Place>>> = {
  cards: () => import('./reference.ts'),
  rules: () => import('./reference.ts'),
  words: () => import('./reference.ts'),
  sheet: () => import('./job.ts'),
  quiz: () => import('./quiz.ts'),
  job: () => import('./book.ts'),
};

const placeNamed = (path: string) => places[path.split('/')[1] ?? ''];

/** Fills an empty page with what its address names. */
export async function showPlace(): Promise<void> {
  const address = new URL(location.href);
  const dress = dressOfPage();
  try {
    const place = await placeNamed(address.pathname)?.();
    const html = dress && (await place?.documentAt(address, dress));
    if (html) await show(html);
    else sayNotHere();
  } catch {
    sayNotHere();
  }
}

/** Begins what a screen does beside being shown, on the server's page and on the phone's alike. */
export async function startPlace(): Promise<void> {
  const place = await placeNamed(location.pathname)?.();
  place?.start?.();
}

/** Puts a whole document in the place of this one. What it is drawn with is fetched before it is shown. */
async function show(html: string): Promise<void> {
  const made = new DOMParser().parseFromString(html, 'text/html');
  const have = new Set([...document.querySelectorAll('link[rel=stylesheet]')].map((link) => link.getAttribute('href')));
  const wanted = [...made.querySelectorAll('link[rel=stylesheet]')].filter(
    (link) => !have.has(link.getAttribute('href')),
  );
  await Promise.all(wanted.map((link) => fetched(document.importNode(link, true))));
  document.title = made.title;
  document.body.replaceChildren(...made.body.childNodes);
  if (location.hash) document.getElementById(location.hash.slice(1))?.scrollIntoView();
}

/** Resolves when the styles are here, or do not come: a page without them is better than none. */
const fetched = (link: Node): Promise<unknown> =>
  new Promise((resolve) => {
    link.addEventListener('load', resolve);
    link.addEventListener('error', resolve);
    document.head.append(link);
  });

function sayNotHere(): void {
  const main = document.getElementById('main');
  document.title = wording.notHere.title;
  if (main) main.innerHTML = wording.notHere.html;
}
