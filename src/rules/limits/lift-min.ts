import liftMin from '../quantities/lift-min.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { limit } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default limit({
  id: 'lift-min',
  title: 'lift against the stone',
  on: liftThickness,
  min: liftMin,
  breaks: 'stop',
  because:
    'A stone that has no room to turn flat is dragged by the blade; it tears the mat and leaves an open streak behind it.',
  sources: [bladeSpreading('spreading of cold mix by blade: no layer under about 1.5 times the largest stone')],
  cues: [
    'largest #figure lay|lift|thick -how -min -thinnest',
    '@check stone lift',
    '@check thin -edge -outside -outer',
    'thin stone|mix',
    '@check mix lift #length',
    'why thin',
    '@check stone thick|thickness',
    '@check lift stone|#length thick|thickness',
    'lift stone lay|work|fit @check|will',
    '@check blade|lay|spread #length stone',
    '@check #length stone biggest|largest|max|big',
    '@check thin stone|biggest|largest',
    'stone #length lift will|go|fit',
    'check+thin #length stone|lift',
    'stone #thin lay|skim|blade|put|feather|lift -thinnest -min',
    'stone #thin @check -lay -max',
    'top|max+size #figure lay|lift|thick',
  ],
  text: {
    ok: '{on} is at least the {limit} that {stone-size} stone needs.',
    stop: '{on} is under the {limit} that {stone-size} stone needs: the blade will drag the stone and tear the mat.',
    cannotTell: 'Tell me the lift, rolled, and the largest stone in the mix, and I can say whether it has room.',
  },
  fix: 'Lay it thicker or take a mix with smaller stone.',
  examples: {
    holds: { 'lift-thickness': [1, 'in'], 'stone-size': [0.5, 'in'] },
    boundary: { 'lift-thickness': [0.75, 'in'], 'stone-size': [0.5, 'in'] },
    breaks: { 'lift-thickness': [0.5, 'in'], 'stone-size': [0.75, 'in'] },
    cannotTell: { 'lift-thickness': [1, 'in'] },
    also: [
      { facts: { 'lift-thickness': [1, 'in'], 'mix-nominal-size': [0.5, 'in'] }, is: 'stop' },
      { facts: { 'lift-thickness': [1, 'in'], 'mix-nominal-size': [0.375, 'in'] }, is: 'ok' },
    ],
  },
});
