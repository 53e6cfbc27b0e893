import { ClassPage, CrewPage, StartClass } from '../../views/quiz/class.tsx';
import { Result } from '../../views/quiz/result.tsx';
import { desk } from '../../wording/quiz-desk.en.ts';
import { buildQuiz, type QuizSet } from '../build.ts';
import type { ClassResult } from '../class-results.ts';
import type { Given, Score } from '../mark.ts';
import { type Call, type Fields, readCall, screens } from './call.ts';
import { type Around, deskScreen, frame, type Shown } from './screen.tsx';

/** The screens of a class, each as a whole document. */
export function classScreens(around: Around) {
  const shown = (children: Parameters<typeof frame>[2], ok = true): Shown => ({
    html: frame(around, ok ? desk.classes.title : desk.errorTitle(desk.classes.title), children),
    ok,
  });
  return {
    start: (fields: Fields): Shown => {
      const call = readCall(fields);
      const built = buildQuiz(around.knowledge, call.request);
      return 'fault' in built
        ? deskScreen(around, fields, built.fault)
        : shown(<StartClass set={built.set} call={call} />);
    },
    trainer: (set: QuizSet, results: readonly ClassResult[], own: string, crew: string): Shown =>
      shown(<ClassPage set={set} results={results} own={own} crew={crew} />),
    crew: (
      set: QuizSet,
      own: string,
      sheet: string,
      again: { readonly given?: readonly Given[]; readonly who?: string; readonly error?: string } = {},
    ): Shown => shown(<CrewPage set={set} own={own} sheet={sheet} {...again} />, again.error === undefined),
    result: (set: QuizSet, given: readonly Given[], score: Score, sent: string): Shown => {
      const call: Call = { request: { ...set.blueprint, seed: set.seed, variant: set.variant }, feedback: 'end' };
      return shown(<Result set={set} call={call} given={given} score={score} sent={sent} />);
    },
    erased: (): Shown =>
      shown(
        <>
          <h1>{desk.classes.erased}</h1>
          <p>
            <a class="go" href={screens.desk}>
              {desk.sheet.back}
            </a>
          </p>
        </>,
      ),
  };
}
