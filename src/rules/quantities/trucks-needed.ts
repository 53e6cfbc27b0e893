import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'trucks-needed',
  title: 'trucks needed',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because:
    'One truck is under the blade while the others are on the road; a part of a truck is a whole one, or the blade waits.',
  sources: [napa('6.2: 13.1 trucks are 14')],
  cues: [
    'how-many+truck cycle',
    'how-many truck -load -ton+truck -trip',
    'truck need|keep|run -stick -bed -left -trip -load+need -#mass+need',
    'how-many truck cycle|haul|hour|mile -trip -load',
    'truck need #output ?haul ?wait ?cycle ?unload ?dump ?mile',
    'truck need #speed ?haul ?wait ?cycle ?unload ?dump ?mile',
    'how-many truck #output',
    'how-many truck #time -load',
    'how-many truck round+trip',
    'truck #output -how-far -how-fast',
    'truck cycle|round|trip|haul #output',
    'truck keep busy|up|blade|grader|us',
    'truck need round|cycle #output',
    'truck need cycle|round',
  ],
  bare: { us: '1', metric: '1' },
  asks: 'How many trucks to keep the blade going?',
  beside: ['cycle-time', 'lay-time'],
  usedAt: ['order-and-check'],
});
