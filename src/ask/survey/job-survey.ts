import type { JobSurvey } from './shape.ts';

/** Reads the readings of a job that was sent back. Undefined for damaged ones. */
export function readJobSurvey(sent: unknown): JobSurvey | undefined {
  if (typeof sent !== 'object' || sent === null) return undefined;
  const { turn, units, rows, offsets, across, straightedge, unread } = sent as Record<string, unknown>;
  const { along, depth } = (typeof units === 'object' && units !== null ? units : {}) as Record<string, unknown>;
  if (!Number.isSafeInteger(turn) || (along !== 'ft' && along !== 'm') || (depth !== 'in' && depth !== 'mm'))
    return undefined;
  if (!Array.isArray(rows) || rows.length === 0 || !rows.every((row) => isRow(row, rows[0]))) return undefined;
  const count = (rows[0] as JobSurvey['rows'][number]).readings.length;
  if (offsets !== undefined && !(isNumbers(offsets) && offsets.length === count && rises(offsets))) return undefined;
  if (across !== undefined && across !== true) return undefined;
  if (straightedge !== undefined && !isNumber(straightedge)) return undefined;
  if (unread !== undefined && !(Array.isArray(unread) && unread.every((text) => typeof text === 'string')))
    return undefined;
  const places = (rows as JobSurvey['rows']).flatMap(({ at }) => at ?? []);
  if (!rises(places)) return undefined;
  return {
    turn: turn as number,
    units: { along, depth },
    rows: (rows as JobSurvey['rows']).map(({ label, at, readings, width }) => ({
      ...(label === undefined ? {} : { label }),
      ...(at === undefined ? {} : { at }),
      readings,
      ...(width === undefined ? {} : { width }),
    })),
    ...(offsets === undefined ? {} : { offsets: offsets as number[] }),
    ...(across === undefined ? {} : { across: true }),
    ...(straightedge === undefined ? {} : { straightedge: straightedge as number }),
    ...(unread === undefined ? {} : { unread: unread as string[] }),
  };
}

/** Beyond this no figure of a road job lies. */
const farBeyond = 1e7;
const longestLabel = 80;

const isNumber = (x: unknown): x is number => typeof x === 'number' && Math.abs(x) < farBeyond;
const isNumbers = (x: unknown): x is number[] => Array.isArray(x) && x.length > 0 && x.every(isNumber);
const rises = (places: readonly number[]): boolean => places.every((at, i) => i === 0 || at > places[i - 1]!);

/** A row like the first: as many readings, and a place where that has one. */
function isRow(row: unknown, first: unknown): boolean {
  if (typeof row !== 'object' || row === null || typeof first !== 'object' || first === null) return false;
  const { label, at, readings, width } = row as Record<string, unknown>;
  const like = first as Record<string, unknown>;
  return (
    isNumbers(readings) &&
    isNumbers(like.readings) &&
    readings.length === like.readings.length &&
    (label === undefined || (typeof label === 'string' && label.length <= longestLabel)) &&
    (at === undefined) === (like.at === undefined) &&
    (at === undefined || isNumber(at)) &&
    (width === undefined || (isNumber(width) && width > 0))
  );
}
