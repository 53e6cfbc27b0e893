import endSpread from '../quantities/end-spread.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'end-spread',
  title: 'mix dumped past the tack',
  on: endSpread,
  min: { number: 1, unit: 'ft' },
  max: { number: 2, unit: 'ft' },
  breaks: 'caution',
  because: 'Too little and the ends starve; too much lies on bare road, does not stick, and is thrown off by traffic.',
  sources: [commonPractice],
  cues: [
    '@check past|beyond tack|end',
    '@check dump|mix past|beyond',
    'why past|beyond',
    'dump|mix|spread|run past|beyond end|tack|patch #length -ton -how-many -order',
    'dump|mix|spread past|beyond spray|shot|tack|glue|oil #length -turn -turnout',
    'dump|mix|spread #length past|beyond end|tack|patch|spray ?mix -turn -turnout -blade -carry @check',
    'dump|spread #length extra|more end @check',
    'dump|mix|spread #length|zero|no past|beyond tack|end -ton -order -how-many -what',
  ],
  text: {
    ok: '{on} past each end is right.',
    caution: '{on} past each end: keep to {limit}.',
    cannotTell: 'Tell me how far past the tack the mix is dumped, and I can say whether that is right.',
  },
  fix: 'Dump a little past the tack at each end, and bring back or sweep off what lies on bare road before the final rolling.',
  examples: {
    holds: { 'end-spread': [18, 'in'] },
    boundary: { 'end-spread': [2, 'ft'] },
    breaks: { 'end-spread': [6, 'ft'] },
    cannotTell: {},
    also: [
      { facts: { 'end-spread': [1, 'ft'] }, is: 'ok' },
      { facts: { 'end-spread': [6, 'in'] }, is: 'caution' },
    ],
  },
});
