import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'recurring',
  title: 'history',
  because: 'A patch that fails again soon was laid over a cause nobody took away.',
  sources: [commonPractice],
  default: 'first-time',
  options: [
    {
      id: 'returned',
      title: 'came back within a year',
      cues: [
        'fail|failed|broke|broken|come|came|back again',
        'keep|keeps fail|failing|come|coming|break|breaking',
        'came|come|comes+back',
        'every+year|spring',
        'same+spot|place again|fail|failed|year',
        'third|second+time',
        'patched before',
        'patched|patch last+year|spring|fall',
        'back within+year',
      ],
    },
    { id: 'first-time', title: 'first repair here', cues: ['first+time|repair', 'never patched|patch|fixed|touched'] },
  ],
});
