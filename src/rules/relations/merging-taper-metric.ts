import { constant, over, power, split, times } from '../../calc/expression.ts';
import speedUnit from '../choices/speed-unit.ts';
import { manual2003 } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import offset from '../quantities/offset.ts';
import tableSpeed from '../quantities/table-speed.ts';
import { relation } from '../shapes.ts';

const speed = over(tableSpeed, constant(1, 'km/h'));

/** L = W S²/155 to 60 km/h, L = W S/1.6 from 70; L and W in meters, S in kilometers an hour. */
export default relation({
  id: 'merging-taper-metric',
  title: 'taper formula, metric',
  finds: mergingTaper,
  by: split(
    tableSpeed,
    constant(60, 'km/h'),
    over(times(offset, power(speed, 2)), 155),
    over(times(offset, speed), 1.6),
  ),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['metric'] }],
  because: 'The same rule in meters, as the last edition with metric figures printed it.',
  sources: [
    manual2003('Table 6H-4, p. 6H-5: the limits and the divisor 1.6'),
    { document: 'the divisor 155, not readable in the copy seen: 60 × 1.609344² = 155.4', seen: 'derived' },
  ],
  examples: [
    {
      given: { 'table-speed': [80, 'km/h'], offset: [3.6, 'm'], 'speed-unit': 'metric' },
      finds: [180, 'm'],
      source: 'MUTCD 2003, Table 6H-4: 3.6 × 80 ÷ 1.6',
    },
    {
      given: { 'table-speed': [50, 'km/h'], offset: [3.6, 'm'], 'speed-unit': 'metric' },
      finds: [58.06451612903226, 'm'],
      source: 'MUTCD 2003, Table 6H-4: 3.6 × 50² ÷ 155',
    },
  ],
  note: 'Metric form of the 2003 edition; the edition in force prints feet only.',
});
