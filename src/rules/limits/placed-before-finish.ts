import liftCount from '../quantities/lift-count.ts';
import placedShare from '../quantities/placed-share.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'placed-before-finish',
  title: 'share down before the finish lift',
  on: placedShare,
  min: { number: 200 / 3, unit: '%' },
  from: { quantity: liftCount, atLeast: { number: 3, unit: '1' } },
  breaks: 'caution',
  because:
    'The finish lift levels and closes what lies below; it is too thin to make up a patch that is still half empty.',
  sources: [commonPractice],
  cues: [
    '#figure down|place start|begin|make finish|final|last+lift',
    '@check mix|load down|place start|begin|make finish|final|last+lift',
    '@check finish|final|last+lift down|place|laid',
    'how-many down before finish|final|last',
    'how-many before finish|final+lift',
    'share before finish',
    'why two+third',
    'half|part|third mix in|down|place last|final|finish+lift|pass',
    'only half|part down|in|place before|when last|final|finish',
    '#number|#figure down|place|in|mix|it before|when finish|final|last',
  ],
  text: {
    ok: '{on} down before the finish lift is enough: about {limit} is the figure.',
    caution: '{on} down before the finish lift is short of about {limit}.',
    cannotTell:
      'Tell me how many lifts there are and what share of the mix is down, and I can say whether it is time for the finish lift.',
    notApplicable: 'With one or two lifts the share does not apply: at most half can be down before the last of them.',
  },
  fix: 'Lay another lift before the finish, and keep the mix short of the outer edge until then.',
  examples: {
    holds: { 'placed-share': [75, '%'], 'lift-count': [4, '1'] },
    boundary: { 'placed-share': [200 / 3, '%'], 'lift-count': [3, '1'] },
    breaks: { 'placed-share': [40, '%'], 'lift-count': [3, '1'] },
    cannotTell: { 'lift-count': [3, '1'] },
    also: [
      { facts: { 'placed-share': [50, '%'], 'lift-count': [2, '1'] }, is: 'not-applicable' },
      { facts: { 'placed-share': [50, '%'] }, is: 'cannot-tell' },
      { facts: { 'placed-share': [50, '%'], 'patch-depth': [3, 'in'] }, is: 'caution' },
    ],
  },
});
