import * as z from 'zod';
import type { Reply } from '../../ask/reply.ts';
import { fact, figure, number, span, text, unit, word } from './basics.ts';
import type { Expect, Same } from './same.ts';
import { jobSurvey, survey } from './survey.ts';

const status = z.enum(['ok', 'caution', 'stop', 'cannot-tell', 'not-applicable']).meta({ id: 'Status' });
const ends = { low: z.exactOptional(number), high: z.exactOptional(number) };
const turn = { turn: z.int().nonnegative() };
const quantity = { quantity: text };

const value = z.strictObject({ ...quantity, number, unit, text, ...ends }).meta({ id: 'Value' });

const judged = { rule: text, status, text, needs: z.exactOptional(z.array(text)) };
const verdict = z.strictObject(judged).meta({ id: 'Verdict' });
const check = z.strictObject({ ...judged, source: text }).meta({ id: 'Check' });

const step = z
  .strictObject({
    id: text,
    lift: z.exactOptional(z.int().positive()),
    title: text,
    text,
    checks: z.array(text),
    cautions: z.array(text),
  })
  .meta({ id: 'Step' });

const given = z
  .union([
    z.strictObject({ ...quantity, ...figure, from: z.exactOptional(span), ...ends }),
    z.strictObject({ ...quantity, ...word }),
  ])
  .meta({ id: 'GivenFact' });
const kept = fact({ ...quantity, ...turn }).meta({ id: 'KeptFact' });
const assumed = fact({ ...quantity, rule: text, text }).meta({ id: 'AssumedFact' });
const ignored = z.strictObject({ text, from: span, why: text }).meta({ id: 'Ignored' });

const working = z
  .strictObject({ ...quantity, formula: text, with: text, result: text, rule: text, source: text })
  .meta({ id: 'Working' });
const cause = z.strictObject({ text, remedy: text, rule: text }).meta({ id: 'Cause' });
const card = z.strictObject({ id: text, title: text, excerpt: text, score: number }).meta({ id: 'CardHit' });
const choice = z.strictObject({ text, send: text }).meta({ id: 'Choice' });
const clarify = z.strictObject({ ...quantity, text, choices: z.array(choice) }).meta({ id: 'Clarify' });
const place = z
  .strictObject({
    what: text,
    at: number,
    unit,
    side: z.exactOptional(text),
    part: z.exactOptional(text),
    length: z.exactOptional(number),
    spacing: z.exactOptional(number),
    atText: z.exactOptional(text),
    lengthText: z.exactOptional(text),
    spacingText: z.exactOptional(text),
  })
  .meta({ id: 'Place' });
const load = z
  .strictObject({
    part: text,
    what: text,
    count: z.int().nonnegative(),
    withRoom: z.exactOptional(z.int().nonnegative()),
  })
  .meta({ id: 'Load' });

const quizItem = z
  .strictObject({
    id: text,
    kind: z.enum(['one', 'many', 'order', 'number', 'true-false']),
    topic: text,
    level: text,
    seat: z.exactOptional(text),
    stem: text,
    options: z.array(z.strictObject({ text, mistake: z.exactOptional(text) })),
    key: z.union([text, number, z.array(text)]),
    tolerance: z.exactOptional(number),
    unit: z.exactOptional(text),
    why: text,
    rule: text,
    source: text,
    mustPass: z.exactOptional(z.boolean()),
    drawing: z.exactOptional(text),
  })
  .meta({ id: 'QuizItem' });
const quiz = z
  .strictObject({ seed: text, title: text, address: z.exactOptional(text), items: z.array(quizItem) })
  .meta({ id: 'Quiz' });

const said = z.strictObject(figure);
const talkPatch = z
  .strictObject({
    label: text,
    facts: z.array(fact({ ...quantity, ...turn, ...ends })),
    laid: z.exactOptional(said).meta({ description: 'Tons down so far.' }),
    laidTo: z.exactOptional(said).meta({ description: 'How far along the patch they reach.' }),
    done: z.exactOptional(z.literal(true)),
  })
  .meta({ id: 'TalkPatch' });
const talkBook = z
  .strictObject({
    patches: z.array(talkPatch),
    undo: z.exactOptional(z.strictObject({ label: text, patch: z.exactOptional(talkPatch) })),
  })
  .meta({ id: 'TalkBook', description: 'The patches put on the job, and how the last change of them is taken back.' });

const job = z
  .strictObject({
    v: z.literal(1),
    turn: z.int().nonnegative(),
    facts: z.array(fact({ ...quantity, ...turn, ...ends })),
    goal: z.exactOptional(text),
    asked: z.exactOptional(text),
    checked: z.exactOptional(text),
    stage: z.exactOptional(text),
    units: z.exactOptional(z.enum(['us', 'metric'])),
    book: z.exactOptional(talkBook),
    survey: z.exactOptional(jobSurvey),
  })
  .meta({ id: 'Job', description: 'The facts known so far. Opaque: send it back as it came.' });

/** The whole reply: every list is there, every number finite, nothing else in it. */
export const replySchema = z
  .strictObject({
    kind: z.enum(['value', 'verdict', 'steps', 'fault', 'repair', 'card', 'quiz', 'clarify', 'unknown']),
    topic: text,
    text,
    values: z.array(value),
    verdict: z.exactOptional(verdict),
    checks: z.array(check),
    steps: z.array(step),
    given: z.array(given),
    kept: z.array(kept),
    ignored: z.array(ignored),
    assumed: z.array(assumed),
    working: z.array(working),
    causes: z.array(cause),
    cards: z.array(card),
    clarify: z.exactOptional(clarify),
    reason: z.exactOptional(
      z.enum([
        'no-goal',
        'missing-fact',
        'ambiguous',
        'unit-missing',
        'unit-wrong',
        'conflict',
        'out-of-range',
        'no-rule',
        'out-of-scope',
      ]),
    ),
    layout: z.array(place),
    load: z.array(load),
    survey: z.exactOptional(survey),
    quiz: z.exactOptional(quiz),
    cautions: z.array(text),
    next: z.array(text).max(4),
    rules: z.strictObject({ version: text }),
    job,
  })
  .meta({ id: 'Reply' });

/** Fails to compile when the schema and the type part ways. */
export type ReplyAgrees = Expect<Same<z.infer<typeof replySchema>, Reply>>;
