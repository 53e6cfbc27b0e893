import type { Worked } from './premix.ts';

const article = 'Pavers and rollers, reprinted trade article';
const lane = (drum: number) =>
  ({
    'patch-width': [12, 'ft'],
    'drum-width': [drum, 'ft'],
    'roller-overlap': [6, 'in'],
    'roller-overhang': [6, 'in'],
  }) as const;

export const roller: readonly Worked[] = [
  {
    document: article,
    place: 'a 4.5 ft drum on a 12 ft lane',
    given: lane(4.5),
    finds: 'roller-lanes',
    printed: [4, '1'],
    rounded: 0,
  },
  {
    document: article,
    place: 'a 5.5 ft drum on a 12 ft lane',
    given: lane(5.5),
    finds: 'roller-lanes',
    printed: [3, '1'],
    rounded: 0,
  },
  {
    document: article,
    place: 'a 7 ft drum on a 12 ft lane',
    given: lane(7),
    finds: 'roller-lanes',
    printed: [2, '1'],
    rounded: 0,
  },
];
