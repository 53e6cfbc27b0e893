import posted from '../choices/flaggers-posted.ts';
import { iowa, manual } from '../manual.ts';
import { practice, type Source } from '../shapes.ts';

const cornell: Source = {
  document: 'Questions and answers, number 221: single flagger',
  issuer: 'Cornell Local Roads Program (New York LTAP)',
  seen: 'read',
};

export default practice({
  id: 'flagger-count',
  title: 'how many flaggers',
  on: posted,
  because: 'Each end needs somebody who sees it and can stop it; one person can do both only while he sees both.',
  sources: [manual('section 6E.02'), iowa('Flagger training, single flagger operations'), cornell],
  cues: [
    'only|just|got one+flagger curve|hill|unseen|around',
    'how-many flagger|flag -cone -device -taper -apart',
    '#number flagger @check',
    'single flagger',
    'need|must|have flagger @check -device -cone -taper',
    'need second flagger',
    'no+flagger',
    'without|shave|short|skip flagger @check',
    'flagger|flag alone|myself @check',
    '#number|single flagger curve|hill|blind|unseen|see @check',
    'one|single flagger|flag @check',
    'one|single flagger|flag unseen|see end',
    'one|single+man|guy|person flag',
    '#number|one guy|man|person flag @check',
    'why two|need|second flagger',
    'why flagger #number|one|single',
    'only|just|got one+flagger',
    'one+flagger curve|hill|unseen',
  ],
  judged: {
    none: {
      status: 'stop',
      text: 'Two ways on one lane shall be coordinated: without flaggers, or another control the plan names, the lane stays open.',
    },
    'one-blind': {
      status: 'stop',
      text: 'One flagger may do only where he sees both ends and stays in control of them; where he cannot, there should be two, or the job waits.',
    },
    one: {
      status: 'caution',
      text: 'There should be two, one at each end. One may do where the zone is short enough to see end to end; Iowa says 100 ft or less, under 2,000 vehicles a day, a quarter mile in view; New York under 400 vehicles. Any doubt means two.',
    },
    'one-sees-both': {
      status: 'ok',
      text: 'One flagger may do while he sees both ends and stays in control of both; Iowa says 100 ft or less and under 2,000 vehicles a day. When that changes, a second one.',
    },
    two: {
      status: 'ok',
      text: 'A flagger at each end, one of them in charge, in touch by voice, radio or agreed signals: what the manual says there should be.',
    },
  },
  cannotTell:
    'Tell me how many flaggers there are and whether one can see both ends; the manual says there should be two.',
  fix: 'Post a trained flagger at each end, name one coordinator, and check the radios.',
});
