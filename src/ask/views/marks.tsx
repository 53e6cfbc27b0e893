import type { Check, Reply, Status, Verdict } from '../reply.ts';
import { en } from '../wording/en.ts';
import { page } from '../wording/page.en.ts';
import { withoutOutcome } from './basis.ts';
import { titleOf } from './names.ts';

/** Every rule that bears on the figures, beside the one that was asked about. */
export function Checks({ reply }: { readonly reply: Reply }) {
  const { verdict } = reply;
  const others = reply.checks.filter(({ rule, text }) => rule !== verdict?.rule || text !== verdict.text);
  if (others.length === 0) return null;
  return (
    <section class="checks">
      <h4>{page.checks}</h4>
      <ul>
        {others.map((check) => (
          <li>
            <Mark judged={check} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a rule says here: word and shape tell the outcome, colour only helps. */
export function Mark({ judged, main = false }: { readonly judged: Verdict | Check; readonly main?: boolean }) {
  const { status, text, needs } = judged;
  return (
    <div class={`mark ${status}${main ? ' main' : ''}`}>
      <b class="outcome">{outcome(status)}</b>
      <span class="says">
        {withoutOutcome(text, status)}
        {needs && needs.length > 0 && <span class="needs"> {page.needs(needs.map(titleOf))}</span>}
      </span>
    </div>
  );
}

const outcome = (status: Status): string => en.status[status];
