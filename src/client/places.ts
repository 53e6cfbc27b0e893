import { page as wording } from '../ask/wording/page.en.ts';

/** A screen that is filled on the phone: what it shows at an address, and what begins when it stands. */
export interface Place {
  readonly pageAt: (address: URL) => { readonly title: string; readonly html: string } | undefined;
  readonly start?: (main: HTMLElement) => void;
}

/** Screens by the first word of their address, each loaded when it is opened. The worker has the same words. */
const places: Readonly<Record<string, () => Promise<Place>>> = {};

/** Fills an empty page with what its address names. */
export async function showPlace(): Promise<void> {
  const address = new URL(location.href);
  const main = document.getElementById('main');
  const name = address.pathname.split('/')[1] ?? '';
  if (!main) return;
  try {
    const place = await places[name]?.();
    const shown = place?.pageAt(address);
    document.title = shown?.title ?? wording.notHere.title;
    main.innerHTML = shown?.html ?? wording.notHere.html;
    place?.start?.(main);
  } catch {
    main.innerHTML = wording.notHere.html;
  }
  for (const link of document.querySelectorAll('nav a'))
    if (link.getAttribute('href') === `/${name}`) link.setAttribute('aria-current', 'page');
}
