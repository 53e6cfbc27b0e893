import type { QuizSet } from '../../quiz/build.ts';
import type { Standing } from '../../quiz/changes.ts';
import { screens } from '../../quiz/desk/call.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { KeySheet } from './key.tsx';
import { Back } from './sheet.tsx';

interface Props {
  readonly set: QuizSet;
  readonly standing: readonly Standing[];
  /** Version of the rules of today. */
  readonly now: string;
  /** Address that makes the set anew. */
  readonly again: string;
}

/** The key of a set that was saved, with what has changed since. */
export function KeptKey({ set, standing, now, again }: Props) {
  const { same, otherVersion, untouched, touched, question, again: anew } = desk.keep;
  const changed = standing.flatMap((each, at) => (each === 'same' ? [] : [at + 1]));
  const other = set.rules.version !== now;
  return (
    <article class="sheet">
      <Back to={screens.desk} />
      <div class="notice" role="status">
        <p>
          {other ? otherVersion(set.rules.version, now) : same} {other && changed.length === 0 && untouched}
          {changed.length > 0 && touched(question(changed))}
        </p>
        <p class="screen-only">
          <a class="go" href={again}>
            {anew}
          </a>
        </p>
      </div>
      <KeySheet set={set} standing={standing} />
    </article>
  );
}
