import type { Knowledge } from '../rules/knowledge.ts';
import type { Figure, QuantityRecord } from '../rules/shapes.ts';
import type { Cue } from './cue.ts';
import { type CueIndex, type CueTable, cueIndex, heardIn } from './cue-index.ts';
import type { Fact } from './facts.ts';
import type { Sentence } from './sentence.ts';

/** A quantity and the figure that words give it. */
export interface WordFigure {
  readonly record: QuantityRecord;
  readonly figure: Figure;
}

/** The words that stand for a figure, of all quantities. */
export function wordFigures(
  { quantities }: Knowledge,
  reading: (line: string) => Cue,
  laid?: CueTable,
): CueIndex<WordFigure> {
  return cueIndex(
    () =>
      [...quantities.values()].flatMap((record) =>
        (record.saidAs ?? []).flatMap(({ cues, ...figure }) => cues.map((text) => ({ text, of: { record, figure } }))),
      ),
    reading,
    laid,
  );
}

/** The words that speak of a quantity without giving its figure, of all that have a default. */
export function openWords(
  { quantities }: Knowledge,
  reading: (line: string) => Cue,
  laid?: CueTable,
): CueIndex<string> {
  return cueIndex(
    () => [...quantities.values()].flatMap(({ id, spokenOf }) => (spokenOf ?? []).map((text) => ({ text, of: id }))),
    reading,
    laid,
  );
}

/** Figures said in words: "no waste" is 0 %. */
export function figuresInWords(index: CueIndex<WordFigure>, sentence: Sentence, turn: number): Fact[] {
  const best = new Map<string, { score: number; fact: Fact }>();
  for (const { of, score } of heardIn(index, sentence)) {
    const { record, figure } = of;
    if (score <= (best.get(record.id)?.score ?? 0)) continue;
    best.set(record.id, {
      score,
      fact: { quantity: record.id, number: figure.number, unit: figure.unit, turn, fresh: true },
    });
  }
  return [...best.values()].map(({ fact }) => fact);
}
