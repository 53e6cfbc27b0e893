import { parseArgs } from 'node:util';
import type { Language, UnitSystem } from '../../ask/reply.ts';
import { en } from '../wording/en.ts';

/** A call of the command, as its arguments say it. */
export interface Call {
  /** The question typed; none when it is to be read from standard input. */
  readonly question?: string;
  readonly json: boolean;
  readonly jsonl: boolean;
  readonly quiet: boolean;
  readonly workings: boolean;
  readonly source: boolean;
  readonly help: boolean;
  readonly version: boolean;
  readonly units?: UnitSystem;
  readonly lang?: Language;
  /** Paths of the files that are in force. */
  readonly agency?: string;
  readonly rates?: string;
}

const flag = { type: 'boolean', default: false } as const;
const options = {
  json: flag,
  jsonl: flag,
  workings: flag,
  source: flag,
  version: flag,
  quiet: { ...flag, short: 'q' },
  help: { ...flag, short: 'h' },
  units: { type: 'string' },
  lang: { type: 'string' },
  agency: { type: 'string' },
  rates: { type: 'string' },
} as const;

/** Reads the arguments: a call, or a sentence that says what to change. */
export function readCall(argv: readonly string[]): Call | string {
  const parsed = parse(argv);
  if (typeof parsed === 'string') return parsed;
  const { values, positionals } = parsed;
  const { units, lang, agency, rates, ...flags } = values;
  if (units !== undefined && units !== 'us' && units !== 'metric') return en.unitsWrong;
  if (lang !== undefined && lang !== 'en' && lang !== 'es') return en.langWrong;
  if ([flags.json, flags.jsonl, flags.quiet].filter(Boolean).length > 1) return en.command.oneWay;
  const typed = positionals.join(' ');
  const question = positionals.length === 0 || typed === '-' ? undefined : typed;
  if (flags.jsonl && question !== undefined) return en.command.jsonlAlone;
  return {
    ...flags,
    ...(question === undefined ? {} : { question }),
    ...(units ? { units } : {}),
    ...(lang ? { lang } : {}),
    ...(agency === undefined ? {} : { agency }),
    ...(rates === undefined ? {} : { rates }),
  };
}

function parse(argv: readonly string[]) {
  try {
    return parseArgs({ args: [...argv], options, allowPositionals: true });
  } catch (fault) {
    return en.command.unknownOption((fault as Error).message.split('. ', 1)[0] ?? '');
  }
}
