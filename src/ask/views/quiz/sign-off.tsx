import { screens } from '../../quiz/desk/call.ts';
import type { SignOff } from '../../quiz/sign-off.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { SeatOptions } from './seats.tsx';
import { Back } from './sheet.tsx';

/** Which sheet is wanted. */
export const ChooseSeat = ({
  seat,
  error,
}: {
  readonly seat: string | undefined;
  readonly error?: string | undefined;
}) => (
  <form class="build screen-only" method="get" action={screens.signOff}>
    {error && <p class="error">{error}</p>}
    <label>
      <span>{desk.signOff.choose}</span>
      <select name="seat">
        <SeatOptions chosen={seat} />
      </select>
    </label>
    <button type="submit" class="go">
      {desk.signOff.show}
    </button>
  </form>
);

const Ticks = ({ lines }: { readonly lines: readonly string[] }) => (
  <ul class="ticks">
    {lines.map((line) => (
      <li>
        <span class="box" /> {line}
      </li>
    ))}
  </ul>
);

/** What a trainer watches and ticks, drawn from the steps and the safety rules of a seat. */
export function SignOffSheet({
  seat,
  sheet,
  version,
}: {
  readonly seat: string;
  readonly sheet: SignOff;
  readonly version: string;
}) {
  return (
    <article class="sheet">
      <Back to={screens.desk} />
      <h1>{desk.signOff.heading(desk.seats[seat] ?? seat)}</h1>
      <p>{desk.signOff.how}</p>
      <p class="lines">
        {desk.signOff.signed.map((label) => (
          <span>
            {label} <span class="line" />
          </span>
        ))}
      </p>
      {sheet.musts.length > 0 && (
        <section>
          <h2>{desk.signOff.musts}</h2>
          <Ticks lines={sheet.musts} />
        </section>
      )}
      {sheet.steps.map(({ title, checks, craft, good, cautions }) => (
        <section>
          <h2>{title}</h2>
          <Ticks lines={[...craft, ...checks]} />
          <p>
            <b>{desk.signOff.good}:</b> {good}
          </p>
          {cautions.map((caution) => (
            <p class="watch">
              <b>{desk.signOff.caution}:</b> {caution}
            </p>
          ))}
        </section>
      ))}
      <p class="source">{desk.signOff.rules(version)}</p>
    </article>
  );
}
