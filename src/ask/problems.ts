import { compare, toBase } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import { restsOn } from '../calc/solve.ts';
import { unitRow } from '../calc/units.ts';
import { sayFigure } from '../calc/wording.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { isPlausible } from './as-role.ts';
import { clarifying } from './clarifying.ts';
import { startsOf } from './engine.ts';
import { atOdds } from './odds.ts';
import { outOfRange, unlikelyText } from './out-of-range.ts';
import type { Reply, UnitSystem } from './reply.ts';
import type { Scene } from './scene.ts';
import type { Token } from './token.ts';
import { isSmall } from './token.ts';
import { unclearFigure } from './unclear.ts';
import { en } from './wording/en.ts';

/** What stands in the way of working with the figures given: a reply that asks back, or undefined when nothing does. */
export function problemWith(scene: Scene): Reply | undefined {
  return unclearFigure(scene) ?? unlikely(scene) ?? wrongUnit(scene) ?? atOdds(scene) ?? leftOver(scene);
}

/** A figure that is nothing, less than nothing, or far from what its role can be. One that is to be judged is let through. */
function unlikely(scene: Scene): Reply | undefined {
  const { goal, fresh } = scene.understood;
  const judged = new Set(goal?.kind === 'limit' ? startsOf(scene.engine.knowledge, goal) : []);
  for (const fact of fresh) {
    const record = scene.engine.knowledge.quantities.get(fact.quantity);
    if (!record || !('unit' in fact)) continue;
    const figure = fact.from
      ? scene.request.question.slice(...fact.from)
      : sayFigure(toBase(fact.number, fact.unit), fact.unit, { given: true });
    if (!mayBe(fact.number, record)) return outOfRange(scene, record, en.notPositive(figure, record.title));
    if (judged.has(record.id) || isPlausible(fact, fact.unit, record)) continue;
    return outOfRange(scene, record, unlikelyText(figure, record));
  }
  return undefined;
}

/** True unless a figure is below nothing, or nothing where that is no figure. Temperatures have no nothing. */
function mayBe(number: number, { dimension, plausible, default: usual }: QuantityRecord): boolean {
  return (
    number > 0 ||
    dimension === 'temperature' ||
    (number === 0 && (usual?.number === 0 || (plausible !== undefined && plausible.min.number <= 0)))
  );
}

/** A figure whose own word wants another dimension: "300 tons long". */
function wrongUnit(scene: Scene): Reply | undefined {
  const { sentence, system, goal } = scene.understood;
  // How something is done is judged whatever figures stand beside it.
  if (goal?.kind === 'practice') return undefined;
  for (const at of sentence.figures) {
    const token = sentence.tokens[at];
    const next = sentence.tokens[at + 1];
    if (
      token?.kind !== 'figure' ||
      !token.figure.unit ||
      token.figure.unclear ||
      next?.kind !== 'word' ||
      isSmall(next, sentence.small) ||
      asksBy(scene, next.head) ||
      isLabel(scene, next.head, sentence.tokens[at + 2])
    )
      continue;
    const { dimension } = unitRow(token.figure.unit);
    const told = scene.engine.byWord.get(next.head) ?? [];
    const record = told.find(({ inGroup, roles }) => inGroup && roles?.after?.includes(next.head));
    if (!record || told.some((each) => each.dimension === dimension)) continue;
    const wanted = record.units[system];
    const text = en.wrongUnit(
      scene.request.question.slice(...token.at),
      record.title,
      sayFigure(toBase(2, wanted), wanted, { given: true }).replace(/^2 /, ''),
    );
    return clarifying(scene, record.id, 'unit-wrong', { quantity: record.id, text, choices: [] }, record.id);
  }
  return undefined;
}

/** True for a word that says what is asked: "25 tons on 1500 sq ft, depth?" */
function asksBy({ understood, engine }: Scene, head: string): boolean {
  const { goal } = understood;
  const cues = goal?.kind === 'quantity' ? engine.knowledge.quantities.get(goal.id)?.cues : undefined;
  return Boolean(cues?.some((cue) => cue.split(/[ |+]/).includes(head)));
}

/** A figure that found no role, where the answer would rest on a default that it could replace: which of them it is must be asked. */
function leftOver(scene: Scene): Reply | undefined {
  const { goal, unbound, roles, system } = scene.understood;
  const { knowledge, solved } = scene.voice;
  if (!goal) return undefined;
  const starts = startsOf(knowledge, goal);
  const assumed = starts.flatMap((id) => solved.get(id)?.assumed ?? []);
  const rests = restsOn(solved, starts);
  const used = saidWithUnit(scene).filter((id) => rests.has(id));
  const isWorked = goal.kind === 'quantity' && !scene.understood.sentence.places.has('@check');
  const idle = roles.filter(({ figure, quantity, told }) => isWorked && figure.unit && !told && !rests.has(quantity));
  const all = [
    ...unbound.map((figure) => ({ figure, could: [...assumed, ...(figure.unit ? used : [])] })),
    ...idle.map(({ figure }) => ({ figure, could: used })),
  ];
  for (const { figure, could } of all) {
    // "Half is 1 in deep and the other half 2 in": one of the two must not be left out without a word.
    const record = could
      .map((id) => knowledge.quantities.get(id))
      .find((each) => each && couldBe(figure, each, system) && !isSame(figure, solved.get(each.id)?.value));
    if (!record) continue;
    const typed = scene.request.question.slice(...figure.at);
    const isUsual = assumed.includes(record.id);
    const text = isUsual ? en.whatIs(typed, record.title) : en.whatElse(typed, record.title);
    const send = en.fact(record.title, typed);
    return clarifying(
      scene,
      record.id,
      'ambiguous',
      { quantity: record.id, text, choices: [{ text: send, send }] },
      record.id,
    );
  }
  return undefined;
}

/** True for a figure that says again what is known: "9 guys 8 hours, equipment for 8 hours". */
const isSame = ({ number, unit }: Figure, base: number | undefined): boolean =>
  unit !== undefined && base !== undefined && compare(toBase(number, unit), base) === 0;

/** The quantities that this question gives a figure for, with its unit. */
const saidWithUnit = ({ understood: { fresh } }: Scene): string[] =>
  fresh.flatMap((fact) => ('unit' in fact && !fact.unitAssumed ? [fact.quantity] : []));

function couldBe({ unit, form, number }: Figure, record: QuantityRecord, system: UnitSystem): boolean {
  if (form === 'ratio') return record.parts !== undefined;
  const meant = unit ?? (record.bare ? record.bare[system] : undefined);
  if (!meant || unitRow(meant).dimension !== record.dimension) return false;
  return isPlausible({ number }, meant, record);
}

/** "60 mph patch 500 ft": a word before another figure that it is a label of. */
const isLabel = (scene: Scene, word: string, after: Token | undefined): boolean =>
  after?.kind === 'figure' && (scene.engine.byWord.get(word) ?? []).some(({ roles }) => roles?.before?.includes(word));
