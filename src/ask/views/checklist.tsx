import type { Reply } from '../reply.ts';
import { page } from '../wording/page.en.ts';
import { Cautions } from './cautions.tsx';

interface Props {
  readonly reply: Reply;
  /** Number of the entry: a tick belongs to one entry of the page. */
  readonly entry: number;
  readonly ticks: ReadonlySet<string>;
}

/** Steps beyond these are a list to go through: each is folded, its cautions never. */
const shownWhole = 3;

/** The checklist. Ticks travel with the form, so that the next question does not clear them. */
export function Checklist({ reply, entry, ticks }: Props) {
  const { steps, text } = reply;
  if (steps.length === 0) return null;
  const folded = steps.length > shownWhole;
  return (
    <section class="checklist">
      <h4>{page.checklist}</h4>
      <ol>
        {steps.map((step, at) => {
          const names = step.checks.map((_, line) => `${entry}.${at}.${line}`);
          const body = (
            <>
              {!text.includes(step.text) && <p>{step.text}</p>}
              {step.checks.map((check, line) => (
                <Tick name={names[line]!} text={check} ticks={ticks} />
              ))}
            </>
          );
          return (
            <li>
              {folded ? (
                <details open={names.some((name) => ticks.has(name))}>
                  <summary>{page.place(at + 1, step.title)}</summary>
                  {body}
                </details>
              ) : (
                <>
                  <p class="stage">
                    <b>{step.title}</b>
                  </p>
                  {body}
                </>
              )}
              <Cautions cautions={step.cautions} />
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Tick({
  name,
  text,
  ticks,
}: {
  readonly name: string;
  readonly text: string;
  readonly ticks: ReadonlySet<string>;
}) {
  return (
    <label class="tick">
      <input type="checkbox" form="ask" name="tick" value={name} checked={ticks.has(name)} />
      <span>{text}</span>
    </label>
  );
}
