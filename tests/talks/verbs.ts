import { AssertionError } from 'node:assert';
import { expect } from 'vitest';
import type { Reply } from '../../src/ask/reply.ts';
import { convert } from '../../src/calc/quantity.ts';
import { isUnit, type Unit } from '../../src/calc/units.ts';

/** What a person does in a turn. */
export type Said = { readonly types: string } | { readonly presses: string };

/** One turn of a talk: what is said, what is sent with it, and what the reply must hold. */
export interface Turn {
  readonly said: Said;
  readonly line: number;
  readonly sends: Readonly<Record<string, unknown>>;
  readonly wants: readonly string[];
}

/** Holds a reply against one line of a talk; throws when it does not hold. `not` before a check turns it round. */
export function holds(want: string, reply: Reply): void {
  const turned = want.startsWith('not ');
  const [verb = '', ...words] = (turned ? want.slice(4) : want).split(' ');
  const check = (): void => verbs[verb]!(words, reply);
  if (turned) expect(check, want).toThrow();
  else check();
}

/** One of several answers that will do, `a|b`. */
const oneOf = (got: string | undefined, wanted: string | undefined, what: string): void =>
  expect(wanted?.split('|'), `${what}: ${got}`).toContain(got);

const quantities = (list: readonly { quantity: string }[]): string => list.map(({ quantity }) => quantity).join(', ');

/**
 *   kind value                topic premix-mass          reason missing-fact      asks patch-depth
 *   first lift-count          value premix-mass 44 ton [within 0.01]              ends premix-mass 42 48 ton
 *   given patch-width 14 ft   kept patch-depth 2 in      assumed unit-weight      choice road-type rural
 *   ignored 7                 says 44.0 tons             offers 2 in              works premix-mass
 *   verdict lift-max stop     status lift-max stop       needs lift-min stone-size
 *   source lift-max Alder County                         caution flagging         steps tack spread-premix (in this order)
 * `kind`, `topic`, `asks`, `verdict` and `status` take alternatives, `ok|caution`; `says` takes them apart by ` | `.
 */
export const verbs: Readonly<Record<string, (words: string[], reply: Reply) => void>> = {
  kind: ([what], reply) => oneOf(reply.kind, what, 'kind'),
  topic: ([what], reply) => oneOf(reply.topic, what, 'topic'),
  reason: ([what], reply) => oneOf(reply.reason, what, 'reason'),
  asks: ([what], reply) => oneOf(reply.clarify?.quantity, what, 'asks'),
  first: ([what], reply) => oneOf(reply.values[0]?.quantity, what, 'first value'),
  value: (words, reply) => figure(words, reply.values, 'values'),
  given: (words, reply) => figure(words, reply.given, 'given'),
  kept: (words, reply) => figure(words, reply.kept, 'kept'),
  assumed: (words, reply) => figure(words, reply.assumed, 'assumed'),
  ends: ([quantity = '', low, high, unit], { values }) => {
    const found = values.find((each) => each.quantity === quantity);
    expect(found?.low, `${quantity} has no range`).toBeDefined();
    near(found!.low!, found!.unit, Number(low), unit, `low end of ${quantity}`);
    near(found!.high!, found!.unit, Number(high), unit, `high end of ${quantity}`);
  },
  verdict: ([rule, status], { verdict }) => {
    oneOf(verdict?.rule, rule, 'rule of the verdict');
    oneOf(verdict?.status, status, 'verdict');
  },
  status: ([rule, status], { verdict, checks }) =>
    oneOf([verdict, ...checks].find((each) => each?.rule === rule)?.status, status, `status of ${rule}`),
  needs: ([rule, quantity], { verdict, checks }) =>
    expect([verdict, ...checks].find((each) => each?.rule === rule)?.needs, `needs of ${rule}`).toContain(quantity),
  source: ([rule, ...text], { checks, working, assumed }) => {
    const lines = [...checks, ...working, ...assumed].filter(
      (each) => each.rule === rule || each.rule.endsWith(`/${rule}`),
    );
    const words = lines.flatMap((each) => ['source' in each ? each.source : '', 'text' in each ? each.text : '']);
    expect(words.join(' '), `what is said of ${rule}`).toContain(text.join(' '));
  },
  says: (words, { text }) => {
    const any = words.join(' ').split(' | ');
    expect(
      any.some((each) => text.toLowerCase().includes(each.toLowerCase())),
      `"${any.join('" or "')}" in: ${text}`,
    ).toBe(true);
  },
  caution: (words, { cautions }) => expect(cautions.join(' ')).toContain(words.join(' ')),
  ignored: (words, { ignored }) => expect(ignored.map(({ text }) => text)).toContain(words.join(' ')),
  offers: (words, { clarify }) => expect(clarify?.choices.map(({ text }) => text)).toContain(words.join(' ')),
  works: ([quantity], { working }) => expect(quantities(working).split(', ')).toContain(quantity),
  steps: (words, { steps }) => {
    let at = -1;
    for (const id of words) {
      const next = steps.findIndex((step, i) => i > at && step.id === id);
      expect(next, `${id} after place ${at} of ${steps.map((step) => step.id).join(' ')}`).toBeGreaterThan(at);
      at = next;
    }
  },
  choice: ([quantity, option], { given, kept, assumed }) => {
    const found = [...given, ...kept, ...assumed].find((each) => each.quantity === quantity && 'choice' in each);
    expect(found, `choice of ${quantity}`).toMatchObject({ choice: option });
  },
};

function figure(
  [quantity = '', number, unit, , within]: string[],
  list: readonly { quantity: string }[],
  where: string,
): void {
  const found = list.find((each) => each.quantity === quantity) as { number: number; unit: Unit } | undefined;
  if (!found) throw new AssertionError({ message: `no ${quantity} in ${where}: ${quantities(list)}` });
  if (number !== undefined) near(found.number, found.unit, Number(number), unit, `${quantity} in ${where}`, within);
}

/** One part in ten thousand, unless the talk says how near: its figures are written with four to six digits. */
function near(
  number: number,
  unit: Unit,
  wanted: number,
  wantedUnit: string | undefined,
  what: string,
  within?: string,
): void {
  if (!wantedUnit || !isUnit(wantedUnit) || Number.isNaN(wanted))
    throw new Error(`${what}: ${wanted} ${wantedUnit} is no figure`);
  const got = convert(number, unit, wantedUnit);
  expect(Math.abs(got - wanted), `${what}: ${got} ${wantedUnit}, not ${wanted}`).toBeLessThanOrEqual(
    Number(within ?? Math.abs(wanted) * 1e-4),
  );
}
