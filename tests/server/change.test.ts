import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { sayFact } from '../../src/ask/views/names.ts';
import { knowledge } from '../../src/rules/knowledge.ts';

const { job } = ask({ question: 'how many tons for 300 x 12 ft at 2 in' });

/** What a job knows, one line a fact. */
const known = (facts: typeof job.facts) => facts.map((fact) => sayFact(fact)).sort();

/** Every figure that can be assumed, and so be pressed on the page. */
const assumable = [...knowledge.quantities.values()].flatMap(({ id, default: figure }) =>
  figure ? [{ quantity: id, number: figure.number, unit: figure.unit }] : [],
);

describe('what pressing an assumed figure puts into the box is read as that figure, and changes no other', () => {
  test.each(assumable)('$quantity', (fact) => {
    const words = sayFact(fact);
    expect(known(ask({ question: words, job }).job.facts)).toEqual([...known(job.facts), words].sort());
  });
});
