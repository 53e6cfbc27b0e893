import type { QuizSet } from '../../quiz/build.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Certifies } from './frame.tsx';
import { PaperOptions, Stem } from './item.tsx';
import { KeyList } from './key.tsx';

/** Where to go back to from a sheet, on the screen alone. */
export const Back = ({ to }: { readonly to: string }) => (
  <p class="screen-only">
    <a class="go" href={to}>
      {desk.sheet.back}
    </a>{' '}
    {desk.sheet.print}
  </p>
);

/** Seed, set and version of the rules: what a key needs to be found again. */
export const SetLine = ({ set }: { readonly set: QuizSet }) => (
  <p class="source">{desk.sheet.seed(set.seed, set.variant, set.rules.version)}</p>
);

const Must = ({ set }: { readonly set: QuizSet }) =>
  set.items.some(({ mustPass }) => mustPass) ? <p>{quiz.mustPassRule}</p> : null;

/** The student sheet. */
export function StudentSheet({ set, back }: { readonly set: QuizSet; readonly back: string }) {
  const { who, date, trainer, score } = desk.sheet;
  return (
    <article class="sheet">
      <Back to={back} />
      <h1>{set.title}</h1>
      <p class="lines">
        {[who, date, trainer, `${score} ${set.items.length}`].map((label) => (
          <span>
            {label} <span class="line" />
          </span>
        ))}
      </p>
      <Must set={set} />
      <Questions set={set} />
      <SetLine set={set} />
      <Certifies />
    </article>
  );
}

/** The tailgate sheet: large, to be read aloud, the key on a page of its own. */
export function TailgateSheet({ set, back }: { readonly set: QuizSet; readonly back: string }) {
  return (
    <article class="sheet tailgate">
      <Back to={back} />
      <h1>{set.title}</h1>
      <p>{desk.tailgate.how}</p>
      <Questions set={set} />
      <section class="new-page">
        <h2>{quiz.keyHead}</h2>
        <KeyList set={set} />
        <SetLine set={set} />
        <Certifies />
      </section>
    </article>
  );
}

/** The questions of a set as they are answered with a pencil. */
const Questions = ({ set }: { readonly set: QuizSet }) => (
  <ol class="questions">
    {set.items.map((item, at) => (
      <li>
        <Stem item={item} number={at + 1} />
        <PaperOptions item={item} />
      </li>
    ))}
  </ol>
);
