import type { QuizItem } from '../reply.ts';
import type { QuizSet } from './build.ts';
import { cell, guarded } from './export/csv.ts';
import type { Mark } from './mark.ts';

/** What is kept of one person's answers: initials or a number, right or wrong question by question, and the day. */
export interface ClassResult {
  readonly who: string;
  readonly marks: readonly Mark[];
  readonly at: string;
}

/** Initials, three letters at most, or a number of six digits at most; undefined for anything more. */
export function readWho(text: string): string | undefined {
  const who = text.trim().replaceAll('.', '').toUpperCase();
  return /^(?:\p{Lu}{1,3}|[0-9]{1,6})$/u.test(who) ? who : undefined;
}

/** A result in figures. */
export interface Counted extends ClassResult {
  readonly right: number;
  readonly of: number;
  /** False when a question that must be right was missed. */
  readonly mustsMet: boolean;
}

/** How a class did. */
export interface ClassSummary {
  readonly results: readonly Counted[];
  /** By question: how many had it right. */
  readonly items: readonly {
    readonly number: number;
    readonly item: QuizItem;
    readonly right: number;
    readonly of: number;
  }[];
  readonly topics: readonly { readonly topic: string; readonly right: number; readonly of: number }[];
}

/** Counts a class together. */
export function summaryOf({ items }: QuizSet, results: readonly ClassResult[]): ClassSummary {
  const counted = results.map((result): Counted => {
    const right = result.marks.filter((mark) => mark === 'right').length;
    const mustsMet = items.every(({ mustPass }, at) => !mustPass || result.marks[at] === 'right');
    return { ...result, right, of: items.length, mustsMet };
  });
  const byItem = items.map((item, at) => ({
    number: at + 1,
    item,
    right: results.filter(({ marks }) => marks[at] === 'right').length,
    of: results.length,
  }));
  const topics = [...new Set(items.map(({ topic }) => topic))].map((topic) => {
    const own = byItem.filter(({ item }) => item.topic === topic);
    const sum = (of: (each: (typeof own)[number]) => number): number => own.reduce((all, each) => all + of(each), 0);
    return { topic, right: sum(({ right }) => right), of: sum(({ of }) => of) };
  });
  return { results: counted, items: byItem, topics };
}

/** Results as CSV, a person a line and a column for each question; columns are names of the format. */
export function resultsAsCsv(set: QuizSet, results: readonly ClassResult[]): string {
  const head = [
    'who',
    'day',
    'right',
    'of',
    'musts_met',
    ...set.items.map((_, at) => `q${at + 1}`),
    'seed',
    'rules_version',
  ];
  const rows = summaryOf(set, results).results.map(({ who, at, right, of, mustsMet, marks }) => [
    guarded('who', who),
    at.slice(0, 10),
    String(right),
    String(of),
    mustsMet ? 'yes' : 'no',
    ...marks,
    guarded('seed', set.seed),
    set.rules.version,
  ]);
  return [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
