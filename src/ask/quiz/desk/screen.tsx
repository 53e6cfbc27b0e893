import type { Knowledge } from '../../../rules/knowledge.ts';
import type { Dress } from '../../views/document.tsx';
import { BuildForm, OpenKept, Starts } from '../../views/quiz/builder.tsx';
import { deskPage } from '../../views/quiz/frame.tsx';
import { KeptKey } from '../../views/quiz/kept.tsx';
import { KeySheet } from '../../views/quiz/key.tsx';
import { PracticeStart } from '../../views/quiz/practice.tsx';
import { Preview } from '../../views/quiz/preview.tsx';
import { Result } from '../../views/quiz/result.tsx';
import { Back, StudentSheet, TailgateSheet } from '../../views/quiz/sheet.tsx';
import { ChooseSeat, SignOffSheet } from '../../views/quiz/sign-off.tsx';
import { TakeAll, TakeOne } from '../../views/quiz/take.tsx';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { type Built, buildQuiz, type QuizSet } from '../build.ts';
import { standingOf } from '../changes.ts';
import { score } from '../mark.ts';
import { signOffOf } from '../sign-off.ts';
import { seats } from '../topics.ts';
import { readAnswers } from './answers.ts';
import { addressOf, type Call, type Fields, readCall, screens } from './call.ts';
import { readKept } from './kept.ts';

/** What screens are drawn with. */
export interface Around {
  readonly knowledge: Knowledge;
  readonly dress: Dress;
}

/** A screen: the whole document, and whether what was asked for could be had. */
export interface Shown {
  readonly html: string;
  readonly ok: boolean;
}

/** A document of the desk with this title. */
export function frame({ knowledge: { version }, dress }: Around, title: string, children: JSX, paper = false): string {
  return deskPage({ title, dress, version, children, paper });
}
export type JSX = ReturnType<typeof PracticeStart>;

/** The desk: the builder, and the set once there is one. A set that cannot be had is told over the form that asked for it. */
export function deskScreen(around: Around, fields: Fields, error?: string): Shown {
  const call = readCall(fields);
  const asked = fields.get('count') !== null;
  const built = asked ? buildQuiz(around.knowledge, call.request) : undefined;
  const fault = error ?? (built && 'fault' in built ? built.fault : undefined);
  const made = built && 'set' in built ? built : undefined;
  const title = fault ? desk.errorTitle(desk.title) : made ? desk.setTitle(made.set.title) : desk.title;
  const html = frame(
    around,
    title,
    <>
      <h1>{desk.heading}</h1>
      {fault && (
        <div class="notice error" role="alert">
          <b>{desk.error}.</b> {fault}
        </div>
      )}
      {!made && <p>{desk.intro}</p>}
      {made ? (
        <details class="rebuild">
          <summary>{desk.change}</summary>
          <BuildForm call={call} />
        </details>
      ) : (
        <BuildForm call={call} />
      )}
      {made && <Preview built={made} call={call} />}
      {!asked && <Starts />}
      {!asked && <OpenKept />}
      <p class="source">{desk.languages}</p>
    </>,
  );
  return { html, ok: fault === undefined };
}

type Set = Extract<Built, { readonly set: QuizSet }>;

/** Something done with the set that the fields ask for; where there is none, the builder says why. */
function withSet(around: Around, fields: Fields, show: (built: Set, call: Call) => Shown): Shown {
  const call = readCall(fields);
  const built = buildQuiz(around.knowledge, call.request);
  return 'fault' in built ? deskScreen(around, fields, built.fault) : show(built, call);
}

/** The set that fields ask for, or why there is none. */
export const setIn = (knowledge: Knowledge, fields: Fields): Built => buildQuiz(knowledge, readCall(fields).request);

/** A sheet to print. */
export function sheetScreen(around: Around, fields: Fields, which: 'sheet' | 'key' | 'tailgate'): Shown {
  return withSet(around, fields, ({ set }, call) => {
    const back = addressOf('desk', call);
    const sheets = {
      sheet: () => [desk.sheet.title(set.title), <StudentSheet set={set} back={back} />] as const,
      tailgate: () => [desk.tailgate.title(set.title), <TailgateSheet set={set} back={back} />] as const,
      key: () =>
        [
          desk.key.title(set.title),
          <article class="sheet">
            <Back to={back} />
            <KeySheet set={set} />
          </article>,
        ] as const,
    };
    const [title, sheet] = sheets[which]();
    return { html: frame(around, title, sheet, true), ok: true };
  });
}

/** Taking a set. `sent`: a form came in with answers. */
export function takeScreen(around: Around, fields: Fields, sent: boolean): Shown {
  return withSet(around, fields, ({ set }, call) => {
    const given = sent ? readAnswers(set.items, fields) : [];
    const did = sent ? fields.get('do') : null;
    const title = desk.take.title(set.title);
    if (sent && did !== 'check' && did !== 'next') {
      const marked = score(set.items, given);
      const result = <Result set={set} call={call} given={given} score={marked} />;
      return { html: frame(around, `${desk.take.result(marked.right, marked.of)} – ${title}`, result), ok: true };
    }
    if (call.feedback === 'end') return { html: frame(around, title, <TakeAll set={set} call={call} />), ok: true };
    const was = Number(fields.get('at') ?? -1);
    const before = Number.isInteger(was) && was >= 0 && was < set.items.length ? was : -1;
    const checked = did === 'check' && before >= 0;
    const at = Math.min(checked ? before : before + 1, set.items.length - 1);
    const one = <TakeOne set={set} call={call} given={given} at={at} checked={checked} />;
    return { html: frame(around, title, one), ok: true };
  });
}

/** The practical sheet of a seat. */
export function signOffScreen(around: Around, fields: Fields): Shown {
  const asked = fields.get('seat');
  const seat = typeof asked === 'string' && asked !== '' ? asked : undefined;
  const sheet = seat === undefined ? undefined : signOffOf(around.knowledge, seat);
  const error = seat !== undefined && !sheet ? quiz.fault.seat(seat, Object.keys(seats)) : undefined;
  const children = (
    <>
      {!sheet && <h1>{desk.signOff.title}</h1>}
      <ChooseSeat seat={seat} error={error} />
      {sheet && seat && <SignOffSheet seat={seat} sheet={sheet} version={around.knowledge.version} />}
    </>
  );
  return { html: frame(around, `${desk.signOff.title} – Bladehand`, children, true), ok: error === undefined };
}

/** A set that was saved: its key, and what the rules of today say otherwise. */
export function keptScreen(around: Around, text: string): Shown {
  const set = readKept(text);
  if (!set) {
    const html = frame(around, desk.errorTitle(desk.title), <OpenKept error={desk.keep.bad} />);
    return { html, ok: false };
  }
  const standing = standingOf(around.knowledge, set);
  const call: Call = { request: { ...set.blueprint, seed: set.seed, variant: set.variant }, feedback: 'end' };
  const kept = <KeptKey set={set} standing={standing} now={around.knowledge.version} again={addressOf('desk', call)} />;
  return { html: frame(around, desk.key.title(set.title), kept, true), ok: true };
}

/** Practice of one person, which its script fills. */
export const practiceScreen = (around: Around): Shown => ({
  html: frame(around, desk.practice.title, <PracticeStart />),
  ok: true,
});

export { screens };
