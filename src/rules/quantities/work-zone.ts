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
    'lay+out zone|sign|traffic|closure|flagger|shoulder|site',
    'layout|draw|sketch|diagram|picture|plan traffic|zone|sign|closure|flagger|site|cone',
    'draw|sketch|diagram it|out -lift -patch -roller',
    'set+up zone|closure|shoulder|flagger #length',
    'set+up lane+close|closure',
    'set+up traffic+control #length',
    'set+up shoulder -sign -cone',
    'traffic+plan',
    'traffic+control+plan',
    'zone layout|distance|setup',
    'where sign|cone|flagger go #speed',
    'where every|all sign|cone',
    'which|what sign order #speed',
    'sign need|put|want #speed|#length -apart -spacing -@check',
    'tcp',
    'full|complete|whole layout|setup',
  ],
  bare: false,
  asks: 'Lay out the whole zone.',
  usedAt: ['traffic-control-up'],
});
