import type { QuizSet } from '../../quiz/build.ts';
import { addressOf, type Call } from '../../quiz/desk/call.ts';
import { unitInWords } from '../../quiz/figures.ts';
import { type Given, orderOf, type Score } from '../../quiz/mark.ts';
import type { QuizItem } from '../../reply.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Certifies } from './frame.tsx';
import { Stem } from './item.tsx';
import { KeyOf } from './key.tsx';

/** What was answered, in words. */
export function YourAnswer({ item, given }: { readonly item: QuizItem; readonly given: Given }) {
  const words = inWords(item, given);
  return (
    <p>
      {desk.take.yours}: {words || desk.take.none}
    </p>
  );
}

function inWords(item: QuizItem, given: Given): string {
  if (item.kind === 'number') return given[0]?.trim() ? `${given[0].trim()} ${unitInWords(item.unit)}`.trim() : '';
  if (item.kind === 'order') return orderOf(item, given).join(quiz.keyJoin(true)) || given.filter(Boolean).join(', ');
  return given.map((place) => item.options[Number(place)]?.text ?? '').join(quiz.keyJoin(false));
}

interface Props {
  readonly set: QuizSet;
  readonly call: Call;
  readonly given: readonly (Given | undefined)[];
  readonly score: Score;
  /** Said of the class it was sent to. */
  readonly sent?: string | undefined;
}

/** The result: how many right, whether a question that must be right was missed, each topic, and each question with the why. */
export function Result({ set, call, given, score, sent }: Props) {
  const named: Call = { ...call, request: { ...call.request, seed: set.seed } };
  const { variant: _, ...a } = named.request;
  return (
    <article class="result">
      <h1 id="result" tabindex={-1}>
        {desk.take.result(score.right, score.of)}
      </h1>
      <p>{set.title}</p>
      {sent && <p class="notice">{sent}</p>}
      {score.missedMusts.length > 0 && <p class="failed">{desk.take.failed(score.missedMusts)}</p>}
      <h2>{desk.take.byTopic}</h2>
      <dl class="topics">
        {score.topics.map(({ topic, right, of }) => (
          <div>
            <dt>{desk.topicNames[topic] ?? topic}</dt>
            <dd>{desk.take.of(right, of)}</dd>
          </div>
        ))}
      </dl>
      <ol class="questions">
        {set.items.map((item, at) => {
          const mark = score.marks[at]!;
          return (
            <li>
              <details open={mark !== 'right'}>
                <summary>
                  <b class={`mark-${mark}`}>{desk.take.marks[mark]}</b> {at + 1}
                </summary>
                <Stem item={item} number={at + 1} />
                <YourAnswer item={item} given={given[at] ?? []} />
                <KeyOf item={item} slips={false} />
              </details>
            </li>
          );
        })}
      </ol>
      <ul class="go-list">
        <li>
          <a class="go" href={addressOf('take', named)}>
            {desk.take.again}
          </a>
        </li>
        <li>
          <a class="go" href={addressOf('take', { ...named, request: { ...a, variant: 'B' } })}>
            {desk.take.other}
          </a>
        </li>
      </ul>
      <Certifies />
    </article>
  );
}
