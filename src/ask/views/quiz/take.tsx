import type { QuizSet } from '../../quiz/build.ts';
import { answerFields, fieldOf, placeFieldOf } from '../../quiz/desk/answers.ts';
import { type Call, fieldsOf, screens } from '../../quiz/desk/call.ts';
import { unitInWords } from '../../quiz/figures.ts';
import { type Given, markItem } from '../../quiz/mark.ts';
import type { QuizItem } from '../../reply.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Drawing } from './drawing.tsx';
import { Carried, Certifies } from './frame.tsx';
import { Stem } from './item.tsx';
import { KeyOf } from './key.tsx';
import { YourAnswer } from './result.tsx';

/** The controls of one question: circles, boxes, a number beside each option, or a box for the figure. */
export function Answer({ item, given = [] }: { readonly item: QuizItem; readonly given?: Given | undefined }) {
  const { kind, options } = item;
  if (kind === 'number') {
    return (
      <label class="fill">
        <span>{desk.sheet.answer}</span>{' '}
        <input
          type="text"
          name={fieldOf(item)}
          value={given[0] ?? ''}
          inputmode="decimal"
          autocomplete="off"
          maxlength={40}
        />{' '}
        <span>{unitInWords(item.unit)}</span>
      </label>
    );
  }
  if (kind === 'order') {
    return (
      <ul class="answers order">
        {options.map(({ text }, at) => (
          <li>
            <label>
              <input
                type="text"
                inputmode="numeric"
                maxlength={2}
                autocomplete="off"
                name={placeFieldOf(item, at)}
                value={given[at] ?? ''}
                aria-label={desk.take.place(text)}
              />
              <span>{text}</span>
            </label>
          </li>
        ))}
      </ul>
    );
  }
  return (
    <ul class="answers">
      {options.map(({ text }, at) => (
        <li>
          <label>
            <input
              type={kind === 'many' ? 'checkbox' : 'radio'}
              name={fieldOf(item)}
              value={String(at)}
              checked={given.includes(String(at))}
            />
            <span>{text}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}

const Hint = ({ kind }: Pick<QuizItem, 'kind'>) => {
  const hint = kind === 'many' ? desk.sheet.manyHint : kind === 'order' ? desk.sheet.orderHint : undefined;
  return hint ? <p class="hint-line">{hint}</p> : null;
};

/** A question to be answered on the screen. */
export const Question = ({
  item,
  number,
  given,
}: {
  readonly item: QuizItem;
  readonly number: number;
  readonly given?: Given | undefined;
}) => (
  <fieldset class="question">
    <legend>
      <b class="number">{number}.</b> {item.mustPass && <b class="must">{quiz.mustPass}. </b>}
      {item.stem}
    </legend>
    <Drawing id={item.drawing} />
    <Hint kind={item.kind} />
    <Answer item={item} given={given} />
  </fieldset>
);

interface Props {
  readonly set: QuizSet;
  readonly call: Call;
  readonly given?: readonly (Given | undefined)[];
  /** Fields that go along: the class that the answers are for. */
  readonly extra?: readonly (readonly [string, string])[];
}

/** All questions on one page, marked at the end. */
export function TakeAll({
  set,
  call,
  given = [],
  extra = [],
  action = screens.take,
  who,
}: Props & { readonly action?: string; readonly who?: JSX }) {
  return (
    <form class="take" method="post" action={`${action}#result`} data-quiz="end">
      <h1>{set.title}</h1>
      <Carried fields={[...fieldsOf({ ...call, request: { ...call.request, seed: set.seed } }), ...extra]} />
      {set.items.some(({ mustPass }) => mustPass) && <p>{quiz.mustPassRule}</p>}
      {who}
      <ol class="questions">
        {set.items.map((item, at) => (
          <li>
            <Question item={item} number={at + 1} given={given[at]} />
          </li>
        ))}
      </ol>
      <button type="submit" class="send" name="do" value="mark">
        {desk.take.done}
      </button>
      <Certifies />
    </form>
  );
}

type JSX = ReturnType<typeof Certifies>;

/** One question at a time; once it is checked, whether it was right and why. */
export function TakeOne({
  set,
  call,
  given = [],
  at,
  checked,
}: Props & { readonly at: number; readonly checked: boolean }) {
  const item = set.items[at]!;
  const last = at === set.items.length - 1;
  const carried = set.items.flatMap((each, place) =>
    place === at && !checked ? [] : answerFields(each, given[place] ?? []),
  );
  const mark = markItem(item, given[at] ?? []);
  return (
    <form class="take" method="post" action={`${screens.take}#question`} data-quiz="each">
      <h1>{set.title}</h1>
      <Carried
        fields={[
          ...fieldsOf({ ...call, request: { ...call.request, seed: set.seed } }),
          ...carried,
          ['at', String(at)],
        ]}
      />
      <p id="question" tabindex={-1}>
        {desk.take.at(at + 1, set.items.length)}
      </p>
      {checked ? (
        <section class="told" role="status">
          <Stem item={item} number={at + 1} level="h2" />
          <p class={`mark-${mark}`}>
            <b>{desk.take.marks[mark]}</b>
          </p>
          <YourAnswer item={item} given={given[at] ?? []} />
          <KeyOf item={item} slips={false} />
        </section>
      ) : (
        <Question item={item} number={at + 1} given={given[at]} />
      )}
      <button type="submit" class="send" name="do" value={checked ? (last ? 'mark' : 'next') : 'check'}>
        {checked ? (last ? desk.take.finish : desk.take.next) : desk.take.check}
      </button>
    </form>
  );
}
