import apparel from '../choices/apparel.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'apparel',
  title: 'high-visibility apparel',
  on: apparel,
  because: 'Drivers and operators hit what they do not see.',
  sources: [manual('section 6C.05, a standard; ANSI/ISEA 107-2015')],
  cues: [
    'no|without+vest',
    'what wear',
    'vest',
    'vest @check',
    'wear vest',
    'class vest',
    'class-2|class-3 @check',
    'class-2|class-3 night',
    'must|need vest',
    'what gear|ppe|clothes|wear',
    'gear|ppe need|wear|bring',
  ],
  judged: {
    none: {
      status: 'stop',
      text: 'Everyone in the zone, day or night, shall wear high-visibility apparel of Performance Class 2 or 3.',
    },
    'class-2-night-flagger': { status: 'caution', text: 'Class 3 should be worn by flaggers at night.' },
    'class-2': {
      status: 'ok',
      text: 'Class 2 is what the standard asks for (shall be Class 2 or 3); flaggers at night should wear Class 3.',
    },
    'class-3': {
      status: 'ok',
      text: 'Class 3 meets the standard (shall be Class 2 or 3), flagging at night included.',
    },
  },
  cannotTell:
    'Everyone in the zone shall wear Performance Class 2 or 3, day or night; Class 3 should be worn by flaggers at night. Tell me what is worn.',
  fix: 'Vest or jacket on before stepping out; hard hat, boots, gloves and eye protection by the employer’s rules.',
});
