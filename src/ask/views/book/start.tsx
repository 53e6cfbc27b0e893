import { bookPage as words } from '../../wording/book-page.en.ts';
import type { Dress } from '../document.tsx';
import { framed } from '../framed.tsx';

export interface StartPage {
  readonly error?: string | undefined;
  readonly draft?:
    | { readonly name: string; readonly road: string; readonly list: string; readonly link?: string }
    | undefined;
  /** The job of a talk, to be carried on, and how many patches are in it. */
  readonly talk?: { readonly job: string; readonly patches: number } | undefined;
  readonly version: string;
  readonly dress: Dress;
}

/** Where a job is begun. */
export function startPage({ error, draft, talk, version, dress }: StartPage): string {
  const { start } = words;
  return framed({
    at: 'job',
    look: 'job',
    version,
    title: words.title(start.heading),
    dress,
    children: (
      <>
        <h1>{start.heading}</h1>
        <p>{start.text}</p>
        {error && (
          <p class="error" id="error" role="alert">
            {error}
          </p>
        )}
        <form method="post" action="/job" novalidate>
          {talk && (
            <>
              <input type="hidden" name="talk" value={talk.job} />
              <p class="notice">{start.fromTalk(talk.patches)}</p>
              <label class="field">
                {start.onto}
                <input name="link" type="text" value={draft?.link ?? ''} autocomplete="off" />
              </label>
            </>
          )}
          <label class="field">
            {start.name}
            <input name="name" type="text" value={draft?.name ?? ''} maxlength={120} autocomplete="off" />
          </label>
          <label class="field">
            {start.road}
            <input name="road" type="text" value={draft?.road ?? ''} maxlength={80} autocomplete="off" />
          </label>
          <label class="field">
            {start.list}
            <textarea name="text" rows={10} spellcheck={false} aria-describedby="list-hint">
              {draft?.list ?? ''}
            </textarea>
          </label>
          <p class="hint" id="list-hint">
            {start.hint}
          </p>
          <button type="submit" class="send">
            {start.go}
          </button>
        </form>
        <p>{start.keep}</p>
      </>
    ),
  });
}
