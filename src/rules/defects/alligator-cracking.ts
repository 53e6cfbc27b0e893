import baseState from '../choices/base-state.ts';
import crackState from '../choices/crack-state.ts';
import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import water from '../choices/water-state.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, ufcRepair } from '../sources-craft.ts';
import { astmPci, ltpp, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'alligator-cracking',
  title: 'alligator cracking',
  seen: 'cracks joined to a net, like the skin of an alligator, mostly in the wheel paths',
  because: 'The layers bend too far under load, over and over; where the base is wet or weak they bend the most.',
  sources: [ltpp('fatigue cracking'), texasDistress],
  cues: [
    'alligator',
    'fatigue+crack',
    'crack network|net|pattern|web|connected',
    'chicken+wire',
    'spider crack',
    'crack like skin|scale|turtle|mud',
  ],
  decisions: [
    {
      when: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'weight, joints and moving ground there are not for a patch crew to judge',
      source: taught,
    },
    {
      when: [
        { choice: baseState, is: ['soft'] },
        { choice: water, is: ['rising', 'standing'] },
      ],
      repair: 'dig-out',
      with: ['fix-drainage-first'],
      because: 'the base has gone soft with water: anything laid on it breaks again',
      source: texasDistress,
      engineer: true,
    },
    {
      when: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'a base that moves breaks whatever is laid on it: it is removed, and replaced or stabilized',
      source: texasDistress,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      because: 'it came back within a year: the cause is still there',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [{ choice: water, is: ['rising', 'standing'] }],
      repair: 'fix-drainage-first',
      because: 'water that cannot leave softens the base next',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: crackState, is: ['loose'] }],
      repair: 'dig-out',
      because: 'loose pieces carry nothing: near failure it is removed and replaced',
      source: texasDistress,
    },
    {
      when: [{ choice: place, is: ['under-bridge', 'curb'] }],
      repair: 'cut-then-blade',
      because: 'nothing may be added in height there: it is milled first',
      source: taught,
    },
    {
      when: [
        { choice: baseState, is: ['firm'] },
        { choice: water, is: ['drained'] },
      ],
      repair: 'blade-patch',
      holding: true,
      because:
        'the base is firm, dry and drained, so a patch holds for a while; the cracks come through it in time, and loose pieces are dug out first',
      source: ufcRepair('ch. 7, p. 39: stop-gap only'),
    },
  ],
  severity: [
    {
      scheme: 'LTPP',
      source: ltpp('fatigue cracking'),
      sight: crackState,
      classes: { hairline: 'low', network: 'moderate', loose: 'high' },
    },
    {
      scheme: 'PCI',
      source: astmPci('alligator cracking', 'restated'),
      sight: crackState,
      classes: { hairline: 'low', network: 'moderate', loose: 'high' },
    },
  ],
});
