import state from '../choices/traffic-control-state.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'traffic-control-first',
  title: 'traffic control goes up first',
  on: state,
  because:
    'Until the signs are read nobody expects a person in the road; measuring and unloading kill as surely as laying.',
  sources: [commonPractice],
  cues: [
    'sign|cone|flagger|control after start|begin|cut|dig|sweep|lay',
    'skip|forget sign|cone|control -why',
    'start|work|begin|unload|sweep|tack|measure before+sign|control|flagger|cone',
    'sign|control|flagger before start|work -speed @check',
    'traffic+control first',
    'without sign|control|cone @check',
    'when sign|control up',
    'start|work|begin|unload|sweep|broom|tack|lay|cut while|still sign|control|cone|flagger @check',
    'sign|cone|control still+going|up start|sweep|broom|work|unload @check',
    'no|nobody sign start|work|begin -down @check',
    'sign nobody|no+one put|set up|out start|begin|go',
    'broom|sweep start|begin|go while|before sign|cone',
    'start|begin|go crew|guy still set sign|cone',
    'before|without flagger|sign|cone|control set|up|out|place|ready|here @check',
    'flagger|sign|cone not+here|up|out @check',
    'sign|cone|flagger out|up|place let|get|start|work|people|begin @check -down -pull -pick -#length',
    'start|work|begin while|before set|sign|cone|flagger',
    'why sign|control|cone first|before',
    'why sign before anything|all',
  ],
  judged: {
    none: { status: 'stop', text: 'Nobody is on the road, not even to measure, before traffic control is up.' },
    down: { status: 'stop', text: 'Traffic control is down: nobody goes back on the road until it is up again.' },
    up: {
      status: 'ok',
      text: 'Traffic control is up before anyone is on the road. Drive through it once before the work starts.',
    },
  },
  cannotTell: 'Nobody is on the road before traffic control is up. Tell me whether it is.',
  fix: 'Set the signs first, farthest upstream first, then taper and devices, with a trained person in charge.',
});
