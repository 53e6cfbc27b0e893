import { emptyJob, readJob } from '../job.ts';
import { blank, refuse } from '../refusal.ts';
import type { Reply } from '../reply.ts';
import type { Scene } from '../scene.ts';
import { en } from '../wording/en.ts';
import { quiz as words } from '../wording/quiz.en.ts';
import { readQuizAsk } from './ask.ts';
import { buildQuiz } from './build.ts';
import { addressOf } from './desk/call.ts';
import { asText } from './export/text.ts';
import type { QuizRequest } from './request.ts';

/**
 * Answers a question that asks for a quiz: the set, its sheet and key in words. The job comes back as it was sent: the
 * number of questions is no figure of a patch. What cannot be had is said, with what can.
 */
export function quizReply({ engine: { knowledge }, engine, request }: Scene): Reply {
  const job = readJob(request.job) ?? emptyJob;
  const asked: QuizRequest = {
    ...readQuizAsk(request.question),
    ...(request.units === 'metric' ? { units: 'metric' } : {}),
  };
  const built = buildQuiz(knowledge, asked);
  if ('fault' in built) return { ...refuse('out-of-range', built.fault, job, engine), next: [...words.offers] };
  const { seed, title, items } = built.set;
  const address = addressOf('desk', { request: { ...asked, seed }, feedback: 'end' });
  return {
    ...blank,
    kind: 'quiz',
    topic: 'quiz',
    text: [words.built(title, seed), asText(built.set, { key: true }).trimEnd()].join('\n\n'),
    quiz: { seed, title, address, items },
    cautions: [words.certifies, en.agencyFirst],
    next: [...words.offers],
    rules: { version: knowledge.version },
    job,
  };
}
