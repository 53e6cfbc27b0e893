import { minus } from '../../calc/expression.ts';
import legalPayload from '../quantities/legal-payload.ts';
import postedWeight from '../quantities/posted-weight.ts';
import truckTare from '../quantities/truck-tare.ts';
import { relation } from '../shapes.ts';
import { federalWeights } from '../sources-craft.ts';

export default relation({
  id: 'legal-payload',
  title: 'posted weight less the empty truck',
  finds: legalPayload,
  by: minus(postedWeight, truckTare),
  plan: true,
  because: 'Law and postings weigh truck and load together.',
  sources: [federalWeights('axle and gross weights')],
  examples: [
    {
      given: { 'posted-weight': [46000, 'lb'], 'truck-tare': [24000, 'lb'] },
      finds: [11, 'ton'],
      source: 'worked by hand: 12,000 lb steer and 34,000 lb tandem less 24,000 lb',
    },
  ],
});
