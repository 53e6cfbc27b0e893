import { quantity } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';
import waste from './waste.ts';

export default quantity({
  id: 'premix-mass',
  title: 'mix in place',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'What lies rolled in the patch. Loose or rolled, the tons are the same: roll-down is never applied to tons.',
  sources: [navyAdvanced('p. 8-31')],
  cues: [
    'how-many+ton -order',
    'how-many ton -order',
    'how-many mix -order',
    'ton ?mix -order -a+ton -per+ton',
    'ton fill',
    'weigh|weight #volume ?mix ?how-many ?what -truck -tank',
    'mix weigh|weight #length ?how-many',
    'mix #length -order',
    'mix #area -order',
    'ton feather plus|and|with|both|each -order',
    'how-many ton feather plus|and|with|both|each -order',
    'need mix -order -left',
    'figure ton',
    'what need #length -tack -gallon -taper -sign -cone -flagger -order -buffer -roller -truck -blade',
    'what need #number -tack -gallon -taper -sign -cone -flagger -order -buffer -roller -truck -blade',
  ],
  alsoCalled: ['tonnage', 'tons in place', 'premix', 'hot mix', 'cold mix', 'blacktop', 'plant mix'],
  roles: { after: ['mix', 'left', 'need'], before: ['mix', 'need', 'total'] },
  plain: true,
  adds: waste,
  bare: false,
  question: {
    text: 'How many tons go in the patch?',
    ease: 4,
    choices: [
      { number: 15, unit: 'ton' },
      { number: 30, unit: 'ton' },
      { number: 60, unit: 'ton' },
    ],
  },
  plausible: { min: { number: 0.01, unit: 'ton' }, max: { number: 20000, unit: 'ton' } },
  asks: 'How many tons is that?',
  beside: ['premix-order', 'patch-area', 'lift-count', 'truck-count'],
  usedAt: ['order-and-check', 'spread-premix'],
  caution: 'Loads within legal and posted weight; a posted limit is the whole truck.',
});
