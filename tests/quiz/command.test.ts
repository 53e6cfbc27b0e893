import { describe, expect, test } from 'vitest';
import { readQuizCall } from '../../src/server/command/quiz-call.ts';

describe('arguments of the command', () => {
  test('as the help shows them', () => {
    expect(readQuizCall('--topic rolling --count 10 --level easy --seed a --format json'.split(' '))).toEqual({
      request: { topics: ['rolling'], levels: ['easy'], kinds: [], count: 10, variant: 'A', seed: 'a' },
      format: 'json',
      key: true,
      spreadsheet: false,
    });
    expect(
      readQuizCall([
        '--topic',
        'Tack, mix',
        '--topic=lifts',
        '--seat',
        'blade',
        '--variant',
        'B',
        '--no-key',
        '-o',
        'x.csv',
        '--format=csv',
      ]),
    ).toEqual({
      request: { topics: ['tack', 'mix', 'lifts'], levels: [], kinds: [], count: 10, variant: 'B', seat: 'blade' },
      format: 'csv',
      key: false,
      spreadsheet: false,
      output: 'x.csv',
    });
    expect(readQuizCall(['-h'])).toBe('help');
    expect(readQuizCall(['--count', '0'])).toMatchObject({ request: { count: 0 } });
  });

  test.each([
    [['rolling'], '"rolling" is not understood. Say what it is, for example --topic rolling.'],
    [['--format', 'pdf'], '"pdf" is no format. Take text, json, csv or qti3.'],
    [['--variant', 'C'], '"C" is no variant. Take A or B.'],
    [['--count', 'ten'], '"ten" is no number of questions. Give a whole number, for example --count 10.'],
    [['--count', '2.5'], '"2.5" is no number of questions. Give a whole number, for example --count 10.'],
    [['--wat'], "Unknown option '--wat'"],
    [['--topic'], "Option '--topic <value>' argument missing"],
  ])('%j', (argv, wrong) => expect(readQuizCall(argv)).toEqual({ wrong }));
});
