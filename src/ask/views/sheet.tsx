import { page } from '../wording/page.en.ts';
import { Buttons, Next } from './asking.tsx';
import { Assumed, NotUsed } from './assumed.tsx';
import { basisOf, isSource } from './basis.ts';
import { Causes } from './causes.tsx';
import { Cautions, standing } from './cautions.tsx';
import { Checklist } from './checklist.tsx';
import type { Entry } from './entry.ts';
import { Figures } from './figures.tsx';
import { Cards, InWords, Sources, Workings } from './folded.tsx';
import type { Drawings } from './layout.tsx';
import { Broken, Mark, OtherRules } from './marks.tsx';
import { QuizSheet } from './quiz-sheet.tsx';

interface Props {
  readonly entry: Entry;
  /** The latest entry of the page: only it offers what to send next. */
  readonly latest: boolean;
  readonly ticks: ReadonlySet<string>;
  /** What draws; a page may fetch it apart from the rest. */
  readonly draw: typeof Drawings | undefined;
}

/** Somebody is hurt or about to be: what to do first stands out. */
const isEmergency = (topic: string): boolean => topic.startsWith('emergency-');

/** One question as a bold line over a rule, and under it the answer sheet. */
export function Sheet({ entry, latest, ticks, draw: Draw }: Props) {
  const { number, question, reply } = entry;
  const stepsAsked = reply.kind === 'steps';
  const checklist = <Checklist reply={reply} entry={number} ticks={ticks} />;
  return (
    <article
      class={`entry ${reply.kind}${isEmergency(reply.topic) ? ' emergency' : ''}`}
      aria-labelledby={`question-${number}`}
    >
      <h3 id={latest ? 'latest' : undefined} tabindex={latest ? -1 : undefined}>
        <span id={`question-${number}`}>
          <span class="away">{page.you}</span>
          {question}
        </span>
      </h3>
      <div class="answer">
        <span class="away">{page.answer}</span>
        {reply.verdict && <Mark judged={reply.verdict} main />}
        <Figures values={reply.values} asked={reply.verdict === undefined} />
        {basisOf(reply).map((line) => (
          <p class={isSource(line) ? 'basis source' : 'basis'}>{line}</p>
        ))}
        {reply.clarify && <p class="basis asked">{reply.clarify.text}</p>}
        {latest && reply.clarify && <Buttons label={page.choices} questions={reply.clarify.choices} />}
        <Broken reply={reply} />
        {stepsAsked && checklist}
        <Causes causes={reply.causes} />
        <Assumed assumed={reply.assumed} />
        <NotUsed ignored={reply.ignored} />
        {Draw && <Draw reply={reply} name={`drawing-${number}`} />}
        <Cautions cautions={reply.cautions.filter((caution) => !standing.includes(caution))} />
        {latest && <Next next={reply.next} />}
        <OtherRules reply={reply} />
        {!stepsAsked && checklist}
        {reply.quiz && <QuizSheet quiz={reply.quiz} />}
        <div class="folds">
          <Workings reply={reply} />
          <Sources reply={reply} />
          <Cards reply={reply} />
          {reply.values.length + reply.checks.length > 0 && <InWords text={reply.text} />}
        </div>
        {latest && (reply.kind === 'unknown' || reply.kind === 'clarify') && (
          <p class="gap">
            <a href={`/gaps?q=${encodeURIComponent(question)}`}>{page.showGap}</a>
          </p>
        )}
      </div>
    </article>
  );
}
