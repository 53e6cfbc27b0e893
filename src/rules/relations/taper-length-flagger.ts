import { plus } from '../../calc/expression.ts';
import flaggerTaper from '../quantities/flagger-taper.ts';
import taperLength from '../quantities/taper-length.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'taper-length-flagger',
  title: 'flagger taper as it is laid out',
  finds: taperLength,
  by: plus(flaggerTaper),
  bothWays: false,
  said: [flaggerTaper],
  second: true,
  because: 'Who gives the length of the flagger taper gives the length of the taper that stands there.',
  sources: [commonPractice],
  examples: [{ given: { 'flagger-taper': [80, 'ft'] }, finds: [80, 'ft'], source: 'common practice' }],
});
