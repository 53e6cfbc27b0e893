import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'work-zone',
  title: 'whole work zone',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'Which signs, tapers and spaces it has depends on the road and on what is closed, so that is settled first.',
  sources: [manual('chapter 6P')],
  standsIn: true,
  cues: [
    'lay+out zone|work+zone|layout|sign|traffic|control|closure',
    'layout|draw|sketch|diagram|plan traffic|zone|sign|control|closure|flagger|site',
    'draw|sketch|diagram it|layout|out -lift -patch -roller',
    'set+up zone|lane+closure|shoulder',
    'set+up traffic+control #length',
    'traffic+plan',
    'traffic+control+plan',
    'zone layout|distance|setup',
    'where every|all sign',
    'where sign|cone|flagger go #length',
  ],
  bare: false,
  asks: 'Lay out the whole zone.',
  usedAt: ['traffic-control-up'],
});
