import { fault } from '../shapes-work.ts';
import { navyBasic, ufcFlexible } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'bar-streak',
  title: 'streak from the bar',
  seen: 'bare or heavy stripes in the tack',
  because:
    'Each nozzle covers its own strip, twice or three times over with its neighbours: one that is shut or turned leaves its strip short.',
  sources: [navyBasic('ch. 16, nozzle angle and spread tolerance'), ufcFlexible('ch. 3, tack coats'), taught],
  cues: [
    'nozzle dead|plug|clogged|shut|bad|out|turn|streak|missing|drip',
    'tack streak|streaky|stripe|bare|uneven|heavy -tire -wheel -pull -pick',
    'bar|distributor|spray streak|stripe|skip|gap|bare|uneven|plug',
    'bare|missed+strip|spot|streak|stripe tack|spray -tire -wheel -pull -pick',
    'zebra tack|spray|stripe',
    'stripe shot|sprayed|spray|tack|distributor|truck -tire -wheel -pull -pick',
    'tack stripe|strip|streak|zebra|bare|gap between|line|on',
    'bare+line tack',
    'nozzle',
    'spray uneven|streak|stripe|gap',
  ],
  causes: [
    {
      text: 'a plugged or dead nozzle',
      remedy: 'stop; clear it with the bar cold and the pressure off',
      source: taught,
    },
    {
      text: 'nozzles at different angles',
      remedy: 'set them all alike',
      source: navyBasic('ch. 16, nozzle angle and spread tolerance'),
    },
    {
      text: 'bar height or pressure off',
      remedy: 'set the height for even overlap, and the pressure for the rate',
      rule: 'tack-rate',
      source: navyBasic('ch. 16, nozzle angle and spread tolerance'),
    },
    { text: 'tack too cold to fan out', remedy: 'heat it to its range, parked', source: taught },
  ],
  now: 'Stop the truck. Even the streak out by wand; a rubber-tired roller can spread a poor spray.',
  nextTime: 'Pad-test the bar before the first shot.',
  caution: 'Hot and under pressure: face shield and gloves, pressure off before anyone touches a nozzle.',
  examples: {
    finds: ['one nozzle is plugged and leaves a bare stripe', 'the spray comes out in stripes like a zebra'],
    not: ['rocky streaks in the mat', 'scratches behind the blade'],
  },
});
