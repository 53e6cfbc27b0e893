import { buildQuiz } from '../../src/ask/quiz/build.ts';
import { asJson } from '../../src/ask/quiz/export/json.ts';
import { qtiPackage } from '../../src/ask/quiz/export/qti-package.ts';
import type { QuizRequest } from '../../src/ask/quiz/request.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { type Figures, median, ms, p99, timeEach } from './measure.ts';

function setOf(request: QuizRequest) {
  const built = buildQuiz(knowledge, request);
  if ('fault' in built) throw new Error(built.fault);
  return built.set;
}

/** A set of 50 items, another seed each time; the first one, which reads the records through; and its exports. */
export async function run(): Promise<Figures> {
  const before = performance.now();
  const set = setOf({ count: 50, seed: 'first' });
  const first = performance.now() - before;
  const { made, metric, qti, json } = await timeEach(
    {
      made: (round) => setOf({ count: 50, seed: String(round) }),
      metric: (round) => setOf({ count: 50, seed: String(round), units: 'metric' }),
      qti: () => qtiPackage(set),
      json: () => asJson(set),
    },
    { warmUp: 10, rounds: 100 },
  );
  return {
    'quiz first set of 50': ms(first),
    'quiz set of 50 median': ms(median(made)),
    'quiz set of 50 p99': ms(p99(made)),
    'quiz metric set of 50 median': ms(median(metric)),
    'quiz QTI package of 50 median': ms(median(qti)),
    'quiz JSON of 50 median': ms(median(json)),
  };
}
