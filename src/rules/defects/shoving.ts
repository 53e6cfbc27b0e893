import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import trafficLevel from '../choices/traffic-level.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { fm5436 } from '../sources-craft.ts';
import { armyPci, ltpp, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'shoving',
  title: 'shoving and corrugation',
  seen: 'mix pushed into humps or waves, where wheels brake, start or turn',
  because: 'A mix too soft or too rich has no grip of its own, and moves with the wheels that push it.',
  sources: [texasDistress, armyPci('appendix B, corrugation and shoving'), ltpp('shoving')],
  cues: [
    'shove corrugation|corrugated',
    'shove stop-sign|intersection|road|light|brake|hump|old|repair|fix -roller -drum',
    'hump|wave|ripple|washboard|heave|bump stop-sign|intersection|brake|old',
    'push hump|wave|road|mix stop-sign|intersection|brake|truck',
    'road|lane ripple|washboard|heave -blade -grader -left -behind -mat -fresh',
    'washboard|ripple road -fresh -mat -blade -grader -behind',
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
      because: 'a base that moves heaves whatever is laid on it',
      source: texasDistress,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      because: 'it came back within a year: the mix is wrong for that place',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: trafficLevel, is: ['braking'] }],
      repair: 'cut-then-blade',
      because:
        'the bad mix comes off first; soft cold mix would shove again under braking, so dense hot mix in thin lifts, or the engineer',
      source: commonPractice,
    },
    {
      when: [],
      repair: 'cut-then-blade',
      because: 'unstable mix goes on moving under a patch: it comes off first',
      source: texasDistress,
    },
  ],
  recorded: 'LTPP counts and measures shoving without severity; PCI rates it by how it rides.',
});
