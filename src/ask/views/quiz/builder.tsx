import { work } from '../../../rules/work.ts';
import { addressOf, type Call, screens } from '../../quiz/desk/call.ts';
import { mostItems } from '../../quiz/request.ts';
import { kinds, levels } from '../../quiz/shapes.ts';
import { topics } from '../../quiz/topics.ts';
import { capital } from '../../say.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { SeatOptions } from './seats.tsx';

interface BoxesProps {
  readonly legend: string;
  readonly hint?: string;
  readonly name: string;
  readonly values: readonly string[];
  readonly names: Readonly<Record<string, string>>;
  readonly ticked: readonly string[];
}

/** A group of boxes, any number of which may be ticked. */
function Boxes({ legend, hint, name, values, names, ticked }: BoxesProps) {
  return (
    <fieldset class="boxes">
      <legend>{legend}</legend>
      {hint && <p class="hint-line">{hint}</p>}
      <div>
        {values.map((value) => (
          <label>
            <input type="checkbox" name={name} value={value} checked={ticked.includes(value)} />
            <span>{names[value] ?? value}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** What a set is made of. A plain form whose fields become the address of the set. */
export function BuildForm({ call: { request } }: { readonly call: Call }) {
  const { topics: on = [], seat, levels: at = [], kinds: sorts = [], count, seed, units, about = [] } = request;
  return (
    <form class="build" method="get" action={screens.desk} aria-label={desk.build}>
      <div class="pair">
        <label>
          <span>{desk.seat}</span>
          <select name="seat">
            <option value="">{desk.noSeat}</option>
            <SeatOptions chosen={seat} />
          </select>
        </label>
        <label>
          <span>{desk.count}</span>
          <input
            type="number"
            name="count"
            min="1"
            max={mostItems}
            value={Number.isFinite(count) ? count : ''}
            required
          />
        </label>
      </div>
      <p class="hint-line">{desk.seatHint}</p>
      <Boxes
        legend={desk.topics}
        hint={desk.topicsHint}
        name="topic"
        values={topics}
        names={desk.topicNames}
        ticked={on}
      />
      <Boxes legend={desk.levels} name="level" values={levels} names={desk.levelNames} ticked={at} />
      <Boxes legend={desk.kinds} name="kind" values={kinds} names={desk.kindNames} ticked={sorts} />
      <details open={units === 'metric' || about.length > 0 || seed !== undefined}>
        <summary>{desk.more}</summary>
        <div class="pair">
          <label>
            <span>{desk.seed}</span>
            <input type="text" name="seed" value={seed ?? ''} maxlength={60} autocomplete="off" />
          </label>
          <label>
            <span>{desk.units}</span>
            <select name="units">
              <option value="">{desk.unitNames.us}</option>
              <option value="metric" selected={units === 'metric'}>
                {desk.unitNames.metric}
              </option>
            </select>
          </label>
        </div>
        <p class="hint-line">
          {desk.seedHint} {desk.unitsHint}
        </p>
        <label>
          <span>{desk.about}</span>
          <select name="about">
            <option value="">{desk.noFault}</option>
            {[...work.faults.values()].map(({ id, title }) => (
              <option value={`fault/${id}`} selected={about.includes(`fault/${id}`)}>
                {capital(title)}
              </option>
            ))}
          </select>
        </label>
        <p class="hint-line">{desk.aboutHint}</p>
      </details>
      <button type="submit" class="send">
        {desk.make}
      </button>
    </form>
  );
}

const five: Call = { request: { topics: ['safety'], levels: ['easy'], count: 5 }, feedback: 'end' };

/** Other ways to begin. */
export const Starts = () => (
  <section class="starts">
    <h2>{desk.startHere}</h2>
    <ul class="go-list">
      <li>
        <a class="go" href={addressOf('tailgate', five)}>
          {desk.tailgateStart}
        </a>
      </li>
      <li>
        <a class="go" href={screens.signOff}>
          {desk.signOffStart}
        </a>
      </li>
      <li>
        <a class="go" href={screens.practice}>
          {desk.practiceStart}
        </a>
      </li>
    </ul>
  </section>
);

/** Opens a set that was saved: the key says what has changed since. */
export const OpenKept = ({ error }: { readonly error?: string | undefined }) => (
  <form class="build" method="post" action={screens.kept} enctype="multipart/form-data" aria-label={desk.keep.heading}>
    <h2>{desk.keep.heading}</h2>
    {error && <p class="error">{error}</p>}
    <label>
      <span>{desk.keep.label}</span>
      <input type="file" name="set" accept="application/json,.json" required />
    </label>
    <button type="submit" class="go">
      {desk.keep.open}
    </button>
  </form>
);
