import rowEnd from '../choices/row-end.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'material-run-out',
  title: 'mix gives out just before the end',
  on: rowEnd,
  because: 'A pile makes a bump, a string down the road lies on no tack, and a short row leaves a low end.',
  sources: [commonPractice],
  cues: [
    'pile left|end @check -past',
    'left+over mix|windrow -past',
    'mix|windrow left end @check -past',
    'drag|carry rest|left|extra|pile down+road -past',
    'mix short|run|ran end @check -past',
    'windrow run|ran|give|gave out -past',
    'windrow|mix gave|give|ran|run out|short end|patch @check',
    'no+pile nothing left|drag',
    'windrow|mix gave+out|ran+out short|end -past',
    'windrow|mix end|short nothing|no left|pile|over',
  ],
  judged: {
    even: { status: 'ok', text: 'It gives out just before the end: the row was the right size.' },
    'pile-left': { status: 'caution', text: 'A pile at the end is a bump: the row was too big for the width left.' },
    'dragged-on': { status: 'caution', text: 'Mix dragged on down the road lies on no tack and ravels.' },
    short: { status: 'caution', text: 'It gave out short: the end is low and drags.' },
  },
  cannotTell:
    'Tell me how it ends: just before the end, with a pile, dragged on, or short. Until the finish pass mix is kept short of the outer edge.',
  fix: 'Work a small pile back into the mat; short, tack and feather in more. Never string it down the road. Size the next row by its tons.',
});
