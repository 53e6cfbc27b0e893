import turnout from '../quantities/turnout.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'turnout-distance',
  title: 'mix gone past the end',
  on: turnout,
  min: { number: 5, unit: 'ft' },
  max: { number: 10, unit: 'ft' },
  breaks: 'caution',
  because:
    'Too short and the machine cannot line up under the row; too long and mix lies on bare road where nothing holds it.',
  sources: [commonPractice],
  cues: [
    'turnout',
    'turn+out',
    'past end|patch #length @check mix|blade|windrow -dump -spray -spread -tack',
    'how-far past end|patch turn|blade',
    'where turn grader|blade',
    'turn+out past|beyond #length @check',
    'turnout|turn+out #length past|beyond',
    '#length past|beyond end|patch turn|turnout',
    'grader|blade|carry|push|drag #length past|beyond end|patch',
    'carry|push mix|windrow past|beyond end|patch',
  ],
  text: {
    ok: '{on} past the patch is right for the turnout.',
    caution: '{on} past the patch does not suit the turnout: the bound is {limit}.',
    cannotTell: 'Tell me how far past the patch the mix is gone and the turn is made; it should be up to {limit}.',
  },
  fix: 'Ease the blade so that it empties past the end, and bring back or sweep what lies beyond before the last rolling.',
  examples: {
    holds: { turnout: [8, 'ft'] },
    boundary: { turnout: [10, 'ft'] },
    breaks: { turnout: [20, 'ft'] },
    cannotTell: {},
    also: [
      { facts: { turnout: [5, 'ft'] }, is: 'ok' },
      { facts: { turnout: [2, 'ft'] }, is: 'caution' },
    ],
  },
});
