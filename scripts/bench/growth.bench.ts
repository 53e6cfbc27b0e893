import { createRequire } from 'node:module';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { askIn } from '../../src/ask/answering.ts';
import { allParts } from '../../src/ask/ask.ts';
import { wordsOfCards } from '../../src/ask/cards.generated.ts';
import { type Engine, engineOf } from '../../src/ask/engine.ts';
import { cardIndexOf } from '../../src/ask/search/card-index.ts';
import * as index from '../../src/rules/index.generated.ts';
import { knowledge, knowledgeOf } from '../../src/rules/knowledge.ts';
import { grown } from './copies.ts';
import { type Figures, median, ms, timeEach } from './measure.ts';
import { questions } from './questions.ts';

const tenfold = 10;
const times = (value: number): { value: number; unit: string } => ({ value, unit: 'x' });

/** How cost grows with knowledge: the records and cards as they are, and ten times as many. */
export async function run(): Promise<Figures> {
  return { ...(await asking()), ...(await searching()), ...(await bundled()) };
}

/** Asking without cards, and making the records ready to be asked. */
async function asking(): Promise<Figures> {
  const many = grown(knowledge.records, tenfold - 1);
  const ready = await timeEach(
    { one: () => engineOf(knowledgeOf(knowledge.records)), ten: () => engineOf(knowledgeOf(many)) },
    { warmUp: 3, rounds: 8 },
  );
  const engines = { one: engineOf(knowledgeOf(knowledge.records)), ten: engineOf(knowledgeOf(many)) };
  const corpus = questions();
  const { cards: _cards, ...parts } = allParts;
  const answer = (by: Engine) => (round: number) => askIn(by, { question: corpus[round % corpus.length]! }, parts);
  const asked = await timeEach(
    { one: answer(engines.one), ten: answer(engines.ten) },
    { warmUp: corpus.length * 10, rounds: corpus.length * 15 },
  );
  return {
    'growth, records made ready': ms(median(ready.one)),
    [`growth, ${tenfold} x records made ready`]: ms(median(ready.ten)),
    [`growth, ${tenfold} x records made ready, to one`]: times(median(ready.ten) / median(ready.one)),
    'growth, ask without cards': ms(median(asked.one)),
    [`growth, ask without cards of ${tenfold} x records`]: ms(median(asked.ten)),
    [`growth, ask without cards of ${tenfold} x records, to one`]: times(median(asked.ten) / median(asked.one)),
  };
}

/** Searching the cards, where every copy answers to the same words: the dearest way to grow. */
async function searching(): Promise<Figures> {
  const cards = Object.entries(wordsOfCards);
  const many = Array.from({ length: tenfold }, (_, copy) =>
    cards.map(([id, words]) => [`${id}-${copy}`, words] as const),
  ).flat();
  const [one, ten] = [cardIndexOf(cards), cardIndexOf(many)];
  const terms = cards.map(([, [title = '']]) => title.split(' ').map((word) => ({ head: word, typed: word })));
  const found = await timeEach(
    {
      one: (round) => one.find(terms[round % terms.length]!),
      ten: (round) => ten.find(terms[round % terms.length]!),
    },
    { warmUp: terms.length * 3, rounds: terms.length * 10 },
  );
  return {
    'growth, search': ms(median(found.one)),
    [`growth, search of ${tenfold} x cards`]: ms(median(found.ten)),
    [`growth, search of ${tenfold} x cards, to one`]: times(median(found.ten) / median(found.one)),
  };
}

/** What the records weigh in the browser, packed, each. */
async function bundled(): Promise<Figures> {
  const esbuild = createRequire(join(process.cwd(), 'package.json'))('esbuild') as typeof import('esbuild');
  const { outputFiles } = await esbuild.build({
    entryPoints: ['src/rules/index.generated.ts'],
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
  });
  const packed = brotliCompressSync(outputFiles[0]!.contents).length;
  const count = Object.values(index).reduce((sum, list: readonly unknown[]) => sum + list.length, 0);
  return {
    'growth, records packed': { value: packed / 1024, unit: 'KiB' },
    'growth, packed bytes a record': { value: packed / count, unit: 'B' },
  };
}
