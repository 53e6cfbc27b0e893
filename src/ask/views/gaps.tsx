import type { GapGroup } from '../gaps/group.ts';
import { reasons, gaps as words } from '../wording/gaps.en.ts';
import { page } from '../wording/page.en.ts';
import type { Dress } from './document.tsx';
import { framed } from './framed.tsx';

interface Common {
  readonly version: string;
  readonly dress: Dress;
}

/** Where a question that found no answer is sent from: what would be kept of it, to be changed before it is sent. */
export function gapPage({
  question,
  note,
  error,
  ...common
}: Common & { readonly question: string; readonly note?: string; readonly error?: string }): string {
  return framed({
    ...common,
    at: 'ask',
    look: 'job',
    title: page.title(words.heading),
    children: (
      <>
        <h1>{words.heading}</h1>
        {note && (
          <p class="notice" role="status">
            {note}
          </p>
        )}
        {error && (
          <p class="error" id="error" role="alert">
            {error}
          </p>
        )}
        <p>{words.text}</p>
        <form method="post" action="/gaps" novalidate>
          <label class="field">
            {words.label}
            <input name="question" type="text" value={question} maxlength={words.longest} autocomplete="off" />
          </label>
          <p class="hint">{words.scrubbed}</p>
          <button type="submit" class="send">
            {words.send}
          </button>
        </form>
        <p class="buttons">
          <a href="/">{words.back}</a>
        </p>
      </>
    ),
  });
}

/** What the keeper of the rules sees. */
export function keeperPage({
  address,
  groups,
  ...common
}: Common & { readonly address: string; readonly groups: readonly GapGroup[] }): string {
  const { keeper } = words;
  return framed({
    ...common,
    at: 'rules',
    look: 'job',
    title: page.title(keeper.title),
    children: (
      <>
        <h1>{keeper.title}</h1>
        <p>{groups.length === 0 ? keeper.none : keeper.text}</p>
        {groups.map(({ reason, questions }) => (
          <section>
            <h2>
              {keeper.group(
                reasons[reason] ?? reason,
                questions.reduce((sum, { times }) => sum + times, 0),
              )}
            </h2>
            <ul>
              {questions.map(({ question, times, day }) => (
                <li>
                  <a href={`/?q=${encodeURIComponent(question)}`}>{question}</a> {times > 1 ? `× ${times}, ` : ''}
                  {day}
                </li>
              ))}
            </ul>
          </section>
        ))}
        {groups.length > 0 && (
          <div class="buttons">
            <a href={`${address}/export.jsonl`}>{keeper.export}</a>
            <form method="post" action={address}>
              <p class="hint">{keeper.clearing}</p>
              <button type="submit">{keeper.clear}</button>
            </form>
          </div>
        )}
      </>
    ),
  });
}
