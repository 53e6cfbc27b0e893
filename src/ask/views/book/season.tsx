import { toBase } from '../../../calc/quantity.ts';
import { sayFigure } from '../../../calc/wording.ts';
import type { RoadSeason } from '../../book/season.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import type { Dress } from '../document.tsx';
import { framed } from '../framed.tsx';
import { type Bar, Bars } from './bars.tsx';
import { hours } from './fields.tsx';

export interface SeasonPage {
  readonly address: string;
  readonly roads: readonly RoadSeason[];
  readonly metric: boolean;
  readonly unread: number;
  readonly version: string;
  readonly dress: Dress;
}

/** A season by road, as a table and as plots. */
export function seasonPage({ address, roads, metric, unread, version, dress }: SeasonPage): string {
  const [ton, price] = metric ? (['t', 'USD/t'] as const) : (['ton', 'USD/ton'] as const);
  const tons = (base: number): string => sayFigure(base, ton, { rounding: 'tenth' });
  const cost = (base: number): string => sayFigure(base, price);
  const rate = (base: number): string => ((base * toBase(1, ton)) / 3600).toFixed(2);
  const months = new Map<string, number>();
  for (const road of roads) for (const [month, mass] of road.months) months.set(month, (months.get(month) ?? 0) + mass);
  const byMonth = [...months]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, size]): Bar => ({ name, size, text: tons(size) }));
  const by = (pick: (road: RoadSeason) => number | undefined, text: (base: number) => string): Bar[] =>
    roads.flatMap((road) => {
      const size = pick(road);
      return size === undefined ? [] : [{ name: road.road ?? words.noRoad, size, text: text(size) }];
    });
  return framed({
    at: 'job',
    look: 'job record',
    version,
    title: words.title(words.season),
    dress,
    children: (
      <>
        <p class="buttons">
          <a href={address}>{words.back}</a>
        </p>
        <h1>{words.season}</h1>
        {unread > 0 && (
          <p class="error" role="alert">
            {words.seasonUnread(unread)}
          </p>
        )}
        <section class="wide" tabindex={0} aria-label={words.season}>
          <table>
            <thead>
              <tr>
                {Object.values(words.seasonColumns).map((head) => (
                  <th scope="col">{head}</th>
                ))}
              </tr>
            </thead>
            <tbody>
              {roads.map((road) => (
                <tr>
                  <th scope="row">{road.road ?? words.noRoad}</th>
                  <td>{road.patches}</td>
                  <td>{road.done}</td>
                  <td>{tons(road.mass)}</td>
                  <td>{hours(road.hours)}</td>
                  <td>{road.costPerTon === undefined ? '–' : cost(road.costPerTon)}</td>
                  <td>{road.hoursPerTon === undefined ? '–' : rate(road.hoursPerTon)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <Bars title={words.plots.tons} bars={byMonth} />
        <Bars title={words.plots.cost} bars={by(({ costPerTon }) => costPerTon, cost)} />
        <Bars title={words.plots.hours} bars={by(({ hoursPerTon }) => hoursPerTon, rate)} />
        <p>{words.seasonText}</p>
        <form method="post" action={`${address}/season`} class="words">
          <label class="field">
            {words.seasonMore}
            <textarea name="links" rows={4} />
          </label>
          <button type="submit">{words.seasonGo}</button>
        </form>
      </>
    ),
  });
}
