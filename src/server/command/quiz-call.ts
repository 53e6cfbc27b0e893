import { parseArgs } from 'node:util';
import type { QuizRequest } from '../../ask/quiz/request.ts';
import { quizCommand as words } from '../wording/quiz.en.ts';

const formats = ['text', 'json', 'csv', 'qti3'] as const;
export type Format = (typeof formats)[number];

/** A call of the quiz command, as its arguments say it. */
export interface QuizCall {
  readonly request: QuizRequest;
  readonly format: Format;
  readonly key: boolean;
  readonly spreadsheet: boolean;
  readonly output?: string;
}

const text = { type: 'string' } as const;
const several = { type: 'string', multiple: true } as const;
const flag = { type: 'boolean', default: false } as const;
const options = {
  topic: several,
  level: several,
  kind: several,
  seat: text,
  count: text,
  seed: text,
  variant: text,
  units: text,
  about: several,
  format: { ...text, default: 'text' },
  output: { ...text, short: 'o' },
  'no-key': flag,
  spreadsheet: flag,
  help: { ...flag, short: 'h' },
} as const;

/** Reads the arguments: a call, `help`, or what to change, as a sentence in an object. */
export function readQuizCall(argv: readonly string[]): QuizCall | 'help' | { readonly wrong: string } {
  const parsed = parse(argv);
  if ('wrong' in parsed) return parsed;
  const { values, positionals } = parsed;
  if (values.help) return 'help';
  const { seat, seed, output, variant = 'A', count = '10', units = 'us' } = values;
  const format = formats.find((each) => each === values.format);
  if (positionals[0] !== undefined) return { wrong: words.extra(positionals[0]) };
  if (!format) return { wrong: words.badFormat(values.format) };
  if (variant !== 'A' && variant !== 'B') return { wrong: words.badVariant(variant) };
  if (units !== 'us' && units !== 'metric') return { wrong: words.badUnits(units) };
  if (!/^-?[0-9]{1,9}$/.test(count)) return { wrong: words.badCount(count) };
  const request: QuizRequest = {
    topics: listed(values.topic),
    levels: listed(values.level),
    kinds: listed(values.kind),
    count: Number(count),
    variant,
    ...(listed(values.about).length ? { about: listed(values.about) } : {}),
    ...(units === 'metric' ? { units } : {}),
    ...(seat === undefined ? {} : { seat }),
    ...(seed === undefined ? {} : { seed }),
  };
  return {
    request,
    format,
    key: !values['no-key'],
    spreadsheet: values.spreadsheet,
    ...(output === undefined ? {} : { output }),
  };
}

const listed = (values: readonly string[] = []): string[] =>
  values
    .flatMap((value) => value.split(','))
    .map((value) => value.trim().toLowerCase())
    .filter(Boolean);

function parse(argv: readonly string[]) {
  try {
    return parseArgs({ args: [...argv], options, allowPositionals: true });
  } catch (fault) {
    return { wrong: (fault as Error).message.split('. ', 1)[0] ?? '' };
  }
}
