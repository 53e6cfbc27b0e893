import { choice } from '../shapes.ts';
import { fm5436 } from '../sources-craft.ts';

export default choice({
  id: 'water-state',
  title: 'water',
  because: 'Water that cannot leave softens the base and strips the mix: what is laid over it fails the same way.',
  sources: [fm5436('ch. 7, paras 7-1 to 7-4')],
  question: {
    text: 'Does the water leave: dry and drained, standing with no way out, or coming up through the road?',
    ease: 2,
  },
  options: [
    {
      id: 'rising',
      title: 'coming up through the road',
      cues: [
        'pump water|fines|mud',
        'base|road|crack pump -not -no -gallon',
        'water come|coming+up',
        'water up+through',
        'coming+up+through',
        'water seep|ooze|weep|rise|squirt',
        'mud|fines|silt squirt|spurt|ooze|pump',
        'mud|fines|silt come|coming+up',
        'wet underneath|base',
        'seep|weep',
      ],
    },
    {
      id: 'standing',
      title: 'standing with no way out',
      cues: [
        'water stand|sit|pond|puddle|trap|trapped|stay -no',
        'hold|holding water',
        'no+drainage|outlet|ditch|drain',
        'ditch|pipe|culvert plug|full|block',
        'shoulder dam|trap water',
        "not|doesn't|won't|wont+drain",
        'standing way+out',
      ],
    },
    {
      id: 'drained',
      title: 'dry and drained',
      cues: [
        "drain|drainage check|well|work -not -no -doesn't",
        'dry drain -not -no',
        'dry firm|solid',
        'base dry',
        'no+water',
        'high+dry',
      ],
    },
  ],
});
