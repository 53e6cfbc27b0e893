import { manual } from '../manual.ts';
import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';
import { safetyEdge } from '../sources-craft.ts';

export default repair({
  id: 'shoulder-pull',
  title: 'pull the shoulder',
  because: 'A shoulder level with the edge holds the edge up, and lets a wheel that strayed come back.',
  sources: [safetyEdge('drop-offs'), manual('6H.26'), commonPractice],
  cues: [
    'ditch+side|shoulder high|higher than|above road|mix|lane',
    'shoulder|ditch|edge hold|trap|dam water|rain road|lane|mix',
    'how|what pull shoulder',
    'how|what shoulder+pull',
    'blade shoulder up how',
  ],
  named: ['pull+shoulder', 'shoulder+pull'],
  how: [
    'Blade shoulder material up to the edge; where there is none left, haul some in.',
    'Slope it away from the road, so that water leaves, and roll it tight against the edge.',
    'Until it is done, sign it: LOW SHOULDER up to 3 in, the shoulder drop-off sign above that.',
  ],
  rules: ['drop-off'],
  caution: 'Stay in the work zone with the blade, and back from a soft bank.',
});
