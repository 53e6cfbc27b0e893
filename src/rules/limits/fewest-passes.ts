import graderPasses from '../quantities/grader-passes.ts';
import leastPasses from '../quantities/least-passes.ts';
import { commonPractice, limit } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default limit({
  id: 'fewest-passes',
  title: 'no more passes than the width needs',
  on: graderPasses,
  max: leastPasses,
  breaks: 'caution',
  because:
    'Every extra pass drops the stone out of the fines; the loose stone is thrown off by traffic and the mat comes out bony.',
  sources: [commonPractice, ufcRepair('p. 9: overworking segregates')],
  cues: [
    'back|over|work again+again',
    '#number trip blade|windrow|mix|grader|operator|over @check -roller',
    'over+it again|times',
    'pass grader|blade @check',
    'pass many @check -roller -roll|rolled',
    'work over|again mix @check',
    'work|working mix|windrow|mat blade|grader check+much|long|many',
    'why few pass',
    'few+pass',
    'blade|grader|windrow|mix back+forth @check',
    'back+forth #number',
    '#number times|time|pass blade|windrow|mix|grader @check -roll -roller',
    'back forth #number times|time',
    'over|back same lift|strip|mix|mat #number times|time -roller -roll|rolled',
  ],
  text: {
    ok: '{on} passes are no more than the width needs.',
    caution: '{on} passes where {limit} cover it: every extra one separates stone from fines.',
    cannotTell:
      'Tell me the width, the depth and how many passes are made, and I can say whether that is more than it needs.',
  },
  fix: 'Cover the width once for each lift and leave it alone.',
  examples: {
    holds: { 'grader-passes': [2, '1'], 'least-passes': [4, '1'] },
    boundary: { 'grader-passes': [4, '1'], 'least-passes': [4, '1'] },
    breaks: { 'grader-passes': [9, '1'], 'least-passes': [4, '1'] },
    cannotTell: { 'grader-passes': [6, '1'] },
  },
});
