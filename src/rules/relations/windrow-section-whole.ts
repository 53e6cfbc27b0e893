import { plus } from '../../calc/expression.ts';
import windrowSection from '../quantities/windrow-section.ts';
import windrowSectionAll from '../quantities/windrow-section-all.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-whole',
  title: 'one row for all lifts, where no lift is named',
  finds: windrowSection,
  by: plus(windrowSectionAll),
  bothWays: false,
  second: true,
  plan: true,
  because: 'With a depth and no lift, the row is the whole patch.',
  sources: [commonPractice],
  note: 'One row for all lifts, taken as loose as the laid mat.',
  examples: [{ given: { 'windrow-section-all': [2.5, 'ft2'] }, finds: [2.5, 'ft2'], source: 'the same row' }],
});
