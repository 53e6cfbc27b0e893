import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';

export default fault({
  id: 'spill-under-wheels',
  title: 'mix under the rear wheels',
  seen: 'mix off the end of the blade that the rear wheels run over',
  because:
    'What leaves the trailing end in the track of the tandems is packed there in two strips before the roller comes.',
  sources: [commonPractice],
  cues: [
    'mix|spill|windrow under|beneath wheel|tire|tandem',
    'rear|back wheel|tire run|running|drive|ride|over|on|in mix|windrow|mat',
    'wheel|tire climb|roll mix|windrow',
    'mix|windrow come|coming|spill off end|heel tire|wheel|tandem',
    'tandem mix|windrow|spill|over',
    'run|running over|own mix|windrow grader|wheel|tire',
    'windrow|mix spill',
    'tandem',
    'mix come|fall|spill|roll off heel|end tire|wheel',
    'drive on+mix grader|wheel|tire',
  ],
  causes: [
    {
      text: 'the trailing end not clear of the rear wheels',
      remedy: 'side-shift the blade, or change its angle, until the mix falls outside them',
      source: commonPractice,
    },
    { text: 'more on the blade than it can carry', remedy: 'take less of the row at a time', source: commonPractice },
  ],
  now: 'Stop, shift the blade, and take the packed strips up again before rolling.',
  nextTime: 'Set the blade so that the heel falls outside the rear wheels before the lift begins.',
  examples: {
    finds: [
      'my rear tires are running over the mix coming off the blade',
      'mix spills off the heel right under the tandem',
    ],
    not: ['tire tracks show through the finished patch', 'truck tires pick the tack up'],
  },
});
