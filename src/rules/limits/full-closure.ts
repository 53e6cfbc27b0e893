import { californiaManual } from '../manual.ts';
import closureTime from '../quantities/closure-time.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'full-closure',
  title: 'road closed both ways',
  on: closureTime,
  max: { number: 20, unit: 'min' },
  breaks: 'caution',
  because: 'A full stop both ways is for a few minutes by day, with somebody at each end to hold it.',
  sources: [californiaManual('Typical Application 13')],
  cues: [
    'close|closed|shut road both|whole|entire|full -one-lane -two-lane -flagger -zone',
    'full+closure',
    'how+long close|shut road|both',
    'close|closed|shut road how-many #time',
    'how+long check close|shut road',
    'road close|closed #time @check',
  ],
  text: {
    ok: '{on} is at most the {limit} a temporary closure both ways may last, by day, with a flagger or an officer.',
    caution: '{on} is over the {limit} a temporary closure both ways may last.',
    cannotTell:
      'A temporary closure both ways lasts {limit} at most, by day, with a flagger or an officer. Tell me how long it is.',
  },
  fix: 'Open between passes, or get a detour approved.',
  examples: {
    holds: { 'closure-time': [10, 'min'] },
    boundary: { 'closure-time': [20, 'min'] },
    breaks: { 'closure-time': [25, 'min'] },
    cannotTell: {},
  },
});
