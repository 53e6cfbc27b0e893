import liftMax from '../quantities/lift-max.ts';
import liftMin from '../quantities/lift-min.ts';
import { limit } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default limit({
  id: 'stone-fits-lift',
  title: 'stone against the thickest lift',
  on: liftMin,
  max: liftMax,
  besideRule: 'lift-min',
  breaks: 'caution',
  because:
    'One rule keeps the lift thin enough to pack, the other thick enough for the stone; with large stone no lift meets both.',
  sources: [bladeSpreading('spreading of cold mix by blade: no layer under about 1.5 times the largest stone')],
  cues: [
    '@check stone max -lay -thick -lift',
    'what|which stone|size mix check|use',
    '@check stone use|work|big|large',
  ],
  text: {
    ok: 'A lift for {stone-size} stone needs {on}, which is within the {limit} a lift may be.',
    caution:
      'The two rules collide: a lift for {stone-size} stone needs {on}, and a lift may be {limit}. No lift meets both.',
    cannotTell: 'Tell me the largest stone in the mix, and I can say whether any lift suits it.',
  },
  fix: 'Take a mix with smaller stone, or ask the agency which rule gives way.',
  examples: {
    holds: { 'stone-size': [0.5, 'in'] },
    boundary: { 'stone-size': [1, 'in'], 'lift-max': [1.5, 'in'] },
    breaks: { 'stone-size': [0.75, 'in'] },
    cannotTell: {},
  },
});
