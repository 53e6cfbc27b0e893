import { fault } from '../shapes-work.ts';
import { fm5436 } from '../sources-craft.ts';
import { texasDistress } from '../sources-work.ts';

export default fault({
  id: 'failure-returns',
  title: 'failure that returns',
  seen: 'the same place failing again soon after it was patched',
  because: 'A surface repair over a bad base, or over water, is a stop-gap: the cause is still there.',
  sources: [fm5436('ch. 7, paras 7-1 to 7-4'), texasDistress],
  cues: [
    'same+spot|place|hole fail|again|back|broke|year|every',
    'patch|hole|spot fail again|year|spring|month|keep|already',
    'keep|kept patch|fill|fix|fail same|it|spot|place|hole',
    'come|came|coming+back patch|hole|crack|spot|year|spring|same -truck',
    "patch not|wont|won't|doesn't last|hold|stay",
    'crack come|came|reflect|back through patch|mat',
    'every+spring|year patch|hole|spot|same',
    'keep come|coming|fail|failing|break|breaking back|again|spot|patch',
    'back|again last+year|spring|summer|fall',
    'third|second|fourth+patch|time spot|place|hole|year',
    'patch spot|place|hole #number|times|twice year|month|week',
    'patch this|same+spot|place|hole times|again',
    'fail again|keep|same',
  ],
  causes: [
    {
      text: 'a soft base that was covered',
      remedy: 'dig it out, dry it, rebuild it',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      text: 'water with no way out',
      remedy: 'ditches, shoulders and pipes first',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      text: 'cracked mix left under the patch: it comes through',
      remedy: 'remove it, or call the patch what it is, a holding repair',
      source: texasDistress,
    },
  ],
  now: 'Stop patching it. Find the water or the soft base, and call the engineer if it came back within a year.',
  nextTime: 'Test every spot with a loaded truck, and look at the ditch, before mix is ordered.',
  examples: {
    finds: ['we keep patching the same hole every spring', 'same spot failed in a year'],
    not: ['patch settled a little below the road', 'three of our signs keep blowing over'],
  },
});
