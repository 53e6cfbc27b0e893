import type { Worked } from './premix.ts';

const napa = 'National Asphalt Pavement Association, Asphalt Pavement Construction Handbook';

export const trucks: readonly Worked[] = [
  {
    document: napa,
    place: '6.2: 13.1 trucks are 14',
    given: { 'cycle-time': [131, 'min'], 'lay-time': [10, 'min'] },
    finds: 'trucks-needed',
    printed: [14, '1'],
    rounded: 0,
  },
];
