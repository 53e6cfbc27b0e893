import { crewOf } from '../../book/crew.ts';
import { daysRecorded } from '../../book/day.ts';
import { layoutOfJob } from '../../book/layout.ts';
import { ratesOf } from '../../book/machine-rates.ts';
import { mayMake } from '../../book/roles.ts';
import { systemOfSheet } from '../../book/sheet.ts';
import { telling } from '../../book/telling.ts';
import { engine } from '../../engine.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import { framed } from '../framed.tsx';
import { sayFact } from '../names.ts';
import { CrewSection } from './crew.tsx';
import { cellWords, changeWords, fieldTitle, hours, lineTitle } from './fields.tsx';
import { Carried, type JobPage, LineForm, TextForm } from './forms.tsx';
import { PatchTable } from './patches.tsx';
import { Strip } from './strip.tsx';
import { TrafficSection } from './traffic.tsx';

/** The page of a job as a whole document. It works as plain forms; script only keeps it when there is no signal. */
export function jobPage(props: JobPage): string {
  const name = props.sheet.name ?? words.unnamed;
  return framed({
    at: 'job',
    look: 'job',
    version: props.version,
    data: { 'data-job': props.address, 'data-count': String(props.changes.length) },
    title: words.title(name),
    dress: props.dress,
    children: (
      <>
        <JobBody {...props} />
      </>
    ),
  });
}

/** The files that a job goes by: what each does, its form's words, and what is in force of it. */
const filesOf = ({ rules, rates }: JobPage['sheet']) =>
  [
    ['rules', words.forms.rules, words.forms.rulesHint, rules],
    ['rates', words.forms.rates, words.forms.ratesHint, rates],
  ] as const;

/** What stands in the main part of it; script puts a new one in its place after each change. */
export function JobBody(props: JobPage) {
  const { sheet, totals, role, error, said, address } = props;
  const system = systemOfSheet(sheet);
  const tell = telling(engine, { system });
  const trucks = totals.job.get('trucks-needed');
  const whole = totals.sums['premix-mass'] ? tell.whole(totals) : undefined;
  const days = daysRecorded(sheet);
  return (
    <>
      <h1>{[sheet.name ?? words.unnamed, sheet.road].filter(Boolean).join(', ')}</h1>
      <p class="hint" id="sync" role="status" />
      {error && (
        <p class="error" id="error" role="alert">
          {error}
        </p>
      )}
      {said.map((line) => (
        <p class="notice" role="status">
          {line}
        </p>
      ))}
      {props.takeBack && (
        <form method="post" action={address}>
          <Carried {...props} act="undo" />
          <input type="hidden" name="change" value={props.takeBack} />
          <button type="submit">{words.buttons.takeBack}</button>
        </form>
      )}
      <Clashes {...props} />
      <section aria-labelledby="totals">
        <h2 id="totals">{words.totals}</h2>
        {whole?.text.split('\n').map((line) => (
          <p>{line}</p>
        ))}
        {totals.laid > 0 && <p>{words.laid(tell.words('placed-mass', totals.laid))}</p>}
        {totals.patches.length > 0 && (
          <p>
            <b>
              {words.left(
                totals.left.patches,
                tell.words('tons-left', totals.left.mass),
                tell.words('tack-volume', totals.left.tack),
              )}
            </b>
          </p>
        )}
        {sheet.facts.length > 0 && (
          <p>
            {words.known}: {sheet.facts.map((fact) => sayFact(fact)).join(', ')}.
          </p>
        )}
      </section>
      {role !== 'look' && (
        <TextForm
          {...props}
          act="tell"
          title={words.forms.tell}
          hint={words.forms.tellHint}
          button={words.buttons.tell}
        />
      )}
      <CrewSection crew={crewOf(engine, sheet, totals)} rates={ratesOf(sheet)} tell={tell} />
      <Strip patches={totals.patches} />
      <PatchTable {...props} tell={tell} />
      {totals.days.length > 0 && (
        <section aria-labelledby="days">
          <h2 id="days">{words.days}</h2>
          <ul>
            {totals.days.map((plan) => (
              <li>
                <b>
                  {plan.day === undefined ? words.noDay : typeof plan.day === 'number' ? words.day(plan.day) : plan.day}
                </b>
                :{' '}
                {words.dayLine(
                  plan.patches.map(({ patch }) => patch.label).join(', '),
                  tell.words('premix-order', plan.order),
                  words.loads(plan.loads),
                  tell.words('tack-volume', plan.tack),
                )}
                {plan.grading !== undefined &&
                  plan.rolling !== undefined &&
                  `; ${words.moving(hours(plan.grading), hours(plan.rolling))}`}
              </li>
            ))}
          </ul>
          {trucks && <p>{words.trucks(tell.words('trucks-needed', trucks.value))}</p>}
        </section>
      )}
      {role !== 'look' && (
        <section class="forms">
          {role === 'edit' && (
            <>
              <LineForm {...props} kind="patch" title={words.forms.patch} />
            </>
          )}
          {(['load', 'hours', 'tack', 'weather', 'event'] as const).map((kind) => (
            <LineForm {...props} kind={kind} title={words.forms[kind]} />
          ))}
          {role === 'edit' && (
            <>
              <TextForm
                {...props}
                act="import"
                title={words.forms.import}
                hint={words.start.hint}
                button={words.buttons.take}
                text={props.draft}
                file=".csv,.json,text/csv,application/json"
              />
              <LineForm {...props} kind="job" title={words.forms.job} />
              {filesOf(sheet).map(([act, title, hint, held]) => (
                <TextForm
                  {...props}
                  act={act}
                  title={title}
                  hint={hint}
                  button={words.buttons.save}
                  text={held === undefined ? '' : JSON.stringify(held, null, 1)}
                  file=".json,application/json"
                />
              ))}
            </>
          )}
        </section>
      )}
      <TrafficSection layout={layoutOfJob(engine, totals, system)} />
      <section class="buttons" aria-labelledby="records">
        <h2 id="records">{words.records}</h2>
        <a href="/">{words.askHere}</a>
        {days.length === 0 && <p>{words.record.noDays}</p>}
        {days.map((day) => (
          <a href={`${address}/day/${day}`}>{day}</a>
        ))}
        {role === 'edit' && <a href={`${address}/links`}>{words.forms.links}</a>}
        <a href={`${address}/season`}>{words.season}</a>
        <a href={`${address}/export.csv`}>{words.csv}</a>
        <a href={`${address}/export.json`}>{words.json}</a>
      </section>
      <Log {...props} />
    </>
  );
}

function Clashes(props: JobPage) {
  const { book, totals, address } = props;
  if (book.clashes.length === 0) return null;
  const labels = new Map(totals.patches.map(({ patch }) => [patch.line, `${words.columns.label} ${patch.label}`]));
  return (
    <section class="clashes" aria-labelledby="clashes">
      <h2 id="clashes">{words.clashes}</h2>
      {book.clashes.map(({ line, field, stands, others }) => (
        <div>
          <p>
            <b>{words.clash(labels.get(line) ?? lineTitle(line), fieldTitle(field))}</b>
          </p>
          {[stands, ...others].map((writing, i) => (
            <form method="post" action={address}>
              <Carried {...props} act="settle" line={line} />
              <input type="hidden" name="field" value={field} />
              <input type="hidden" name="change" value={writing.change} />
              <button type="submit" disabled={props.role === 'look'}>
                {words.clashTake(
                  field === 'gone'
                    ? i === 0
                      ? words.clashGone.stands
                      : words.clashGone.others
                    : cellWords(writing.value) || words.empty,
                  writing.by ?? '',
                )}
              </button>
            </form>
          ))}
        </div>
      ))}
    </section>
  );
}

/** Most changes the log shows; the export has them all. */
const mostLogged = 50;

function Log(props: JobPage) {
  const { changes, totals, address, role } = props;
  const patches = totals.patches.map(({ patch }) => patch);
  return (
    <details class="log">
      <summary>{words.log}</summary>
      <ol>
        {changes
          .slice(-mostLogged)
          .reverse()
          .map((change) => {
            return (
              <li>
                {changeWords(change, patches)}
                {mayMake(role, change) && (
                  <form method="post" action={address}>
                    <Carried {...props} act="undo" />
                    <input type="hidden" name="change" value={change.id} />
                    <button type="submit">{words.buttons.undo}</button>
                  </form>
                )}
              </li>
            );
          })}
      </ol>
    </details>
  );
}
