import type { Reply } from '../reply.ts';
import { capital } from '../say.ts';
import { en } from '../wording/en.ts';
import { rangeOf, titleOf } from './names.ts';

/**
 * The lines of a reply's text that say something the rest of its sheet does not: the figures, assumptions, checks, causes
 * and steps stand there on their own. A line is left out only when nothing but its place and label is left of it.
 */
export function basisOf(reply: Reply): string[] {
  // The text of a quiz is the handout with its key; here the questions follow, each key folded away.
  if (reply.quiz) return reply.text.split('\n').slice(0, 1);
  const shown = shownElsewhere(reply).sort((a, b) => b.length - a.length);
  return reply.text.split('\n').filter((line) => line.trim() !== '' && saysMore(line, shown));
}

/** What a rule says, without the word for its outcome that the mark before it already has. */
export function withoutOutcome(text: string, status: keyof typeof en.status): string {
  const outcome = en.judged(en.status[status], '');
  return text.startsWith(outcome) ? capital(text.slice(outcome.length)) : text;
}

/** True for a line that names where the rest comes from. */
export const isSource = (line: string): boolean => line.startsWith(`${label(en.sources(['']))}:`);

/** Lines that stand before a list of their own. */
const labels = [
  en.assumed([]),
  en.fault.causes,
  en.steps.check(['x']).replace('x', ''),
  en.steps.watch(''),
  en.zone.load([]),
].map(label);

function shownElsewhere({ values, assumed, checks, verdict, clarify, cautions, causes, steps, load }: Reply): string[] {
  return [
    ...values.flatMap((value) => [value.text, titleOf(value.quantity), rangeOf(value) ?? '']),
    ...[...checks, ...(verdict ? [verdict] : []), ...assumed].map(({ text }) => text),
    ...causes.flatMap(({ text, remedy }) => [text, remedy]),
    ...steps.flatMap((step) => [step.title, ...step.checks, ...step.cautions]),
    ...cautions,
    ...load.map(({ count, what, withRoom }) => en.zone.need(count, what, withRoom)),
    clarify?.text ?? '',
    ...labels,
  ]
    .map((text) => text.trim().toLowerCase())
    .filter((text) => text !== '');
}

function saysMore(line: string, shown: readonly string[]): boolean {
  let left = line.toLowerCase().replace(/^\d{1,3}\. /, '');
  for (const part of shown) left = left.replaceAll(part, ' ');
  return /[\p{L}\p{N}]/u.test(left);
}

/** A sentence less the punctuation it ends in. */
function label(text: string): string {
  return text.replace(/\P{L}+$/u, '');
}
