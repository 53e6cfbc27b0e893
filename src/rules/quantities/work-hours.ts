import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'work-hours',
  title: 'hours worked',
  dimension: 'time',
  units: { us: 'h', metric: 'h' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'From set-up to signs down: the crew is paid for all of it.',
  sources: [commonPractice],
  roles: { after: ['work', 'night', 'daylight'], before: ['work', 'day', 'shift', 'night', 'daylight'] },
  bare: false,
  question: {
    text: 'How many hours?',
    ease: 2,
    choices: [
      { number: 4, unit: 'h' },
      { number: 8, unit: 'h' },
      { number: 10, unit: 'h' },
    ],
  },
  plausible: { min: { number: 0.25, unit: 'h' }, max: { number: 2000, unit: 'h' } },
  beside: ['labor-cost', 'trips-per-truck'],
});
