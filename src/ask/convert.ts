import type { Figure } from '../calc/read/reading.ts';
import { convert, toBase } from '../calc/quantity.ts';
import { sayFigure } from '../calc/wording.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import { blank } from './refusal.ts';
import type { Reply } from './reply.ts';
import { capital, tidy } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';
import { conversionWords } from './wording/commands.ts';

/** Answers a bare conversion, "1.5 in to mm": one figure, a unit to turn it into, and nothing else said. */
export function conversion({ understood, engine, job }: Scene): Reply | undefined {
  const { sentence, named } = understood;
  const [at] = sentence.figures;
  const token = at === undefined ? undefined : sentence.tokens[at];
  if (sentence.figures.length !== 1 || token?.kind !== 'figure' || !token.figure.unit) return undefined;
  const unit = named.map((each) => meant(each, token.figure)).find((each) => each !== undefined);
  if (!unit || !isBare(understood)) return undefined;
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
    job,
  };
}

/** The unit named, when the figure can be turned into it. */
function meant({ unit, unclear }: { unit: Unit; unclear?: string }, { unit: from }: Figure): Unit | undefined {
  const dimension = unitRow(from!).dimension;
  const wanted = unclear === 'yd' && dimension === 'area' ? 'yd2' : unclear === 'yd' && dimension === 'volume' ? 'yd3' : unit;
  return unitRow(wanted).dimension === dimension && wanted !== from && unitRow(wanted).shown ? wanted : undefined;
}

/** True when the sentence holds no word but those of a conversion and the units themselves. */
function isBare({ sentence, named }: Scene['understood']): boolean {
  return sentence.tokens.every(
    (token) => token.kind !== 'word' || sentence.small.has(token.head) || conversionWords.has(token.head) || named.some(({ at }) => token.at[0] >= at[0] && token.at[1] <= at[1]),
  );
}
