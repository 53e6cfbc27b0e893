import { readChange } from '../ask/book/read-change.ts';
import { knowledge } from '../rules/knowledge.ts';
import { isJob } from './book-kept.ts';
import { copyMark as mark, saveCopy, copyVersion as version } from './copy.ts';
import * as kept from './kept.ts';
import { say } from './status.ts';
import { isTalk } from './talks.ts';
import { en } from './wording/en.ts';

/** What is kept on this phone: saved to a file, taken in from one, cleared. Saving works where the browser keeps nothing. */
export function startKeeping(): void {
  const main = document.getElementById('main');
  if (!main) return;
  const section = document.createElement('section');
  section.className = 'keeping';
  const heading = document.createElement('h2');
  heading.textContent = en.keeping;
  const text = document.createElement('p');
  text.textContent = en.keptHere;
  const status = document.createElement('div');
  Object.assign(status, { id: 'status', className: 'status' });
  status.setAttribute('role', 'status');
  section.append(heading, text, button(en.export, saveCopy), fileField(), button(en.clear, askToClear), status);
  main.append(section);
}

async function takeIn(file: File): Promise<void> {
  const read = readFile(await file.text());
  if (typeof read === 'string') return say(read);
  const good = read.filter(isRecord);
  for (const { kind, id, value } of good) {
    const before = await kept.take(kind, id);
    // A job and what waits for it go by their names: what is here already is the same or newer.
    if (before !== undefined && kind.startsWith('job')) continue;
    const differs = before !== undefined && JSON.stringify(before) !== JSON.stringify(value);
    // What is here stays; what comes in beside it goes by another name.
    const name = differs ? `${id}-${Date.now().toString(36)}` : id;
    await kept.keep(kind, name, isTalk(value) ? { ...value, id: name } : value);
  }
  const bad = read.length - good.length;
  say([en.imported(good.length), bad > 0 ? en.importFault.damaged(bad) : ''].join(' ').trim());
}

/** The records of a file, or what is wrong with it. */
function readFile(text: string): readonly unknown[] | string {
  try {
    const { is, v, kept: records } = JSON.parse(text) as Record<string, unknown>;
    if (is !== mark) return en.importFault.other;
    if (typeof v !== 'number' || v > version) return en.importFault.newer;
    return Array.isArray(records) ? records : en.importFault.other;
  } catch {
    return en.importFault.json;
  }
}

function isRecord(value: unknown): value is kept.Kept {
  if (typeof value !== 'object' || value === null) return false;
  const { kind, id, value: held } = value as Record<string, unknown>;
  return typeof kind === 'string' && typeof id === 'string' && isSound(kind, held);
}

const isSound = (kind: string, held: unknown): boolean =>
  (kind !== 'talk' || isTalk(held)) &&
  (kind !== 'job' || isJob(held)) &&
  (kind !== 'job-change' || typeof readChange(held, knowledge) !== 'string');

function askToClear(): void {
  say(
    en.clearAsk,
    { text: en.clearYes, act: () => void kept.clear().then(() => say(en.clearedAll)) },
    { text: en.clearNo, act: () => {} },
  );
}

function button(text: string, act: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  Object.assign(made, { type: 'button', className: 'do', textContent: text });
  made.addEventListener('click', act);
  return made;
}

function fileField(): HTMLLabelElement {
  const label = document.createElement('label');
  label.className = 'do';
  label.textContent = `${en.import} `;
  const input = document.createElement('input');
  Object.assign(input, { type: 'file', accept: 'application/json,.json' });
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file) void takeIn(file);
  });
  label.append(input);
  return label;
}
