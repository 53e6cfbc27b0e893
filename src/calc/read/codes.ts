import { at, type Tokens } from './lexer.ts';
import { measures, type NameRead, name } from './name-read.ts';
import { gradeLetters, notCodes, routeWords, spacedGrades } from './name-words.ts';

/** Letters glued to digits, or joined to them by a hyphen: SS-1h, CRS-2P, TA-10, W20-1a, I-80, F-250. */
export function readCode(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  let next = i + 1;
  if (at(tokens, next).text === '-' && !at(tokens, next).gap) next++;
  else if (spacedCode(tokens, i)) return endOfCode(tokens, i, i + 1);
  if (at(tokens, next).kind !== 'number' || at(tokens, next).gap) return undefined;
  if (notCodes.has(first.text) || (first.raw === 'm' && next === i + 1)) return undefined;
  return endOfCode(tokens, i, next);
}

/** PG 64-22, RC 250: a grade with a blank, unless a unit shows a figure. */
function spacedCode(tokens: Tokens, i: number): boolean {
  if (!spacedGrades.has(at(tokens, i).text) || at(tokens, i + 1).kind !== 'number') return false;
  return !measures(tokens, i + 2) || at(tokens, i).text === 'pg';
}

function endOfCode(tokens: Tokens, i: number, number: number): NameRead {
  const first = at(tokens, i).text;
  let next = number + 1;
  for (let parts = 0; parts < 4; parts++) {
    const token = at(tokens, next);
    if (token.gap && !(first === 'pg' && token.text === '-' && !at(tokens, next + 1).gap)) break;
    if (token.kind === 'letters' && token.text.length <= 2 && token.text !== 'x') next++;
    else if (token.text === '-' && at(tokens, next + 1).kind === 'number' && !at(tokens, next + 1).gap) next += 2;
    else break;
  }
  if (first === 'i' || routeWords.has(first)) return name('route', next);
  return name(gradeLetters.has(first) ? 'grade' : 'other', next);
}
