import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'least-passes',
  title: 'laying passes the width needs, all lifts',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Every strip once for every lift; a pass more separates stone from fines.',
  sources: [commonPractice],
  cues: ['few|min pass', 'how-many pass lift|need grader|blade'],
  bare: { us: '1', metric: '1' },
  beside: ['blade-passes', 'lift-count'],
});
