import { quantity } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'time-to-roll',
  title: 'estimate of the time to roll a hot lift',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'A hot lift gives its heat to the road below and the air above; half the thickness cools about three times as fast.',
  sources: [
    { document: 'one-dimensional heat flow, worked out here', seen: 'derived' },
    fromMemory('properties of the mix as in MN/RC-1998-18 and the compaction-cessation work of the 1970s'),
  ],
  cues: [
    'time+to+roll|rolled',
    'how+long roll|rolled hot|cool|cold',
    'how+long mat|lift|mix cool|hot',
    'minute roll|rolled #temperature',
    'how+long roll|rolled #temperature',
    'how+long have roll|rolled',
    'cool time|minute',
    'how-many time|minute roll|rolled #temperature',
    'time have roll|rolled',
    'before cool|cold roll|rolled how+long',
    'minute cold|cool roll|rolled',
    'cold|cool roll|rolled time|minute|how+long|till|before|until',
    'time roll|rolled #temperature',
    'time roll|rolled behind|degree',
    'roll|rolled behind+blade',
    'minute|time hot lift|mat|mix roll|rolled',
  ],
  alsoCalled: ['cooling time', 'time available for compaction'],
  bare: false,
  plausible: { min: { number: 0.25, unit: 'min' }, max: { number: 300, unit: 'min' } },
  asks: 'How long before a hot lift is too cold to roll?',
  beside: ['hot-section-length', 'rolling-time'],
  usedAt: ['roll-lift'],
  note: 'An estimate, off by a quarter or more either way; from the temperature behind the blade, not on the truck; no sun.',
  caution: 'Thin hot lifts cool in minutes: the roller goes right behind the blade.',
});
