import signPlace from '../choices/sign-place.ts';
import { manual } from '../manual.ts';
import signHeight from '../quantities/sign-height.ts';
import { limit } from '../shapes.ts';

const portable = { number: 1, unit: 'ft' } as const;
const rural = { number: 5, unit: 'ft' } as const;
const walkers = { number: 7, unit: 'ft' } as const;

export default limit({
  id: 'sign-height',
  title: 'sign high enough',
  on: signHeight,
  breaks: 'caution',
  cases: [
    { when: [{ choice: signPlace, is: ['portable'] }], min: portable },
    { when: [{ choice: signPlace, is: ['rural-post'] }], min: rural },
    { when: [{ choice: signPlace, is: ['parking-or-walkers'] }], min: walkers },
  ],
  because: 'Over parked cars and heads, and over the grass; a low stand is for a few days, three at most.',
  sources: [manual('section 6F.02')],
  cues: ['sign high|height|tall', 'how+high sign', 'bottom sign', 'sign off+ground', 'sign mount|mounted|hung #length'],
  text: {
    ok: '{on} under the sign is at least the {limit} it takes there.',
    caution: '{on} under the sign is less than the {limit} it takes there.',
    cannotTell: `The bottom edge stands ${rural.number} ${rural.unit} up on a post in the country, ${walkers.number} ${walkers.unit} where cars park or people walk, ${portable.number} ${portable.unit} on a portable stand. Tell me which it is and how high yours is.`,
  },
  fix: 'Raise the sign, or change the stand.',
  examples: {
    holds: { 'sign-height': [6, 'ft'], 'sign-place': 'rural-post' },
    boundary: { 'sign-height': [5, 'ft'], 'sign-place': 'rural-post' },
    breaks: { 'sign-height': [4, 'ft'], 'sign-place': 'rural-post' },
    cannotTell: { 'sign-height': [5, 'ft'] },
    also: [
      { facts: { 'sign-height': [1, 'ft'], 'sign-place': 'portable' }, is: 'ok' },
      { facts: { 'sign-height': [6, 'ft'], 'sign-place': 'parking-or-walkers' }, is: 'caution' },
      { facts: { 'sign-height': [7, 'ft'], 'sign-place': 'parking-or-walkers' }, is: 'ok' },
    ],
  },
});
