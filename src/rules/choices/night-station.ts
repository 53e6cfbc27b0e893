import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'night-station',
  title: 'flagger station after dark',
  because: 'Headlights show a flagger in time only where he is lit; street lights and strobes do not light him.',
  sources: [manual('sections 6D.06 and 6N.18')],
  options: [
    {
      id: 'unlit',
      title: 'at night without lighting on it',
      cues: [
        'night no+light',
        'night without+light',
        'night unlit',
        'flagger unlit',
        'no+light flagger',
        'night headlight|strobe',
        'night|dark no|without+light',
        'dark|night flashlight|headlight|phone',
        'sun down|set no|without light',
        'no|without+light night|dark|sun|keep',
      ],
    },
    {
      id: 'lit',
      title: 'at night with lighting on it',
      cues: [
        'night light|lit|balloon|tower -no -without -need -must -unlit',
        'flagger lit',
        'night|dark light|lit tower|plant|balloon|station -no -without -need',
      ],
    },
    { id: 'day', title: 'by day', cues: ['daytime|daylight flagger|flag'] },
  ],
  question: { text: 'Is there work after dark, and is every flagger station lit?', ease: 1 },
});
