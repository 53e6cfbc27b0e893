import { screens } from '../../quiz/desk/call.ts';
import { type Given, markItem } from '../../quiz/mark.ts';
import type { Practised } from '../../quiz/practice.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Certifies } from './frame.tsx';
import { Stem } from './item.tsx';
import { KeyOf } from './key.tsx';
import { YourAnswer } from './result.tsx';
import { SeatOptions } from './seats.tsx';
import { Question } from './take.tsx';

const words = desk.practice;

/** The practice screen before its script has begun: what it is, and what to do without script. */
export const PracticeStart = () => (
  <section id="practice">
    <h1>{words.heading}</h1>
    <p>{words.how}</p>
    <noscript>
      <p class="notice">{words.noScript}</p>
    </noscript>
    <p>
      <a class="go" href={screens.desk}>
        {desk.sheet.back}
      </a>
    </p>
  </section>
);

interface HomeProps {
  readonly due: number;
  readonly known: number;
  readonly seat?: string | undefined;
  /** Said before all else. */
  readonly note?: string | undefined;
}

/** Where a round begins. */
export function PracticeHome({ due, known, seat, note }: HomeProps) {
  return (
    <>
      <h1 tabindex={-1}>{words.heading}</h1>
      {note && (
        <p class="notice" role="status">
          {note}
        </p>
      )}
      <p>{words.how}</p>
      <p>{words.due(due, known)}</p>
      <form class="build" data-practice="start">
        <label>
          <span>{desk.seat}</span>
          <select name="seat">
            <option value="">{desk.noSeat}</option>
            <SeatOptions chosen={seat} />
          </select>
        </label>
        <button type="submit" class="send">
          {words.start}
        </button>
      </form>
      <details>
        <summary>{words.erase}</summary>
        <form data-practice="erase">
          <button type="submit" class="go">
            {words.sure}
          </button>
        </form>
      </details>
      <p>
        <a class="go" href={screens.desk}>
          {desk.sheet.back}
        </a>
      </p>
      <Certifies />
    </>
  );
}

interface RoundProps {
  readonly practised: Practised;
  readonly at: number;
  readonly of: number;
  /** What was answered, once it was. */
  readonly given?: Given;
}

/** One question of a round; once it is answered, whether it was right and why. */
export function PracticeQuestion({ practised: { item }, at, of, given }: RoundProps) {
  const mark = given && markItem(item, given);
  return (
    <form class="take" data-practice={given ? 'next' : 'check'}>
      <p class="where" tabindex={-1}>
        {desk.take.at(at + 1, of)}
      </p>
      {given && mark ? (
        <section class="told" role="status">
          <Stem item={item} number={at + 1} level="h2" />
          <p class={`mark-${mark}`}>
            <b>{desk.take.marks[mark]}</b>
          </p>
          <YourAnswer item={item} given={given} />
          <KeyOf item={item} slips={false} />
        </section>
      ) : (
        <Question item={item} number={at + 1} />
      )}
      <button type="submit" class="send">
        {given ? (at + 1 === of ? words.end : desk.take.next) : desk.take.check}
      </button>
    </form>
  );
}
