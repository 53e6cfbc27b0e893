import { describe, expect, test } from 'vitest';
import { gapsIn, requestOf, requestsIn } from '../../scripts/gaps.mjs';
import { ask } from '../../src/ask/ask.ts';

describe('questions of a log that were not answered', () => {
  test('a line is a question, or JSON with one', () => {
    expect(requestOf('how many tons')).toEqual({ question: 'how many tons' });
    expect(requestOf('{"ask": "1.5 in to mm"}')).toMatchObject({ question: '1.5 in to mm' });
    expect(requestOf('{"turns": ["how many tons", "12 x 300"]}')).toMatchObject({ question: 'how many tons' });
    expect(requestOf('{ broken')).toBeUndefined();
  });

  test('blank lines and remarks are left out, a line that cannot be read is told', () => {
    expect(requestsIn('  \n// a remark\n# another\nhow many tons\n{ broken\n')).toEqual({
      requests: [{ question: 'how many tons' }],
      unread: [5],
    });
  });

  test('they stand by reason, the commonest first; what is answered is left out', () => {
    const requests = ['12 x 300 x 2 how many tons', 'tons for 12 ft by 300 ft', 'tons for 300 ft at 2 in', 'zzyzx'].map(
      (question) => ({ question }),
    );
    const found = gapsIn(
      requests,
      requests.map((request) => ask(request)),
    );
    expect(found.map(([reason, list]) => [reason, list.length])[0]).toEqual(['missing-fact', 2]);
    expect(found.flatMap(([, list]) => list.map(({ question }) => question))).not.toContain(requests[0]!.question);
    expect(found).toHaveLength(2);
  });
});
