import wavePlace from '../choices/wave-place.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';

export default fault({
  id: 'scallops',
  title: 'scallops along the edge',
  seen: 'an outer edge that goes in and out, like shells',
  because:
    'Where the blade has no mix left at its trailing end, the edge falls back until the next bit of row fills it.',
  sources: [commonPractice],
  cues: [
    'scallop -across',
    'edge in+out',
    'edge wavy|waver|wander|snake|crooked|uneven|ragged',
    'outer|outside edge wave|waver|wander|gap|bay',
    'edge shell|scallop',
    "edge straight not|isn't|ain't|won't|wont",
    'edge come in out',
  ],
  causes: [
    {
      text: 'mix not carried all the way out on the finish',
      remedy: 'bring more material to the edge with the finish lift',
      rule: 'material-run-out',
      source: commonPractice,
    },
    {
      text: 'a row of uneven size',
      remedy: 'size the next row straight and even, from both ends',
      rule: 'windrow-side',
      source: commonPractice,
    },
  ],
  now: 'Bring the row back to the middle and over again to fill the bays, while the mat is warm; rake the last of it by hand and roll the edge.',
  nextTime: 'Keep mix short of the edge until the finish, and keep enough for it.',
  apart: {
    by: wavePlace,
    heard: ['scallop'],
    leads: { across: { fault: 'washboards' }, 'cutting-edge': { fault: 'washboards' } },
  },
  examples: {
    finds: [
      'edge of the mat looks scalloped, in and out all along',
      'outside edge wanders, it will not come out straight',
      'the edge goes in and out like a snake',
    ],
    not: ['grader is bouncing and leaving ripples across the mat', 'the edge is too thin and breaks off'],
  },
});
