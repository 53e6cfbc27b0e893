import { constant, over, power, split, times } from '../../calc/expression.ts';
import speedUnit from '../choices/speed-unit.ts';
import { californiaManual, manual } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import offset from '../quantities/offset.ts';
import tableSpeed from '../quantities/table-speed.ts';
import { relation } from '../shapes.ts';

const speed = over(tableSpeed, constant(1, 'mph'));

/** L = W S²/60 to 40 mph, L = W S from 45; L and W in feet, S in miles an hour. */
export default relation({
  id: 'merging-taper',
  title: 'taper formula',
  finds: mergingTaper,
  by: split(tableSpeed, constant(40, 'mph'), over(times(offset, power(speed, 2)), 60), times(offset, speed)),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['us'] }],
  because:
    'A driver moves over at so many feet a second whatever his speed, so the length grows with speed and with width.',
  sources: [manual('Table 6B-4'), californiaManual('Table 6B-3(CA), worked for 12 ft')],
  examples: [
    {
      given: { 'table-speed': [55, 'mph'], offset: [12, 'ft'], 'speed-unit': 'us' },
      finds: [660, 'ft'],
      source: 'California MUTCD 2026, Table 6B-3(CA)',
    },
    {
      given: { 'table-speed': [40, 'mph'], offset: [12, 'ft'], 'speed-unit': 'us' },
      finds: [320, 'ft'],
      source: 'California MUTCD 2026, Table 6B-3(CA)',
    },
    {
      given: { 'table-speed': [45, 'mph'], offset: [12, 'ft'], 'speed-unit': 'us' },
      finds: [540, 'ft'],
      source: 'California MUTCD 2026, Table 6B-3(CA)',
    },
  ],
});
