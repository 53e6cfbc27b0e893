import type { QuizSet } from '../../quiz/build.ts';
import type { Standing } from '../../quiz/changes.ts';
import { keyLetters, letterAt } from '../../quiz/export/letters.ts';
import { endsInWords, keyInWords } from '../../quiz/figures.ts';
import type { QuizItem } from '../../reply.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { mistakeNames, otherThings } from '../../wording/quiz-mistakes.en.ts';
import { Certifies } from './frame.tsx';
import { Stem } from './item.tsx';

/** The right answer in words, with its letters where it has options. */
export function answerInWords(item: QuizItem): string {
  if (item.kind === 'number') return keyInWords(item);
  const named = keyLetters(item).map((letter) =>
    quiz.keyAnswer(letter, item.options[letter.charCodeAt(0) - 65]?.text ?? ''),
  );
  return named.join(quiz.keyJoin(item.kind === 'order'));
}

/** Answer, why, what each wrong option comes from, and the source. */
export function KeyOf({ item, slips = true }: { readonly item: QuizItem; readonly slips?: boolean }) {
  const ends = item.kind === 'number' ? endsInWords(item) : undefined;
  const wrong = item.options.flatMap(({ mistake }, at) =>
    mistake === undefined || otherThings.has(mistake) || !slips
      ? []
      : [desk.key.slip(letterAt(at), mistakeNames[mistake] ?? mistake)],
  );
  return (
    <div class="key">
      <p>
        <b>{answerInWords(item)}</b>
        {ends && ` ${desk.key.counts(...ends)}`}
      </p>
      <p>
        <b>{desk.key.why}:</b> {item.why}
      </p>
      {wrong.length > 0 && <p class="slips">{wrong.join('; ')}.</p>}
      <p class="source">
        {desk.key.source}: {item.source}
      </p>
    </div>
  );
}

/** Every question with its key. `standing`: which of them the rules now answer otherwise. */
export function KeyList({
  set,
  standing,
}: {
  readonly set: QuizSet;
  readonly standing?: readonly Standing[] | undefined;
}) {
  return (
    <ol class="questions keys">
      {set.items.map((item, at) => (
        <li>
          <Stem item={item} number={at + 1} />
          {standing && standing[at] !== 'same' && <p class="changed">{desk.keep.changed}</p>}
          <KeyOf item={item} />
        </li>
      ))}
    </ol>
  );
}

interface Props {
  readonly set: QuizSet;
  readonly children?: unknown;
  readonly standing?: readonly Standing[];
}

/** The answer key as a sheet of its own. */
export function KeySheet({ set, standing }: Props) {
  return (
    <>
      <h1>{desk.key.title(set.title)}</h1>
      <p class="source">{desk.sheet.seed(set.seed, set.variant, set.rules.version)}</p>
      <KeyList set={set} standing={standing} />
      <Certifies />
    </>
  );
}
