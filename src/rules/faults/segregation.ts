import streakLook from '../choices/streak-look.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'segregation',
  title: 'segregation',
  seen: 'rocky, open streaks or pockets with no fines',
  because: 'Every pass lets the big stones roll out and the fines stay; traffic throws what lies loose.',
  sources: [ufcRepair('3.3, p. 10: overworking'), commonPractice],
  cues: [
    'coarse|stone|boney|bony fines side|other|edge|half',
    'rocky|coarse|boney|bony side|streak|strip mat|patch|lane',
    'segregate|segregation',
    'stone|rocky|coarse|bony|boney streak|strip|band|line|pocket|spot|patch -all+over -size',
    'stone kick',
    'stone roll+out',
    'stone separate',
    'coarse|big stone side|edge|end mat|patch|lift -old -size',
    'stone pocket|nest',
    'streak mat|patch|mix -tack -bar -nozzle -drag',
    'look|looks open|dry|bony|boney|rocky|hungry -tear -tore -torn -rip -ripped',
    'fines gone|missing|left|settle',
    'big+stone all|one side|edge|end|streak',
    'no+fines',
    'stone rolled edge|side',
    'coarse|big|stone side|edge no+fines',
    'all+stone',
  ],
  causes: [
    {
      text: 'worked too many times',
      remedy: 'fewer passes; leave it alone',
      rule: 'fewest-passes',
      source: ufcRepair('3.3, p. 10: overworking'),
    },
    {
      text: 'raked and luted too much by hand',
      remedy: 'rake only feathers and castings, once',
      source: ufcRepair('3.3, p. 10: overworking'),
    },
    {
      text: 'the coarse last of a load, or of the pile, laid by itself',
      remedy: 'blend it into the row; throw a rocky heap away',
      source: taught,
    },
  ],
  now: 'Rake out the loose stone, work fine mix in while it is warm, roll. Do not blade it again.',
  nextTime: 'Fewer passes, not more speed. Blend the ends of the loads into the row.',
  apart: {
    by: streakLook,
    heard: ['streak'],
    leads: { groove: { fault: 'drag-marks' }, tack: { fault: 'bar-streak' } },
  },
  examples: {
    finds: ['there is a rock pocket on the edge of the patch', 'rocky streaks with no fines, stones kicking out'],
    not: ['dead nozzle leaves a bare streak in the tack', 'long scratches behind the blade'],
  },
});
