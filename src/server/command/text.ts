import { placed } from '../../ask/placed.ts';
import type { Reply } from '../../ask/reply.ts';
import { titleOf } from '../../ask/views/names.ts';
import { en } from '../wording/en.ts';

interface Wanted {
  readonly quiet: boolean;
  readonly workings: boolean;
  readonly source: boolean;
}

/** A reply as text: the answer, and where they are wanted its workings and its sources. Ends in a line break. */
export function textOf(reply: Reply, { quiet, workings, source }: Wanted): string {
  if (quiet) return `${quietly(reply)}\n`;
  const choices = reply.clarify?.choices.map(({ text }) => en.command.choice(text)) ?? [];
  const parts = [
    [reply.text, ...choices],
    layoutIn(reply),
    workings ? workingsOf(reply) : [],
    source ? sourcesOf(reply) : [],
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** The figure asked for, else the first line of the answer. */
function quietly({ kind, values, text }: Reply): string {
  return (kind === 'value' ? values[0]?.text : undefined) ?? text.split('\n', 1)[0] ?? '';
}

/** A layout as a list: how far from the work, and what stands there, one under the other. */
function layoutIn({ layout }: Reply): string[] {
  const rows = layout.map((place) => [place.what, ...placed(place)] as const);
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    row
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

function workingsOf({ working }: Reply): string[] {
  if (working.length === 0) return [];
  return [
    en.command.workings,
    ...working.map((step) => en.command.working(step.formula, step.with, step.result, step.source)),
  ];
}

function sourcesOf({ checks, assumed }: Reply): string[] {
  const lines = [
    ...checks.map(({ rule, source }) => en.command.source(titleOf(rule), source)),
    ...assumed.map(({ text, rule }) => en.command.assumed(text, rule)),
  ];
  return lines.length > 0 ? [en.command.sources, ...lines] : [];
}
