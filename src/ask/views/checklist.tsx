import type { Step } from '../reply.ts';
import { page } from '../wording/page.en.ts';
import { Cautions } from './cautions.tsx';

interface Props {
  readonly steps: readonly Step[];
  /** Number of the entry: a tick belongs to one entry of the page. */
  readonly entry: number;
  readonly ticks: ReadonlySet<string>;
}

/** The stage's checklist. Ticks travel with the form, so that the next question does not clear them. */
export function Checklist({ steps, entry, ticks }: Props) {
  if (steps.length === 0) return null;
  return (
    <section class="checklist">
      <h4>{page.checklist}</h4>
      <ol>
        {steps.map((step, at) => (
          <li>
            <p class="stage">
              <b>{step.title}</b>
              {step.lift !== undefined && ` (${page.liftOf(step.lift)})`}
            </p>
            {step.text !== '' && <p>{step.text}</p>}
            <Cautions cautions={step.cautions} />
            {step.checks.map((check, line) => (
              <Tick name={`${entry}.${at}.${line}`} text={check} ticks={ticks} />
            ))}
          </li>
        ))}
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
