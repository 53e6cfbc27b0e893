import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import water from '../choices/water-state.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, ufcRepair } from '../sources-craft.ts';
import { armyPci, taught, texasDistress } from '../sources-work.ts';

const depth = [deepestDepth, patchDepth] as const;

export default defect({
  id: 'depression',
  title: 'depression',
  seen: 'a place lower than the road round it, where water stands',
  because: 'The ground below has settled, or was never packed.',
  sources: [armyPci('appendix B, depression'), ufcRepair('ch. 7, pp. 39-40')],
  cues: [
    'depression',
    'dip|sag|swale|settlement road|lane|repair|fix|old|pipe|culvert|bridge',
    'road|lane|pavement settle|sunk|sank|sink|sag|dip|low|drop -edge -shoulder -patch -low+volume|traffic -flagger -sign -cone',
    'low+spot|place|area road|lane|old|repair|fix',
    'dip|sag -stick -toe -patch',
    'settle|settlement pipe|culvert|bridge|over',
    'road|lane|pavement sinking|settling',
    'bridge+end|approach settle|sunk|dip|low',
    'dip|sag|sink over|at culvert|pipe',
    'settlement',
  ],
  decisions: [
    {
      when: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'the ground or the pipe below may be going',
      source: taught,
    },
    {
      when: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'filled over a soft base it sinks again',
      source: texasDistress,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      because: 'it came back within a year: the ground is still going',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: water, is: ['rising'] }],
      repair: 'fix-drainage-first',
      because: 'water is coming up through it',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [{ of: depth, over: { number: 2, unit: 'in' } }],
      repair: 'engineer',
      because: 'settled more than 2 in: find out why before it is filled',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: place, is: ['under-bridge', 'curb'] }],
      repair: 'cut-then-blade',
      because: 'nothing may be added in height there: it is milled first',
      source: taught,
    },
    {
      when: [
        { of: depth, upTo: { number: 2, unit: 'in' } },
        { choice: baseState, is: ['firm'] },
      ],
      repair: 'blade-patch',
      because: 'the base is firm: level lifts, each rolled, up to the old grade',
      source: ufcRepair('ch. 7, pp. 39-40'),
    },
  ],
  severity: [
    {
      scheme: 'PCI',
      source: armyPci('appendix B, depression'),
      by: depth,
      from: { number: 0.5, unit: 'in' },
      low: { number: 1, unit: 'in' },
      moderate: { number: 2, unit: 'in' },
    },
  ],
});
