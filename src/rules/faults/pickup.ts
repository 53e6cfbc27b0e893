import stickPlace from '../choices/stick-place.ts';
import { fault } from '../shapes-work.ts';
import { armyPaving, navyBasic } from '../sources-craft.ts';

export default fault({
  id: 'pickup',
  title: 'sticking to the drum',
  seen: 'mix that sticks to the drum and is pulled out of the mat',
  because: 'Hot binder clings to dry or dirty steel; a wet clean drum lets it go.',
  sources: [armyPaving('rolling'), navyBasic('ch. 11, rollers')],
  cues: [
    'drum|roller stick|stuck',
    'mix|mat|patch stick roller|drum|roll|wheel',
    'roller|drum pick up|mix|mat|it -sign -cone',
    'roller|drum pull mix|mat|chunk|piece|hole|up',
    'mix stick everything|drum',
    'stick -bus -car -bed -traffic',
    'drum|roller peel|pull|lift|pick mix|mat|patch|it|up',
    'stick|stuck steel|wheel|drum|roller',
    'peel steel|wheel|drum|roller',
  ],
  causes: [
    { text: 'a dry drum', remedy: 'wet it just enough: fill the tank, clear the spray', source: armyPaving('rolling') },
    {
      text: 'a dirty drum or worn scrapers',
      remedy: 'scrape it clean, set the scrapers',
      source: navyBasic('ch. 11, rollers'),
    },
    { text: 'mix too hot', remedy: 'wait until it carries the drum', source: navyBasic('ch. 11, rollers') },
  ],
  now: 'Stop on rolled mat, clean and wet the drum, fill the hole with warm mix, roll again.',
  nextTime: 'Water and scrapers before the first load. Water or an approved release: fuel softens the mix.',
  apart: { by: stickPlace, heard: ['stick'], leads: { tires: { fault: 'tack-tracking' } } },
  examples: {
    finds: ['mix keeps sticking on the roller', 'drum pulls pieces out of the mat'],
    not: ['truck tires lift the tack', 'the mat crawls ahead of the roller'],
  },
});
