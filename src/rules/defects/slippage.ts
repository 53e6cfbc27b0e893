import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import crackWidth from '../quantities/crack-width.ts';
import { defect } from '../shapes-work.ts';
import { astmPci, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'slippage',
  title: 'slippage of the surface',
  seen: 'half-moon cracks in the old surface, which has slid',
  because: 'The top layer never bonded, or lost its bond: braking wheels drag it along.',
  sources: [astmPci('slippage cracking', 'restated'), taught],
  cues: [
    'slip|slippage crack|surface|road|overlay repair|fix|old|road|overlay -new -fresh -mat',
    'half-moon repair|fix|old|road|overlay',
    'slippage surface',
    'overlay|surface slid|slide|peel|delaminate',
    'slip+crack repair|fix|old|road|overlay',
  ],
  decisions: [
    {
      when: [],
      ifSaid: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'weight, joints and moving ground there are not for a patch crew to judge',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'it is the base that moves, not the bond',
      source: texasDistress,
    },
    {
      when: [],
      repair: 'cut-then-blade',
      because: 'what has slid is cut out square down to where it slid; then clean, tack, and lay it again',
      source: taught,
    },
  ],
  severity: [
    {
      scheme: 'PCI',
      source: astmPci('slippage cracking', 'restated'),
      by: [crackWidth],
      low: { number: 0.375, unit: 'in' },
      lowUnder: true,
      moderate: { number: 1.5, unit: 'in' },
    },
  ],
});
