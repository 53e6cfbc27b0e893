import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'truck-count',
  title: 'loads',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Part of a load still needs a truck.',
  sources: [napa('6.2')],
  cues: [
    'how-many load -minute -busy -cover -#output',
    'how-many+truck -cycle -keep -ahead -behind -run -#output',
    'load #mass -how-far -far -apart -cover -go -feet -order -distance -minute -#output',
    'need load',
    'how-many+trip #mass -each -hour -day',
    'load haul|carry|hold #number|#mass -how-far -far -cover -go -order -#output',
    'load #mass ?need ?haul ?each -how-far -far -apart -cover -go -feet -order -distance -minute -#output -place -put -down',
    'truck #mass -left -how-far -far -apart -cover -go -feet -order -hour -#output -cycle -@check',
    'truck|load #mass haul|need|move -#output -how-far',
    'load #length|#area -order -roll -rolled -how-far -cover -cold -hot -bridge -post -posted -@check -thick -how -depth',
    'load -#figure -@check -truck -cold -hot -late -dump -come -came -roll -rolled -bridge -last -next -spread',
  ],
  roles: { after: ['load', 'truck'] },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 2000, unit: '1' } },
  asks: 'How many loads is that?',
  beside: ['truck-payload', 'order-loads', 'premix-mass'],
  usedAt: ['order-and-check', 'spread-premix'],
  caution: 'Loads within legal and posted weight; a posted limit is the whole truck.',
});
