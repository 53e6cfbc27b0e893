import { FileFault } from '../../rules/file-parts.ts';
import type { RateRow, Rates } from '../../rules/rates.ts';
import type { Engine } from '../engine.ts';
import type { Fact } from '../facts.ts';
import { ratesIn } from '../rates/answer.ts';
import { machinesIn } from '../rates/machines.ts';
import { tidy } from '../say.ts';
import type { Sheet } from './sheet.ts';

const rate = 'equipment-rate';

/** The schedule of rates that a job has; none where it was sent none, or a damaged one. */
export function ratesOf({ rates }: Pick<Sheet, 'rates'>): Rates | undefined {
  if (typeof rates !== 'object' || rates === null) return undefined;
  const before = read.get(rates);
  if (before) return before instanceof FileFault ? undefined : before;
  const found = ratesIn(rates);
  read.set(rates, found);
  return found instanceof FileFault ? undefined : found;
}

const read = new WeakMap<object, Rates | FileFault>();

/** What one machine costs an hour by a schedule, or why that cannot be told: no row fits it, or more than one. */
export type Priced =
  | { readonly said: string; readonly count: number; readonly row: RateRow }
  | { readonly said: string; readonly none: true }
  | { readonly said: string; readonly fits: readonly RateRow[] };

/** The machines named in a text, each with its row of the schedule. */
export function pricesOf(text: string, rates: Rates, { knowledge }: Engine): Priced[] {
  return machinesIn(text, rates, knowledge.quantities.get(rate)?.summed ?? []).map(({ said, count, fits }): Priced => {
    const [row] = fits;
    if (!row) return { said, none: true };
    return fits.length === 1 ? { said, count, row } : { said, fits };
  });
}

/** The rate of all machines together, from the schedule, where the job was told none and every machine has one. */
export function machineFacts(engine: Engine, sheet: Sheet): Fact[] {
  const rates = ratesOf(sheet);
  if (!rates || !sheet.machines || sheet.facts.some(({ quantity }) => quantity === rate)) return [];
  const priced = pricesOf(sheet.machines, rates, engine);
  let sum = 0;
  for (const each of priced) {
    if (!('row' in each)) return [];
    sum += each.count * each.row.rate;
  }
  return priced.length > 0 ? [{ quantity: rate, turn: 0, number: tidy(sum), unit: 'USD/h' }] : [];
}
