import { ask } from '../../src/ask/ask.ts';
import { fold } from '../../src/ask/book/book.ts';
import type { Change } from '../../src/ask/book/change.ts';
import { readList } from '../../src/ask/book/list-in.ts';
import { readChange } from '../../src/ask/book/read-change.ts';
import { sheetOf } from '../../src/ask/book/sheet.ts';
import { totalsOf } from '../../src/ask/book/totals.ts';
import { bookToCsv, readWholeCsv } from '../../src/ask/book/whole-csv.ts';
import { readWholeJson } from '../../src/ask/book/whole-json.ts';
import { engine } from '../../src/ask/engine.ts';
import { ratesIn } from '../../src/ask/rates/answer.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { read } from '../../src/calc/read/read.ts';
import { readSurvey } from '../../src/calc/survey/read.ts';
import { readAgency } from '../../src/rules/agency.ts';
import { FileFault } from '../../src/rules/file-parts.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { soundReply } from '../ask/sound.ts';

/** Ways in, each with what must hold for whatever comes through it. They throw what is wrong; a refusal in words is right. */
export const doors = {
  reader: (text: string) => {
    for (const item of read(text)) {
      finite(item);
      const [from, to] = item.at;
      if (!(from >= 0 && from < to && to <= text.length)) throw new Error(`read outside of the text: ${from} to ${to}`);
    }
  },
  ask: (question: string) => soundReply(ask({ question }), question),
  talk: (questions: readonly string[]) => {
    let job: unknown;
    for (const question of questions) {
      const reply = ask({ question, ...(job ? { job } : {}) });
      soundReply(reply, question);
      const carried = JSON.stringify(reply.job);
      if (carried.length > 16 * 1024) throw new Error(`a job of ${carried.length} characters`);
      job = JSON.parse(carried);
    }
  },
  job: ({ question, job }: { question: string; job: unknown }) => soundReply(ask({ question, job }), question),
  agency: (file: unknown) => {
    const agency = faultOr(() => readAgency(file, knowledge), file);
    if (agency) finite([...agency.defaults.values(), ...agency.limits.values()]);
  },
  ruled: ({ question, agency }: { question: string; agency: unknown }) =>
    soundUnlessSaid(ask({ question, agency }), question, agency),
  rates: (file: unknown) => {
    const rates = ratesIn(file);
    if (rates instanceof FileFault) told(rates, file);
    else finite(rates);
  },
  priced: ({ question, rates }: { question: string; rates: unknown }) =>
    soundUnlessSaid(ask({ question, rates }), question, rates),
  list: (text: string) => {
    const list = readList(text, engine);
    if (typeof list === 'string') worded(list, text);
    else {
      finite(list.patches);
      for (const { text: fault } of list.faults) worded(fault, text);
      for (const note of list.notes) worded(note, text);
    }
  },
  csv: (text: string) => {
    const lines = readWholeCsv(text, knowledge);
    if (typeof lines === 'string') worded(lines, text);
    else finite(lines);
  },
  book: (sent: readonly unknown[]) => {
    const changes: Change[] = [];
    for (const each of sent) {
      const change = readChange(each, knowledge);
      if (typeof change === 'string') worded(change, sent);
      else changes.push(change);
    }
    const book = fold(changes);
    const sheet = sheetOf(book, knowledge);
    finite(totalsOf(engine, sheet));
    const csv = bookToCsv(book, knowledge);
    const again = readWholeCsv(csv, knowledge);
    if (typeof again === 'string') throw new Error(`our own CSV is refused: ${again}`);
  },
  json: (text: string) => {
    const changes = readWholeJson(text, knowledge);
    if (typeof changes === 'string') worded(changes, text);
    else finite(changes);
  },
  survey: (text: string) => finite(readSurvey(text) ?? {}),
} as const;

export type Door = keyof typeof doors;

/** What is wrong with a file is told in its own words, and those may be any. */
function soundUnlessSaid(reply: Reply, question: string, file: unknown): void {
  if (!/NaN|undefined|\[object|Infinity|\{[a-z-]/.test(JSON.stringify(file))) soundReply(reply, question);
}

function faultOr<T>(work: () => T, sent: unknown): T | undefined {
  try {
    return work();
  } catch (fault) {
    if (!(fault instanceof FileFault)) throw fault;
    told(fault, sent);
    return undefined;
  }
}

function told({ message, place }: FileFault, sent: unknown): void {
  worded(message, sent);
  if (message.length > 1000 || place.length > 500) throw new Error(`a fault of ${message.length} characters`);
}

/** A sentence without holes in it, but for those that were sent. */
function worded(text: string, sent: unknown): void {
  const holes = ['[object', 'undefined', 'NaN'].filter((hole) => text.includes(hole));
  if (text.trim() === '' || holes.some((hole) => !JSON.stringify(sent).includes(hole)))
    throw new Error(`said: ${text}`);
}

/** What holds pairs of a name and a value: a map, or what the solver found. */
const isPairs = (value: object): value is Iterable<readonly [unknown, unknown]> =>
  Symbol.iterator in value && !Array.isArray(value) && !(value instanceof Set);

/** No number, however deep, is none. */
export function finite(value: unknown, place = ''): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${place} is ${value}`);
  if (typeof value !== 'object' || value === null) return;
  const parts = isPairs(value) ? value : value instanceof Set ? [...value].entries() : Object.entries(value);
  for (const [key, part] of parts) finite(part, `${place}.${String(key)}`);
}
