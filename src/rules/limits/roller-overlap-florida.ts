import rollerOverlap from '../quantities/roller-overlap.ts';
import { limit } from '../shapes.ts';
import { florida, rollerArticle } from '../sources-craft.ts';

export default limit({
  id: 'roller-overlap-florida',
  title: 'roller overlap where a state asks for more',
  on: rollerOverlap,
  min: { number: 6, unit: 'in' },
  breaks: 'caution',
  besideRule: 'roller-overlap',
  because: 'Some agencies ask for twice what others do.',
  sources: [florida('section 330: at least 6 in'), rollerArticle('6 in')],
  text: {
    ok: '{on} of overlap also meets the {limit} of the stricter books.',
    caution: '{on} of overlap is under the {limit} that some agencies ask for.',
    cannotTell: 'Some agencies ask for {limit} of overlap.',
  },
  fix: 'Ask your agency, or lap a little more.',
  examples: {
    holds: { 'roller-overlap': [9, 'in'] },
    boundary: { 'roller-overlap': [6, 'in'] },
    breaks: { 'roller-overlap': [4, 'in'] },
    cannotTell: {},
  },
});
