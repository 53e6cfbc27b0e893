import roadType from '../choices/road-type.ts';
import { manual } from '../manual.ts';
import a from '../quantities/sign-spacing-a.ts';
import b from '../quantities/sign-spacing-b.ts';
import c from '../quantities/sign-spacing-c.ts';
import { choiceTable } from '../shapes.ts';

export default choiceTable({
  id: 'sign-spacing',
  title: 'least distances between advance warning signs',
  by: roadType,
  columns: [
    { name: 'a', finds: a, unit: 'ft' },
    { name: 'b', finds: b, unit: 'ft' },
    { name: 'c', finds: c, unit: 'ft' },
  ],
  rows: {
    'urban-low': [100, 100, 100],
    'urban-high': [350, 350, 350],
    rural: [500, 500, 500],
    expressway: [1000, 1500, 2640],
  },
  because: 'The faster and the less expected, the farther out a driver has to be told.',
  sources: [manual('Table 6B-1')],
});
