import type { Token } from './token.ts';
import { doingHeads, leavingOut, objectHeads, peopleHeads, sayingHeads } from './wording/asking.ts';

const opens = new Set([
  'is',
  'are',
  'am',
  'was',
  'were',
  'do',
  'does',
  'did',
  'will',
  'would',
  'can',
  'could',
  'should',
  'may',
  'must',
  'has',
  'have',
  'check',
]);

/** Words that ask whether something will do, where they stand last: "rolled from the center out, bad?" */
const tags = new Set(
  'heavy light fat quick fast slow bad wrong pass problem trouble deal over go work close short matter hurt overkill objection objections safe legal smart dumb'.split(
    ' ',
  ),
);
const asking = ['what', 'how', 'which', 'where', 'when', 'why', 'who', 'next'];

/** A question for yes or no: it opens with a verb, or asks whether something is allowed, right, or enough. */
export function isYesOrNo(
  tokens: readonly Token[],
  places: ReadonlyMap<string, number[]>,
  small: ReadonlySet<string>,
  isFiller: boolean,
): boolean {
  if (places.has('how-many') || places.has('how-far') || places.has('how-fast')) return false;
  if (asksInAClause(tokens)) return true;
  if (places.has('check') && !isOpening(tokens, places))
    return (
      !(places.has('what') || places.has('how')) ||
      (places.get('check')![0] ?? 0) < (places.get('what') ?? places.get('how'))![0]!
    );
  if (isTagged(tokens) && !asking.some((word) => places.has(word))) return true;
  if (isTold(places)) return true;
  if (asksToDo(tokens) || (turnsRound(tokens) && !asking.some((word) => places.has(word)))) return true;
  const [first] = tokens.filter((token) => token.kind === 'word').slice(isFiller && isOpening(tokens, places) ? 1 : 0);
  return first?.kind === 'word' && opens.has(first.head) && (small.has(first.head) || opens.has(first.head));
}

/** "Five passes on one lift, is that overdoing it": a later clause that opens with a verb and its subject. */
function asksInAClause(tokens: readonly Token[]): boolean {
  return tokens.some((token, at) => {
    const [verb, subject] = [tokens[at + 1], tokens[at + 2]];
    return (
      token.kind === 'mark' &&
      verb?.kind === 'word' &&
      opens.has(verb.head) &&
      subject?.kind === 'word' &&
      subjects.has(subject.head) &&
      !asksElse(tokens, at + 1)
    );
  });
}

/** True for a clause, from its first place, that asks for something else than yes or no. */
function asksElse(tokens: readonly Token[], from: number): boolean {
  const end = tokens.findIndex(({ kind }, at) => kind === 'mark' && at > from);
  const rest = tokens.slice(from, end < 0 ? tokens.length : end);
  return rest.some((token) => token.kind === 'word' && asking.includes(token.head));
}

const subjects = new Set('that this it he they we i the those these'.split(' '));

/** "Road is bone dry can we start": the verb before who does it, in the middle of a run of words. */
function turnsRound(tokens: readonly Token[]): boolean {
  return tokens.some((token, at) => {
    const [who, then] = [tokens[at + 1], tokens[at + 2]];
    return (
      isOne(token, helpers) &&
      who !== undefined &&
      isOne(who, doers) &&
      !(then?.kind === 'word' && then.head === 'need')
    );
  });
}

const helpers: ReadonlySet<string> = new Set('do does can could should will would may must'.split(' '));
const doers: ReadonlySet<string> = new Set('i we you they he she it'.split(' '));

/** "OK, spots are painted": a word to begin with, that asks nothing. */
function isOpening(tokens: readonly Token[], places: ReadonlyMap<string, number[]>): boolean {
  const at = places.get('check') ?? [];
  const [first, second] = tokens;
  return (
    at.length === 1 &&
    at[0] === 0 &&
    first?.kind === 'word' &&
    first.at[1] - first.at[0] <= 4 &&
    second !== undefined &&
    !(
      second.kind === 'word' &&
      ['to', 'for', 'if', 'we', 'i', 'you', 'they', 'he', 'the', 'it', 'a', 'my', 'our'].includes(second.head)
    ) &&
    !tokens.some((token) => token.kind === 'mark' && token.text === '?')
  );
}

/** "Boss says forget the signs": what somebody else would have left out is put to be judged. */
function isTold(places: ReadonlyMap<string, readonly number[]>): boolean {
  if (asking.some((word) => places.has(word))) return false;
  const first = (words: ReadonlySet<string>): number =>
    Math.min(...[...words].flatMap((word) => places.get(word)?.[0] ?? []));
  const [who, says, out] = [peopleHeads, sayingHeads, leavingOut].map(first) as [number, number, number];
  return who < says && says < out && out < Number.POSITIVE_INFINITY;
}

/**
 * "So blade it?", "tell him to quit?": the last clause ends on a question mark, asks for no figure or thing, and opens with
 * something that is done, and with what or how.
 */
function asksToDo(tokens: readonly Token[]): boolean {
  const end = tokens.at(-1);
  if (end?.kind !== 'mark' || end.text !== '?') return false;
  const from = tokens.findLastIndex(({ kind }, at) => kind === 'mark' && at < tokens.length - 1) + 1;
  const clause = tokens.slice(from, -1);
  if (clause.some((token) => token.kind === 'word' && asking.includes(token.head))) return false;
  return clause.some((token, at) => {
    const next = clause[at + 1];
    return isOne(token, doingHeads) && next?.kind === 'word' && objectHeads.has(next.head);
  });
}

const isOne = (token: Token, heads: ReadonlySet<string>): boolean => token.kind === 'word' && heads.has(token.head);

function isTagged(tokens: readonly Token[]): boolean {
  const at = tokens.findLastIndex((token) => token.kind !== 'mark');
  const last = tokens[at];
  if (last?.kind !== 'word' || !tags.has(last.head)) return false;
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  return (after?.kind === 'mark' && after.text === '?') || (before?.kind === 'mark' && before.text === ',');
}
