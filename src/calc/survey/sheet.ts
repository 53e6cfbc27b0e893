import type { LengthUnit, Span, Token } from './tokens.ts';

/** A figure as it was typed. */
export interface Typed {
  readonly number: number;
  /** Absent where none was typed. */
  readonly unit?: LengthUnit;
  readonly at: Span;
}

/** A row of readings: one place along the road, and what was read there from left to right. */
export interface Row {
  /** The place as it was typed; absent in a list of readings at equal steps. */
  readonly station?: { readonly text: string; readonly place: Typed };
  readonly readings: readonly Typed[];
  /** Width of the patch there, where a column gives it. */
  readonly width?: Typed;
  /** Line of the text, from 1. */
  readonly line: number;
  readonly at: Span;
}

/** Why a row cannot be used. */
export type FaultKind = 'no-number' | 'no-reading' | 'too-few' | 'too-many' | 'twice' | 'no-station' | 'unit';

export interface RowFault {
  readonly why: FaultKind;
  readonly line: number;
  /** The row as it was typed. */
  readonly text: string;
  /** What could not be read. */
  readonly cell?: string;
  readonly at: Span;
  readonly has?: number;
  readonly of?: number;
}

/** Readings found in a text, as they stand there: nothing is worked out yet. */
export interface Sheet {
  readonly rows: readonly Row[];
  readonly faults: readonly RowFault[];
  /** One section across the road, not a line along it. */
  readonly across: boolean;
  /** Step between rows, or between the readings of one section. */
  readonly spacing?: Typed;
  /** Step between the readings of each row. */
  readonly step?: Typed;
  /** Where across each reading stands, from the left edge. */
  readonly offsets?: readonly Typed[];
  readonly width?: Typed;
  readonly length?: Typed;
  /** A straightedge was spoken of; its length where it was told. */
  readonly straightedge?: { readonly length?: Typed; readonly at: Span };
  /** How many readings there are by the asker's own count. */
  readonly counted?: number;
  /** Columns that hold no readings. */
  readonly left: readonly string[];
  /** All that belongs to the readings: the rest of the text is the question. */
  readonly spans: readonly Span[];
}

export const typed = ({ value, unit, at }: Extract<Token, { kind: 'number' }>): Typed => ({
  number: value,
  ...(unit ? { unit } : {}),
  at,
});

/** Units that depths are read in; a whole foot and more is no depth of a patch. */
export const isDepth = ({ number, unit }: Typed): boolean =>
  unit === undefined ||
  unit === 'in' ||
  unit === 'mm' ||
  unit === 'cm' ||
  ((unit === 'ft' || unit === 'm') && Math.abs(number) < 1);

/** A station or distance along the road as a figure. */
export function placeOf(token: Token | undefined): { readonly text: string; readonly place: Typed } | undefined {
  if (token?.kind === 'station')
    return {
      text: token.text,
      place: {
        number: token.metric ? token.base * 0.0254 : token.base / 12,
        unit: token.metric ? 'm' : 'ft',
        at: token.at,
      },
    };
  return undefined;
}
