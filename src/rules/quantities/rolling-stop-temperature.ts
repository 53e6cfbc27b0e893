import { quantity } from '../shapes.ts';
import { fromMemory, navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'rolling-stop-temperature',
  title: 'temperature at which rolling stops helping',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Below it the asphalt is too stiff for the drum to move stone against stone.',
  sources: [
    fromMemory('about 175 degF for dense hot mix'),
    navyBasic('ch. 11: below 185 degF the mat no longer packs'),
  ],
  cues: ['what temperature stop|quit roll|rolled', 'temperature stop|quit roll|rolled', 'how+cold roll|rolled'],
  alsoCalled: ['cessation temperature'],
  roles: { before: ['before', 'till', 'until', 'to', 'below', 'reach'] },
  setting: ['minute', 'time', 'how-far', 'how', 'mat', 'roll', 'rolled', 'cool', 'cold'],
  bare: { us: 'degF', metric: 'degC' },
  default: { number: 175, unit: 'degF' },
  plausible: { min: { number: 120, unit: 'degF' }, max: { number: 230, unit: 'degF' } },
  asks: 'How cold is too cold to roll?',
  beside: ['time-to-roll'],
  usedAt: ['roll-lift'],
});
