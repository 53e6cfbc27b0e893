import { constant, over, times } from '../../calc/expression.ts';
import drumVibration from '../quantities/drum-vibration.ts';
import impactsPerFoot from '../quantities/impacts-per-foot.ts';
import rollerSpeed from '../quantities/roller-speed.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'impacts-per-foot',
  title: 'blows of the drum in each foot',
  finds: impactsPerFoot,
  by: over(times(drumVibration, constant(1, 'ft')), times(rollerSpeed, constant(1, 'min'))),
  keeps: [drumVibration],
  because: 'Blows a minute over feet a minute.',
  sources: [geometry],
  examples: [
    {
      given: { 'drum-vibration': [2640, '1'], 'roller-speed': [3, 'mph'] },
      finds: [10, '1'],
      source: 'worked out by hand: 3 mph is 264 ft/min',
    },
  ],
});
