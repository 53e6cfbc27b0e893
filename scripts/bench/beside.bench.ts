import { Engine, type RuleProperties, type TopLevelCondition } from 'json-rules-engine';
import { multiply, unit } from 'mathjs';
import MiniSearch from 'minisearch';
import { ask } from '../../src/ask/ask.ts';
import { wordsOfCards } from '../../src/ask/cards.generated.ts';
import { engine } from '../../src/ask/engine.ts';
import { cardIndex } from '../../src/ask/search/card-index.ts';
import { termsOf } from '../../src/ask/search/terms.ts';
import { telling } from '../../src/ask/search.ts';
import { sentenceOf } from '../../src/ask/sentence.ts';
import { toBase } from '../../src/calc/quantity.ts';
import { read } from '../../src/calc/read/read.ts';
import { methodsOf } from '../../src/calc/relation.ts';
import { type Known, network, solve } from '../../src/calc/solve.ts';
import { judgeLimit } from '../../src/rules/judge.ts';
import { knowledge, optionFact } from '../../src/rules/knowledge.ts';
import {
  type Condition,
  type Figure,
  isQuantity,
  type LimitRecord,
  type QuantityRecord,
} from '../../src/rules/shapes.ts';
import { whatFollows } from '../../src/rules/start.ts';
import { type Figures, median, timeEach } from './measure.ts';
import { questions } from './questions.ts';

const us = (value: number): { value: number; unit: string } => ({ value: value * 1000, unit: 'us' });
const times = (value: number): { value: number; unit: string } => ({ value, unit: 'x' });

/** The engine beside what else one could use for a part of its work, each as its own documents advise. */
export async function run(): Promise<Figures> {
  return { ...(await searching()), ...(await judging()), ...(await multiplying()), ...(await solving()) };
}

/** A whole answer beside a search of the cards alone, with the telling words that the engine itself would choose. */
async function searching(): Promise<Figures> {
  const cards = new MiniSearch({
    fields: ['title', 'asks'],
    tokenize: (text) => text.split(' '),
    processTerm: (term) => term,
    searchOptions: { boost: { title: 3, asks: 2 }, combineWith: 'OR' },
  });
  cards.addAll(Object.entries(wordsOfCards).map(([id, [title, ...asks]]) => ({ id, title, asks: asks.join(' ') })));
  const corpus = questions();
  const words = corpus.map((question) => {
    const terms = termsOf(sentenceOf(read(question), engine.vocabulary, engine.small), question);
    return [...new Set(telling(terms, cardIndex()).flatMap(({ head, typed }) => [head, typed]))];
  });
  const typo = { fuzzy: 0.3, prefix: true };
  const found = await timeEach(
    {
      ask: (round) => ask({ question: corpus[round % corpus.length]! }),
      exact: (round) => cards.search({ queries: words[round % corpus.length]! }),
      typos: (round) => cards.search({ queries: words[round % corpus.length]!, ...typo }),
    },
    { warmUp: corpus.length * 10, rounds: corpus.length * 20 },
  );
  return {
    'beside, ask median': us(median(found.ask)),
    'beside, MiniSearch on the same words': us(median(found.exact)),
    'beside, MiniSearch with fuzzy and prefix': us(median(found.typos)),
    'beside, ask to MiniSearch with fuzzy and prefix': times(median(found.ask) / median(found.typos)),
  };
}

/** Every limit on one job. The other engine has the same bounds and conditions as rules, made once. */
async function judging(): Promise<Figures> {
  const limits = [...knowledge.limits.values()];
  const solved = whatFollows(knowledge, patch);
  const facts = Object.fromEntries([...solved].map(([id, { value }]) => [id, value]));
  const other = new Engine(limits.flatMap(asRules), { allowUndefinedFacts: true });
  const taken = await timeEach(
    { ours: () => limits.map((rule) => judgeLimit(rule, solved).status), theirs: () => other.run(facts) },
    { warmUp: 30, rounds: 150 },
  );
  return {
    'beside, judging all limits': us(median(taken.ours)),
    'beside, json-rules-engine on the same limits': us(median(taken.theirs)),
    'beside, json-rules-engine to ours': times(median(taken.theirs) / median(taken.ours)),
  };
}

const patch: readonly Known[] = [
  { id: 'patch-length', value: toBase(300, 'ft') },
  { id: 'patch-width', value: toBase(12, 'ft') },
  { id: 'patch-depth', value: toBase(2, 'in') },
];

/** A limit as rules that tell when it is broken: one for itself, or one for each of its cases. */
function asRules(limit: LimitRecord): RuleProperties[] {
  return [limit, ...(limit.cases ?? []).map((each) => ({ ...each, on: limit.on }))].flatMap(
    ({ on, max, min, ...own }) => {
      const broken = [
        ...(max ? [{ fact: on.id, operator: 'greaterThan', value: bound(max) }] : []),
        ...(min ? [{ fact: on.id, operator: 'lessThan', value: bound(min) }] : []),
      ];
      const when = [...(limit.when ?? []), ...('when' in own && own.when !== limit.when ? (own.when ?? []) : [])];
      const conditions: TopLevelCondition = { all: [...when.map(asCondition), { any: broken }] };
      return broken.length ? [{ conditions, event: { type: limit.id } }] : [];
    },
  );
}

const bound = (by: QuantityRecord | Figure): unknown => (isQuantity(by) ? { fact: by.id } : toBase(by.number, by.unit));

const asCondition = ({ choice, is }: Condition): TopLevelCondition => ({
  any: is.map((option) => ({ fact: optionFact(choice.id, option), operator: 'equal', value: 1 })),
});

/** Tons of 300 ft by 12 ft at 2 in: units by another library, our own units by the solver, and the bare product as the floor. */
async function multiplying(): Promise<Figures> {
  const ways = {
    theirs: () =>
      multiply(multiply(multiply(unit(300, 'ft'), unit(12, 'ft')), unit(2, 'in')), unit('110 lb / (yd^2 in)')).toNumber(
        'ton',
      ),
    ours: () => whatFollows(knowledge, [...patch]).get('premix-mass')!.value,
    // A thousand at once: one alone is shorter than the clock can tell.
    floor: () => {
      let sum = 0;
      for (let i = 0; i < 1000; i++) sum += tons(300 + i, 12, 2);
      return sum;
    },
  };
  const taken = await timeEach(ways, { warmUp: 300, rounds: 1000 });
  return {
    'beside, mathjs units for one product': us(median(taken.theirs)),
    'beside, solving all that follows from a patch': us(median(taken.ours)),
    'beside, a function for the same tons': us(median(taken.floor) / 1000),
  };
}

const tons = (feetLong: number, feetWide: number, inchesDeep: number): number =>
  (((feetLong * feetWide) / 9) * inchesDeep * 110) / 2000;

/** Five relations, each on what the one before finds. */
async function solving(): Promise<Figures> {
  const term = (id: string) => ({ op: 'fact', id, dimension: 'ratio' }) as const;
  const relations = [1, 2, 3, 4, 5].map((step) => ({
    id: `step-${step}`,
    finds: term(`figure-${step}`),
    by: { op: 'times', of: [term(`figure-${step - 1}`), term(`factor-${step}`)] } as const,
  }));
  const chain = network(relations.flatMap(methodsOf));
  const known = [
    { id: 'figure-0', value: 3 },
    ...[1, 2, 3, 4, 5].map((step) => ({ id: `factor-${step}`, value: step })),
  ];
  const { chained } = await timeEach({ chained: () => solve(chain, known) }, { warmUp: 1000, rounds: 3000 });
  return { 'beside, a chain of five relations': us(median(chained)) };
}
