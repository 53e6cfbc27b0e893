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
        'fail|broke|broken|come|came|back again',
        'keep|keeps+fail|break|come|coming',
        'came|come+back',
        'every+year|spring',
        'same+spot|place again|fail|year',
        'third|second+time',
        'patch last+year|spring|fall',
        'back within+year',
      ],
    },
    { id: 'first-time', title: 'first repair here', cues: ['first+time|repair', 'never patch|fix|touched'] },
  ],
});
