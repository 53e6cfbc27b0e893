import { times } from '../../calc/expression.ts';
import rollersOnJob from '../quantities/rollers-on-job.ts';
import rollingRate from '../quantities/rolling-rate.ts';
import rollingRateAll from '../quantities/rolling-rate-all.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rolling-rate-all',
  title: 'pace of all rollers',
  finds: rollingRateAll,
  by: times(rollingRate, rollersOnJob),
  keeps: [rollersOnJob],
  because: 'Each one takes its own share of the lanes.',
  sources: [geometry],
  examples: [
    {
      given: { 'rolling-rate': [60, 'ton/h'], 'rollers-on-job': [2, '1'] },
      finds: [120, 'ton/h'],
      source: 'twice the one roller',
    },
  ],
});
