import hotSectionLength from '../quantities/hot-section-length.ts';
import laidAhead from '../quantities/laid-ahead.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'hot-section',
  title: 'hot lift laid no farther than it can be rolled',
  underRule: 'roller-keeps-up',
  on: laidAhead,
  max: hotSectionLength,
  breaks: 'caution',
  because: 'What lies unrolled is cooling; past a few hundred feet its near end is cold before the drum comes.',
  sources: [commonPractice],
  cues: [
    'ahead|ahead-of roller #length @check',
    'lay #length ahead|ahead-of|before roller|roll|rolled @check',
    'check+far ahead|ahead-of roller',
  ],
  text: {
    ok: '{on} ahead of the roller is within the {limit} that can be rolled hot, by the estimate.',
    caution: '{on} ahead of the roller is more than the {limit} that can be rolled hot, by the estimate.',
    cannotTell:
      'Tell me the thickness, the temperature behind the blade and of the road, and how far it is laid ahead.',
  },
  fix: 'Stop laying until the roller has caught up; lay shorter strips.',
  examples: {
    holds: { 'laid-ahead': [80, 'ft'], 'hot-section-length': [100, 'ft'] },
    boundary: { 'laid-ahead': [100, 'ft'], 'hot-section-length': [100, 'ft'] },
    breaks: { 'laid-ahead': [250, 'ft'], 'hot-section-length': [100, 'ft'] },
    cannotTell: { 'laid-ahead': [250, 'ft'] },
  },
});
