import { expect } from 'vitest';
import { convert } from '../../src/calc/quantity.ts';
import { isUnit, type Unit } from '../../src/calc/units.ts';
import type { Reply } from '../../src/ask/reply.ts';

/**
 * A talk is a readable file: `> ` lines are what a person types, in order; the lines under each say what the reply must hold.
 *
 *   kind value            topic premix-mass        reason missing-fact        asks patch-depth
 *   value premix-mass 44 ton [within 0.01]        first lift-count           status lift-max stop
 *   says 44.0 tons        says not 51              given patch-width 14 ft    kept patch-depth       assumed unit-weight
 *   steps tack spread-premix (in this order)       ignored 7
 */
export interface Turn {
  readonly question: string;
  readonly wants: readonly string[];
  readonly line: number;
}

/** Reads a talk. `#` opens a comment; a heading line `units metric` before the first question sets the units. */
export function readTalk(text: string): { units?: 'us' | 'metric'; turns: Turn[] } {
  const turns: { question: string; wants: string[]; line: number }[] = [];
  let units: 'us' | 'metric' | undefined;
  text.split('\n').forEach((raw, i) => {
    const line = raw.trim();
    if (!line || line.startsWith('#')) return;
    if (line.startsWith('> ')) turns.push({ question: line.slice(2), wants: [], line: i + 1 });
    else if (turns.length) turns.at(-1)!.wants.push(line);
    else if (line === 'units metric' || line === 'units us') units = line.slice(6) as 'us' | 'metric';
    else throw new Error(`line ${i + 1}: "${line}" stands before the first question`);
  });
  return { ...(units ? { units } : {}), turns };
}

/** Holds a reply against one line of a talk. */
export function holds(want: string, reply: Reply): void {
  const [verb = '', ...rest] = want.split(' ');
  const what = rest.join(' ');
  const check = checks[verb];
  if (!check) throw new Error(`"${want}": no such check`);
  check(what, rest, reply);
}

const checks: Record<string, (what: string, words: string[], reply: Reply) => void> = {
  kind: (what, _, reply) => expect(reply.kind).toBe(what),
  topic: (what, _, reply) => expect(reply.topic).toBe(what),
  reason: (what, _, reply) => expect(reply.reason).toBe(what),
  asks: (what, _, reply) => expect(reply.clarify?.quantity).toBe(what),
  first: (what, _, reply) => expect(reply.values[0]?.quantity).toBe(what),
  value: (_, words, reply) => figure(words, reply.values, 'values'),
  given: (_, words, reply) => figure(words, reply.given, 'given'),
  kept: (_, words, reply) => figure(words, reply.kept, 'kept'),
  assumed: (_, words, reply) => figure(words, reply.assumed, 'assumed'),
  status: (_, [rule, status], reply) =>
    expect([reply.verdict, ...reply.checks].find((each) => each?.rule === rule)?.status, `status of ${rule}`).toBe(status),
  says: (what, words, reply) =>
    words[0] === 'not' ? expect(reply.text).not.toContain(what.slice(4)) : expect(reply.text).toContain(what),
  caution: (what, _, reply) => expect(reply.cautions.join(' ')).toContain(what),
  ignored: (what, _, reply) => expect(reply.ignored.map(({ text }) => text)).toContain(what),
  steps: (_, words, reply) => {
    let at = -1;
    for (const id of words) {
      const next = reply.steps.findIndex((step, i) => i > at && step.id === id);
      expect(next, `${id} after place ${at} of ${reply.steps.map((step) => step.id).join(' ')}`).toBeGreaterThan(at);
      at = next;
    }
  },
  choice: (what, words, reply) => {
    const all = [...reply.given, ...reply.kept, ...reply.assumed];
    expect(all.find((each) => each.quantity === words[0] && 'choice' in each), what).toMatchObject({ choice: words[1] });
  },
};

function figure([quantity, number, unit, , within]: string[], list: readonly { quantity: string }[], where: string): void {
  const found = list.find((each) => each.quantity === quantity) as { number: number; unit: Unit } | undefined;
  expect(found, `${quantity} in ${where}`).toBeDefined();
  if (number === undefined || !found) return;
  if (!unit || !isUnit(unit)) throw new Error(`${quantity} ${number} ${unit}: no such unit`);
  const wanted = Number(number);
  const got = convert(found.number, found.unit, unit);
  expect(Math.abs(got - wanted), `${quantity}: ${got} ${unit}, not ${wanted}`).toBeLessThanOrEqual(Number(within ?? Math.abs(wanted) * 1e-4));
}
