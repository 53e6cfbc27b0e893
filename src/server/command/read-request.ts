import type { Request } from '../../ask/reply.ts';
import { jsonIn } from '../../rules/json.ts';
import { en } from '../wording/en.ts';

const members: readonly string[] = ['question', 'job', 'units', 'lang', 'agency', 'rates'];

/** A line as a request: an object as it says, anything else a bare question. A sentence that says what to change when it is neither. */
export function readRequest(line: string): Request | string {
  if (!line.trimStart().startsWith('{')) return { question: line.trim() };
  const request = parsed(line);
  if (!request) return en.command.badJson;
  const unknown = Object.keys(request).find((name) => !members.includes(name));
  if (unknown !== undefined) return en.unknownMember(unknown.slice(0, 60));
  const { question, units, lang } = request;
  if (typeof question !== 'string') return en.questionMissing;
  if (![undefined, 'us', 'metric'].includes(units as string)) return en.unitsWrong;
  if (![undefined, 'en', 'es'].includes(lang as string)) return en.langWrong;
  return request as unknown as Request;
}

const parsed = (line: string): Record<string, unknown> | undefined =>
  jsonIn(line)?.json as Record<string, unknown> | undefined;
