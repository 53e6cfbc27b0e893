import { plus } from '../../calc/expression.ts';
import haulSpeed from '../quantities/haul-speed.ts';
import returnSpeed from '../quantities/return-speed.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'return-speed',
  title: 'back as fast as out',
  finds: returnSpeed,
  by: plus(haulSpeed),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Where nobody says otherwise.',
  sources: [commonPractice],
  note: 'Back taken as fast as out.',
  examples: [{ given: { 'haul-speed': [40, 'mph'] }, finds: [40, 'mph'], source: 'common practice' }],
});
