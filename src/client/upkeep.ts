import { saveCopy } from './copy.ts';
import * as kept from './kept.ts';
import { say, tellFoot } from './status.ts';
import { en } from './wording/en.ts';

const day = 86_400_000;
/** Works where the browser keeps nothing, as long as the page stands. */
const copy = { text: en.export, act: () => void saveCopy() };

/** Has the browser keep the page for the road, offers a newer one when there is one, and says how things stand. */
export async function startUpkeep(): Promise<void> {
  kept.onTrouble(() => {
    say(en.notKept, copy);
    void stand();
  });
  for (const event of ['online', 'offline']) addEventListener(event, () => void stand());
  void stand();
  if (!('serviceWorker' in navigator)) return;
  const hadOne = navigator.serviceWorker.controller !== null;
  let asked = false;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
    else if (hadOne) say(en.updated, { text: en.reload, act: () => location.reload() });
    void stand();
  });
  try {
    const registration = await navigator.serviceWorker.register('/worker.js');
    const offer = (waiting: ServiceWorker): void =>
      say(
        en.update,
        {
          text: en.updateNow,
          act: () => {
            asked = true;
            waiting.postMessage('use the new one');
          },
        },
        { text: en.updateLater, act: () => {} },
      );
    if (registration.waiting && hadOne) offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const coming = registration.installing;
      coming?.addEventListener('statechange', () => {
        if (coming.state === 'installed' && navigator.serviceWorker.controller) offer(coming);
        void stand();
      });
    });
    await navigator.serviceWorker.ready;
    void stand();
    await navigator.storage?.persist?.();
  } catch {
    // No worker here: the page goes on as any page does.
  }
}

/** Signal, readiness and the age of the rules, in words at the foot. */
async function stand(): Promise<void> {
  const { rules, built } = document.documentElement.dataset;
  if (!rules) return;
  const parts = [
    navigator.onLine ? '' : en.offline,
    kept.trouble() ? en.notKept : '',
    'serviceWorker' in navigator ? (navigator.serviceWorker.controller ? en.ready : en.getting) : '',
    built ? `${en.age0(rules)} ${ageOf(built)}.` : '',
  ];
  tellFoot(parts.filter(Boolean).join(' '), ...(kept.trouble() ? [copy] : []));
}

function ageOf(built: string): string {
  const days = Math.floor((Date.now() - Date.parse(built)) / day);
  // A day of grace: the phone may be in another time zone than the one that made them.
  return days < -1 ? en.clock : en.age(Math.max(0, days));
}
