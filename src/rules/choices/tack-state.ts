import { choice } from '../shapes.ts';
import { tackColour } from '../sources-work.ts';

export default choice({
  id: 'tack-state',
  title: 'tack',
  because: 'The water in an emulsion must leave before mix covers it; the colour turns from brown to black as it goes.',
  sources: [tackColour],
  question: { text: 'Has the tack broken: black and tacky, or is it still brown?', ease: 1 },
  options: [
    {
      id: 'rained-on',
      title: 'rained on before it broke',
      cues: [
        'rain spray|sprayed|shot|shoot after|on|hit|got -if|when',
        'rain tack -come -coming -forecast -due -if -chance -later -soon -hour -in -#time -@check',
        'rain before broke|break|broken',
        'rain hit|got tack',
      ],
    },
    {
      id: 'fouled',
      title: 'dusty or driven on',
      cues: [
        'tack dust|dusty|dirty|mud|muddy -before',
        'tack drove|driven -not',
        'on|onto|over+tack drive|car|traffic|truck -mix -dump -check',
        'tack since+morning|yesterday',
        'tack yesterday',
        'tack last+night',
        'car|traffic tack sneak',
        'dusty driven',
      ],
    },
    {
      id: 'brown',
      title: 'still brown',
      cues: [
        'chocolate|coffee|caramel|brown color|yet|look|looks',
        'tack brown -black -turn',
        'still+brown',
        "tack not|hasn't|ain't|isn't|didn't|wont|won't broke|broken|break|set|cure|black|tacky|dry|ready",
        'tack still wet|runny|liquid',
        'before tack broke|break|broken|set|cure',
        'chocolate|milk|coffee spray|shot|tack|still',
        'still look brown|chocolate|milky|milk',
      ],
    },
    {
      id: 'broken',
      title: 'black and tacky',
      cues: [
        'black+tacky',
        "tack broke|broken|black|tacky|cure -not -hasn't -ain't -isn't -didn't -before -brown -if -when -till -until -how+long",
        "tack+set -not -hasn't -before -brown -rate -if -when -till -until -how+long",
        "tack+dry -not -hasn't -before -brown -if -when -till -until -how+long",
        'tack+black|broken|broke -till -until -how+long -when -how -if',
        "it+broke|broken|black -grader -roller -truck -machine -before -not -hasn't",
        'tack black sticky',
        'black sticky|tacky',
        'tack|spray|shot turn|went|gone|all+black',
        'tack brown black turn|went|gone -not -still -before -until',
        'turn+black',
      ],
    },
  ],
});
