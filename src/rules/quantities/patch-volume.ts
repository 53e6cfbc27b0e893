import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-volume',
  title: 'compacted volume',
  dimension: 'volume',
  units: { us: 'yd3', metric: 'm3' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'The hole as it will be when rolled; loose on a truck the same mix takes more room, so it is ordered by weight.',
  sources: [geometry],
  cues: [
    'how-many cubic+yard|feet|foot|meter -rut -wheelpath -windrow',
    'cubic+yard|feet|foot|meter -rut -wheelpath -windrow',
    'volume patch|hole',
    'how-many yard mix',
  ],
  roles: { after: ['compacted', 'volume', 'mix'], before: ['volume'] },
  bare: false,
  plausible: { min: { number: 0.01, unit: 'ft3' }, max: { number: 100000, unit: 'yd3' } },
  asks: 'How many cubic yards is that?',
  beside: ['premix-mass', 'patch-area'],
});
