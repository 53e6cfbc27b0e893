import baseState from '../choices/base-state.ts';
import crackState from '../choices/crack-state.ts';
import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import rutEdges from '../choices/rut-edges.ts';
import water from '../choices/water-state.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import patchDepth from '../quantities/patch-depth.ts';
import rutDepth from '../quantities/rut-depth.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, ufcRepair } from '../sources-craft.ts';
import { armyPci, ltpp, taught, texasDistress } from '../sources-work.ts';

const depth = [rutDepth, deepestDepth, patchDepth] as const;

export default defect({
  id: 'rutting',
  title: 'rutting',
  seen: 'low tracks along the wheel paths',
  because: 'Wheels press the base down, or squeeze weak mix out sideways; water in the track then does the rest.',
  sources: [armyPci('appendix B, rutting'), ltpp('rutting')],
  cues: [
    'rut|rutted -tire -grader -back -again -fill',
    'rut ?repair ?fix',
    'groove|trough|track wheelpath|road -tack -tire',
    'wheelpath worn|wore #length -hole',
    'wheelpath low|sunk|deep|dip|dished',
  ],
  decisions: [
    {
      when: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'weight, joints and moving ground there are not for a patch crew to judge',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'the base is giving: a filled rut sinks again',
      source: texasDistress,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      because: 'it came back within a year: the mix or the structure is too weak',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: water, is: ['rising', 'standing'] }],
      repair: 'fix-drainage-first',
      because: 'water that cannot leave softens the base next',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: crackState, is: ['loose'] }],
      repair: 'dig-out',
      because: 'a rut with loose cracked pieces is repaired before it is filled',
      source: ufcRepair('ch. 7, p. 39'),
    },
    {
      when: [{ choice: rutEdges, is: ['humped'] }],
      repair: 'cut-then-blade',
      because: 'the mix is flowing sideways: it goes on flowing under a patch',
      source: texasDistress,
    },
    {
      when: [{ of: depth, under: { number: 1 / 3, unit: 'in' } }],
      repair: 'watch-it',
      because: 'it is too shallow to fill with mix that holds',
      source: taught,
    },
    {
      when: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'the base is giving: a filled rut sinks again',
      source: texasDistress,
    },
    {
      when: [{ of: depth, over: { number: 1, unit: 'in' } }],
      repair: 'engineer',
      with: ['blade-patch'],
      because:
        'a rut this deep says that the mix or the structure is failing; if it is filled, then in level lifts, each rolled in the rut',
      source: armyPci('appendix B, rutting: high above 1 in'),
    },
    {
      when: [],
      ifSaid: [{ choice: place, is: ['under-bridge', 'curb'] }],
      repair: 'cut-then-blade',
      because: 'nothing may be added in height there: it is milled first',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: crackState, is: ['hairline', 'network'] }],
      repair: 'blade-patch',
      holding: true,
      because: 'the base is firm, so level lifts hold for a while; the cracks come through in time',
      source: ufcRepair('ch. 7, p. 39: stop-gap only'),
    },
    {
      when: [
        { choice: baseState, is: ['firm'] },
        { choice: rutEdges, is: ['level'] },
        { of: depth, upTo: { number: 1, unit: 'in' } },
      ],
      repair: 'blade-patch',
      because: 'the base is firm and the rut shallow: level lifts, each rolled in the rut before the full-width lift',
      source: ufcRepair('ch. 7, pp. 39-40'),
    },
  ],
  severity: [
    {
      scheme: 'PCI',
      source: armyPci('appendix B, rutting'),
      by: depth,
      from: { number: 0.25, unit: 'in' },
      low: { number: 0.5, unit: 'in' },
      moderate: { number: 1, unit: 'in' },
    },
  ],
  recorded: 'LTPP rates no severity of rutting: the depth is recorded at even steps along the rut.',
});
