import { iowa } from '../manual.ts';
import stopTime from '../quantities/stop-time.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'hold-time',
  title: 'how long traffic is held',
  on: stopTime,
  max: { number: 15, unit: 'min' },
  breaks: 'caution',
  because: 'People who have waited too long pass, turn round or drive at the flagger.',
  sources: [iowa('Flagger training, using a stop/slow paddle')],
  cues: [
    'hold|held|holding|stop|stopped traffic|car check+long',
    'how+long hold|stop traffic|car',
    'hold|stop traffic|car #time @check',
    'held|stopped|holding traffic|car #time -queue -how-many',
    'how+long hold -roller -line -queue -back -backup',
  ],
  text: {
    ok: '{on} is at most the {limit} Iowa plans delays by. Shorter is better: plan the inside blade passes into the stops.',
    caution: '{on} is over the {limit} Iowa plans delays by; the federal manual gives no figure.',
    cannotTell:
      'Keep it short: Iowa plans delays to {limit} at most, and the federal manual gives no figure. Tell me how long they are held.',
  },
  fix: 'Make fewer passes in each stop, clear the lane, and let both ways go.',
  examples: {
    holds: { 'stop-time': [5, 'min'] },
    boundary: { 'stop-time': [15, 'min'] },
    breaks: { 'stop-time': [18, 'min'] },
    cannotTell: {},
  },
});
