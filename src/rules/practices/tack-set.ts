import tackState from '../choices/tack-state.ts';
import { practice } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default practice({
  id: 'tack-set',
  title: 'tack broken before mix goes on',
  on: tackState,
  because: 'Water shut in under the mix steams and keeps it from sticking; tires carry wet tack off.',
  sources: [
    { document: 'trade questions and answers on tack', place: 'brown to black', seen: 'restated' },
    ufcFlexible('ch. 3, tack coats: fully cured before the mix'),
  ],
  cues: [
    'how+long tack till|until|before|wait truck|mix|dump|lay -roll -gallon',
    'tack brown|black|wet|tacky|broke|broken|break|set @check',
    'tack brown|wet dump|mix|lay|truck',
    'dump|lay|drive|truck tack @check',
    'how+long tack break|set|dry|cure',
    'tack ready @check',
    "tack not|hasn't|isn't|ain't|didn't|wont|won't|still broke|broken|break|set|cure|brown dump|lay|mix|truck|drive|start|go",
    'tack drove|driven|car|traffic @check',
    'when tack broke|break|set|ready',
    'why wait|tack break|broke|broken',
    'why tack|wait black|brown|tacky|set|cure|dry|ready|turn|color',
    'why tack black|brown|turn|wait|set|broke|cure',
    'why wait tack turn|black|broke',
    'spray|shot still look|brown dump|lay|truck|mix',
    'tack black|sticky|tacky touch|mix|lay|put @check',
    'chocolate|brown|milk|coffee spray|shot|tack',
    'spray|shot look brown|chocolate|milk|wet @check',
    'spray|shot|sprayed minute|ago|just truck|drive|dump|lay @check',
    'runny dump|lay|mix|put',
    'tack|it broke|set|black|tacky|sticky start|check|go dump|lay|put|mix @check',
  ],
  judged: {
    broken: { status: 'ok', text: 'Black and tacky: the mix can go on.' },
    brown: { status: 'stop', text: 'Still brown is still water: nothing goes on it, neither mix nor wheels.' },
    'rained-on': { status: 'stop', text: 'Rain has been on it before it broke: what is left cannot be trusted.' },
    fouled: { status: 'caution', text: 'Driven on, dusty or from another shift: it no longer sticks as it should.' },
  },
  cannotTell: 'Look at it and touch it: black and tacky has broken, brown has not. The clock does not tell.',
  fix: 'Wait until it is black and tacky; rained on or fouled, let it dry, sweep it and tack again lightly. Keep it out of the drains.',
});
