import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

/** What was read in a question: each quantity with its figure, `300 ft`. */
const given = (question: string, sent: object = {}): Record<string, string> =>
  Object.fromEntries(
    ask({ question, ...sent }).given.map((fact) => [
      fact.quantity,
      'choice' in fact ? fact.choice : `${fact.number} ${fact.unit}`,
    ]),
  );

describe('words beside a figure tell its role', () => {
  test.each([
    [
      'the word after',
      'tons for 12 ft wide, 300 ft long, 2 in deep',
      { 'patch-width': '12 ft', 'patch-length': '300 ft', 'patch-depth': '2 in' },
    ],
    [
      'the word before',
      'tons for length 300 ft, width 12 ft, depth 2 in',
      { 'patch-width': '12 ft', 'patch-length': '300 ft', 'patch-depth': '2 in' },
    ],
    [
      'against the size: wider than long',
      'tons for 12 ft long, 30 ft wide, 2 in deep',
      { 'patch-width': '30 ft', 'patch-length': '12 ft', 'patch-depth': '2 in' },
    ],
    [
      'small words between',
      'tons, the length of it is 300 ft, 12 ft in width, 2 in',
      { 'patch-width': '12 ft', 'patch-length': '300 ft', 'patch-depth': '2 in' },
    ],
    [
      'bare numbers with their words',
      'tons for 150 long, 12 wide, 2 thick',
      { 'patch-width': '12 ft', 'patch-length': '150 ft', 'patch-depth': '2 in' },
    ],
    ['a truck', 'how many loads for 44 tons in 12 ton trucks', { 'premix-mass': '44 ton', 'truck-payload': '12 ton' }],
    [
      'two figures of one dimension',
      'merging taper, 12 ft lane at 45 mph',
      { offset: '12 ft', 'posted-speed': '45 mph' },
    ],
    [
      'the drum and the patch',
      'how many roller passes, 12 ft wide, 54 in drum',
      { 'patch-width': '12 ft', 'drum-width': '54 in' },
    ],
    [
      'joined by "and"',
      'how many roller passes, 12 ft wide and a 54 in drum',
      { 'patch-width': '12 ft', 'drum-width': '54 in' },
    ],
    [
      'a word that goes with the figure after it',
      'roller passes, width of 9 ft and drum of 66 in',
      { 'patch-width': '9 ft', 'drum-width': '66 in' },
    ],
    [
      'the bar and the rate',
      'how far will 600 gal go, 12 ft bar, 0.08 gal/yd2',
      { 'tank-volume': '600 gal', 'spray-width': '12 ft', 'tack-rate': '0.08 gal/yd2' },
    ],
  ])('%s', (_, question, wanted) => expect(given(question)).toMatchObject(wanted));
});

describe('the size of a patch in one piece', () => {
  test.each([
    ['300 x 12 ft', '300 ft', '12 ft'],
    ['12 x 300 ft', '300 ft', '12 ft'],
    ["12' x 300'", '300 ft', '12 ft'],
    ['100 yd by 12 ft', '100 yd', '12 ft'],
    ['12 ft by 0.1 mi', '0.1 mi', '12 ft'],
    ['300 x 12', '300 ft', '12 ft'],
    ['12 x 12 ft', '12 ft', '12 ft'],
    ['8 x 6 ft', '8 ft', '6 ft'],
    ['300 ft x 144 in', '300 ft', '144 in'],
  ])('%s: the longer is the length', (size, long, wide) =>
    expect(given(`tons for ${size} at 2 in`)).toEqual({
      'patch-length': long,
      'patch-width': wide,
      'patch-depth': '2 in',
    }),
  );

  test.each(['300 x 12 x 2', '12 x 300 x 2', "300' x 12' x 2\"", '300 ft x 12 ft x 2 in', '12x300x2in'])(
    '%s: the third is the depth',
    (size) =>
      expect(given(`how many tons for ${size}`)).toEqual({
        'patch-length': '300 ft',
        'patch-width': '12 ft',
        'patch-depth': '2 in',
      }),
  );

  test('under metric units bare numbers are metres and millimetres', () =>
    expect(given('how much mix for 90 x 3.6, 50 deep', { units: 'metric' })).toEqual({
      'patch-length': '90 m',
      'patch-width': '3.6 m',
      'patch-depth': '50 mm',
    }));
});

describe('a count before a figure counts what that is of', () => {
  test.each([
    [
      '3 patches 10 x 20 ft at 1 in, tons',
      { 'patch-count': '3 1', 'patch-length': '20 ft', 'patch-width': '10 ft', 'patch-depth': '1 in' },
    ],
    [
      'three 10 x 20 ft patches at 1 in, tons',
      { 'patch-count': '3 1', 'patch-length': '20 ft', 'patch-width': '10 ft', 'patch-depth': '1 in' },
    ],
  ])('%s', (question, wanted) => expect(given(question)).toEqual(wanted));

  test('"one" that only points is no figure', () => {
    const read = given('9 ft bar, 600 gal in the tank, 0.05 gal/yd2, how far does one tank go');
    expect(read['tank-volume']).toBe('600 gal');
  });
});

describe('ratios', () => {
  test.each([
    ['one to one is half emulsion', 'residual of .06 gal/yd2 sprayed, cut 1:1', { dilution: '50 %' }],
    ['a side slope', 'how high is the row for 12 ft at 1 in, slope 2:1', { 'side-slope': '2 1' }],
  ])('%s', (_, question, wanted) => expect(given(question)).toMatchObject(wanted));

  test('unlike parts of a mixture could mean two things, so they are asked about', () => {
    const reply = ask({ question: 'tack rate for .05 residual cut 3:1' });
    expect(given('tack rate for .05 residual cut 3:1')).not.toHaveProperty('dilution');
    expect(
      [reply.kind, ...reply.ignored.map(({ text }) => text)].some((each) => each === 'clarify' || each === '3:1'),
    ).toBe(true);
  });
});

describe('what was asked last takes a bare figure', () => {
  test.each([
    ['how many tons for 300 x 12 ft', '2', 'patch-depth', '2 in'],
    ['how many tons for 300 x 12 ft', '2 in', 'patch-depth', '2 in'],
    ['how many tons for 300 ft at 2 in', '12', 'patch-width', '12 ft'],
    ['how many tons for 12 ft wide, 2 in deep', '300', 'patch-length', '300 ft'],
    ['buffer length', '45', 'posted-speed', '45 mph'],
  ])('%s: %s', (question, answer, quantity, figure) => {
    const asked = ask({ question });
    expect(asked.clarify?.quantity).toBe(quantity);
    expect(given(answer, { job: asked.job })[quantity]).toBe(figure);
  });

  test('a figure whose word says otherwise is not taken for it', () => {
    const asked = ask({ question: 'how many tons for 300 x 12 ft' });
    expect(given('10 ft wide', { job: asked.job })).toEqual({ 'patch-width': '10 ft' });
  });
});

describe('every figure is used, set aside with a reason, or asked about', () => {
  test.each([
    'how many tons for 300 x 12 ft at 2 in with 7 men',
    'tons for 300 x 12 ft at 2 in by 9 am',
    'how many lifts for 3 inches on route 12',
    'tack for 400 sq yd at .05, 17 degrees',
    'how many tons for 300 x 12 ft at 2 in, 5 of them',
  ])('%s', (question) => {
    const reply = ask({ question });
    const at = [...question.matchAll(/\d+(?:\.\d+)?/g)].map(({ index }) => index);
    const spans = [...reply.given, ...reply.ignored].flatMap((each) => ('from' in each ? [each.from] : []));
    const lost = at.filter((place) => !spans.some(([start, end]) => place >= start - 1 && place < end));
    // Names (a road, an hour) are no figures; what is neither read nor named must be asked about.
    const named = lost.filter((place) => /(?:route |by )$/.test(question.slice(0, place)));
    expect(reply.kind === 'clarify' || lost.length === named.length, `${reply.text}`).toBe(true);
    for (const { why } of reply.ignored) expect(why.length).toBeGreaterThan(5);
  });
});

test('numbers without a unit are read, and said to be assumed', () => {
  const { assumed } = ask({ question: 'how many tons for 300 x 12, 2 deep' });
  for (const [quantity, number, unit] of [
    ['patch-length', 300, 'ft'],
    ['patch-width', 12, 'ft'],
    ['patch-depth', 2, 'in'],
  ] as const) {
    expect(assumed).toContainEqual(expect.objectContaining({ quantity, number, unit }));
  }
  expect(
    ask({ question: 'how many tons for 300 ft x 12 ft, 2 in deep' }).assumed.map(({ quantity }) => quantity),
  ).not.toContain('patch-length');
});
