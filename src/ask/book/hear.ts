import type { Figure } from '../../calc/read/reading.ts';
import { type Cue, isHeard, readCue } from '../cue.ts';
import type { Engine } from '../engine.ts';
import type { Span } from '../reply.ts';
import type { Sentence } from '../sentence.ts';
import { isCount, type Token } from '../token.ts';
import { labelFillers, labelWords, progressWords, talkCues } from '../wording/book-talk.en.ts';

export type TalkCommand = keyof typeof talkCues;

const cues: readonly (readonly [TalkCommand, readonly Cue[]])[] = Object.entries(talkCues).map(([command, lines]) => [
  command as TalkCommand,
  lines.map((line) => readCue(line)),
]);

/** What a sentence says of the job book. */
export interface HeardOfBook {
  readonly command?: TalkCommand;
  /** The label of a patch, "patch 3", and where it stands. */
  readonly label?: { readonly text: string; readonly at: Span };
  /** "140 ft of 300": how far along a patch it has come. */
  readonly progress?: { readonly to: Figure; readonly of: Figure };
}

/** Listens for the job book in a sentence; the first command in the order of the cues counts. */
export function heardOfBook(sentence: Sentence, engine: Engine): HeardOfBook {
  const label = labelIn(sentence, engine);
  const places = label ? new Map([...sentence.places, ['#label', [-1]]]) : sentence.places;
  const command = cues.find(([, lines]) => lines.some((cue) => isHeard(cue, { ...sentence, places })))?.[0];
  const progress = progressIn(sentence);
  return { ...(command ? { command } : {}), ...(label ? { label } : {}), ...(progress ? { progress } : {}) };
}

/** A bare whole number after "patch" that no word behind it makes a size: "patch 3", but "patch 40 long". */
function labelIn({ tokens, small }: Sentence, { byWord }: Engine): HeardOfBook['label'] {
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== 'word' || !labelWords.includes(token.head)) continue;
    let next = at + 1;
    while (isFiller(tokens[next])) next++;
    const figure = tokens[next];
    // "#3" is read as a name.
    const named = figure?.kind === 'name' ? /^#\s?(\d{1,4})$/.exec(figure.text)?.[1] : undefined;
    if (figure && named) return { text: named, at: figure.at };
    if (figure?.kind !== 'figure') continue;
    const { number, unit, unclear, group, form, low, at: span } = figure.figure;
    if (unit || unclear || group !== undefined || form || low !== undefined || !Number.isInteger(number) || number < 1)
      continue;
    const after = tokens[next + 1];
    if (isCount(tokens, next)) continue;
    const role = after?.kind === 'word' && !small.has(after.head) ? byWord.get(after.head) : undefined;
    if (role?.some((record) => record.inGroup || record.plain)) continue;
    return { text: String(number), at: span };
  }
  return undefined;
}

const isFiller = (token: Token | undefined): boolean =>
  token?.kind === 'word' ? labelFillers.includes(token.head) : token?.kind === 'mark' && token.text === '.';

/** Two lengths joined by "of", in a sentence that tells of loads or tons down; the second may leave its unit to the first. */
function progressIn({ tokens, places }: Sentence): HeardOfBook['progress'] {
  if (!progressWords.some((word) => places.has(word)) && !places.has('#mass')) return undefined;
  for (const [at, token] of tokens.entries()) {
    const [of, second] = [tokens[at + 1], tokens[at + 2]];
    if (token.kind !== 'figure' || second?.kind !== 'figure' || of?.kind !== 'word' || !isOf(of.head)) continue;
    const [to, whole] = [token.figure, second.figure];
    if (!isLength(to) && !isLength(whole)) continue;
    if ((to.unit && !isLength(to)) || (whole.unit && !isLength(whole)) || to.number > whole.number) continue;
    return { to: { ...to, ...unitOf(to, whole) }, of: { ...whole, ...unitOf(whole, to) } };
  }
  return undefined;
}

const isOf = (head: string): boolean => head === 'of' || head === 'de';
const lengths = new Set(['ft', 'm', 'yd', 'mi', 'km']);
const isLength = ({ unit }: Figure): boolean => unit !== undefined && lengths.has(unit);
const unitOf = (own: Figure, other: Figure): { unit?: NonNullable<Figure['unit']> } => {
  const unit = own.unit ?? other.unit;
  return unit ? { unit } : {};
};
