import type { Worked } from './premix.ts';

const handbook = 'a table of effective blade widths, as equipment handbooks print it';

/** The tables count the angle from the line of travel: 60 there is 30 from square across. */
export const grader: readonly Worked[] = [
  {
    document: handbook,
    place: '3.7 m blade at 60 degrees',
    given: { 'blade-length': [3.7, 'm'], 'blade-angle': [30, 'deg'] },
    finds: 'blade-reach',
    printed: [3.2, 'm'],
    rounded: 0.05,
  },
  {
    document: handbook,
    place: '3.7 m blade at 45 degrees',
    given: { 'blade-length': [3.7, 'm'], 'blade-angle': [45, 'deg'] },
    finds: 'blade-reach',
    printed: [2.6, 'm'],
    rounded: 0.05,
  },
  {
    document: handbook,
    place: '4.3 m blade at 60 degrees',
    given: { 'blade-length': [4.3, 'm'], 'blade-angle': [30, 'deg'] },
    finds: 'blade-reach',
    printed: [3.7, 'm'],
    rounded: 0.05,
  },
  {
    document: handbook,
    place: '4.9 m blade at 45 degrees',
    given: { 'blade-length': [4.9, 'm'], 'blade-angle': [45, 'deg'] },
    finds: 'blade-reach',
    printed: [3.5, 'm'],
    rounded: 0.05,
  },
  {
    document: 'Motor grader training slides, North Dakota county association, January 2015',
    place: 'a 4 % crown that has lost 1 in of its 3.36 in at 7 ft',
    given: { 'crown-drop': [2.36, 'in'], 'patch-width': [7, 'ft'] },
    finds: 'cross-slope',
    printed: [2.8, '%'],
    rounded: 0.05,
  },
  {
    document: 'Motor grader training slides, North Dakota county association, January 2015',
    place: 'paved roads, 2 %: 1/4 in a foot',
    given: { 'crown-drop': [0.25, 'in'], 'patch-width': [1, 'ft'] },
    finds: 'cross-slope',
    printed: [2, '%'],
    rounded: 0.5,
  },
  {
    document: 'Motor grader training slides, North Dakota county association, January 2015',
    place: 'gravel roads, 4 %: 1/2 in a foot',
    given: { 'crown-drop': [0.5, 'in'], 'patch-width': [1, 'ft'] },
    finds: 'cross-slope',
    printed: [4, '%'],
    rounded: 0.5,
  },
];
