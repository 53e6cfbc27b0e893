import type { Job, Reply, Request } from '../../src/ask/reply.ts';
import { capital } from '../../src/ask/say.ts';
import { titleOf } from '../../src/ask/views/names.ts';

/** An invented engine: it knows a few whole sentences, so that the doors can be tested apart from what is behind them. */
export function fakeAsk({ question, job, units }: Request): Reply {
  const turn = (isJob(job) ? job.turn : 0) + 1;
  const facts = isJob(job) ? job.facts : [];
  const make = scenes[question] ?? unknown;
  const reply = make(question);
  return {
    ...reply,
    job: { v: 1, turn, facts: [...facts, ...factsIn(reply, turn)].slice(-4), ...(units ? { units } : {}) },
  };
}

/** A reply that refuses, as the engine's own helper makes it. */
export function fakeRefuse(reason: NonNullable<Reply['reason']>, text: string): Reply {
  return { ...empty, kind: 'unknown', topic: reason, reason, text };
}

const isJob = (job: unknown): job is Job => typeof job === 'object' && job !== null && 'facts' in job;
const factsIn = ({ given }: Reply, turn: number) =>
  given.flatMap((fact) =>
    'unit' in fact ? [{ quantity: fact.quantity, number: fact.number, unit: fact.unit, turn }] : [],
  );

const empty: Reply = {
  kind: 'unknown',
  topic: 'no-goal',
  text: '',
  values: [],
  checks: [],
  steps: [],
  given: [],
  kept: [],
  ignored: [],
  assumed: [],
  working: [],
  causes: [],
  cards: [],
  layout: [],
  load: [],
  cautions: [],
  next: [],
  rules: { version: 'test0001' },
  job: { v: 1, turn: 0, facts: [] },
};

/** Every list filled, and in all of them text that would be markup if it were not escaped. */
export const hostile = `<script>alert(1)</script><img src=x onerror=alert(2)>" onmouseover="alert(3)' & <b>`;

const tons = (): Reply => ({
  ...empty,
  kind: 'value',
  topic: 'premix-mass',
  text: [
    `${capital(titleOf('premix-mass'))}: 44.0 tons (42.0 to 48.0 tons).`,
    'From patch length 300 ft, patch width 12 ft, patch depth 2 in.',
    'Area 400 sq yd. Lifts 2.',
    'Assumed: compacted weight 110 lb/sq yd/in (105 to 120 lb/sq yd/in), 300 read as patch length 300 ft.',
  ].join('\n'),
  values: [
    { quantity: 'premix-mass', number: 44, unit: 'ton', text: '44.0 tons', low: 42, high: 48 },
    { quantity: 'patch-area', number: 400, unit: 'yd2', text: '400 sq yd' },
    { quantity: 'lift-max', number: 1, unit: 'in', text: '1 in' },
  ],
  checks: [
    {
      rule: 'lift-max',
      status: 'stop',
      text: 'Stop: 2 in is over the 1 in a lift may be, rolled: lay it in 2 lifts. Split it into more lifts and roll each one.',
      source: 'common practice, no source',
    },
    {
      rule: 'air-temperature',
      status: 'caution',
      text: 'Take care: 48 degF is under the 50 degF and rising that cold mix wants.',
      source: 'common practice, no source',
    },
    {
      rule: 'lift-min',
      status: 'cannot-tell',
      text: "Can't tell: say the largest stone and I can hold the lift against it.",
      source: 'common practice, no source',
      needs: ['stone-size'],
    },
    {
      rule: 'end-spread',
      status: 'ok',
      text: 'Holds: 2 ft past the tack at each end.',
      source: 'common practice, no source',
    },
  ],
  steps: [
    {
      id: 'order-and-check',
      title: 'Order and check',
      text: '',
      checks: [
        'Tickets match the order: 44.0 tons',
        'Temperature of the first load read and written down',
        'Trucks within posted limits',
      ],
      cautions: ['Nobody behind a backing truck without a spotter.'],
    },
  ],
  given: [
    { quantity: 'patch-length', number: 300, unit: 'ft', from: [18, 21] },
    { quantity: 'patch-width', number: 12, unit: 'ft', from: [24, 29] },
    { quantity: 'patch-depth', number: 2, unit: 'in', from: [33, 37] },
  ],
  ignored: [{ text: '7', from: [40, 41], why: 'not used: nothing here tells what it is of' }],
  assumed: [
    {
      quantity: 'unit-weight',
      number: 110,
      unit: 'lb/yd2/in',
      rule: 'quantity/unit-weight',
      text: 'compacted weight 110 lb/sq yd/in (105 to 120 lb/sq yd/in)',
    },
    {
      quantity: 'patch-length',
      number: 300,
      unit: 'ft',
      rule: 'quantity/patch-length',
      text: '300 read as patch length 300 ft',
    },
  ],
  working: [
    {
      quantity: 'patch-area',
      formula: 'patch area = patch length × patch width',
      with: '300 ft × 12 ft',
      result: '400 sq yd',
      rule: 'relation/patch-area',
      source: 'geometry',
    },
    {
      quantity: 'premix-mass',
      formula: 'premix in place = patch area × patch depth × compacted weight',
      with: '400 sq yd × 2 in × 110 lb/sq yd/in',
      result: '44.0 tons',
      rule: 'relation/premix-mass',
      source: 'NAVEDTRA 14080, Equipment Operator training course, US Navy, p. 8-31',
    },
  ],
  cards: [
    { id: 'term-lift', title: 'What a lift is', excerpt: 'One layer, laid and rolled before the next.', score: 1 },
  ],
  cautions: [
    'Loads within legal and posted weight; a posted limit is the whole truck.',
    "Your agency's rules come before these.",
  ],
  next: ['How many loads?', 'How much tack?', 'How thick is each lift?'],
});

const thick = (): Reply => ({
  ...tons(),
  kind: 'verdict',
  topic: 'lift-max',
  verdict: { rule: 'lift-max', status: 'stop', text: tons().checks[0]!.text },
  text: tons().checks[0]!.text,
  values: [
    { quantity: 'lift-thickness', number: 2, unit: 'in', text: '2 in' },
    { quantity: 'lift-max', number: 1, unit: 'in', text: '1 in' },
  ],
});

const howDeep = (): Reply => ({
  ...empty,
  kind: 'clarify',
  topic: 'premix-mass',
  reason: 'missing-fact',
  text: 'How deep is the patch, on average? I have patch length 150 ft, patch width 12 ft.',
  clarify: {
    quantity: 'patch-depth',
    text: 'How deep is the patch, on average? I have patch length 150 ft, patch width 12 ft.',
    choices: ['1 in', '1 1/2 in', '2 in'].map((text) => ({ text, send: text })),
  },
});

const everything = (): Reply => ({
  ...tons(),
  kind: 'fault',
  text: `The sent job could not be read.\n${hostile}`,
  values: [{ quantity: hostile, number: 1, unit: 'ton', text: `1 ${hostile}` }],
  checks: [{ rule: hostile, status: 'caution', text: hostile, source: hostile, needs: [hostile] }],
  steps: [{ id: hostile, lift: 1, title: hostile, text: hostile, checks: [hostile], cautions: [hostile] }],
  ignored: [{ text: hostile, from: [0, 1], why: hostile }],
  assumed: [{ quantity: hostile, choice: hostile, rule: hostile, text: hostile }],
  working: [{ quantity: hostile, formula: hostile, with: hostile, result: hostile, rule: hostile, source: hostile }],
  causes: [{ text: hostile, remedy: hostile, rule: hostile }],
  cards: [{ id: hostile, title: hostile, excerpt: hostile, score: 1 }],
  clarify: { quantity: hostile, text: hostile, choices: [{ text: hostile, send: hostile }] },
  layout: [
    { what: hostile, at: 100, unit: 'ft', side: hostile },
    { what: 'sign', at: 600, unit: 'ft' },
  ],
  quiz: {
    seed: 's',
    title: hostile,
    items: [
      {
        id: 'q',
        kind: 'one',
        topic: hostile,
        level: 'basic',
        stem: hostile,
        options: [{ text: hostile }],
        key: hostile,
        why: hostile,
        rule: hostile,
        source: hostile,
      },
    ],
  },
  cautions: [hostile],
  next: [hostile],
});

const out = (): Reply => ({
  ...empty,
  kind: 'clarify',
  topic: 'patch-depth',
  reason: 'out-of-range',
  text: 'Two feet is unlikely.',
  clarify: { quantity: 'patch-depth', text: 'Two feet is unlikely.', choices: [] },
});
const unknown = (): Reply => ({ ...empty, reason: 'no-goal', text: 'That is not something I have a rule for.' });
const broken = (): Reply => {
  throw new TypeError('secret inside /home/somebody');
};

const scenes: Readonly<Record<string, (question: string) => Reply>> = {
  'how many tons for 300 x 12 ft at 2 in': tons,
  'can we lay a 2 in lift': thick,
  'tons for 150 x 12 ft': howDeep,
  '2 ft deep': out,
  everything,
  break: broken,
};
