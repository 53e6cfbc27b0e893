import type { DayRecord, Worked } from '../../book/day.ts';
import type { Entry } from '../../book/sheet.ts';
import { type Sheet, systemOfSheet } from '../../book/sheet.ts';
import { telling } from '../../book/telling.ts';
import { engine } from '../../engine.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import type { Dress } from '../document.tsx';
import { framed } from '../framed.tsx';
import { cellWords, hours } from './fields.tsx';

export interface DayPage {
  readonly address: string;
  readonly sheet: Sheet;
  readonly record: DayRecord;
  readonly version: string;
  readonly dress: Dress;
}

/** The record of a day, to be read, printed and signed. */
export function dayPage({ address, sheet, record, version, dress }: DayPage): string {
  const tell = telling(engine, { system: systemOfSheet(sheet) });
  const { record: labels } = words;
  const { load } = labels;
  const title = words.dayTitle(record.day);
  return framed({
    at: 'job',
    look: 'job record',
    version,
    title: words.title(title),
    dress,
    children: (
      <>
        <p class="buttons">
          <a href={address}>{words.back}</a>
        </p>
        <h1>{title}</h1>
        <p>{[sheet.name, sheet.road].filter(Boolean).join(', ')}</p>
        <h2>{labels.loads}</h2>
        {record.loads.length === 0 ? (
          <p>{labels.none}</p>
        ) : (
          <section class="wide" tabindex={0} aria-label={labels.loads}>
            <table>
              <thead>
                <tr>
                  {Object.values(load).map((head) => (
                    <th scope="col">{head}</th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {record.loads.map((each) => (
                  <tr>
                    <td>{each.load.text('time')}</td>
                    <td>{each.load.text('ticket')}</td>
                    <td>{each.load.text('truck')}</td>
                    <td>{each.patch?.label}</td>
                    <td>{tell.words('placed-mass', each.mass)}</td>
                    <td>{tell.words('placed-mass', each.soFar)}</td>
                    <td>{cellWords(each.load.figure('mix-temperature'))}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        )}
        <h2>{labels.placed}</h2>
        {record.patches.map(({ totals, today }) => (
          <>
            <p>
              {labels.placedLine(
                totals.patch.label,
                tell.words('placed-mass', today),
                tell.words('placed-mass', totals.laid),
                totals.figures['premix-mass'] ? tell.words('premix-mass', totals.figures['premix-mass'].value) : '?',
              )}
            </p>
            {tell.yieldLine(totals) && <p>{tell.yieldLine(totals)}</p>}
          </>
        ))}
        <WorkedList title={labels.people} all={record.people} sum={record.personHours} />
        <WorkedList title={labels.machines} all={record.machines} sum={record.machineHours} />
        <h2>{labels.tack}</h2>
        {record.sticks.length === 0 ? (
          <p>{labels.none}</p>
        ) : (
          <p>{labels.sum(tell.words('tack-volume', record.tack))}</p>
        )}
        <Lines
          title={labels.weather}
          entries={record.weather}
          fields={['time', 'sky', 'air-temperature', 'surface-temperature', 'wind-speed']}
        />
        <Lines title={labels.delays} entries={record.delays} fields={['time', 'wait-time', 'note']} />
        <Lines title={labels.incidents} entries={record.incidents} fields={['time', 'note']} />
        {record.notes.length > 0 && <Lines title={labels.notes} entries={record.notes} fields={['time', 'note']} />}
        <h2>{labels.remaining}</h2>
        <p>
          {words.left(
            record.remaining.patches,
            tell.words('tons-left', record.remaining.mass),
            tell.words('tack-volume', record.remaining.tack),
          )}
        </p>
        <p class="sign">{labels.signed} __________</p>
        <p>{labels.check}</p>
      </>
    ),
  });
}

function WorkedList({
  title,
  all,
  sum,
}: {
  readonly title: string;
  readonly all: readonly Worked[];
  readonly sum: number;
}) {
  return (
    <>
      <h2>{title}</h2>
      {all.length === 0 ? (
        <p>{words.record.none}</p>
      ) : (
        <ul>
          {all.map(({ who, hours: worked, task }) => (
            <li>{words.record.worked(who, hours(worked), task ?? '')}</li>
          ))}
          <li>{words.record.sum(hours(sum))}</li>
        </ul>
      )}
    </>
  );
}

function Lines({
  title,
  entries,
  fields,
}: {
  readonly title: string;
  readonly entries: readonly Entry[];
  readonly fields: readonly string[];
}) {
  return (
    <>
      <h2>{title}</h2>
      {entries.length === 0 ? (
        <p>{words.record.none}</p>
      ) : (
        <ul>
          {entries.map((entry) => (
            <li>
              {fields
                .map((field) => entry.text(field) ?? cellWords(entry.figure(field)))
                .filter(Boolean)
                .join(', ')}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
