import { convert, fromBase, toBase } from '../../calc/quantity.ts';
import { readSurvey } from '../../calc/survey/read.ts';
import { readLength, readRow } from '../../calc/survey/row.ts';
import type { Row, RowFault, Sheet, Typed } from '../../calc/survey/sheet.ts';
import { leaveOut } from '../../calc/survey/words.ts';
import type { Engine } from '../engine.ts';
import type { Fact } from '../facts.ts';
import type { Job, Request, Span } from '../reply.ts';
import type { JobSurvey } from './shape.ts';

/** Readings in force: sent with this question, or kept from an earlier one. */
export interface Heard {
  /** Units that the request asks for, before those of the readings. */
  readonly wanted: Request['units'];
  /** The question without them. */
  readonly question: string;
  readonly survey: JobSurvey;
  /** True where this question brought or changed them. */
  readonly fresh: boolean;
  readonly faults: readonly RowFault[];
  /** Rows as typed in this question, in the order of the survey's. */
  readonly places: readonly (Span | undefined)[];
  /** Figures told round them: width, length, step. */
  readonly facts: readonly Fact[];
  readonly left: readonly string[];
  /** How many rows these were added to. */
  readonly added?: number;
  /** How many readings there should be, by the asker's own count. */
  readonly counted?: number | undefined;
}

/** Most readings that are kept: more than any patch is probed with. */
export const mostReadings = 600;

/**
 * Finds readings in a question, or those of the job: rows that go on where those of the job end are added to them, so that
 * a long list can be sent a part at a time. Undefined where there are none.
 */
export function hearSurvey({ knowledge }: Engine, request: Request, job: Job): Heard | 'too-many' | undefined {
  const { question } = request;
  const turn = job.turn + 1;
  const old = job.survey;
  const metric = (request.units ?? job.units ?? (old?.units.along === 'm' ? 'metric' : 'us')) === 'metric';
  const sheet = (old && bareRows(question, old)) ?? readSurvey(question);
  if (sheet) {
    const most = deepestOf(knowledge);
    const heard = joined(old, fromSheet(sheet, { wanted: request.units, question, turn, metric, most }));
    const count = heard.survey.rows.reduce((sum, { readings }) => sum + readings.length, 0);
    if (count > mostReadings) return 'too-many';
    // Where none of the readings can be one, the figures are asked about as any others.
    if (count > 0) return heard;
  }
  if (!old) return undefined;
  const kept = {
    wanted: request.units,
    question,
    survey: old,
    fresh: false,
    faults: [],
    places: [],
    facts: [],
    left: [],
  };
  const spacing = job.asked === 'reading-spacing' ? readLength(question) : undefined;
  if (spacing) {
    const unit = spacing.unit ?? old.units.along;
    const fact = {
      quantity: 'reading-spacing',
      number: spacing.number,
      unit,
      turn,
      fresh: true,
      from: spacing.at,
    } as const;
    return { ...kept, facts: [fact], question: blanked(question, [spacing.at]), fresh: true };
  }
  const count = old.rows[0]!.readings.length;
  const row = old.rows.every(({ at }) => at !== undefined) ? readRow(question, count, Boolean(old.unread)) : undefined;
  if (row) return { ...kept, ...withRow(old, row, turn), question: blanked(question, [row.at]), fresh: true };
  if (old.unread && leaveOut.test(question)) {
    const { unread: _unread, ...rest } = old;
    return {
      ...kept,
      question: question.replace(leaveOut, (text) => ' '.repeat(text.length)),
      survey: { ...rest, turn },
      fresh: true,
    };
  }
  return kept;
}

/** Lines of bare numbers after rows with stations: "75,1,2.5,1" and more like it. */
function bareRows(question: string, { rows }: JobSurvey): Sheet | undefined {
  if (!question.trim().includes('\n') || rows.some(({ at }) => at === undefined)) return undefined;
  // The word that makes readings of them stands behind, so that every place is as it was typed.
  const sheet = readSurvey(`${question}\nreadings`);
  const alike = sheet?.rows.every(({ station, readings }) => station && readings.length === rows[0]!.readings.length);
  return sheet && alike ? { ...sheet, spans: sheet.spans.filter(([, to]) => to <= question.length) } : undefined;
}

/** Rows that begin where those kept end, no further than a step or two on, are more of the same patch. */
function joined(old: JobSurvey | undefined, heard: Heard): Heard {
  const { survey } = heard;
  if (!old || !goesOn(old, survey)) return heard;
  const unread = [...(old.unread ?? []), ...(survey.unread ?? [])];
  return {
    ...heard,
    added: old.rows.length,
    places: [...old.rows.map(() => undefined), ...heard.places],
    survey: { ...old, ...survey, rows: [...old.rows, ...survey.rows], ...(unread.length > 0 ? { unread } : {}) },
  };
}

function goesOn(old: JobSurvey, more: JobSurvey): boolean {
  const places = (rows: JobSurvey['rows']): number[] => rows.flatMap(({ at }) => at ?? []);
  const [before, after] = [places(old.rows), places(more.rows)];
  if (before.length < old.rows.length || after.length < more.rows.length) return false;
  const alike =
    old.units.along === more.units.along &&
    old.units.depth === more.units.depth &&
    old.rows[0]!.readings.length === more.rows[0]?.readings.length &&
    (!more.offsets || more.offsets.every((offset, i) => offset === old.offsets?.[i]));
  const steps = (all: readonly number[]): number[] => all.slice(1).map((at, i) => at - all[i]!);
  const gap = after[0]! - before.at(-1)!;
  return alike && gap > 0 && gap <= 2 * Math.max(...steps(before), ...steps(after));
}

/** Deepest that a patch can be, in base units. */
const deepestOf = ({ quantities }: Engine['knowledge']): number => {
  const max = quantities.get('deepest-depth')?.plausible?.max;
  return max ? toBase(max.number, max.unit) : Number.POSITIVE_INFINITY;
};

function fromSheet(
  sheet: Sheet,
  {
    wanted,
    question,
    turn,
    metric,
    most,
  }: { wanted: Request['units']; question: string; turn: number; metric: boolean; most: number },
): Heard {
  const units = unitsOf(sheet, metric);
  const depth = ({ number, unit }: Typed): number => (unit ? tidy(convert(number, unit, units.depth)) : number);
  const along = ({ number, unit }: Typed): number => (unit ? tidy(convert(number, unit, units.along)) : number);
  const tooDeep = (row: Row): Typed | undefined => row.readings.find((each) => toBase(depth(each), units.depth) > most);
  const deep = sheet.rows.flatMap((row): RowFault[] => {
    const cell = tooDeep(row);
    return cell
      ? [
          {
            why: 'unit',
            line: row.line,
            text: question.slice(...row.at).trim(),
            cell: question.slice(...cell.at),
            at: row.at,
          },
        ]
      : [];
  });
  const good = sheet.rows.filter((row) => !tooDeep(row));
  const twice = good.filter(
    (row, i) =>
      row.station &&
      good.findIndex((other) => other.station && along(other.station.place) === along(row.station!.place)) !== i,
  );
  const rows = good
    .filter((row) => !twice.includes(row))
    .sort((a, b) => (a.station && b.station ? along(a.station.place) - along(b.station.place) : 0));
  const faults = [
    ...sheet.faults,
    ...deep,
    ...twice.map(
      (row): RowFault => ({
        why: 'twice',
        line: row.line,
        text: question.slice(...row.at).trim(),
        cell: row.station!.text,
        at: row.at,
      }),
    ),
  ].sort((a, b) => a.at[0] - b.at[0]);
  const fact = (quantity: string, figure: Typed | undefined): Fact[] =>
    figure
      ? [
          {
            quantity,
            number: figure.number,
            unit: figure.unit ?? units.along,
            turn,
            fresh: true,
            from: figure.at,
            unitAssumed: !figure.unit,
          },
        ]
      : [];
  const step =
    sheet.step && sheet.width === undefined
      ? { ...sheet.step, number: sheet.step.number * ((rows[0]?.readings.length ?? 1) - 1) }
      : undefined;
  const edge = sheet.straightedge?.length;
  return {
    wanted,
    question: blanked(question, sheet.spans),
    fresh: true,
    faults,
    places: rows.map(({ at }) => at),
    left: sheet.left,
    counted: sheet.counted,
    facts: [
      ...fact('patch-width', sheet.width ?? step),
      ...fact('patch-length', sheet.length),
      ...fact('reading-spacing', sheet.spacing),
      ...fact('straightedge-length', edge),
    ],
    survey: {
      turn,
      units,
      rows: rows.map(({ station, readings, width }) => ({
        ...(station ? { label: station.text, at: along(station.place) } : {}),
        readings: readings.map(depth),
        ...(width ? { width: along(width) } : {}),
      })),
      ...(sheet.offsets ? { offsets: sheet.offsets.map(along) } : {}),
      ...(sheet.across ? { across: true } : {}),
      ...(edge ? { straightedge: tidy(fromBase(toBase(edge.number, edge.unit ?? units.along), units.along)) } : {}),
      ...(faults.length > 0 && rows.every(({ station }) => station) ? { unread: faults.map(({ text }) => text) } : {}),
    },
  };
}

const tidy = (number: number): number => Number(number.toPrecision(12));

/** Metric where any of their units is and none is not, or where nothing tells and the talk is. */
function unitsOf({ rows, spacing, width, offsets = [] }: Sheet, metric: boolean): JobSurvey['units'] {
  const figures = [
    ...rows.flatMap((row) => [
      ...row.readings,
      ...(row.station ? [row.station.place] : []),
      ...(row.width ? [row.width] : []),
    ]),
    ...offsets,
  ];
  const all = [...figures, ...[spacing, width].flatMap((each) => each ?? [])];
  const has = (units: readonly string[]): boolean => all.some(({ unit }) => unit !== undefined && units.includes(unit));
  const isMetric = has(['m', 'mm', 'cm']) && !has(['ft', 'in', 'yd']) ? true : has(['ft', 'in', 'yd']) ? false : metric;
  return isMetric ? { along: 'm', depth: 'mm' } : { along: 'ft', depth: 'in' };
}

/** A row sent again, or one more, among those kept. */
function withRow(old: JobSurvey, row: Row, turn: number): Pick<Heard, 'survey' | 'places'> {
  const { units } = old;
  const { place, text } = row.station!;
  const at = place.unit ? tidy(convert(place.number, place.unit, units.along)) : place.number;
  const readings = row.readings.map(({ number, unit }) => (unit ? tidy(convert(number, unit, units.depth)) : number));
  const rows = [...old.rows.filter((each) => each.at !== at), { label: text, at, readings }].sort(
    (a, b) => a.at! - b.at!,
  );
  const { unread = [], ...rest } = old;
  const match = Math.max(
    0,
    unread.findIndex((typed) => typed.startsWith(text)),
  );
  const still = unread.filter((_, i) => i !== match);
  return {
    survey: { ...rest, turn, rows, ...(still.length > 0 ? { unread: still } : {}) },
    places: rows.map((each) => (each.at === at ? row.at : undefined)),
  };
}

/** The text with these parts blank, so that all else keeps its place. */
function blanked(text: string, spans: readonly Span[]): string {
  let out = text;
  for (const [from, to] of spans) out = out.slice(0, from) + ' '.repeat(to - from) + out.slice(to);
  return out;
}
