import matTemperature from '../quantities/mat-temperature.ts';
import { limit } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default limit({
  id: 'open-cool',
  title: 'cool enough for traffic',
  underRule: 'open-to-traffic',
  on: matTemperature,
  max: { number: 140, unit: 'degF' },
  breaks: 'caution',
  besideRule: 'open-to-traffic',
  because: 'A warm mat still moves under a wheel and picks up on tires.',
  sources: [fromMemory('about 140 to 150 degF, as commonly held')],
  cues: [
    'open at+#temperature|#number -air -road',
    'open|traffic mat|mix|patch #temperature -air',
    'cool|cooled|cold traffic|open|car @enough check -base',
    'check+hot|warm|soft traffic|open|car -air -tank',
    'open|traffic #temperature @check',
    'open|traffic mat #temperature|#number @check -air -road',
    'what temperature open|traffic',
    'how+cool open|traffic',
  ],
  text: {
    ok: '{on} is cool enough: {limit} and down.',
    caution: '{on} is over the {limit} at which traffic is let on.',
    cannotTell: 'Tell me how warm the mat is; at {limit} and down it can carry traffic.',
  },
  fix: 'Keep traffic off until it has cooled, or cool it with water after rolling.',
  examples: {
    holds: { 'mat-temperature': [120, 'degF'] },
    boundary: { 'mat-temperature': [140, 'degF'] },
    breaks: { 'mat-temperature': [165, 'degF'] },
    cannotTell: {},
  },
});
