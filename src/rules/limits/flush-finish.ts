import flushHeight from '../quantities/flush-height.ts';
import { limit } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default limit({
  id: 'flush-finish',
  title: 'flush at the edges',
  on: flushHeight,
  max: { number: 0.125, unit: 'in' },
  breaks: 'caution',
  because: 'A step is felt, dams water, and takes the blow of every wheel and plow.',
  sources: [ufcRepair('3.3.4 and 7: level or at most 1/8 in high after compaction')],
  cues: [
    'flush',
    'patch high @check',
    'high|proud #length @check',
    'patch stand|sit high|above|proud',
    'side|edge patch|mat high|higher|proud|above road|old|lane|pavement -roll -rolled -start -low -middle -center',
    'how+high patch @check',
    'edge|patch|mat sit|stand|above|proud|high @check -roller -drum -windrow -cone',
    'high|proud|above|low edge|patch|mat|road #number @check -windrow',
    'edge above|proud old|road|patch',
    'patch|mat|edge #thin high|proud|above|over road|old|pavement',
  ],
  text: {
    ok: '{on} high is flush: up to {limit} is allowed.',
    caution: '{on} high is over the {limit} a patch may stand over the old road.',
    cannotTell: 'Tell me how high the patch stands over the old road at its edge; up to {limit} is flush.',
  },
  fix: 'While it is warm roll the edge down or rake it off; cold, cut it and lay it again.',
  examples: {
    holds: { 'flush-height': [0.0625, 'in'] },
    boundary: { 'flush-height': [0.125, 'in'] },
    breaks: { 'flush-height': [0.1875, 'in'] },
    cannotTell: {},
  },
});
