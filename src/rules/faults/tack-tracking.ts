import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { everett } from '../sources-craft.ts';

export default fault({
  id: 'tack-tracking',
  title: 'tack tracking',
  seen: 'tires that lift the tack and carry it away',
  because:
    'Tack that has not broken sticks to rubber better than to the road; what is carried off is a bare spot under the patch.',
  sources: [everett('(4): nothing drives on it until broken and cured'), commonPractice],
  cues: [
    'tire|truck|wheel|car|boot pick|pull|carry tack',
    'tack tire|wheel|boot|shoe|stick|track -rate -run -how-many -fast',
    'track tack|oil|black|road',
    'black tire|track+mark|footprint road|lane|drive',
    'tire|wheel tack pull|pick|carry up|off|down|away|bare',
    'tire|wheel leave bare tack|strip|stripe|spot',
    'tack come|coming|peel+up|off',
    'tack track|tracking -rate',
    'tire|wheel track tack|black|road',
    'tack tire+track',
  ],
  causes: [
    {
      text: 'driven on before it broke',
      remedy: 'wait: brown to black, tacky to a glove',
      rule: 'tack-set',
      source: everett('(4): nothing drives on it until broken and cured'),
    },
    { text: 'trucks that turn on it', remedy: 'one path in and out, no turning', source: commonPractice },
  ],
  now: 'Trucks off it until it has broken; then one path in, and touch up the bare spots by wand.',
  nextTime: 'Spray only what is covered next; keep the haul path off it.',
  examples: {
    finds: [
      'truck tires are pulling up what we sprayed, the tack comes right off',
      'wheels carry the tack down the road',
    ],
    not: ['mix sticks to the roller drum', 'dead nozzle on the bar'],
  },
});
