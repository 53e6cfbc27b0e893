import { toBase } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import type { Unit } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { asRole, isFarFrom, isPlausible, shareIn } from './as-role.ts';
import { countedAt, isDenied, type Words } from './beside.ts';
import { hasField, isInSetting, isSayable } from './field.ts';
import { placeInGroup } from './group-place.ts';
import { ownWords } from './labels.ts';
import type { Context } from './role-context.ts';
import { couldMeasure, isUnitAssumed, unitFor } from './role-unit.ts';
import { weights } from './role-weights.ts';
import { wordScore } from './role-words.ts';
import type { Sentence } from './sentence.ts';
import { isCountOf, isOfOthers, sizeOfEach } from './sized.ts';
import { titledBefore } from './titles.ts';
import type { Token } from './token.ts';

/** A role a figure could have, and how well it fits. */
export interface Option {
  readonly record: QuantityRecord;
  /** As it is read in this role. */
  readonly figure: Figure;
  readonly unit: Unit;
  readonly unitAssumed: boolean;
  readonly score: number;
  /** True when a word or the group says so, not only what is asked. */
  readonly told: boolean;
  /** True where it may be one of several that are added up. */
  readonly isOneMore?: boolean;
}

/** An option must reach `enough`; `kept` of them are kept. A number with neither unit nor word lies `nearEnough` to what is asked. */
const enough = 2;
const kept = 4;
const nearEnough = 3;
const farOff = 9;

/** The roles that the figure at a place of a sentence could have, best first. */
export function optionsFor(sentence: Sentence, at: number, all: readonly Figure[], context: Context): Option[] {
  const { figure, names } = sentence.tokens[at] as Token & { kind: 'figure' };
  if (isDenied(sentence, at) || isOfOthers(sentence, at, context)) return [];
  const counted = countedAt(sentence, at, figure);
  const words = ownWords(sentence, counted ?? at, figure, context);
  const titled = titledBefore(sentence, at, context.titles);
  const named = (titled && context.meant?.get(titled.id)) ?? titled;
  const unit =
    named && unitFor(figure, named, { system: context.system, told: true, asked: false, all, had: undefined });
  const byTitle: Option | undefined =
    named && unit && (context.names.has(at - 1) || !context.sought.has(named.id))
      ? {
          record: named,
          figure: asRole(figure, named),
          unit,
          unitAssumed: isUnitAssumed(figure, named, unit),
          score: weights.title,
          told: true,
        }
      : undefined;
  if (byTitle && titled && isPlausible(asRole(figure, titled), byTitle.unit, titled)) return [byTitle];
  const sized = new Set(sizeOfEach(sentence, at, context));
  const counts = isCountOf(sentence, at, context);
  const options: Option[] = [];
  for (const record of candidates(figure, words, context)) {
    if (sized.size > 0 && !sized.has(record)) continue;
    if (counted !== undefined && record.dimension !== 'count') continue;
    if (counts && record.dimension !== 'count' && !record.roles?.after?.includes(words.next ?? '')) continue;
    const own = shareIn(figure, names, record);
    const option = optionOf(sentence, own, record, context, { words, all, counts, isSized: sized.has(record) });
    if (option && option.score >= enough) options.push(option);
  }
  // Of no size that it has, and of nothing else that a word tells, one side of a patch for another aside: it is asked again.
  const isOther = ({ told, record }: Option): boolean => told && !(named?.inGroup && record.inGroup);
  if (byTitle && !context.sought.has(byTitle.record.id) && !options.some(isOther)) return [byTitle];
  return preferJudged(nearEnoughOf(options), figure, context)
    .sort((a, b) => b.score - a.score || (a.record.id < b.record.id ? -1 : 1))
    .slice(0, kept);
}

/** A figure with its unit that is far from any size a role has is of another, where there is one: 800 ft is no depth. */
function nearEnoughOf(options: readonly Option[]): readonly Option[] {
  const near = options.filter(({ figure, unit, record }) => !figure.unit || !isFarFrom(figure, unit, record));
  return near.length > 0 ? near : options;
}

/** A bare number that nothing tells is likelier the figure that a limit judges than one of another kind: "what about 50" of a spacing. */
function preferJudged(options: readonly Option[], { unit }: Figure, { judged, kept: had }: Context): Option[] {
  const meant = unit ? undefined : options.find(({ record, told }) => record.id === judged && !told);
  const isRivalled = options.some(
    (each) => each !== meant && each.record.dimension === meant?.record.dimension && each.score >= meant.score,
  );
  if (!meant || isRivalled) return [...options];
  const more = had.has(meant.record.id) ? weights.judgedAgain : weights.judged;
  return options.map((each) => (each === meant ? { ...each, score: each.score + more } : each));
}

/** What stands around a figure. */
interface Around {
  readonly words: Words;
  readonly all: readonly Figure[];
  /** True where it counts what stands right after it. */
  readonly counts: boolean;
  /** True where the record is what each of the things counted before it has. */
  readonly isSized: boolean;
}

function optionOf(
  sentence: Sentence,
  figure: Figure,
  record: QuantityRecord,
  context: Context,
  { words, all, counts, isSized }: Around,
): Option | undefined {
  if (!couldMeasure(figure, record)) return undefined;
  const near = context.near.get(record.id);
  const asked = context.asked === record.id;
  const had = context.kept.get(record.id);
  if (
    near !== 0 &&
    !asked &&
    !(
      isSayable(record) &&
      ((near === 1 && (!hasField(record) || (figure.form === 'ratio' && record.parts))) ||
        had !== undefined ||
        (counts && near !== undefined) ||
        isInSetting(record, sentence))
    )
  )
    return undefined;
  const { word, weak } = wordScore(figure, words, record, context, isInSetting(record, sentence));
  const place = placeInGroup(figure, all, record, context.sides);
  const group = place > 0 ? weights.group : place < 0 ? weights.outOfGroup : 0;
  const told =
    word > 0 || group > 0 || (figure.trend !== undefined && record.dimension === 'temperature' && near !== undefined);
  if (!told && !asked && figure.form !== 'ratio' && context.inWords?.has(record.id)) return undefined;
  const { before: labels = [], after: behind = [] } = record.roles ?? {};
  // A label that stands on either side: "empty 6", "6 empty".
  const isLabel = (word: string): boolean => labels.includes(word) && behind.includes(word);
  const led = labels.some((each) => words.before.includes(each)) || (words.next !== undefined && isLabel(words.next));
  const unit = unitFor(figure, record, {
    system: context.system,
    told,
    led,
    counts,
    asked,
    all,
    had: had?.unit,
    kept: [...context.kept.values()].map((each) => each.unit),
  });
  if (
    !unit ||
    (record.counted && !Number.isInteger(figure.number)) ||
    (isArticle(figure) && record.dimension !== 'count')
  )
    return undefined;
  const plausible = isPlausible(asRole(figure, record), unit, record);
  if (
    !told &&
    !asked &&
    !(
      plausible &&
      (figure.unit ||
        had !== undefined ||
        figure.form === 'ratio' ||
        mayBeBare(record, near, weak, context.aimed) ||
        (led && weak > 0 && record.bareTold && (near ?? farOff) < nearEnough))
    )
  )
    return undefined;
  const isOneMore = record.summed?.some((each) => words.before.includes(each)) ?? false;
  const score =
    word +
    (isSized ? weights.sized : 0) +
    (isOneMore ? weights.named : 0) +
    (told ? weights.told : 0) +
    weak +
    group +
    (near === undefined ? (context.aimed ? weights.far : 0) : (weights.near[near] ?? 0)) +
    (asked ? weights.asked : 0) +
    (context.sought.has(record.id) ? weights.sought : 0) +
    (plausible ? 0 : weights.implausible) +
    (had === undefined ? 0 : likeness(toBase(figure.number, unit), toBase(had.number, had.unit))) +
    (record.plain && (near ?? 0) <= 2 ? weights.plain : 0) +
    (figure.unit === undefined && record.dimension === 'count' && word > 0 ? weights.count : 0) +
    (!told && !asked && had === undefined && !isInSetting(record, sentence) ? weights.outOfSetting : 0) +
    (record.default && !told && !asked ? weights.untold * (record.setting ? 1.5 : 1) : 0);
  return {
    record,
    figure: asRole(figure, record),
    unit,
    unitAssumed: isUnitAssumed(figure, record, unit),
    score,
    told,
    isOneMore,
  };
}

/** How likely a figure is to take the place of one of the job: the nearer in size, the likelier. */
function likeness(now: number, before: number): number {
  const tenfolds = Math.abs(Math.log10(now / before));
  return weights.kept - (Number.isFinite(tenfolds) ? weights.tenfold * tenfolds : 0);
}

/** The only quantities a figure could be: those near what is asked, those that a word beside it speaks of, and the sides of a patch. */
function candidates(
  { group }: Figure,
  { before, after, right }: Words,
  { quantities, byWord, near, asked, sides, kept: had }: Context,
): Set<QuantityRecord> {
  const found = new Set<QuantityRecord>();
  const add = (id: string): void => {
    const record = quantities.get(id);
    if (record) found.add(record);
  };
  for (const id of near.keys()) add(id);
  for (const id of had.keys()) add(id);
  if (asked) add(asked);
  if (group !== undefined) for (const record of sides) found.add(record);
  for (const word of right ? [right, ...before, ...after] : [...before, ...after])
    for (const record of byWord.get(word) ?? []) found.add(record);
  return found;
}

/** True when a number with neither unit nor word beside it can still be this: what is asked depends on it closely, and people are asked for it. */
const mayBeBare = (
  { bare, plain, question }: QuantityRecord,
  near: number | undefined,
  weak: number,
  aimed: boolean,
): boolean =>
  aimed &&
  Boolean(bare) &&
  near !== undefined &&
  near <= nearEnough &&
  (weak > 0 || near <= 1 || Boolean(plain ?? question));

/** "One load", "one tank": one that counts, and measures nothing. */
const isArticle = ({ form, number, unit }: Figure): boolean => form === 'spelled' && number === 1 && unit === undefined;
