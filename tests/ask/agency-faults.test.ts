import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

const figure = (number: unknown, unit: unknown) => ({ number, unit });
const file = (parts: object) => ({ name: 'Alder County', source: 'Directive 7', ...parts });
const defaults = (parts: object) => file({ defaults: parts });
const limits = (parts: object) => file({ limits: parts });
const rows = (...parts: object[]) => file({ tables: { 'sign-spacing': parts } });
const row = { 'road-type': 'urban-high', a: 400, b: 400, c: 400, unit: 'ft' };
const upTo = (number: number) => ({ ...row, 'posted-speed': { max: figure(number, 'mph') } });

/** What is wrong, the file, the place that is named, and the sentence. */
const broken: readonly (readonly [what: string, file: unknown, place: string, sentence: string])[] = [];

describe('a broken agency file', () => {
  test.each(broken)('%s', (_, agency, place, sentence) => {
    const reply = ask({ question: 'how many tons for 300 x 12 ft at 2 in', agency });
    expect(reply).toMatchObject({ kind: 'unknown', reason: 'no-rule', values: [], checks: [], working: [] });
    expect(reply.text).toBe(
      `The agency's rules cannot be used${place ? `, at ${place}` : ''}: ${sentence}. ` +
        'Mend the file; nothing is answered with the general figure in its place.',
    );
  });
});
