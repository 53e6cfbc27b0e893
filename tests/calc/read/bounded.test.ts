import { describe, expect, it } from 'vitest';
import { read } from '../../../src/calc/read/read.ts';

/** The least of up to `runs` runs, or the first under `limit`: what the reader needs, free of what else the machine does. */
function milliseconds(text: string, limit = 0, runs = 40): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= limit; run++) {
    const start = performance.now();
    read(text);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

const unit = [
  ...[
    '1/',
    '((((',
    '1x',
    '1-',
    '1 1/2 ',
    '1 and ',
    'a ',
    "1'",
    '1.',
    '1,',
    'one ',
    'thousand hundred ',
    '1 to ',
    'lb per ',
    'about ',
  ],
  ...[
    '10x20 each ',
    'half a ',
    'half of a half ',
    'a-',
    '½',
    '1:',
    '9',
    '- ',
    'one and a half and ',
    '1 in 1 in ',
    'minus -',
    '$',
    '$1',
  ],
  ...[
    '~',
    'at most ',
    'between 1 and ',
    '2 in ',
    '#',
    '+-',
    'sq ',
    'sta ',
    'US ',
    'PG ',
    '1+',
    '100 ',
    '°',
    'low ',
    '. ',
    '\n',
    '🚧',
    '\u0301',
  ],
];

describe('hostile texts of 2,000 characters', () => {
  it.each(unit)('%j, again and again, in under 25 ms', (piece) => {
    // It takes three; a busy machine stalls it.
    expect(milliseconds(piece.repeat(Math.ceil(2000 / piece.length)), 25)).toBeLessThan(25);
  });

  it('500 numbers in under 10 ms, and none of them lost', () => {
    const numbers = Array.from({ length: 500 }, (_, i) => i + 1);
    const text = numbers.join('; ');
    expect(milliseconds(text, 10)).toBeLessThan(10);
    expect(read(text).flatMap((item) => (item.kind === 'figure' ? [item.number] : []))).toEqual(numbers);
  });

  it.each(unit)('%j: ten times the text takes no more than some thirty times as long', (piece) => {
    const limit = 30 * Math.max(milliseconds(piece.repeat(Math.ceil(2000 / piece.length)), 0, 5), 0.3);
    expect(milliseconds(piece.repeat(Math.ceil(20_000 / piece.length)), limit)).toBeLessThan(limit);
  });
});

describe('a typical question', () => {
  it('takes a small part of the 0.3 ms an answer may take', () => {
    const asked = "Need premix for a patch 12' wide, 150' long, inch and a half deep";
    for (let warm = 0; warm < 2000; warm++) read(asked);
    expect(milliseconds(asked, 0.04, 2000)).toBeLessThan(0.04);
  });
});
