import { compare, toBase } from '../calc/quantity.ts';
import type { Solution } from '../calc/solve.ts';
import { measured, settled } from './decide.ts';
import type { Figure, Source } from './shapes.ts';
import type { DefectRecord, SeverityBySight, SeverityClass, SeverityGrid, SeverityScale } from './shapes-work.ts';

type Facts = Solution;

/** How severe a defect is by one published scheme. */
export interface Severity {
  readonly scheme: string;
  readonly level: SeverityClass | 'unrated';
  readonly source: Source;
}

/** The class of a defect by every scheme that the facts allow to be read. Below its first class a scheme rates nothing. */
export function severityOf({ severity = [] }: DefectRecord, facts: Facts): Severity[] {
  return severity.flatMap((scale) => {
    const level =
      'sight' in scale ? bySight(scale, facts) : 'rows' in scale ? byGrid(scale, facts) : byFigure(scale, facts);
    return level === undefined ? [] : [{ scheme: scale.scheme, level, source: scale.source }];
  });
}

function bySight({ sight, classes }: SeverityBySight, facts: Facts): SeverityClass | undefined {
  const option = settled(sight, facts);
  return option === undefined ? undefined : classes[option];
}

function byFigure({ by, from, low, lowUnder, moderate }: SeverityScale, facts: Facts): Severity['level'] | undefined {
  const fact = measured(by, facts);
  if (!fact) return undefined;
  const against = (end: Figure): number => compare(fact.value, toBase(end.number, end.unit));
  if (from && against(from) < 0) return 'unrated';
  if (against(low) < 0 || (against(low) === 0 && !lowUnder)) return 'low';
  return against(moderate) <= 0 ? 'moderate' : 'high';
}

function byGrid({ rows, columns, classes }: SeverityGrid, facts: Facts): Severity['level'] | undefined {
  const [row, column] = [rows, columns].map(({ by, from, upTo }) => {
    const fact = measured(by, facts);
    if (!fact) return undefined;
    const against = (end: Figure): number => compare(fact.value, toBase(end.number, end.unit));
    if (against(from) < 0) return 'unrated' as const;
    const band = upTo.findIndex((end) => against(end) <= 0);
    return band < 0 ? upTo.length : band;
  });
  if (row === undefined || column === undefined) return undefined;
  return row === 'unrated' || column === 'unrated' ? 'unrated' : classes[row]?.[column];
}
