import { here } from './typed.ts';

export const agencyFiles: readonly unknown[] = ['alder-county', 'california-signs'].map((name) =>
  JSON.parse(here(`docs/examples/${name}.json`)),
);
const schedule = JSON.parse(here('docs/examples/fema-rates-2025.json')) as { rates: unknown[] };
export const ratesFile: unknown = { ...schedule, rates: schedule.rates.slice(0, 8) };

const stamp = (n: number): string => `0mabcdefg.${n.toString(36).padStart(4, '0')}.phone1`;
const figure = (number: number, unit: string) => ({ number, unit });
/** A job with a line of every kind. */
export const changes: readonly unknown[] = [
  {
    name: 'Mill Road',
    road: 'CR 12',
    direction: 'up',
    'day-tons': figure(80, 'ton'),
    note: '=1+1',
    'material-price': figure(85, 'USD/ton'),
  },
  {
    label: '1',
    station: '12+50',
    'patch-length': figure(300, 'ft'),
    'patch-width': figure(12, 'ft'),
    'patch-depth': figure(2, 'in'),
    day: '2026-05-04',
  },
  {
    label: '2',
    readings: [figure(1, 'in'), figure(2, 'in')],
    'patch-length': figure(20, 'm'),
    'patch-width': figure(3, 'm'),
    done: true,
  },
  {
    day: '2026-05-04',
    time: '09:30',
    patch: 'patch/a1',
    ticket: '17',
    'placed-mass': figure(14.2, 'ton'),
    'mix-temperature': figure(280, 'degF'),
  },
  { day: '2026-05-04', who: 'JM', task: 'rake', 'work-hours': figure(8, 'h'), 'labor-rate': figure(30, 'USD/h') },
  { day: '2026-05-04', patch: 'patch/a1', 'tack-used': figure(40, 'gal') },
  { day: '2026-05-04', 'air-temperature': figure(60, 'degF'), sky: 'clear' },
  { day: '2026-05-04', what: 'delay', 'wait-time': figure(20, 'min'), note: "'quoted" },
].map((set, at) => ({
  id: stamp(at + 1),
  by: 'JM',
  line: at === 0 ? 'job' : `${['patch', 'patch', 'load', 'hours', 'tack', 'weather', 'event'][at - 1]}/a${at}`,
  set,
}));
