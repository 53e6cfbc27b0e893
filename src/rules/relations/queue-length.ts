import { constant, over, times } from '../../calc/expression.ts';
import queueLength from '../quantities/queue-length.ts';
import queueRoom from '../quantities/queue-room.ts';
import stopTime from '../quantities/stop-time.ts';
import trafficVolume from '../quantities/traffic-volume.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'queue-length',
  title: 'vehicles that come while traffic is held',
  finds: queueLength,
  by: times(trafficVolume, over(stopTime, constant(1, 'h')), queueRoom),
  because: 'Vehicles an hour, times the share of an hour they are held, times the road each one takes.',
  sources: [commonPractice],
  examples: [
    {
      given: { 'traffic-volume': [200, '1'], 'stop-time': [6, 'min'], 'queue-room': [25, 'ft'] },
      finds: [500, 'ft'],
      source: '200 an hour for a tenth of an hour is 20 vehicles, at 25 ft each',
    },
  ],
});
