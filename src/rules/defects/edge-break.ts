import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import edgeState from '../choices/edge-break-state.ts';
import water from '../choices/water-state.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, safetyEdge } from '../sources-craft.ts';
import { armyPci, ltpp, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'edge-break',
  title: 'edge break',
  seen: 'an edge of the road that is cracked or has broken away',
  because: 'Without a shoulder to lean on, and with water beside it, the edge bends down under every truck.',
  sources: [ltpp('edge cracking'), texasDistress],
  cues: [
    'edge broke|broken|break road|off|away|pavement|lane|repair|fix -mat -patch -thin -feather',
    'edge gone|missing|crumble road|pavement|lane|old|shoulder|truck -mat -patch',
    'broken|crumble|busted+edge -mat -patch',
    'edge crack road|pavement|shoulder|along|old|lane',
    'pavement|road narrower|narrow edge|broke|broken',
    'edge+crack|break -patch -mat',
    'edge breaking away|off|up|shoulder|along -patch -mat',
    'edge crumble|go|falling piece|apart|away',
    'edge go to+piece',
    'pavement+edge crumble|broken|break',
    'edge break|broke|broken|crumble|breaking off|away|shoulder wash|low|gone|below',
    'edge break|broke|crumble off shoulder|road|along',
  ],
  decisions: [
    {
      when: [],
      ifSaid: [{ choice: place, is: ['slide', 'bridge-deck', 'railroad', 'pipe'] }],
      repair: 'engineer',
      because: 'the ground beside the road may be going',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      with: ['shoulder-pull'],
      because: 'the edge has no base left to stand on',
      source: texasDistress,
    },
    {
      when: [],
      ifSaid: [{ choice: water, is: ['rising', 'standing'] }],
      repair: 'fix-drainage-first',
      with: ['shoulder-pull'],
      because: 'water at the edge takes the new one too',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [{ choice: edgeState, is: ['cracked'] }],
      repair: 'shoulder-pull',
      with: ['crack-seal'],
      because: 'hold the edge up before it breaks, and keep the water out of the cracks',
      source: commonPractice,
    },
    {
      when: [{ choice: edgeState, is: ['places'] }],
      repair: 'shoulder-pull',
      with: ['hand-patch'],
      because:
        'drainage and shoulder first, or the new edge goes too; then fill the bites, and measure the drop again: the patch adds its thickness',
      source: safetyEdge('edge and shoulder'),
    },
    {
      when: [{ choice: edgeState, is: ['gone'] }],
      repair: 'shoulder-pull',
      with: ['blade-patch'],
      because:
        'drainage and shoulder first, or the new edge goes too; then patch, and measure the drop again: the patch adds its thickness',
      source: safetyEdge('edge and shoulder'),
    },
  ],
  severity: [
    {
      scheme: 'LTPP',
      source: ltpp('edge cracking: up to and over 10 % of the length broken'),
      sight: edgeState,
      classes: { cracked: 'low', places: 'moderate', gone: 'high' },
    },
    {
      scheme: 'PCI',
      source: armyPci('appendix B, edge cracking'),
      sight: edgeState,
      classes: { cracked: 'low', places: 'moderate', gone: 'high' },
    },
  ],
});
