import { describe, expect, test } from 'vitest';
import { readCard } from '../../scripts/cards.mjs';
import { nearest } from '../../src/rules/nearest.ts';

const known = {
  addresses: ['quantity/unit-weight', 'limit/lift-max', 'card/ppe'],
  figures: ['unit-weight', 'low:unit-weight', 'max:lift-max'],
  nearest,
};

const words = 'A row that is even gives a lift that is even, and a lift that is even rides well. ';
const good = `---
id: even-row
title: an even row
kind: craft
asks:
- even row
- how do i even the row
- fat row
links:
- limit/lift-max
seen:
- practice
- published: FM 5-434, Earthmoving Operations, ch. 4
---

Keep it even. ${words.repeat(2)}

It weighs about {unit-weight}, and *never* more. Look **twice**.
`;

const read = (text: string, name = 'even-row.md') => readCard(name, text, known);
const without = (part: string): string => good.replace(part, '');
const emergency = good
  .replace('kind: craft', 'kind: emergency\nrank: 3\nfirst: Stop.\nhappening:\n- row falls')
  .replace(', and *never* more', '')
  .replace('{unit-weight}', 'a lot');

describe('a card is read from its file', () => {
  test('a good one', () => {
    expect(read(good)).toEqual({
      id: 'even-row',
      title: 'an even row',
      kind: 'craft',
      text: `Keep it even. ${words.repeat(2).trim()}\nIt weighs about {unit-weight}, and never more. Look twice.`,
      asks: ['even row', 'how do i even the row', 'fat row'],
      links: ['limit/lift-max'],
      seen: [{ mark: 'practice' }, { mark: 'published', document: 'FM 5-434, Earthmoving Operations, ch. 4' }],
    });
  });

  test('with lines ending as another system ends them', () => {
    expect(read(good.replaceAll('\n', '\r\n'))).toEqual(read(good));
  });

  test('an emergency, with its cues', () => {
    expect(read(emergency).emergency).toEqual({ rank: 3, first: 'Stop.', cues: ['row falls'] });
  });
});

describe('a fault names the file, the field and what to do', () => {
  test.each([
    ['no front matter', 'Keep it even.', 'it must begin with front matter'],
    ['a field missing', without('title: an even row\n'), 'title: is missing'],
    ['a list missing', without('links:\n- limit/lift-max\n'), 'links: is missing: give a list'],
    ['a field nobody knows', good.replace('kind: craft', 'kind: craft\ncolour: red'), 'colour'],
    ['a field twice', good.replace('kind: craft', 'kind: craft\nkind: term'), 'kind: is there twice'],
    ['a line that is neither', good.replace('- fat row', 'fat row'), '"fat row" is neither "name: value" nor "- item"'],
    ['no such kind', good.replace('kind: craft', 'kind: crafts'), 'kind: is one of stage, craft'],
    ['two ways of asking only', without('- fat row\n'), 'asks: give three ways of asking at least'],
    ['an empty item', good.replace('- fat row', '- '), 'asks 2: is empty'],
    [
      'an id of another file',
      good.replace('id: even-row', 'id: odd-row'),
      'id: the card odd-row belongs in content/odd-row.md',
    ],
    ['no basis known', good.replace('- practice', '- hearsay'), 'seen 0: is one of published, restated'],
    ['a document left out', good.replace('- practice', '- published'), 'published and restated name their document'],
    ['a document for none', good.replace('- practice', '- practice: a friend'), 'name their document'],
    [
      'an unknown link',
      good.replace('limit/lift-max', 'limit/lift-mx'),
      'links: there is no limit/lift-mx; did you mean limit/lift-max?',
    ],
    [
      'an unknown figure',
      good.replace('{unit-weight}', '{unit-wieght}'),
      'figure: there is no unit-wieght; did you mean unit-weight?',
    ],
    [
      'an unknown end of a figure',
      good.replace('{unit-weight}', '{most:lift-max}'),
      'figure: there is no most:lift-max; did you mean max:lift-max?',
    ],
    [
      'raw HTML',
      good.replace('Look **twice**', 'Look <b>twice</b>'),
      '"<b>" is html: a card has plain paragraphs only',
    ],
    ['a script', `${good}\n<script>alert(1)</script>\n`, 'is html: a card has plain paragraphs only'],
    ['a link', good.replace('Look', '[Look](http://example.org)'), 'is link: a card has plain paragraphs only'],
    ['a heading', `${good}\n# More\n`, '"# More" is heading: a card has plain paragraphs only'],
    ['a list', `${good}\n- one\n- two\n`, 'is list: a card has plain paragraphs only'],
    ['too few words', good.replace(words.repeat(2), ''), 'it has 12 words; a card has 40 to 120'],
    ['too many words', good.replace(words, words.repeat(8)), 'a card has 40 to 120'],
    [
      'a rank where nothing happens',
      good.replace('kind: craft', 'kind: craft\nrank: 3'),
      'rank, first and happening are for emergencies',
    ],
    [
      'an emergency without a first thing to do',
      emergency.replace('first: Stop.\n', ''),
      'rank, first and happening are for emergencies',
    ],
    [
      'an emergency that waits for a figure',
      emergency.replace('a lot', '{unit-weight}'),
      'an emergency waits for no figure',
    ],
  ])('%s', (_, text, says) => {
    expect(() => read(text)).toThrow(says);
    expect(() => read(text)).toThrow(/^content\/even-row\.md: /);
  });
});
