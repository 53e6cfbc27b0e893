import { commonPractice, quantity } from '../shapes.ts';
import loadLength from './load-length.ts';

export default quantity({
  id: 'patch-length',
  title: 'patch length',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because:
    'A patch is paid out along the road: what it takes grows with the length that lies at full depth, and a feather holds only half.',
  sources: [commonPractice],
  cues: [
    'how+long patch -temperature -temp -have',
    'patch+length',
    'what length patch|fill #mass',
    'length #mass fill|cover|do|make|get',
    'how-many road|lane|feet cover|do|patch -load -truck',
  ],
  roles: {
    of: ['patch', 'spot', 'hole', 'stretch', 'lane', 'road', 'street', 'pavement', 'highway'],
    after: ['long', 'length', 'run', 'stretch', 'patch', 'spot', 'hole'],
    before: ['patch', 'length', 'long', 'distance', 'run'],
  },
  saidAs: [{ cues: ['per+mile', 'ton mile each|every'], number: 1, unit: 'mi' }],
  inGroup: 'longest',
  heldAgainst: loadLength,
  plain: true,
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How long is the patch?',
    ease: 1,
    choices: [
      { number: 100, unit: 'ft' },
      { number: 200, unit: 'ft' },
      { number: 300, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 10, unit: 'mi' } },
  beside: ['patch-area'],
});
