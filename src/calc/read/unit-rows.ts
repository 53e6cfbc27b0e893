import { type UnitWords, unitWords } from './unit-words.ts';

/** One spelling of a unit. */
export interface UnitRow {
  readonly words: readonly string[];
  readonly of: UnitWords;
  readonly sort: 'short' | 'long' | 'spanish' | 'exact';
  /** m.p.h.: each letter with its own full stop. */
  readonly dotted: boolean;
}

const accents: Readonly<Record<string, string>> = { á: 'a', é: 'e', í: 'i', ó: 'o', ú: 'u' };

/** The spellings by their first word, the longest first. */
export const unitRows = new Map<string, UnitRow[]>();
for (const of of unitWords) {
  for (const alias of of.exact ?? []) addRow({ words: [alias], of, sort: 'exact', dotted: false });
  for (const alias of of.short ?? []) {
    addRow({ words: wordsOf(alias), of, sort: 'short', dotted: false });
    if (alias.length > 1 && alias.length < 4) addRow({ words: [...alias], of, sort: 'short', dotted: true });
  }
  for (const alias of of.long ?? []) addRow({ words: wordsOf(alias), of, sort: 'long', dotted: false });
  for (const alias of of.spanish ?? []) {
    addRow({ words: wordsOf(alias), of, sort: 'spanish', dotted: false });
    const plain = unaccented(alias);
    if (plain !== alias) addRow({ words: wordsOf(plain), of, sort: 'spanish', dotted: false });
  }
}

/** Keeps the rows of a first word with the longest first, in the order they came where they are alike. */
function addRow(row: UnitRow): void {
  const first = row.sort === 'exact' ? row.words[0]!.toLowerCase() : row.words[0]!;
  const list = unitRows.get(first);
  if (!list) {
    unitRows.set(first, [row]);
    return;
  }
  let k = list.length;
  while (k > 0 && list[k - 1]!.words.length < row.words.length) k--;
  list.splice(k, 0, row);
}

function wordsOf(alias: string): readonly string[] {
  return alias.includes(' ') ? alias.split(' ') : [alias];
}

function unaccented(word: string): string {
  return /[áéíóú]/.test(word) ? word.replace(/[áéíóú]/g, (letter) => accents[letter]!) : word;
}
