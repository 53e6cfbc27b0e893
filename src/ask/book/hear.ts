import type { Figure } from '../../calc/read/reading.ts';
import { cueIndex, heardIn } from '../cue-index.ts';
import type { Engine } from '../engine.ts';
import type { Span } from '../reply.ts';
import type { Sentence } from '../sentence.ts';
import { isCount, type Token } from '../token.ts';
import {
  dayWords,
  labelFillers,
  labelJoins,
  labelLeads,
  labelWords,
  progressWords,
  talkCues,
} from '../wording/book-talk.en.ts';
import { isWhole, type PaceHeard, paceIn } from './pace.ts';

export type TalkCommand = keyof typeof talkCues;

const commands = Object.keys(talkCues) as TalkCommand[];
const index = cueIndex(() => commands.flatMap((command) => talkCues[command].map((text) => ({ text, of: command }))));

/** What a sentence says of the job book. */
export interface HeardOfBook {
  readonly command?: TalkCommand;
  /** The label of a patch, "patch 3", and where it stands. */
  readonly label?: { readonly text: string; readonly at: Span };
  /** The labels that follow it in a list: "patches 3, 4 and 5". */
  readonly others: readonly { readonly text: string; readonly at: Span }[];
  /** How many days ago it was, where that is said: "yesterday". */
  readonly daysBack: number;
  /** Loads against how far they reached, or against what is to go. */
  readonly pace?: PaceHeard;
  /** "140 ft of 300": how far along a patch it has come. */
  readonly progress?: { readonly to: Figure; readonly of: Figure };
}

/** Listens for the job book in a sentence; the first command in the order of the cues counts. */
export function heardOfBook(sentence: Sentence, engine: Engine): HeardOfBook {
  const [label, ...others] = labelsIn(sentence, engine);
  const places = label ? new Map([...sentence.places, ['#label', [-1]]]) : sentence.places;
  const said = new Set(heardIn(index, { places, after: sentence.after }).map(({ of }) => of));
  const command = commands.find((each) => said.has(each));
  const progress = progressIn(sentence);
  const pace = paceIn(sentence);
  const daysBack = dayWords.find(([word]) => sentence.places.has(word))?.[1] ?? 0;
  return {
    ...(command ? { command } : {}),
    ...(label ? { label } : {}),
    others,
    daysBack,
    ...(pace ? { pace } : {}),
    ...(progress ? { progress } : {}),
  };
}

type Label = NonNullable<HeardOfBook['label']>;

/** Bare whole numbers after "patch" that no word behind them makes a size: "patch 3", "patches 3 and 4", but "patch 40 long". */
function labelsIn({ tokens, small }: Sentence, { byWord }: Engine): Label[] {
  for (const [at, token] of tokens.entries()) {
    const [number] = token.kind === 'name' ? (hashed.exec(token.text)?.slice(1) ?? []) : [];
    const before = tokens[at - 1];
    if (number && before?.kind === 'word' && labelLeads.includes(before.head)) return [{ text: number, at: token.at }];
    if (token.kind !== 'word' || !labelWords.includes(token.head)) continue;
    let next = at + 1;
    while (isFiller(tokens[next])) next++;
    const found: Label[] = [];
    for (let label = labelAt(tokens[next]); label; label = isAnd(tokens[next]) ? labelAt(tokens[++next]) : undefined) {
      found.push(label);
      next++;
      if (isAnd(tokens[next]) && isAnd(tokens[next + 1])) next++;
    }
    const last = found.at(-1);
    const lastAt = tokens.findIndex(({ at: [start] }) => start === last?.at[0]);
    if (!last || isCount(tokens, lastAt)) continue;
    const after = tokens[lastAt + 1];
    const role = after?.kind === 'word' && !small.has(after.head) ? byWord.get(after.head) : undefined;
    if (role?.some((record) => record.inGroup || record.plain)) continue;
    return found;
  }
  return [];
}

/** "#3" and "7b" are read as names. */
const hashed = /^#\s?(\d{1,4})$/;
const lettered = /^\d{1,4}[a-z]$/i;

function labelAt(token: Token | undefined): Label | undefined {
  if (token?.kind === 'name') {
    const text = hashed.exec(token.text)?.[1] ?? lettered.exec(token.text)?.[0];
    return text === undefined ? undefined : { text, at: token.at };
  }
  if (token?.kind !== 'figure') return undefined;
  const { number, unit, unclear, group, form, low, at } = token.figure;
  const bare = !unit && !unclear && group === undefined && !form && low === undefined;
  return bare && Number.isInteger(number) && number >= 1 ? { text: String(number), at } : undefined;
}

const isAnd = (token: Token | undefined): boolean =>
  token?.kind === 'word' ? labelJoins.includes(token.head) : token?.kind === 'mark' && token.text === ',';

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

/** True for a sentence that is about a job book or a patch of it. */
export const speaksOfJob = ({ command, label, progress, pace }: HeardOfBook): boolean =>
  command !== undefined || label !== undefined || progress !== undefined || (pace !== undefined && isWhole(pace));
