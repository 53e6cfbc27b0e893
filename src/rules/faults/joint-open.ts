import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { navyBasic } from '../sources-craft.ts';
import { guideSpecification } from '../sources-work.ts';

export default fault({
  id: 'joint-open',
  title: 'open joint',
  seen: 'a gap or a rough seam where the patch meets the old lane',
  because: 'Mix against a cold face packs only when it is full, tacked and pinched before it cools.',
  sources: [navyBasic('ch. 11, joints'), guideSpecification, commonPractice],
  cues: [
    'joint open|gap|rough|crack|low|ravel|loose|high',
    'gap|crack|seam|open|separate between|along patch|mat|old|joint old|lane|joint|edge|road -half-moon',
    'gap|crack|seam|open|separate where patch|mat|mix|new meet|check|join|tie|butt|old -half-moon -slid -slide -brake',
    'seam open|gap|rough|show|loose',
    'patch pull|shrink|shrunk away',
    "joint not|wont|won't|doesn't close|closed|tight|tie|match",
  ],
  causes: [
    {
      text: 'the joint not rolled first',
      remedy: 'pinch it first, the drum mostly on the old lane',
      source: navyBasic('ch. 11, joints'),
    },
    {
      text: 'the old face not cut clean and tacked',
      remedy: 'cut it straight, brush tack on the face',
      source: guideSpecification,
    },
    {
      text: 'too little mix at the joint',
      remedy: 'leave it slightly full; rake no stone onto the old lane',
      source: commonPractice,
    },
    {
      text: 'rolled after it had cooled',
      remedy: 'joint first, right behind the blade',
      rule: 'roller-keeps-up',
      source: commonPractice,
    },
  ],
  now: 'Warm: add fine mix, pinch, roll. Cold: clean it and seal it.',
  nextTime: 'Straight clean face, tack on it, slightly full, rolled first.',
  examples: {
    finds: ['there is a gap where the patch meets the old lane', 'the seam along the old lane is rough and loose'],
    not: ['bump at the end of the patch', 'cracks behind the roller'],
  },
});
