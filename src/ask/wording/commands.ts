import { quizAsks } from './quiz-asks.ts';

/** How people say what they want of the assistant itself, in cue lines (see `ask/cue.ts`). */
export const commandCues = {
  'start-over': [
    'start+over',
    'start+again',
    'new+job',
    'new+patch',
    'clear+all|everything',
    'reset',
    'forget+all|everything',
  ],
  metric: ['in+metric', 'metric+units|please', 'metric+instead', 'metric -ton+metric -metric+ton'],
  us: ['in+us', 'us+units', 'in+english+units', 'in+feet+inches', 'imperial'],
  how: ['how get', 'how came|come+up', 'show+working|math|work', 'show how', 'how figured', 'where+number'],
  help: ['help', 'usage', 'hello|hi|hey|howdy|hola', 'thanks|thank|thx|gracias'],
  quiz: quizAsks,
} as const;

/** The words of a bare conversion, beside the units. */
export const conversionWords: ReadonlySet<string> = new Set([
  'convert',
  'conversion',
  'to',
  'in',
  'into',
  'how-many',
  'how',
  'what',
  'whats',
  "what's",
  'equal',
  'as',
  'there',
  'much',
  'many',
  'one',
]);
