import layTime from '../quantities/lay-time.ts';
import loadRollingTime from '../quantities/load-rolling-time.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'roller-pace',
  title: 'one load rolled before the next',
  on: loadRollingTime,
  max: layTime,
  breaks: 'caution',
  besideRule: 'roller-keeps-up',
  because: 'The slowest of blade, roller and trucks sets the pace.',
  sources: [commonPractice],
  text: {
    ok: 'One load is rolled in {on}, before the next after {limit}.',
    caution: 'One load takes {on} to roll and the next comes after {limit}: the roller sets the pace.',
    cannotTell: 'How often trucks come says whether the roller sets the pace.',
  },
  fix: 'Space the trucks out, or put on a wider or a second roller.',
  examples: {
    holds: { 'load-rolling-time': [15, 'min'], 'lay-time': [20, 'min'] },
    boundary: { 'load-rolling-time': [20, 'min'], 'lay-time': [20, 'min'] },
    breaks: { 'load-rolling-time': [25, 'min'], 'lay-time': [20, 'min'] },
    cannotTell: { 'load-rolling-time': [25, 'min'] },
  },
});
