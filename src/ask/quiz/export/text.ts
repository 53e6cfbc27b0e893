import type { QuizItem } from '../../reply.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { mistakeNames, otherThings } from '../../wording/quiz-mistakes.en.ts';
import type { QuizSet } from '../build.ts';
import { drawingInWords } from '../drawing-words.ts';
import { endsInWords, keyInWords, unitInWords } from '../figures.ts';
import { keyLetters, letterAt } from './letters.ts';

/** What of a set is wanted as text. */
export interface TextWanted {
  readonly key: boolean;
  /** Version of the rules now: a key made by others says so. */
  readonly rules?: string;
}

/** A set as text: the sheet, and where it is wanted the key with the why and the sources. */
export function asText(set: QuizSet, { key, rules }: TextWanted): string {
  const parts = [sheet(set), ...(key ? [keySheet(set, rules)] : [])];
  return `${parts.join('\n\n')}\n`;
}

function sheet(set: QuizSet): string {
  const musts = set.items.some(({ mustPass }) => mustPass) ? [quiz.mustPassRule] : [];
  const head = [quiz.sheetHead(set.title, set.seed, set.rules.version), quiz.certifies, ...musts].join('\n');
  return [head, ...set.items.map(question)].join('\n\n');
}

function question(item: QuizItem, at: number): string {
  const { stem, options, mustPass, kind, drawing } = item;
  const shown = drawingInWords(drawing);
  const words = shown === undefined ? [] : [quiz.drawing(shown)];
  const answers = options.map(({ text }, place) => quiz.option(letterAt(place), text));
  const blank = kind === 'number' ? [quiz.blank(unitInWords(item.unit))] : [];
  return [quiz.question(at + 1, stem, mustPass ? quiz.mustPass : ''), ...words, ...answers, ...blank].join('\n');
}

function keySheet(set: QuizSet, now: string | undefined): string {
  const changed = now !== undefined && now !== set.rules.version ? [quiz.ruleChanged(set.rules.version, now)] : [];
  return [[quiz.keyHead, ...changed].join('\n'), ...set.items.map(keyOf)].join('\n\n');
}

function keyOf(item: QuizItem, at: number): string {
  const { options, why, source, kind } = item;
  const letters = keyLetters(item);
  const ends = kind === 'number' ? endsInWords(item) : undefined;
  const within = ends ? quiz.tolerance(...ends) : '';
  const answer =
    kind === 'number'
      ? keyInWords(item)
      : letters.map((letter) => quiz.keyAnswer(letter, textAt(item, letter))).join(quiz.keyJoin(kind === 'order'));
  const slips = options.flatMap(({ mistake }, place) =>
    mistake === undefined || otherThings.has(mistake)
      ? []
      : [quiz.mistakeLine(letterAt(place), mistakeNames[mistake] ?? mistake)],
  );
  return [quiz.keyLine(at + 1, answer, within), quiz.whyLine(why), ...slips, quiz.sourceLine(source)].join('\n');
}

const textAt = ({ options }: QuizItem, letter: string): string => options[letter.charCodeAt(0) - 65]?.text ?? '';
