import type { Child } from 'hono/jsx';
import type { AssumedFact, Ignored, Said } from '../reply.ts';
import { page } from '../wording/page.en.ts';
import { sayFact } from './names.ts';

/** What was taken without being said, underlined with dots: each can be changed by one press. */
export function Assumed({ assumed }: { readonly assumed: readonly AssumedFact[] }) {
  if (assumed.length === 0) return null;
  return (
    <section class="assumed">
      <h4>
        {page.assumed} <small>{page.pressToChange}</small>
      </h4>
      <ul>
        {assumed.map((fact) => (
          <li>
            <ChangeButton fact={fact}>{fact.text}</ChangeButton>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface ChangeProps {
  readonly fact: { readonly quantity: string } & Said;
  readonly children: Child;
}

/** Puts a fact into the question box, to be changed there and sent. */
export function ChangeButton({ fact, children }: ChangeProps) {
  return (
    <button type="submit" class="change" form="ask" formaction="/#question" name="change" value={sayFact(fact)}>
      {children}
    </button>
  );
}

/** Figures of the question that no part of the answer rests on, each with the reason. */
export function NotUsed({ ignored }: { readonly ignored: readonly Ignored[] }) {
  return (
    <>
      {ignored.map(({ text, why }) => (
        <p class="ignored">{page.ignoredFigure(text, why)}</p>
      ))}
    </>
  );
}
