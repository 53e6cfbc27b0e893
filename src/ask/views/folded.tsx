import type { Reply } from '../reply.ts';
import { capital } from '../say.ts';
import { page } from '../wording/page.en.ts';
import { titleOf } from './names.ts';

/** How each figure came about, in order. */
export function Workings({ reply }: { readonly reply: Reply }) {
  if (reply.working.length === 0) return null;
  const what = reply.values[0]?.text ?? titleOf(reply.topic);
  return (
    <details class="workings">
      <summary>{page.workings(what)}</summary>
      <ol>
        {reply.working.map((step) => (
          <li>
            <p class="formula">{capital(step.formula)}</p>
            <p class="with">= {step.with}</p>
            <p class="result">
              = <b>{step.result}</b>
            </p>
            <p class="source">{step.source}</p>
          </li>
        ))}
      </ol>
    </details>
  );
}

/** The rules that bore on the answer, the defaults it took, and where each comes from. */
export function Sources({ reply }: { readonly reply: Reply }) {
  if (reply.checks.length + reply.assumed.length === 0) return null;
  return (
    <details class="sources">
      <summary>{page.sources}</summary>
      <ul>
        {reply.checks.map(({ rule, source }) => (
          <li>
            <b>{capital(titleOf(rule))}</b>
            <p class="source">{source}</p>
          </li>
        ))}
        {reply.assumed.map(({ text, rule }) => (
          <li>
            <b>{capital(text)}</b>
            <p class="source">{page.assumedFrom(rule)}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The cards that say more. */
export function Cards({ reply }: { readonly reply: Reply }) {
  if (reply.cards.length === 0) return null;
  return (
    <details class="cards" open={reply.kind === 'card'}>
      <summary>{page.cards}</summary>
      <ul>
        {reply.cards.map(({ title, excerpt }) => (
          <li>
            <b>{title}</b>
            <p>{excerpt}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The answer as the command line prints it, for a message or a note. */
export function InWords({ text }: { readonly text: string }) {
  return (
    <details class="words">
      <summary>{page.inWords}</summary>
      <p class="text">{text}</p>
    </details>
  );
}
