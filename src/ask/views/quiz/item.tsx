import { letterAt } from '../../quiz/export/letters.ts';
import { unitInWords } from '../../quiz/figures.ts';
import type { QuizItem } from '../../reply.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Drawing } from './drawing.tsx';

/** A question with its drawing, as it stands on paper and on the screen. */
export function Stem({
  item,
  number,
  level: Level = 'p',
}: {
  readonly item: QuizItem;
  readonly number: number;
  readonly level?: 'p' | 'h2' | 'h3';
}) {
  return (
    <>
      <Level class="stem">
        <b class="number">{number}.</b> {item.mustPass && <b class="must">{quiz.mustPass}. </b>}
        {item.stem}
      </Level>
      <Drawing id={item.drawing} />
    </>
  );
}

/** The options on paper: a box to mark, a line to write a number on, or a line for the figure. */
export function PaperOptions({ item }: { readonly item: QuizItem }) {
  const { kind, options } = item;
  if (kind === 'number') {
    return (
      <p class="blank">
        {desk.sheet.answer}: <span class="line" /> {unitInWords(item.unit)}
      </p>
    );
  }
  return (
    <>
      {kind === 'many' && <p class="hint">{desk.sheet.manyHint}</p>}
      {kind === 'order' && <p class="hint">{desk.sheet.orderHint}</p>}
      <ul class={`options ${kind}`}>
        {options.map(({ text }, at) => (
          <li>
            <span class="box" /> <b>{letterAt(at)}</b> {text}
          </li>
        ))}
      </ul>
    </>
  );
}
