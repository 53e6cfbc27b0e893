import { evaluate, inWords } from '../calc/expression.ts';
import { fromBase, toBase } from '../calc/quantity.ts';
import { derivation, type Solved } from '../calc/solve.ts';
import type { Unit } from '../calc/units.ts';
import { sayFigure } from '../calc/wording.ts';
import { choiceOf, optionTitle } from '../rules/knowledge.ts';
import type { Figure, RelationRecord, Source } from '../rules/shapes.ts';
import type { Voice } from './judging.ts';
import type { AssumedFact, Value, Working } from './reply.ts';
import { asValue, capital, say, sayEnds, sayPlain, saySource, tidy } from './say.ts';
import { generalDefault } from './whose.ts';
import { en } from './wording/en.ts';

/** A quantity's value in the units of the answer. */
export function figureOf(id: string, voice: Voice): Value | undefined {
  const record = voice.knowledge.quantities.get(id);
  const fact = voice.solved.get(id);
  return record && fact ? asValue(record, fact, voice.unit(id)) : undefined;
}

/** How the quantities came about: each step after those it rests on. */
export function workingOf(ids: readonly string[], voice: Voice): Working[] {
  const steps: Solved[] = [];
  for (const id of ids) derivation(voice.solved, id, steps);
  return steps.flatMap((step) => {
    const { by } = step;
    const record = voice.knowledge.quantities.get(step.id);
    const relation = by && voice.knowledge.relations.get(by.relation.id);
    if (!by || !record || !relation || by.by.op === 'fact') return [];
    const title = (id: string): string => voice.knowledge.quantities.get(id)?.title ?? id;
    return [
      {
        quantity: step.id,
        formula: `${record.title} = ${inWords(by.by, (leaf) => (leaf.op === 'fact' ? title(leaf.id) : constant(leaf)))}`,
        with: inWords(by.by, (leaf) => (leaf.op === 'fact' ? plainFigure(leaf.id, voice) : constant(leaf))),
        result: say(record, step.value, voice.unit(step.id)),
        rule: `relation/${relation.id}`,
        source: saySource(relation.sources[0]),
      },
    ];
  });
}

function plainFigure(id: string, { knowledge, solved, unit, isGiven }: Voice): string {
  const record = knowledge.quantities.get(id);
  const fact = solved.get(id);
  return record && fact ? sayPlain(record, fact.value, unit(id), isGiven(id)) : id;
}

/** Whose figure it is, from what, and the general one. */
function ownedBy(name: string, { issuer: _issuer, ...source }: Source, general: string | undefined): string {
  return `${en.agencyFigure(name, general)}; ${saySource(source)}`;
}

/** A figure that an agency's rule gave, with whose it is and the general one. */
function agencyNote(
  { id, value, by }: Solved,
  { agency, sources }: RelationRecord,
  { knowledge, solved, unit }: Voice,
): string | undefined {
  const record = knowledge.quantities.get(id);
  if (!agency || !record) return undefined;
  const general = evaluate(agency.general, (need) => solved.get(need)?.value ?? Number.NaN);
  // A floor or a cap that does not bite gave nothing.
  if (general === value && (by?.by.op === 'larger' || by?.by.op === 'smaller')) return undefined;
  const beside = Number.isNaN(general) ? undefined : say(record, general, unit(id));
  return capital(en.figure(record.title, say(record, value, unit(id)), ownedBy(agency.name, sources[0], beside)));
}

/** What must be said with the quantities: their own notes, and those of the relations that led to the first. */
export function notesOn(ids: readonly string[], voice: Voice): string[] {
  const { knowledge, solved } = voice;
  const first = ids[0] === undefined ? [] : derivation(solved, ids[0]);
  const ways = first.flatMap((fact) => {
    const { id, value, by } = fact;
    const relation = by && knowledge.relations.get(by.relation.id);
    if (!by || !relation) return [];
    const only = by.by.op === 'round-up' || by.by.op === 'lookup' ? relation.noteIfRounded : undefined;
    return [
      agencyNote(fact, relation, voice),
      relation.note,
      only && by.needs.every((need) => solved.get(need)?.value !== value) ? only : undefined,
      id === ids[0] ? knowledge.quantities.get(id)?.note : undefined,
    ];
  });
  return [...new Set(ways.filter((note) => note !== undefined))];
}

/** A settled choice by its fact ("road-type=rural"), and in words; undefined for a figure. */
export function sayChoice(
  fact: string,
  { knowledge }: Voice,
): { quantity: string; choice: string; text: string } | undefined {
  const quantity = choiceOf(fact);
  if (quantity === undefined) return undefined;
  const choice = fact.slice(quantity.length + 1);
  const title = knowledge.choices.get(quantity)?.title ?? quantity;
  return { quantity, choice, text: en.fact(title, optionTitle(knowledge.choices, quantity, choice)) };
}

/** Defaults the quantities rest on, each with what it is and where it comes from. */
export function assumedBy(ids: readonly string[], voice: Voice): AssumedFact[] {
  const names = new Set(ids.flatMap((id) => voice.solved.get(id)?.assumed ?? []));
  return [...names].flatMap((name): AssumedFact[] => {
    const settled = sayChoice(name, voice);
    if (settled) return [{ ...settled, rule: `choice/${settled.quantity}` }];
    const id = name;
    const record = voice.knowledge.quantities.get(id);
    const fact = voice.solved.get(id);
    if (!record || !fact) return [];
    const unit = voice.unit(id);
    const range = sayEnds(record, fact, unit);
    const { agency } = record;
    const figure = generalDefault(record, voice);
    const general = figure && say(record, toBase(figure.number, figure.unit), unit, true);
    const beside = agency ? ownedBy(agency.name, record.sources[0], general) : range;
    const text =
      en.fact(record.title, say(record, fact.value, unit, isShort(record.default, unit))) +
      (beside ? ` (${beside})` : '');
    return [{ quantity: id, number: tidy(fromBase(fact.value, unit)), unit, rule: `quantity/${id}`, text }];
  });
}

/** True for a default that is echoed as it stands: few digits, in the unit of the answer. */
const isShort = (figure: Figure | undefined, unit: Unit): boolean =>
  figure?.unit === unit && Number(figure.number.toFixed(3)) === figure.number;

const constant = (leaf: { number: number; unit: Unit }): string =>
  sayFigure(toBase(leaf.number, leaf.unit), leaf.unit, { given: true });
