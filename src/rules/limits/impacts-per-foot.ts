import impactsPerFoot from '../quantities/impacts-per-foot.ts';
import { limit } from '../shapes.ts';
import { fromMemory, pavingHandbook } from '../sources-craft.ts';

export default limit({
  id: 'impacts-per-foot',
  title: 'blows close enough together',
  on: impactsPerFoot,
  min: { number: 10, unit: '1' },
  breaks: 'caution',
  because: 'Blows too far apart leave ripples across the mat.',
  sources: [
    fromMemory('at least 10 blows a foot, as commonly taught'),
    pavingHandbook('section 18: 2,400 a minute to 2.5 mph, 3,600 to 4 mph'),
  ],
  cues: ['impact|blow @check', 'vibrate fast|quick @check ?roller ?drum ?check ?@enough', 'vpm @check'],
  text: {
    ok: '{on} blows a foot are close enough.',
    caution: '{on} blows a foot are too far apart; {limit} is the least.',
    cannotTell: 'Tell me the vibrations a minute and the speed of the roller.',
  },
  fix: 'Slow the roller down, or turn the vibration off on a thin lift.',
  examples: {
    holds: { 'impacts-per-foot': [12, '1'] },
    boundary: { 'impacts-per-foot': [10, '1'] },
    breaks: { 'impacts-per-foot': [9, '1'] },
    cannotTell: {},
  },
});
