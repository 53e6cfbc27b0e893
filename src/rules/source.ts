/** How a source was come by; printed beside every figure that rests on it. */
export type Seen =
  /** The text was read. */
  | 'read'
  /** Read in somebody's restatement that names the published source. */
  | 'restated'
  /** Recalled; to be confirmed before anyone leans on it. */
  | 'memory'
  /** Common practice, no source. */
  | 'practice'
  /** Worked out here from figures that have a source, or plain geometry. */
  | 'derived';

export interface Source {
  readonly document: string;
  readonly issuer?: string;
  readonly edition?: string;
  readonly place?: string;
  readonly seen: Seen;
}

/** Source of a rule of the craft that no published text was found for. */
export const commonPractice: Source = { document: 'common practice, no source', seen: 'practice' };
/** Source of a figure that is plain geometry or arithmetic. */
export const geometry: Source = { document: 'geometry', seen: 'derived' };

export type Sources = readonly [Source, ...Source[]];
