import legalPayload from '../quantities/legal-payload.ts';
import postedWeight from '../quantities/posted-weight.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { limit } from '../shapes.ts';
import { federalWeights } from '../sources-craft.ts';

export default limit({
  id: 'payload',
  title: 'load against the legal load',
  on: truckPayload,
  max: legalPayload,
  breaks: 'stop',
  ceiling: {
    is: postedWeight,
    text: '{on} of load is already the {limit} posted for the whole truck, and the truck weighs on top of it.',
  },
  because:
    'An overloaded truck brakes late, breaks roads and bridges, and tips with the bed up; the sign and the law weigh the whole truck.',
  sources: [federalWeights('axle and gross weights')],
  cues: [
    'licensed #mass|#number ticket|scale|load|truck|haul|carry',
    'truck weigh|carry empty bridge|post|posted',
    'bridge post|posted carry|cross',
    'overload',
    '@check load|payload|haul|carry bridge|post|posted|limit',
    'bridge carry|haul|load|truck',
    'over+weight',
    'licensed #mass load|truck',
    'frost+law',
    '@check #mass truck|load -order -patch -#length -#area',
    'bridge #mass load|cross|truck|haul @check',
    'post|posted #mass load|cross|truck|haul',
    'overload ?load ?truck',
    '#mass truck|load overload',
    '#mass truck rated',
    '#mass rated',
    'haul|hauling|carry #mass|#number truck|load @check -#length',
  ],
  text: {
    ok: '{on} is within the {limit} this truck may carry.',
    stop: '{on} is over the {limit} this truck may carry.',
    cannotTell:
      "A posted or legal weight is the whole truck, not its load. Tell me the load and what the truck may legally carry, or the posted weight and the truck's empty weight.",
  },
  fix: 'Load it lighter and make more trips, or go another way.',
  examples: {
    holds: { 'truck-payload': [10, 'ton'], 'legal-payload': [11, 'ton'] },
    boundary: { 'truck-payload': [11, 'ton'], 'posted-weight': [46000, 'lb'], 'truck-tare': [24000, 'lb'] },
    breaks: { 'truck-payload': [10, 'ton'], 'posted-weight': [10, 'ton'], 'truck-tare': [9, 'ton'] },
    cannotTell: { 'truck-payload': [14, 'ton'] },
    also: [
      { facts: { 'legal-payload': [12, 'ton'] }, is: 'cannot-tell' },
      { facts: { 'truck-payload': [10, 'ton'], 'posted-weight': [10, 'ton'] }, is: 'stop' },
      { facts: { 'truck-payload': [9, 'ton'], 'posted-weight': [10, 'ton'] }, is: 'cannot-tell' },
    ],
  },
});
