import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'rained-on-tack',
  title: 'tack that was rained on',
  seen: 'rain on the tack before it broke, brown water running off',
  because: 'Unbroken emulsion is mostly water: more of it washes the asphalt off the road and into the ditch.',
  sources: [taught, commonPractice],
  cues: [
    'rain|shower|storm|drizzle tack -come -coming -forecast -due -chance -if -later -expect -tomorrow',
    'rain|shower|storm hit|got|caught|wash|fell tack|spray|it|before broke|break|broken|set|brown|tack',
    'tack wash|running off|away|ditch|gutter -how',
    'brown+water|runoff',
    'rain before broke|break|broken',
    'rain hit|got|caught|wash|fell tack',
    'tack wash',
  ],
  causes: [
    {
      text: 'sprayed with rain on the way',
      remedy: 'look at the sky for as long as it takes to break and be covered',
      rule: 'no-rain',
      source: commonPractice,
    },
    {
      text: 'too cool or damp to break in time',
      remedy: 'warmer, drier, or a faster grade',
      rule: 'air-temperature',
      source: taught,
    },
  ],
  now: 'Everybody off it, traffic kept off. Bank it away from drains and ditches with sand. Let it dry, sweep, and spray a light coat again.',
  nextTime: 'Spray only what is covered before the rain.',
  caution: 'It is slick, and it must not reach a drain or water: call the super when it does.',
  examples: {
    finds: ['rain hit it before it broke', 'a shower caught us and the tack is running off in the ditch'],
    not: ['rain is coming in an hour, can we tack', 'tack is still brown'],
  },
});
