import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { bladeSpreading, pavingHandbook } from '../sources-craft.ts';

export default fault({
  id: 'pushing',
  title: 'pushing',
  seen: 'mix that shoves and crawls ahead of the roller',
  because: 'Mix that is still wet with cutter or too hot has no grip of its own, and moves away from the drum.',
  sources: [bladeSpreading('aeration: unaerated mix pushes under the roller'), pavingHandbook('section 18')],
  cues: [
    'shove|push roller|drum|under|ahead|roll -old -stop+sign -intersection -dirt',
    'crawl',
    'mix|mat|patch move|slide|squirm|walk|wave ahead|under|front roller|drum|roll',
    'wave front|ahead roller|drum',
    'mix|mat tender -base',
    "cold+mix not|wont|won't set|firm|pack|quit|tighten|stay",
    'roller sink mat|mix|patch',
    'mat|mix|patch move when|as roll|roller|drum',
    'squirm',
    'roll+up drum|roller|front',
    'bow+wave',
    'push instead|ahead|front roll|roller|drum|pack',
  ],
  causes: [
    {
      text: 'cold mix too wet: it has not aired',
      remedy: 'blade it back and forth and let it air, then roll',
      source: bladeSpreading('aeration: unaerated mix pushes under the roller'),
    },
    {
      text: 'hot mix too hot and tender',
      remedy: 'wait, then roll slowly without vibration',
      source: pavingHandbook('section 18'),
    },
    {
      text: 'too much tack under it',
      remedy: 'a thinner film on the next one',
      rule: 'tack-rate',
      source: commonPractice,
    },
    {
      text: 'rolling too fast, turning or stopping hard',
      remedy: 'slow, straight, drive drum toward the laying',
      rule: 'roller-speed',
      source: pavingHandbook('section 18'),
    },
    { text: 'a lift too thick', remedy: 'thinner lifts, each rolled', rule: 'lift-max', source: commonPractice },
  ],
  now: 'Roller off it. Let it cool or air; lighter roller, rubber tires if there are any; take the waves out before it sets.',
  nextTime: 'Air cold mix in the row until it no longer shines; keep lifts thin.',
  examples: {
    finds: [
      'its shoving under the roller',
      'mat crawls and makes a wave in front of the drum',
      'cold mix wont set up under the roller',
    ],
    not: ['old road shoved into humps at the stop sign', 'fine cracks behind the roller'],
  },
});
