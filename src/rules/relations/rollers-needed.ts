import { over, roundUp } from '../../calc/expression.ts';
import layingRate from '../quantities/laying-rate.ts';
import rollersNeeded from '../quantities/rollers-needed.ts';
import rollingRate from '../quantities/rolling-rate.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'rollers-needed',
  title: 'rollers for the pace',
  finds: rollersNeeded,
  by: roundUp(over(layingRate, rollingRate)),
  bothWays: false,
  because: 'A part of a roller is a whole one.',
  sources: [
    {
      document: 'FM 5-434, Earthmoving Operations (now TM 3-34.62)',
      issuer: 'US Department of the Army',
      edition: '15 June 2000',
      place: 'para 11-26: rounded up',
      seen: 'restated',
    },
  ],
  examples: [
    {
      given: { 'laying-rate': [80, 'ton/h'], 'rolling-rate': [59.8, 'ton/h'] },
      finds: [2, '1'],
      source: 'worked out by hand: 1.34, rounded up',
    },
  ],
});
