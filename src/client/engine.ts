import { en } from './wording/en.ts';

type Answers = typeof import('./answers.ts');

let loading: Promise<Answers | undefined> | undefined;
let fault: string | undefined;

/** What answers on the phone, fetched once; nothing when it did not come or does not go with this page, and then `whyNone` says why. */
export function engine(): Promise<Answers | undefined> {
  loading ??= load();
  return loading;
}

export const whyNone = (): string | undefined => fault;

async function load(): Promise<Answers | undefined> {
  const { answers = '', rules } = document.documentElement.dataset;
  // Asked for together, so that one does not wait for the other.
  for (const href of answers.split(' ').filter(Boolean)) {
    const link = document.createElement('link');
    link.rel = 'modulepreload';
    link.href = href;
    document.head.append(link);
  }
  try {
    const loaded = await import('./answers.ts');
    loaded.partsFrom(() => import('./more.ts'));
    if (loaded.version === rules) return loaded;
    fault = en.oddPair;
  } catch {
    fault = en.noEngine;
    loading = undefined; // The next question tries again.
  }
  return undefined;
}
