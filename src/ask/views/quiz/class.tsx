import type { QuizSet } from '../../quiz/build.ts';
import type { ClassResult } from '../../quiz/class-results.ts';
import { type ClassSummary, summaryOf } from '../../quiz/class-results.ts';
import { addressOf, type Call, fieldsOf, screens } from '../../quiz/desk/call.ts';
import type { Given } from '../../quiz/mark.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Carried } from './frame.tsx';
import { KeyOf } from './key.tsx';
import { SetLine } from './sheet.tsx';
import { TakeAll } from './take.tsx';

const words = desk.classes;

/** Asks whether the set is to be given to a class: nothing is kept before that. */
export function StartClass({ set, call }: { readonly set: QuizSet; readonly call: Call }) {
  const named: Call = { ...call, request: { ...call.request, seed: set.seed } };
  return (
    <form class="build" method="post" action={screens.classes}>
      <h1>{words.heading}</h1>
      <p>
        <b>{set.title}</b>
      </p>
      <p>{words.how}</p>
      <Carried fields={fieldsOf(named)} />
      <button type="submit" class="send">
        {words.start}
      </button>
      <p>
        <a class="go" href={addressOf('desk', named)}>
          {desk.sheet.back}
        </a>
      </p>
    </form>
  );
}

interface TrainerProps {
  readonly set: QuizSet;
  readonly results: readonly ClassResult[];
  /** This page, and the page of the crew. */
  readonly own: string;
  readonly crew: string;
}

/** What the trainer sees of a class. */
export function ClassPage({ set, results, own, crew }: TrainerProps) {
  const summary = summaryOf(set, results);
  const call: Call = { request: { ...set.blueprint, seed: set.seed, variant: set.variant }, feedback: 'end' };
  return (
    <article class="class">
      <h1>{set.title}</h1>
      <SetLine set={set} />
      <p class="screen-only">{words.yours}</p>
      <section class="screen-only">
        <h2>{words.crew}</h2>
        <p class="address">
          <a href={crew}>{crew}</a>
        </p>
      </section>
      <h2>{words.results(results.length)}</h2>
      {results.length === 0 ? <p>{words.none}</p> : <Tables summary={summary} />}
      <ul class="go-list screen-only">
        <li>
          <a class="go" href={`${own}/file?format=csv`} download>
            {words.csv}
          </a>
        </li>
        <li>
          <a class="go" href={`${own}/file?format=json`} download>
            {words.json}
          </a>
        </li>
        <li>
          <a class="go" href={addressOf('desk', call)}>
            {words.sheet}
          </a>
        </li>
      </ul>
      <details class="screen-only">
        <summary>{words.erase}</summary>
        <form method="post" action={`${own}/erase`}>
          <p>{words.eraseHow}</p>
          <button type="submit" class="go">
            {words.sure}
          </button>
        </form>
      </details>
    </article>
  );
}

function Tables({ summary: { results, items, topics } }: { readonly summary: ClassSummary }) {
  const { who, day, right, musts, number, topic } = words.columns;
  const hard = [...items].sort((a, b) => a.right - b.right || a.number - b.number);
  const has = items.some(({ item }) => item.mustPass);
  return (
    <>
      <h3>{words.byTopic}</h3>
      <dl class="topics">
        {topics.map((each) => (
          <div>
            <dt>{desk.topicNames[each.topic] ?? each.topic}</dt>
            <dd>{words.share(each.right, each.of)}</dd>
          </div>
        ))}
      </dl>
      <h3>{words.byPerson}</h3>
      <table class="results">
        <thead>
          <tr>
            <th scope="col">{who}</th>
            <th scope="col">{day}</th>
            <th scope="col">{right}</th>
            {has && <th scope="col">{musts}</th>}
          </tr>
        </thead>
        <tbody>
          {results.map((each) => (
            <tr>
              <th scope="row">{each.who}</th>
              <td>{each.at.slice(0, 10)}</td>
              <td>{words.share(each.right, each.of)}</td>
              {has && <td>{each.mustsMet ? words.met : words.missed}</td>}
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{words.byItem}</h3>
      <table class="results">
        <thead>
          <tr>
            <th scope="col">{number}</th>
            <th scope="col">{topic}</th>
            <th scope="col">{right}</th>
          </tr>
        </thead>
        <tbody>
          {hard.map((each) => (
            <tr>
              <th scope="row">
                <details>
                  <summary>{each.number}</summary>
                  <p>{each.item.stem}</p>
                  <KeyOf item={each.item} slips={false} />
                </details>
              </th>
              <td>{desk.topicNames[each.item.topic] ?? each.item.topic}</td>
              <td>{words.share(each.right, each.of)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

interface CrewProps {
  readonly set: QuizSet;
  readonly own: string;
  /** Names this sheet, so that one sent twice counts once. */
  readonly sheet: string;
  readonly given?: readonly Given[];
  readonly who?: string;
  readonly error?: string | undefined;
}

/** What the crew sees: the set, and a box for initials or a number. */
export function CrewPage({ set, own, sheet, given = [], who = '', error }: CrewProps) {
  const call: Call = { request: { ...set.blueprint, seed: set.seed, variant: set.variant }, feedback: 'end' };
  const box = (
    <div class="who">
      {error && (
        <p class="error" id="who-error">
          {error}
        </p>
      )}
      <label>
        <b>{words.who}</b>
        <input
          type="text"
          name="who"
          value={who}
          maxlength={12}
          required
          autocomplete="off"
          aria-describedby={error ? 'who-error who-hint' : 'who-hint'}
          aria-invalid={error ? 'true' : undefined}
        />
      </label>
      <p class="hint-line" id="who-hint">
        {words.whoHint}
      </p>
    </div>
  );
  return <TakeAll set={set} call={call} given={given} extra={[['sheet', sheet]]} action={own} who={box} />;
}
