import baseState from '../choices/base-state.ts';
import extent from '../choices/defect-extent.ts';
import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import water from '../choices/water-state.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import patchArea from '../quantities/patch-area.ts';
import patchDepth from '../quantities/patch-depth.ts';
import potholeDepth from '../quantities/pothole-depth.ts';
import potholeWidth from '../quantities/pothole-width.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, ufcRepair } from '../sources-craft.ts';
import { astmPci, ltpp, taught, texasDistress } from '../sources-work.ts';

const depth = [potholeDepth, deepestDepth, patchDepth] as const;

export default defect({
  id: 'pothole',
  title: 'pothole',
  seen: 'a bowl-shaped hole with sharp edges',
  because: 'Cracked pieces are lifted out by wheels and water, and the hole grows down into the base.',
  sources: [ltpp('potholes'), ufcRepair('3.2.2 to 3.3.4, pp. 8-10')],
  cues: [
    'pothole|pot-hole|chuckhole',
    'pot+hole',
    'chuck+hole',
    'hole in+road',
    'big|small|deep+hole road|repair|fix|hand',
    'hole blade|hand+patch',
    'hole repair|fix #length|big|deep -same -again -back',
    'hole shovel|hand grader|blade|or|patch',
    'hole road|lane|pavement -same -again -back -nail',
    'shallow|small+hole',
    'hole #length -same -again -back -dig',
  ],
  decisions: [
    {
      when: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'a hole there may be the deck, the pipe or the ground going',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'the hole goes on growing over a base that moves',
      source: texasDistress,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      because: 'it came back within a year: the cause is still there',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: water, is: ['rising', 'standing'] }],
      repair: 'fix-drainage-first',
      because: 'water that cannot leave opens it again',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: extent, is: ['several', 'long'] }],
      repair: 'blade-patch',
      with: ['hand-patch'],
      because: 'fill and pack the holes first, in level layers; then one patch over the stretch',
      source: ufcRepair('ch. 7, p. 40'),
    },
    {
      when: [],
      ifSaid: [
        { of: [patchArea], under: { number: 50, unit: 'ft2' } },
        { choice: extent, is: ['one-spot'] },
      ],
      repair: 'hand-patch',
      because: 'under about 50 square feet a grader is not worth bringing',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ of: [potholeWidth], under: { number: 7, unit: 'ft' } }],
      repair: 'hand-patch',
      because: 'under about 50 square feet a grader is not worth bringing; square it, and look that the bottom is firm',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ of: [patchArea], under: { number: 50, unit: 'ft2' } }],
      repair: 'hand-patch',
      because: 'under about 50 square feet a grader is not worth bringing; square it, and look that the bottom is firm',
      source: taught,
    },
    {
      when: [{ choice: extent, is: ['one-spot'] }],
      repair: 'hand-patch',
      because:
        'one hole is filled by hand sooner than a grader can be brought; square it, look that the bottom is firm, and fill it in thin packed layers',
      source: commonPractice,
    },
    {
      when: [{ choice: extent, is: ['several', 'long'] }],
      repair: 'blade-patch',
      with: ['hand-patch'],
      because: 'fill and pack the holes first, in level layers; then one patch over the stretch',
      source: ufcRepair('ch. 7, p. 40'),
    },
  ],
  severity: [
    {
      scheme: 'LTPP',
      source: ltpp('potholes'),
      by: depth,
      low: { number: 25, unit: 'mm' },
      moderate: { number: 50, unit: 'mm' },
    },
    {
      scheme: 'PCI',
      source: astmPci('potholes, depth by mean diameter; the classes of the cells', 'memory'),
      rows: {
        by: depth,
        from: { number: 0.5, unit: 'in' },
        upTo: [
          { number: 1, unit: 'in' },
          { number: 2, unit: 'in' },
        ],
      },
      columns: {
        by: [potholeWidth],
        from: { number: 4, unit: 'in' },
        upTo: [
          { number: 8, unit: 'in' },
          { number: 18, unit: 'in' },
        ],
      },
      classes: [
        ['low', 'low', 'moderate'],
        ['low', 'moderate', 'high'],
        ['moderate', 'moderate', 'high'],
      ],
    },
  ],
});
