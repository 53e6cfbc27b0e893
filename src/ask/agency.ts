import { readAgency } from '../rules/agency.ts';
import { agencyWords } from '../rules/agency-words.ts';
import { FileFault } from '../rules/file-parts.ts';
import { isNestedDeep } from '../rules/json.ts';
import { knowledgeOf } from '../rules/knowledge.ts';
import { overlay } from '../rules/overlay.ts';
import { type Engine, engineOf } from './engine.ts';
import type { Reply } from './reply.ts';
import { en } from './wording/en.ts';

/** Engines made for the last few agency files, so that a crew's own is laid over once. */
const made = new WeakMap<Engine, Map<string, Engine>>();
const mostKept = 4;
const longestFile = 64 * 1024;

/** The engine with an agency's rules laid over its records, or what is wrong with the file and where. */
export function withAgency(engine: Engine, sent: unknown): Engine | FileFault {
  if (isNestedDeep(sent)) return new FileFault('', agencyWords.tooDeep);
  const text = JSON.stringify(sent) ?? '';
  if (text.length > longestFile) return new FileFault('', agencyWords.tooLong(longestFile));
  const kept = made.get(engine) ?? new Map<string, Engine>();
  const before = kept.get(text);
  if (before) return before;
  try {
    const agency = readAgency(sent, engine.knowledge);
    const own = engineOf(knowledgeOf(overlay(engine.knowledge.records, agency)));
    if (kept.size >= mostKept) kept.delete(kept.keys().next().value!);
    made.set(engine, kept.set(text, own));
    return own;
  } catch (fault) {
    if (fault instanceof FileFault) return fault;
    throw fault;
  }
}

/** The reply with a line that names the agency, where it used one of its rules and its text does not say so yet. */
export function namingAgency(reply: Reply, sent: unknown): Reply {
  const { name } = sent as { readonly name: string };
  const names = (text: string): boolean => text.includes(name);
  if (names(reply.text)) return reply;
  const assumed = reply.assumed.map(({ text }) => text).filter(names);
  const check = reply.checks.find(({ status, text }) => status !== 'cannot-tell' && names(text))?.text;
  const source = reply.working.map((step) => step.source).find(names);
  const line = assumed.length ? en.assumed(assumed) : (check ?? (source && en.sources([source])));
  return line ? { ...reply, text: `${reply.text}\n${line}` } : reply;
}
