import type { Reply } from '../reply.ts';
import { capital } from '../say.ts';
import { en } from '../wording/en.ts';
import { rangeOf, titleOf } from './names.ts';

/**
 * The lines of a reply's text that say something the rest of its sheet does not: the figures, assumptions and checks
 * stand there on their own. A line is left out only when nothing but joining words is left of it.
 */
export function basisOf(reply: Reply): string[] {
  const shown = shownElsewhere(reply).sort((a, b) => b.length - a.length);
  return reply.text.split('\n').filter((line) => line.trim() !== '' && saysMore(line, shown));
}

/** What a rule says, without the word for its outcome that the mark before it already has. */
export function withoutOutcome(text: string, status: keyof typeof en.status): string {
  const outcome = en.judged(en.status[status], '');
  return text.startsWith(outcome) ? capital(text.slice(outcome.length)) : text;
}

function shownElsewhere({ values, assumed, checks, verdict, clarify, cautions }: Reply): string[] {
  const figures = values.flatMap((value) => [value.text, titleOf(value.quantity), rangeOf(value) ?? '']);
  const judged = [...checks, ...(verdict ? [verdict] : [])].map(({ text }) => text);
  const rest = [
    ...assumed.map(({ text }) => text),
    ...cautions,
    clarify?.text ?? '',
    en.assumed([]).replace(/\P{L}+$/u, ''),
  ];
  return [...figures, ...judged, ...rest].map((text) => text.trim().toLowerCase()).filter((text) => text !== '');
}

function saysMore(line: string, shown: readonly string[]): boolean {
  let left = line.toLowerCase();
  for (const part of shown) left = left.replaceAll(part, ' ');
  return /[\p{L}\p{N}]/u.test(left);
}
