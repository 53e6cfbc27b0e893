import { choice } from '../shapes.ts';
import { texasDistress } from '../sources-work.ts';

export default choice({
  id: 'traffic-level',
  title: 'traffic',
  because:
    'Wheels that brake, start and turn shove a soft mix sideways; a thin skin lasts only where traffic rolls through.',
  sources: [texasDistress],
  options: [
    {
      id: 'braking',
      title: 'braking and turning wheels',
      cues: ['stop-sign', 'intersection', 'turn+lane', 'crossroad', 'car|truck|where brake', 'brake turn'],
    },
    {
      id: 'heavy',
      title: 'heavy traffic',
      cues: ['heavy traffic|truck -roller', 'log|coal|grain|gravel+truck', 'busy+road', 'truck+route', 'quarry'],
    },
    {
      id: 'light',
      title: 'light traffic',
      cues: ['light|low|little+traffic', 'low+volume', 'back+road', 'quiet+road', 'few+car'],
    },
  ],
});
