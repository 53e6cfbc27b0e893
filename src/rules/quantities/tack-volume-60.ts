import { quantity } from '../shapes.ts';
import { astmVolume, fromMemory, iowaVolume } from '../sources-craft.ts';

export default quantity({
  id: 'tack-volume-60',
  title: 'tack at 60 degF',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Liquids swell as they warm; gallons are bought and paid for at 60 degF.',
  sources: [
    astmVolume('binder and cutback; emulsions are excluded'),
    iowaVolume('column A'),
    fromMemory('emulsion, 0.00025 for each degF'),
  ],
  cues: [
    'gallon correct|net|base #temperature',
    'volume correct|net|base|temperature',
    'gallon #temperature how-many',
    'gallon #temperature at',
    '#volume how-many|what at+#number -#rate -#length -#money -price -cost -#area -shoot -rate',
    'net|correct gallon at+#number -rate',
    'correct temperature tack|gallon',
    'tack #temperature how-many',
    'what at+#number #temperature tack|gallon|tank',
    'correct+#number|#temperature',
    'tack|gallon #temperature correct',
    'correct|net|base|bill #volume ?#temperature -rate',
    'tack|tank|stick|distributor #volume #temperature -air -outside -rain -@check -rate -how-far',
    'cool|shrink|swell|hot gallon|#volume #temperature -rate -roll -lift',
  ],
  alsoCalled: ['net gallons', 'corrected gallons', 'volume correction'],
  bare: false,
  beside: ['tack-volume-factor'],
  usedAt: ['record'],
  note: 'The emulsion factor is from memory: for planning, not for payment.',
});
