import { jsonIn } from '../../../rules/json.ts';
import type { QuizItem } from '../../reply.ts';
import type { QuizSet } from '../build.ts';
import { mostItems } from '../request.ts';
import { type ItemKind, kinds } from '../shapes.ts';

/** Longest file that is read as a kept set, in characters. */
export const longestKept = 1_000_000;

/** A set as the desk saved it, from the text of its file; undefined for one that is none, or is damaged. */
export function readKept(text: string): QuizSet | undefined {
  if (text.length > longestKept) return undefined;
  const json = jsonIn(text)?.json;
  return isSet(json) ? json : undefined;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= 4000;
const isTextOrNone = (value: unknown): boolean => value === undefined || isText(value);
const isTexts = (value: unknown): boolean =>
  value === undefined || (Array.isArray(value) && value.length <= mostItems && value.every(isText));

function isSet(json: unknown): json is QuizSet {
  if (!isRecord(json) || !isRecord(json.rules) || !isBlueprint(json.blueprint)) return false;
  const { seed, title, variant, rules, items } = json;
  return (
    [seed, title, rules.version].every(isText) &&
    (variant === 'A' || variant === 'B') &&
    Array.isArray(items) &&
    items.length > 0 &&
    items.length <= mostItems &&
    items.every(isItem)
  );
}

const isBlueprint = (value: unknown): boolean =>
  isRecord(value) &&
  typeof value.count === 'number' &&
  [value.topics, value.levels, value.kinds, value.swaps, value.about].every(isTexts) &&
  isTextOrNone(value.seat) &&
  (value.units === undefined || value.units === 'metric');

function isItem(value: unknown): value is QuizItem {
  if (!isRecord(value)) return false;
  const { id, kind, topic, level, stem, options, key, why, rule, source } = value;
  return (
    [id, topic, level, stem, why, rule, source].every(isText) &&
    kinds.includes(kind as ItemKind) &&
    [value.unit, value.seat, value.drawing].every(isTextOrNone) &&
    (value.tolerance === undefined || typeof value.tolerance === 'number') &&
    (typeof key === 'number' ? kind === 'number' : isText(key) || (Array.isArray(key) && isTexts(key))) &&
    Array.isArray(options) &&
    options.every((option) => isRecord(option) && isText(option.text) && isTextOrNone(option.mistake))
  );
}
