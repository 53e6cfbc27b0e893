import matState from '../choices/mat-state.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'open-to-traffic',
  title: 'fit for traffic before it is opened',
  on: matState,
  because:
    'An unrolled or hot mat ruts, loose stone breaks windshields, open tack is slick, and a lip nobody sees throws a car.',
  sources: [
    {
      document: 'Manual on Uniform Traffic Control Devices',
      issuer: 'FHWA',
      edition: '11th ed., 2023',
      place: 'part 6, low shoulder, uneven lanes and no center line signs',
      seen: 'restated',
    },
    commonPractice,
  ],
  cues: [
    'open traffic|lane|road @check',
    'let traffic|car|them @check',
    'let on @check traffic|car|it',
    'open traffic',
    'when open|traffic|car -pilot -lead|follow',
    'traffic|car on patch|mat|tack|it @check',
    'open up',
    'check|ready+open',
    'why open|wait traffic',
    'open+lane|road|up car|traffic|tack|it|windrow|mat',
    'open lane|road car|traffic want|wait|through',
    'open lane|road|up still|bare|tack|hot|loose',
    'let car|traffic|them through|on|over',
    'car|traffic want through|on -gas',
    'rolled cool|cooled open|traffic',
    'open it @check',
    'open+it',
    'why wait|not open|let|car|traffic',
  ],
  judged: {
    ready: {
      status: 'ok',
      text: 'Rolled, cool, swept, tack covered, lips signed and the line shown: it can carry traffic. Measure the drop-off again.',
    },
    'not-rolled': { status: 'stop', text: 'Not open before it is rolled.' },
    hot: { status: 'stop', text: 'Not open while it is hot: it still moves under a wheel.' },
    'loose-stone': { status: 'stop', text: 'Not open with loose stone on it: sweep it first.' },
    'open-tack': { status: 'stop', text: 'Not open over bare tack: it is slick and sticks to cars.' },
    lip: { status: 'stop', text: 'Not open with a lip that no sign shows.' },
    'no-line': { status: 'stop', text: 'Not open with the line covered and no sign for it.' },
  },
  cannotTell:
    'It can carry traffic when it is rolled, cool, free of loose stone and bare tack, with lips signed, line or sign shown, and the drop-off measured again. Which of these is still open?',
  fix: "Keep the lane closed until that is done; your agency's rules come first.",
});
