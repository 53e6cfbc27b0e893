import graderSpeed from '../quantities/grader-speed.ts';
import { commonPractice, limit } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default limit({
  id: 'lay-speed',
  title: 'speed of laying',
  on: graderSpeed,
  max: { number: 3, unit: 'mph' },
  breaks: 'caution',
  because: 'A fast grader bounces on its tires, and the blade writes every bounce into the mat.',
  sources: [navyBasic('p. 10-14: too much speed makes the grader bounce and leaves washboards'), commonPractice],
  cues: [
    'why blade|grader|lay fast|faster|quick|quicker|slow',
    'grader #speed @check',
    'grader|blade|lay fast @check',
    'how-fast @check lay|blade|grader',
    'lay #speed @check',
    'lay|lying|blade|grader #speed problem|trouble|fast|slow|check',
    'why grader|blade slow',
    'blade #speed @check',
    'why #speed -roller -drum -roll -road -taper -sign',
    'why slow|fast blade|grader|lay',
    'grader|blade|lay|spread #speed -how -how-many -long -what -time -minute -hour -pass -trip -#length',
    'speed lay|blade|grader #speed @check',
  ],
  text: {
    ok: '{on} is within the {limit} for laying: low gear, throttle open.',
    caution: '{on} is over the {limit} for laying: the machine bounces and leaves washboards.',
    cannotTell:
      'A gear is no speed. Time the machine over 100 ft and tell me the speed; laying is done at up to {limit}.',
  },
  fix: 'Go down a gear and keep the throttle open.',
  examples: {
    holds: { 'grader-speed': [2.5, 'mph'] },
    boundary: { 'grader-speed': [3, 'mph'] },
    breaks: { 'grader-speed': [5, 'mph'] },
    cannotTell: {},
  },
});
