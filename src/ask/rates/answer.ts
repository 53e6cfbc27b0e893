import { toBase } from '../../calc/quantity.ts';
import { sayFigure } from '../../calc/wording.ts';
import { agencyWords } from '../../rules/agency-words.ts';
import { FileFault } from '../../rules/file-parts.ts';
import { isNestedDeep } from '../../rules/json.ts';
import { type RateRow, type Rates, readRates } from '../../rules/rates.ts';
import type { Engine } from '../engine.ts';
import { type Fact, merge } from '../facts.ts';
import type { Goal } from '../goal.ts';
import { longestQuestion } from '../longest.ts';
import { blank } from '../refusal.ts';
import type { Job, Reply, Request } from '../reply.ts';
import { capital, tidy } from '../say.ts';
import { type Understanding, understand } from '../understand.ts';
import { ratesTalk as words } from '../wording/rates.en.ts';
import { heardInRates } from '../wording/rates-heard.ts';
import { kindOf, type Machine, machinesIn, without } from './machines.ts';

const longestFile = 64 * 1024;
const rate = 'equipment-rate';
/** What a cost of machines can be asked as. */
const ofCost: ReadonlySet<string> = new Set([rate, 'equipment-cost', 'job-cost', 'cost-per-ton']);

/** The rates a request brings, or what is wrong with the file and where. */
export function ratesIn(sent: unknown): Rates | FileFault {
  if (isNestedDeep(sent)) return new FileFault('', agencyWords.tooDeep);
  if ((JSON.stringify(sent) ?? '').length > longestFile) return new FileFault('', agencyWords.tooLong(longestFile));
  try {
    return readRates(sent);
  } catch (fault) {
    if (fault instanceof FileFault) return fault;
    throw fault;
  }
}

/** A question with its machines taken out of it, and what it was taken to mean. */
export interface Priced {
  readonly request: Request;
  readonly heard: Understanding;
}

/**
 * Answers by rates in force: machines named in a question of cost get theirs from the file, added up; where more than one
 * row fits a machine it is asked which, and one without a rate is named and nothing added up. Any other question goes on as it is.
 */
export function ratedReply(
  engine: Engine,
  request: Request,
  job: Job,
  rates: Rates,
  answered: (priced?: Priced) => Reply,
): Reply {
  const { question } = request;
  if (typeof question !== 'string' || question.length > longestQuestion || !heardInRates.money.test(question))
    return asking(answered(), rates);
  const machines = machinesIn(question, rates, engine.knowledge.quantities.get(rate)?.summed ?? []);
  if (machines.length === 0) return asking(answered(), rates);
  const { goal, fresh } = understand(engine, request, job);
  const alone = { ...request, question: without(question, machines) };
  // Names of machines can sound like other questions: what is left without them tells as well.
  const heard = understand(engine, alone, job);
  const aim = [heard.goal, goal].find((each) => each?.kind === 'quantity' && ofCost.has(each.id));
  if (goal !== undefined && !aim && !heardInRates.hourly.test(question)) return answered();
  if (fresh.some((fact) => fact.quantity === rate && !isWithin(fact, machines)))
    return noted(answered(), words.notUsed(rates.name, rates.year));
  const none = machines.filter(({ fits }) => fits.length === 0).map(({ said }) => said);
  if (none.length > 0) {
    const reply = answered(priced(engine, alone, heard, aim, undefined));
    const question = engine.knowledge.quantities.get(rate)!.question!.text;
    const told = reply.clarify?.quantity === rate ? reply.text : question;
    const text = `${words.none(none, rates.name, rates.year)}\n${told}`;
    const clarify = { quantity: rate, text, choices: [] };
    return { ...reply, kind: 'clarify', reason: 'missing-fact', text, clarify, job: { ...reply.job, asked: rate } };
  }
  const open = machines.find(({ fits }) => fits.length > 1);
  if (open) return which(open, question, job, engine, rates);
  return told(engine, answered(priced(engine, alone, heard, aim, total(machines))), machines, rates);
}

/** What is asked without its machines, with the sum of their rates in their place. */
function priced(
  { knowledge: { quantities } }: Engine,
  alone: Request,
  heard: Understanding,
  goal: Goal | undefined,
  sum: number | undefined,
): Priced {
  const { turn } = heard;
  const facts: Fact[] = sum === undefined ? [] : [{ quantity: rate, number: sum, unit: 'USD/h', turn, fresh: true }];
  // What was reckoned with before does not stand for the machines named now.
  const all = merge(
    heard.facts.filter(({ quantity }) => quantity !== rate),
    facts,
  );
  // A price or a size beside the machines is about the whole job; hours alone are about the machines.
  const whole =
    goal?.kind === 'quantity' &&
    (goal.id === 'job-cost' || goal.id === 'cost-per-ton') &&
    all.some(({ quantity }) => quantity !== rate && quantities.has(quantity) && quantity !== 'work-hours');
  const hours = all.some(({ quantity }) => quantity === 'work-hours');
  const asked = goal?.kind === 'quantity' && goal.id === 'equipment-cost';
  const machine = { kind: 'quantity', id: hours || asked || sum === undefined ? 'equipment-cost' : rate } as const;
  const taken = {
    ...heard,
    facts: all,
    fresh: [...heard.fresh, ...facts],
    goal: whole ? goal : machine,
    goalKept: false,
  };
  return { request: alone, heard: taken };
}

const total = (machines: readonly Machine[]): number =>
  tidy(machines.reduce((sum, { count, fits }) => sum + count * fits[0]!.rate, 0));

/** True for a figure that is no price: the code or the size of a machine. */
const isWithin = ({ from }: Fact, machines: readonly Machine[]): boolean =>
  from !== undefined && machines.some(({ at }) => from[0] < at[1] && at[0] < from[1]);

const dollars = (number: number): string => `$${number.toFixed(2)}/h`;

function named({ machine, size, horsepower }: RateRow): string {
  const said = size && sayFigure(toBase(size.number, size.unit), size.unit, { given: true });
  return words.machine(machine, said, horsepower);
}

/** The reply with the machines, their codes and rates, and where they come from. */
function told(
  { knowledge }: Engine,
  reply: Reply,
  machines: readonly Machine[],
  { name, year, source, seen, note }: Rates,
): Reply {
  if (reply.kind === 'unknown') return reply;
  const rows = machines.map(({ count, fits }) => ({ count, row: fits[0]! }));
  const lines = rows.map(({ count, row }) =>
    words.row(count, count === 1 ? capital(named(row)) : named(row), row.code, dollars(row.rate), row.note),
  );
  const step = {
    quantity: rate,
    formula: words.formula(
      knowledge.quantities.get(rate)!.title,
      rows.map(({ count, row }) => words.counted(count, words.coded(row.machine, row.code))),
    ),
    with: words.sum(rows.map(({ count, row }) => words.counted(count, dollars(row.rate)))),
    result: dollars(total(machines)),
    rule: `quantity/${rate}`,
    source: words.from(name, year, source, seen, note),
  };
  return {
    ...reply,
    text: [reply.text, ...lines, step.source].join('\n'),
    given: reply.given.filter(({ quantity }) => quantity !== rate),
    working: [step, ...reply.working],
  };
}

function which(
  open: Machine,
  question: string,
  { asked: _, ...job }: Job,
  { knowledge }: Engine,
  { name, year }: Rates,
): Reply {
  const [from, to] = open.name;
  const send = (row: RateRow): string =>
    `${question.slice(0, from)}${kindOf(row)} code ${row.code}${question.slice(to)}`;
  const choices = open.fits.map((row) => ({
    text: words.choice(named(row), row.code, dollars(row.rate), row.note),
    send: send(row),
  }));
  const first = open.fits[0]!;
  const text = words.which(open.said, name, year, `${first.machine} ${first.code}`);
  const clarify = { quantity: rate, text, choices };
  const { version } = knowledge;
  return { ...blank, kind: 'clarify', topic: rate, reason: 'ambiguous', text, clarify, rules: { version }, job };
}

const noted = (reply: Reply, line: string): Reply => ({ ...reply, text: `${reply.text}\n${line}` });

/** Where the rate is asked for, the file can give it too. */
function asking(reply: Reply, { name, year }: Rates): Reply {
  return reply.clarify?.quantity === rate ? noted(reply, words.nameThem(name, year)) : reply;
}
