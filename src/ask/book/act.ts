import { jsonIn } from '../../rules/json.ts';
import { lineOf } from '../../rules/line-of.ts';
import { emergencyIn } from '../emergency.ts';
import type { Engine } from '../engine.ts';
import { emptyJob } from '../job.ts';
import { longestQuestion } from '../longest.ts';
import { ratesIn } from '../rates/answer.ts';
import type { UnitSystem } from '../reply.ts';
import { isStatement } from '../stated.ts';
import { understand } from '../understand.ts';
import { act as words } from '../wording/book-act.en.ts';
import type { Actor, Done, Field, Refused } from './acting.ts';
import { goneField, kindOf, removing, setting, undoingAll } from './book.ts';
import { readListCell } from './cells.ts';
import type { Cell } from './change.ts';
import { fieldsOf, fieldType, isLineKind, type LineKind, newLine } from './fields.ts';
import { importing } from './importing.ts';
import { saidOnJob } from './on-job.ts';
import { readCell } from './read-change.ts';
import { engineFor, FileFault } from './reckon.ts';
import { mayMake } from './roles.ts';
import { nextLabel, sheetOf, systemOfSheet } from './sheet.ts';
import { isOfPatch } from './talk-book.ts';

/** Does what a form of the job page asks for: gives the changes that come of it, or says what is wrong. Nothing is changed by a refusal. */
export function act(field: Field, actor: Actor): Done | Refused {
  const done = doing(field, actor);
  if ('fault' in done) return done;
  return done.changes.every((change) => mayMake(actor.role, change)) ? done : { fault: words.notAllowed(actor.role) };
}

function doing(field: Field, actor: Actor): Done | Refused {
  const name = field('do');
  const line = field('line');
  const maker = () => ({ stamp: actor.stamp(), by: actor.by });
  switch (name) {
    case 'tell':
      return tellOrAsk(field, actor);
    case 'import':
      return importing(field('text'), actor);
    case 'rules':
      return ruled(field('text'), actor);
    case 'rates':
      return rated(field('text'), actor);
    case 'remove':
      if (!actor.now.lines.has(line) || line === 'job') return { fault: words.noLine };
      return {
        changes: [removing(actor.seen.lines.has(line) ? actor.seen : actor.now, line, maker())],
        said: [words.removed],
      };
    case 'undo': {
      const changes = undoingAll(actor.changes, field('change').split(' '), maker);
      return changes.length > 0 ? { changes, said: [words.undone] } : { fault: words.notUndone };
    }
    case 'done':
    case 'open':
      if (kindOf(line) !== 'patch' || !actor.now.lines.has(line)) return { fault: words.noLine };
      return { changes: [setting(actor.seen, line, { done: name === 'done' }, maker())], said: [] };
    case 'settle':
      return settled(field, actor);
    default:
      return isLineKind(name) ? written(name, field, actor) : { fault: words.unknownAct };
  }
}

/** Facts of the job where all of it is such; else what is said or asked of its patches. */
function tellOrAsk(field: Field, actor: Actor): Done | Refused {
  // Somebody is hurt: that comes before all.
  const emergency = emergencyIn(field('text').slice(0, longestQuestion), actor.engine, emptyJob);
  if (emergency) return { changes: [], said: emergency.text.split('\n') };
  const facts = told(field('text'), actor);
  if (!('fault' in facts) && facts.said.length === 0) return facts;
  return said(field, actor) ?? facts;
}

/** What is said of the job's patches, as it would be said where one asks: "we laid 42 tons on patch 3", "what's left". */
function said(field: Field, { role, changes, seen, stamp, by, day }: Actor): Done | Refused | undefined {
  const last = field('change').split(' ').filter(Boolean);
  const question = field('text').trim();
  if (question === '' || question.length > longestQuestion) return undefined;
  const done = saidOnJob({ question }, { role, changes, seen, stamp, by, day, last, any: true });
  if (!done) return undefined;
  const { reply } = done;
  // What is no question of the job at all is told what may be said here.
  if (reply.kind === 'unknown' || (reply.kind === 'clarify' && reply.reason === 'no-goal')) return undefined;
  return reply.kind === 'clarify' ? { fault: reply.text } : { changes: done.changes, said: reply.text.split('\n') };
}

/**
 * Facts of the whole job: "mix is $85 a ton, trucks carry 12 tons". Each part is read by itself, as it stands and as if
 * the cost of the job was asked, and the reading that leaves the fewest figures over is taken. A part that is not understood is told.
 */
function told(text: string, actor: Actor): Done | Refused {
  const parts = text
    .slice(0, 1000)
    .split(/[;\n]|,\s|\band\b/)
    .filter((part) => part.trim() !== '');
  if (parts.length === 0) return { fault: words.nothingTold };
  const set: Record<string, Cell> = {};
  const lost: string[] = [];
  for (const part of parts) {
    const known = readPart(part, actor.engine);
    if (known) Object.assign(set, known);
    else lost.push(part.trim());
  }
  if (Object.keys(set).length === 0) return { fault: words.nothingUnderstood };
  return {
    changes: [setting(actor.seen, 'job', set, { stamp: actor.stamp(), by: actor.by })],
    said: lost.length > 0 ? [words.partLost(lost)] : [],
  };
}

function readPart(part: string, engine: Engine): Record<string, Cell> | undefined {
  const readings = ['', words.costAsked].map((before) => {
    const { fresh, unbound, sentence } = understand(engine, { question: before + part }, emptyJob);
    // What is asked is not told.
    if (!isStatement(sentence)) return { facts: [], over: 1 };
    const facts = fresh.filter(({ quantity }) => !isOfPatch(engine.knowledge, quantity));
    // A figure without a unit is no price for having been said where a cost is asked.
    const guessed = before === '' ? 0 : facts.filter(({ unitAssumed }) => unitAssumed).length;
    return { facts, over: unbound.length + fresh.length - facts.length + guessed };
  });
  const [best] = readings.sort((a, b) => a.over - b.over || b.facts.length - a.facts.length);
  if (!best || best.over > 0 || best.facts.length === 0) return undefined;
  const cells = best.facts.map(
    (fact) => [fact.quantity, 'unit' in fact ? { number: fact.number, unit: fact.unit } : fact.choice] as const,
  );
  const sound = cells.every(([name, value]) => {
    const type = fieldType('job', name, engine.knowledge);
    return type && readCell(value, type) !== undefined;
  });
  return sound ? Object.fromEntries(cells) : undefined;
}

function ruled(text: string, actor: Actor): Done | Refused {
  const maker = { stamp: actor.stamp(), by: actor.by };
  if (text.trim() === '')
    return { changes: [setting(actor.seen, 'job', { rules: null }, maker)], said: [words.rulesOff] };
  const read = jsonIn(text);
  if (!read) return { fault: words.rulesNoJson };
  const rules = read.json;
  const engine = engineFor(actor.engine, rules);
  if (engine instanceof FileFault)
    return { fault: words.rulesFault(lineOf(text, engine.place), engine.place, engine.message) };
  const type = fieldType('job', 'rules', actor.engine.knowledge)!;
  const cell = readCell({ rules }, type);
  return cell === undefined
    ? { fault: words.rulesLong }
    : { changes: [setting(actor.seen, 'job', { rules: cell }, maker)], said: [words.rulesOn] };
}

/** A published schedule of rates of machines for the job; nothing of one with a fault is taken. */
function rated(text: string, { seen, stamp, by, engine }: Actor): Done | Refused {
  const maker = { stamp: stamp(), by };
  if (text.trim() === '') return { changes: [setting(seen, 'job', { rates: null }, maker)], said: [words.ratesOff] };
  const sent = jsonIn(text);
  if (!sent) return { fault: words.ratesNoJson };
  const rates = ratesIn(sent.json);
  if (rates instanceof FileFault)
    return { fault: words.ratesFault(lineOf(text, rates.place), rates.place, rates.message) };
  const cell = readCell({ rules: sent.json }, fieldType('job', 'rates', engine.knowledge)!);
  return cell === undefined
    ? { fault: words.ratesLong }
    : {
        changes: [setting(seen, 'job', { rates: cell }, maker)],
        said: [words.ratesOn(rates.name, rates.year, rates.rows.length)],
      };
}

/** Takes one of the writings that clash for good. */
function settled(field: Field, { seen, now, stamp, by }: Actor): Done | Refused {
  const [line, name, change] = [field('line'), field('field'), field('change')];
  const clash = now.clashes.find((each) => each.line === line && each.field === name);
  if (!clash) return { fault: words.noClash };
  const maker = { stamp: stamp(), by };
  // Of a line one took off while another wrote in it: off for good, or on again.
  if (name === goneField)
    return {
      changes: [
        change === clash.stands.change ? removing(now, line, maker) : setting(now, line, { [goneField]: false }, maker),
      ],
      said: [words.settled],
    };
  const chosen = [clash.stands, ...clash.others].find((writing) => writing.change === change);
  const book = seen.lines.has(line) ? now : seen;
  return chosen
    ? { changes: [setting(book, line, { [name]: chosen.value }, maker)], said: [words.settled] }
    : { fault: words.noClash };
}

/** A line that was filled in: a new one, or one whose fields are changed. Fields left as they were are not written again. */
function written(kind: LineKind, field: Field, actor: Actor): Done | Refused {
  const { engine, seen, now } = actor;
  const line = kind === 'job' ? 'job' : field('line');
  const isNew = line === '';
  if (!isNew && kind !== 'job' && (kindOf(line) !== kind || !now.lines.has(line))) return { fault: words.noLine };
  const sheet = sheetOf(now, engine.knowledge);
  const system = systemOfSheet(sheet);
  const set: Record<string, Cell | null> = {};
  const had = seen.lines.get(line)?.fields;
  const names = [...fieldsOf(kind), ...(kind === 'patch' ? sizes : [])].filter(
    (name) => name !== 'rules' && name !== 'rates' && name !== 'done',
  );
  for (const name of names) {
    const text = field(name).trim();
    const read = text === '' ? null : cellOf(text, kind, name, system, engine);
    if (typeof read === 'object' && read !== null && 'fault' in read) return read as Refused;
    const cells = read === null ? { [name]: null } : (read as Record<string, Cell>);
    // A field that the form does not show is no field that was emptied.
    if (read === null && field(`has-${name}`) === '') continue;
    for (const [key, value] of Object.entries(cells))
      if (JSON.stringify(value) !== JSON.stringify(had?.get(key)?.value ?? null)) set[key] = value;
  }
  const size = kind === 'patch' ? field('size').trim() : '';
  if (size !== '') {
    const read = readListCell(size, words.size, { to: 'size' }, { decimalComma: false, system }, engine);
    if ('fault' in read) return read as Refused;
    Object.assign(set, read);
  }
  if (isNew && kind === 'patch') set.label ??= nextLabel(sheet);
  if (isNew && Object.values(set).every((value) => value === null)) return { fault: words.emptyLine };
  const kept = isNew ? Object.fromEntries(Object.entries(set).filter(([, value]) => value !== null)) : set;
  if (Object.keys(kept).length === 0) return { changes: [], said: [words.nothingChanged] };
  const stamp = actor.stamp();
  const named = isNew ? newLine(kind, stamp) : line;
  return { changes: [setting(seen, named, kept, { stamp, by: actor.by })], said: [] };
}

const sizes = ['patch-length', 'patch-width', 'patch-depth', 'deepest-depth'];

/** What was typed in a field, as its cells, or what is wrong with it. */
function cellOf(
  text: string,
  kind: LineKind,
  name: string,
  system: UnitSystem,
  engine: Engine,
): Record<string, Cell> | Refused {
  const type = fieldType(kind, name, engine.knowledge)!;
  const title = words.fields[name] ?? engine.knowledge.quantities.get(name)?.title ?? name;
  const style = { decimalComma: false, system };
  if (type.type === 'figure') {
    const quantity = type.quantity ?? 'premix-mass';
    const read = readListCell(text, title, { to: 'figure', quantity }, style, engine);
    if ('fault' in read) return read as Refused;
    const cells = read as Record<string, Cell>;
    return quantity === name ? cells : { [name]: cells[quantity]! };
  }
  if (name === 'readings' || name === 'day') {
    const read = readListCell(text, title, { to: 'field', field: name }, style, engine);
    return read as Record<string, Cell> | Refused;
  }
  const cell = readCell(type.type === 'initials' ? text.replace(/[. ]/g, '').toUpperCase() : text, type);
  return cell === undefined ? { fault: words.misfit(title, type.type) } : { [name]: cell };
}
