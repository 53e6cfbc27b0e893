import { toBase } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { isQuantity, type LimitRecord, type QuantityRecord } from '../../rules/shapes.ts';
import type { CardHit } from '../reply.ts';
import { capital, say } from '../say.ts';
import type { Voice } from '../voice.ts';
import { cardWords } from '../wording/cards.ts';
import { en } from '../wording/en.ts';
import type { Card } from './card.ts';

/** A text with the figures of the records in it, in the units of the answer; an agency's own is named as theirs. */
export function filled(text: string, voice: Voice): string {
  return text.replace(/\{([a-z0-9:-]{1,80})\}/g, (_, place: string) => figureAt(place, voice) ?? en.unsettled);
}

/** A card as a reply lists it. */
export const hitOf = (card: Card, score: number, voice: Voice): CardHit => ({
  id: card.id,
  title: capital(card.title),
  excerpt: excerptIn(card, voice),
  score: Number(score.toFixed(3)),
});

/** How a card opens, and the units that its figures are told in there. */
interface Opening {
  readonly units: ReadonlyMap<string, Unit>;
  readonly excerpt: string;
}

/** How cards opened before, by the rules in force: the figures are of those, so with the same units a card opens the same. */
const opened = new WeakMap<Knowledge, Map<Card, Opening[]>>();
const mostOpenings = 8;

function excerptIn(card: Card, voice: Voice): string {
  const before = openingsOf(card, voice.knowledge);
  const same = before.find(({ units }) => [...units].every(([id, unit]) => voice.unit(id) === unit));
  if (same) return same.excerpt;
  const units = new Map<string, Unit>();
  const unit = (id: string): Unit => {
    units.set(id, voice.unit(id));
    return units.get(id)!;
  };
  const excerpt = excerptOf(filled(card.text, { ...voice, unit }));
  if (before.length < mostOpenings) before.push({ units, excerpt });
  return excerpt;
}

function openingsOf(card: Card, knowledge: Knowledge): Opening[] {
  const cards = opened.get(knowledge) ?? new Map<Card, Opening[]>();
  opened.set(knowledge, cards);
  const openings = cards.get(card) ?? [];
  cards.set(card, openings);
  return openings;
}

/** What a card rests on, in words. */
export const basisOf = ({ seen }: Card): string[] =>
  seen.map(({ mark, document = '' }) => cardWords.mark[mark](document));

const fewest = 60;
const most = 180;

/** The short answer a card opens with: its first sentences, until they say enough. */
export function excerptOf(text: string): string {
  let end = 0;
  for (const match of text.matchAll(/[.?!](?=\s|$)/g)) {
    if (end > 0 && (end >= fewest || match.index + 1 > most)) break;
    end = match.index + 1;
  }
  return capital(text.slice(0, end || most)).replaceAll('\n', ' ');
}

/** `unit-weight` is a default, `low:` and `high:` its ends; `max:`, `min:` and `stop:` are bounds of a limit. */
function figureAt(place: string, voice: Voice): string | undefined {
  const [end, id] = place.includes(':') ? (place.split(':') as [string, string]) : ['', place];
  if (end === '' || end === 'low' || end === 'high') return defaultOf(voice.knowledge.quantities.get(id), end, voice);
  return boundOf(voice.knowledge.limits.get(id), end, voice);
}

function defaultOf(record: QuantityRecord | undefined, end: '' | 'low' | 'high', voice: Voice): string | undefined {
  if (!record?.default) return undefined;
  const { number, unit, low = number, high = number } = record.default;
  const text = inWords(record, { number: { '': number, low, high }[end], unit }, voice);
  return record.agency ? cardWords.byAgency(text, record.agency.name) : text;
}

function boundOf(rule: LimitRecord | undefined, end: string, voice: Voice): string | undefined {
  const bound = { max: rule?.max, min: rule?.min, stop: rule?.stopFrom ?? rule?.stopOver }[end];
  if (!rule || !bound) return undefined;
  if (isQuantity(bound)) return defaultOf(voice.knowledge.quantities.get(bound.id), '', voice);
  const text = inWords(rule.on, bound, voice);
  return rule.agency && end !== 'stop' ? cardWords.byAgency(text, rule.agency.name) : text;
}

/** As written where the answer is in its unit and it can be written out, else converted and rounded. */
function inWords(record: QuantityRecord, figure: NonNullable<QuantityRecord['default']>, voice: Voice): string {
  const unit = voice.unit(record.id);
  const written = unit === figure.unit && Number(figure.number.toFixed(3)) === figure.number;
  return say(record, toBase(figure.number, figure.unit), unit, written);
}
