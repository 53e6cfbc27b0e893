import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { units } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { createApp } from '../../src/server/app.ts';
import { replySchema } from '../../src/server/schema/reply.ts';

const reports: string[] = [];
const app = createApp({ ask, report: (line) => reports.push(line) });

/** Jobs somebody forged: shaped like ours, with figures and names no engine would have put there. */
const number = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom(1e308, -1e308, 5e-324, 0, -1),
);
const name = fc.constantFrom(...knowledge.quantities.keys(), ...knowledge.choices.keys(), 'no-such-thing', '__proto__');
const fact = fc.oneof(
  fc.record({ quantity: name, turn: fc.nat(), number, unit: fc.constantFrom(...Object.keys(units)) }),
  fc.record({ quantity: name, turn: fc.nat(), number, unit: fc.constantFrom('ft', 'in'), low: number, high: number }),
  fc.record({ quantity: name, turn: fc.nat(), choice: fc.constantFrom('hot', 'cold', 'no-such-option') }),
  fc.record({ quantity: fc.string(), turn: fc.double(), number: fc.double(), unit: fc.string() }),
);
const job = fc.oneof(
  fc.record({ v: fc.constant(1), turn: fc.nat(), facts: fc.array(fact, { maxLength: 6 }) }),
  fc.jsonValue(),
);
const question = fc.oneof(
  fc.constantFrom(
    'how many tons',
    'how many tons for 300 x 12 ft at 2 in',
    'can we lay a 2 in lift',
    'what about 14 feet?',
  ),
  fc.string({ unit: 'binary', maxLength: 60 }),
);
const talk = fc.oneof(
  fc.record({
    first: fc.nat(),
    start: job,
    turns: fc.array(fc.record({ question }), { maxLength: 3 }),
    version: fc.string(),
  }),
  fc.jsonValue(),
);

test('whatever is posted to the API, it answers or refuses and never breaks', { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(question, job, async (question, job) => {
      reports.length = 0;
      const headers = { 'Content-Type': 'application/json' };
      const response = await app.request('/api/ask', {
        method: 'POST',
        headers,
        body: JSON.stringify({ question, job }),
      });
      expect(reports).toEqual([]);
      expect([200, 422]).toContain(response.status);
      if (response.status === 200) replySchema.parse(await response.json());
    }),
    { numRuns: 300 },
  );
});

test('whatever the form holds, there is a page, and no mark-up of anybody else in it', {
  timeout: 60_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(question, job, talk, fc.string(), async (question, job, talk, change) => {
      reports.length = 0;
      const fields = {
        question: `${question}<i>`,
        job: JSON.stringify(job),
        talk: JSON.stringify(talk),
        ...(change ? { change } : {}),
      };
      const response = await app.request('/', { method: 'POST', body: new URLSearchParams(fields) });
      expect(reports).toEqual([]);
      expect(response.status).toBe(200);
      expect(await response.text()).not.toContain('<i>');
    }),
    { numRuns: 300 },
  );
});
