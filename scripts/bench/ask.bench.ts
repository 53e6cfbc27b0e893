import { ask } from '../../src/ask/ask.ts';
import { type Figures, median, ms, p99, timeEach } from './measure.ts';
import { questions, typicalQuestion } from './questions.ts';

const longest = 2000;

/** The engine alone, in this process: every question of the corpus, a typical one, and the longest text it takes. */
export async function run(): Promise<Figures> {
  const corpus = questions();
  const ramble = corpus.join(' ').repeat(2).slice(0, longest);
  const { corpus: all } = await timeEach(
    { corpus: (round) => ask({ question: corpus[round % corpus.length]! }) },
    { warmUp: corpus.length * 10, rounds: corpus.length * 30 },
  );
  const { typical, long } = await timeEach(
    { typical: () => ask({ question: typicalQuestion }), long: () => ask({ question: ramble }) },
    { warmUp: 50, rounds: 300 },
  );
  return {
    'ask median': ms(median(all)),
    'ask p99': ms(p99(all)),
    'ask worst': ms(Math.max(...all)),
    'ask typical question median': ms(median(typical)),
    [`ask ${longest} characters median`]: ms(median(long)),
    [`ask ${longest} characters worst`]: ms(Math.max(...long)),
  };
}
