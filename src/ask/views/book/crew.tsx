import type { RateRow, Rates } from '../../../rules/rates.ts';
import type { Crew, WorkedLine } from '../../book/crew.ts';
import type { Telling } from '../../book/telling.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import { ratesTalk } from '../../wording/rates.en.ts';
import { hours } from './fields.tsx';

interface Props {
  readonly crew: Crew;
  readonly rates: Rates | undefined;
  readonly tell: Telling;
}

/** Hours of people and machines, planned and written down, and what is spent, as far as prices and rates are known. */
export function CrewSection({ crew, rates, tell }: Props) {
  const { planned, people, machines, priced, spent } = crew;
  const { crew: labels } = words;
  const money = (dollars: number): string => tell.words('job-cost', dollars);
  const plan = [
    planned.labor === undefined ? '' : labels.planned.labor(hours(planned.labor)),
    planned.grading === undefined ? '' : labels.planned.grading(hours(planned.grading)),
    planned.rolling === undefined ? '' : labels.planned.rolling(hours(planned.rolling)),
  ].filter(Boolean);
  const parts = (['material', 'labor', 'equipment', 'tack'] as const).flatMap((part) => {
    const cost = spent[part];
    return cost === undefined ? [] : [labels.part(labels.parts[part], money(cost))];
  });
  const lacks = [
    ...(spent.unpriced.mix ? [labels.lacks.mix] : []),
    ...(spent.unpriced.labor ? [labels.lacks.labor] : []),
    ...(spent.unpriced.machines.length > 0 ? [labels.lacks.machines(spent.unpriced.machines)] : []),
  ];
  if (plan.length + people.length + machines.length + priced.length + parts.length === 0) return null;
  return (
    <section aria-labelledby="crew">
      <h2 id="crew">{labels.heading}</h2>
      {plan.length > 0 && (
        <p>
          {labels.plannedAre} {plan.join('; ')}.
        </p>
      )}
      {people.length + machines.length > 0 && (
        <table>
          <caption>{labels.recorded}</caption>
          <thead>
            <tr>
              <th scope="col">{labels.columns.name}</th>
              <th scope="col">{labels.columns.hours}</th>
              <th scope="col">{labels.columns.cost}</th>
            </tr>
          </thead>
          <tbody>
            <Rows lines={people} sum={labels.allPeople} money={money} />
            <Rows lines={machines} sum={labels.allMachines} money={money} />
          </tbody>
        </table>
      )}
      {priced.length > 0 && (
        <ul>
          {priced.map((each) => (
            <li>
              {'row' in each
                ? ratesTalk.row(each.count, named(each.row), each.row.code, dollarsAnHour(each.row.rate), each.row.note)
                : 'fits' in each
                  ? labels.which(
                      each.said,
                      each.fits.map((row) => `${row.code} (${named(row)})`),
                    )
                  : labels.none(each.said)}
            </li>
          ))}
        </ul>
      )}
      {rates && <p class="source">{ratesTalk.from(rates.name, rates.year, rates.source, rates.seen, rates.note)}</p>}
      {parts.length > 0 && (
        <p>
          {labels.spent(parts)} {spent.total !== undefined && parts.length > 1 && labels.together(money(spent.total))}
        </p>
      )}
      {lacks.length > 0 && <p class="asked">{labels.notIn(lacks)}</p>}
    </section>
  );
}

function Rows({
  lines,
  sum,
  money,
}: {
  readonly lines: readonly WorkedLine[];
  readonly sum: string;
  readonly money: (dollars: number) => string;
}) {
  const all = lines.reduce((total, line) => total + line.hours, 0);
  const cost = lines.every((line) => line.cost !== undefined)
    ? lines.reduce((total, line) => total + line.cost!, 0)
    : undefined;
  const rows =
    lines.length > 1 ? [...lines, { name: sum, hours: all, ...(cost === undefined ? {} : { cost }) }] : lines;
  return (
    <>
      {rows.map((line: WorkedLine) => (
        <tr>
          <th scope="row">{line.name}</th>
          <td>{hours(line.hours)}</td>
          <td>{line.cost === undefined ? words.crew.noRate : money(line.cost)}</td>
        </tr>
      ))}
    </>
  );
}

const named = ({ machine, size, horsepower }: RateRow): string =>
  ratesTalk.machine(machine, size && `${size.number} ${size.unit}`, horsepower);

const dollarsAnHour = (rate: number): string => `$${rate.toFixed(2)}/h`;
