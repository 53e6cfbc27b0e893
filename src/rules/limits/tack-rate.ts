import surface from '../choices/surface.ts';
import tackResidual from '../quantities/tack-residual.ts';
import { limit } from '../shapes.ts';
import { everett, fromMemory } from '../sources-craft.ts';

export default limit({
  id: 'tack-rate',
  title: 'residual tack for the surface',
  on: tackResidual,
  breaks: 'caution',
  cases: [
    {
      when: [{ choice: surface, is: ['worn'] }],
      min: { number: 0.04, unit: 'gal/yd2' },
      max: { number: 0.07, unit: 'gal/yd2' },
    },
    {
      when: [{ choice: surface, is: ['fresh-lift'] }],
      min: { number: 0.02, unit: 'gal/yd2' },
      max: { number: 0.05, unit: 'gal/yd2' },
    },
    {
      when: [{ choice: surface, is: ['cut'] }],
      min: { number: 0.04, unit: 'gal/yd2' },
      max: { number: 0.08, unit: 'gal/yd2' },
    },
  ],
  because:
    'Too much lies in a layer: it bleeds through and the mat slides on it. Too little is safer, but none at all slips too.',
  sources: [
    fromMemory('FHWA-HIF-16-017, Tack Coat Best Practices, rates by surface'),
    everett('5-04.3(4): residual 0.02 to 0.10 gal/yd2 on any surface'),
  ],
  cues: [
    'tack|residual|rate #rate @check',
    'tack rate @check',
    'residual @check',
    'residual check+much|little|heavy|light|thick|thin',
    'spray|shoot|shot #rate @check',
    'tack heavy|light @check',
    'check+heavy|light tack',
    'tack @check how-many',
    'check+much tack',
    'spray|shoot|shot #number|#rate heavy|light|thick|thin',
    '#rate|#number check+heavy|light -ton -truck -load -axle -mix -roller -grader -#mass',
    'what+rate surface|lift',
    'tack+rate @check',
    'spray|shoot|shot+rate @check',
    'spray|shoot|shot|residual #number @check -how-many -wet -damp',
  ],
  text: {
    ok: '{on} left on the road is within what this surface takes.',
    caution:
      '{on} left on the road is past {limit}, the end of what this surface takes. Too little is safer than too much, but none at all slips.',
    cannotTell: 'Tell me the rate, sprayed or residual, and the surface, and I can say whether it fits.',
    notApplicable: 'On concrete other rates apply and its cracks come through: ask the engineer.',
  },
  fix: 'Change the pump or the speed of the truck, and check it with a pad or the stick.',
  examples: {
    holds: { 'tack-residual': [0.05, 'gal/yd2'], surface: 'worn' },
    boundary: { 'tack-residual': [0.07, 'gal/yd2'], surface: 'worn' },
    breaks: { 'tack-residual': [0.1, 'gal/yd2'], surface: 'worn' },
    cannotTell: { surface: 'worn' },
    also: [
      { facts: { 'tack-residual': [0.04, 'gal/yd2'], surface: 'worn' }, is: 'ok' },
      { facts: { 'tack-residual': [0.03, 'gal/yd2'], surface: 'worn' }, is: 'caution' },
      { facts: { 'tack-residual': [0.02, 'gal/yd2'], surface: 'fresh-lift' }, is: 'ok' },
      { facts: { 'tack-residual': [0.06, 'gal/yd2'], surface: 'fresh-lift' }, is: 'caution' },
      { facts: { 'tack-residual': [0.08, 'gal/yd2'], surface: 'cut' }, is: 'ok' },
      { facts: { 'tack-residual': [0.09, 'gal/yd2'], surface: 'cut' }, is: 'caution' },
      { facts: { 'tack-residual': [0.05, 'gal/yd2'], surface: 'concrete' }, is: 'not-applicable' },
    ],
  },
});
