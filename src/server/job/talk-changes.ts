import { newLine } from '../../ask/book/act.ts';
import { fold, setting } from '../../ask/book/book.ts';
import type { Cell, Change } from '../../ask/book/change.ts';
import { isOfPatch } from '../../ask/book/talk-book.ts';
import { engine } from '../../ask/engine.ts';
import { readJob } from '../../ask/job.ts';
import type { JobFact } from '../../ask/reply.ts';
import { jsonIn } from '../../rules/json.ts';

/** What a conversation knows of a job, as changes of a job book: facts of the whole job, its patches, and what is down on them. */
export function talkChanges(text: string, stamp: () => string): Change[] {
  const job = parsed(text);
  if (!job) return [];
  const changes: Change[] = [];
  const put = (line: string, set: Record<string, Cell>, id: string): void => {
    if (Object.keys(set).length > 0) changes.push(setting(fold(changes), line, set, { stamp: id }));
  };
  const whole = job.facts.filter(({ quantity }) => !isOfPatch(engine.knowledge, quantity));
  put('job', cells(whole), stamp());
  for (const { label, facts, laid, laidTo, done } of job.book?.patches ?? []) {
    const id = stamp();
    const line = newLine('patch', id);
    put(line, { label, ...cells(facts), ...(done ? { done } : {}) }, id);
    if (!laid && !laidTo) continue;
    const load = stamp();
    put(
      newLine('load', load),
      { patch: line, ...(laid ? { 'placed-mass': laid } : {}), ...(laidTo ? { 'placed-length': laidTo } : {}) },
      load,
    );
  }
  return changes;
}

function parsed(text: string) {
  return text === '' ? undefined : readJob(jsonIn(text)?.json);
}

const cells = (facts: readonly JobFact[]): Record<string, Cell> =>
  Object.fromEntries(
    facts.map((fact) => [fact.quantity, 'unit' in fact ? { number: fact.number, unit: fact.unit } : fact.choice]),
  );
