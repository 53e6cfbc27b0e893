import type { Child } from 'hono/jsx';
import type { Check, Reply, Status, Verdict } from '../reply.ts';
import { en } from '../wording/en.ts';
import { page } from '../wording/page.en.ts';
import { withoutOutcome } from './basis.ts';

/** What a rule says here, in a box: word and shape tell the outcome, colour only helps. */
export function Mark({ judged, main = false }: { readonly judged: Verdict; readonly main?: boolean }) {
  return (
    <Box status={judged.status} main={main}>
      {withoutOutcome(judged.text, judged.status)}
    </Box>
  );
}

/** The rules that are broken here, beside the one asked about: each in a box of its own. */
export function Broken({ reply }: { readonly reply: Reply }) {
  return (
    <>
      {besides(reply, ['stop', 'caution']).map((check) => (
        <Mark judged={check} />
      ))}
    </>
  );
}

/** The other rules that bear on the figures: those that cannot be judged yet with what would settle them, and those that hold. */
export function OtherRules({ reply }: { readonly reply: Reply }) {
  const groups = (['cannot-tell', 'ok', 'not-applicable'] as const)
    .map((status) => ({ status, checks: besides(reply, [status]) }))
    .filter(({ checks }) => checks.length > 0);
  if (groups.length === 0) return null;
  return (
    <section class="checks">
      <h4>{page.checks}</h4>
      {groups.map(({ status, checks }) => (
        <Box status={status}>
          <ul>
            {checks.map(({ text }) => (
              <li>{withoutOutcome(text, status)}</li>
            ))}
          </ul>
        </Box>
      ))}
    </section>
  );
}

interface BoxProps {
  readonly status: Status;
  readonly main?: boolean;
  readonly children: Child;
}

function Box({ status, main = false, children }: BoxProps) {
  return (
    <div class={`mark ${status}${main ? ' main' : ''}`}>
      <b class="outcome">{en.status[status]}</b>
      <div class="says">{children}</div>
    </div>
  );
}

/** Checks of these outcomes that say something the verdict, or a check before them, does not. */
function besides({ verdict, checks }: Reply, statuses: readonly Status[]): Check[] {
  const texts = [verdict?.text, ...checks.map(({ text }) => text)];
  return checks.filter(({ status, text }, at) => statuses.includes(status) && texts.indexOf(text) === at + 1);
}
