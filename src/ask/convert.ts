import { convert, toBase } from '../calc/quantity.ts';
import { read } from '../calc/read/read.ts';
import type { Figure } from '../calc/read/reading.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import { sayFigure } from '../calc/wording.ts';
import { jobFacts } from './facts.ts';
import { blank } from './refusal.ts';
import type { Reply } from './reply.ts';
import { capital, tidy } from './say.ts';
import type { Scene } from './scene.ts';
import { conversionWords } from './wording/commands.ts';
import { en } from './wording/en.ts';

/** Answers a bare conversion, "1.5 in to mm": one figure, a unit to turn it into, and nothing else said. */
export function conversion(scene: Scene): Reply | undefined {
  const { understood, engine, job } = scene;
  const { sentence } = understood;
  const [at] = sentence.figures;
  const token = at === undefined ? undefined : sentence.tokens[at];
  if (sentence.figures.length !== 1 || token?.kind !== 'figure' || !token.figure.unit) return undefined;
  const unit = wantedUnit(scene, token.figure);
  if (!unit) return undefined;
  const { number, unit: from, at: place } = token.figure;
  const result = convert(number, from!, unit);
  const given = sayFigure(toBase(number, from!), from!, { given: true });
  const text = sayFigure(toBase(result, unit), unit, { given: true });
  return {
    ...blank,
    kind: 'value',
    topic: 'conversion',
    text: capital(en.converted(given, text)),
    values: [{ quantity: 'conversion', number: tidy(result), unit, text }],
    given: [{ quantity: 'conversion', number, unit: from!, from: place }],
    rules: { version: engine.knowledge.version },
    job: { ...job, facts: jobFacts(understood.facts.filter(({ fresh }) => !fresh)) },
  };
}

/**
 * The unit that all that is said besides the figure comes to: "in km/h", "how many feet is". What stands there is read
 * as one of them, so that a unit is known here just as it is after a figure.
 */
function wantedUnit(
  { understood: { items, sentence }, request: { question } }: Scene,
  figure: Figure,
): Unit | undefined {
  const told = items.filter((item) => item.kind === 'word' && !isSaidBy(item.text, sentence.small));
  const [first, last] = [told[0], told.at(-1)];
  if (!first || !last) return undefined;
  const said = question.slice(first.at[0], last.at[1]);
  if (figure.at[0] >= first.at[0] && figure.at[1] <= last.at[1]) return undefined;
  const [read1, ...rest] = read(`1 ${said}`);
  if (read1?.kind !== 'figure' || !read1.unit || rest.length > 0) return undefined;
  return meant(read1.unit, read1.unclear, figure);
}

/** True for the words of a conversion and those that do not count. */
const isSaidBy = (word: string, small: ReadonlySet<string>): boolean => small.has(word) || conversionWords.has(word);

/** The unit named, when the figure can be turned into it. */
function meant(unit: Unit, unclear: string | undefined, { unit: from, form }: Figure): Unit | undefined {
  const dimension = unitRow(from!).dimension;
  const wanted =
    unclear === 'yd' && dimension === 'area' ? 'yd2' : unclear === 'yd' && dimension === 'volume' ? 'yd3' : unit;
  return unitRow(wanted).dimension === dimension &&
    (wanted !== from || form === 'station-span') &&
    unitRow(wanted).shown
    ? wanted
    : undefined;
}
