import place from '../choices/defect-place.ts';
import edgeDrop from '../quantities/edge-drop.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { safetyEdge } from '../sources-craft.ts';
import { armyPci, astmPci, taught } from '../sources-work.ts';

export default defect({
  id: 'drop-off',
  title: 'shoulder drop-off',
  seen: 'a shoulder lower than the edge of the road',
  because: 'Wheels and water wear the shoulder away, and every patch raises the road above it.',
  sources: [armyPci('p. B-14, lane/shoulder drop-off'), safetyEdge('drop-offs'), commonPractice],
  cues: [
    'drop+off',
    'drop-off|dropoff',
    'shoulder+low|lower|drop|gone|wash|below|wore|worn',
    'low+shoulder',
    'edge drop|drops|lip|high shoulder|inch|deep|off -taper',
    'edge+drop',
    'shoulder #length low|lower|below|drop',
    'edge drop slope|gravel|fix|repair',
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
      when: [{ of: [edgeDrop], under: { number: 2, unit: 'in' } }],
      repair: 'watch-it',
      because: 'the risk grows when it is well over 2 in; measure it again after every patch, which adds its thickness',
      source: safetyEdge('drop-offs'),
    },
    {
      when: [{ of: [edgeDrop], over: { number: 3, unit: 'in' } }],
      repair: 'shoulder-pull',
      because: 'over 3 in it is urgent: sign it now, and pull the shoulder up, or haul material in where there is none',
      source: commonPractice,
    },
    {
      when: [{ of: [edgeDrop], from: { number: 2, unit: 'in' }, upTo: { number: 3, unit: 'in' } }],
      repair: 'shoulder-pull',
      because:
        'a wheel that strays is hard to bring back; pull the shoulder up, or haul material in where there is none',
      source: safetyEdge('drop-offs'),
    },
  ],
  severity: [
    {
      scheme: 'PCI',
      source: astmPci('lane/shoulder drop-off', 'restated'),
      by: [edgeDrop],
      from: { number: 1, unit: 'in' },
      low: { number: 2, unit: 'in' },
      moderate: { number: 4, unit: 'in' },
    },
  ],
});
