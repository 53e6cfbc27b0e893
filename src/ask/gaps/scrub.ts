import { heads } from '../../rules/words.ts';
import { headOf } from '../vocabulary.ts';
import { gaps as words } from '../wording/gaps.en.ts';

const head = headOf(heads);
/** Two and more left out one after the other stand as one. */
const severalLeft = /…(?: …){1,200}/g;
const endings = ['', 's', 'es', 'ed', 'd', 'ing'];

/** True for a word of the trade as it stands: a slip of one letter may make a name of it. */
function isKnown(word: string): boolean {
  return endings.some((ending) => {
    if (!word.endsWith(ending)) return false;
    const stem = word.slice(0, word.length - ending.length);
    return Object.hasOwn(heads, stem) || head(stem) !== stem;
  });
}

/**
 * A question without what may tell of a person: addresses of mail and pages, telephone numbers, words after a title or
 * "my name is", and words with a capital inside a sentence that the trade does not know. Never longer than `words.longest`.
 */
export function scrub(question: string): string {
  const plain = question
    .replace(/\s{1,200}/g, ' ')
    .trim()
    .slice(0, words.longest)
    .split(' ')
    .map((word) => (/@|:\/\/|^www\./i.test(word) ? words.left : word))
    .join(' ');
  return withoutNames(withoutPhones(plain)).replace(severalLeft, words.left);
}

/** Seven figures and more in one number, as telephones have; sizes and stations have fewer. */
function withoutPhones(text: string): string {
  return text.replace(/\+?\d[\d().-]{5,24}\d/g, (number) =>
    number.replace(/\D/g, '').length >= 7 && !/^\d{1,12}\.\d{1,12}$/.test(number) ? words.left : number,
  );
}

function withoutNames(text: string): string {
  const list = text.split(' ');
  // All in capitals: they tell nothing.
  const capitals = /\p{Ll}/u.test(text);
  const bare = list.map((word) => word.replace(/^[^\p{L}]{1,5}|[^\p{L}]{1,5}$/gu, ''));
  const lower = bare.map((word) => word.toLowerCase());
  const out = new Set<number>();
  lower.forEach((word, at) => {
    const before = lower.slice(0, at).join(' ');
    const named = words.introduced.some((phrase) => before === phrase || before.endsWith(` ${phrase}`));
    const said = at === 0 && words.says.includes(lower[1] ?? '');
    const starts = at === 0 || /[.!?]$/.test(list[at - 1]!);
    const capital = capitals && !starts && /^\p{Lu}\p{Ll}/u.test(bare[at]!);
    // A second word of a name: "Mr Miller" and what goes on with a capital.
    const goesOn = out.has(at - 1) && /^\p{Lu}\p{Ll}/u.test(bare[at]!);
    if (word !== '' && !/\d/.test(list[at]!) && (((named || said || capital) && !isKnown(word)) || goesOn)) out.add(at);
  });
  return list.map((word, at) => (out.has(at) ? word.replace(bare[at]!, words.left) : word)).join(' ');
}
