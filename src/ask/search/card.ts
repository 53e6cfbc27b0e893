/** What a card is about. */
export type CardKind =
  | 'stage'
  | 'craft'
  | 'material'
  | 'equipment'
  | 'safety'
  | 'emergency'
  | 'traffic'
  | 'weather'
  | 'defect'
  | 'term'
  | 'quantity'
  | 'trainer';

/** A short explanation in crew words, made from a file of the folder content. */
export interface Card {
  readonly id: string;
  /** Lower case, to stand inside a sentence. */
  readonly title: string;
  readonly kind: CardKind;
  /** Plain paragraphs, one a line; `{unit-weight}`, `{low:roll-down}`, `{max:open-cool}` stand for figures of the records. */
  readonly text: string;
  /** Ways people ask for it. */
  readonly asks: readonly string[];
  /** Records it bears on, and cards to read next, as `kind/id`. */
  readonly links: readonly string[];
  /** What it rests on, the strongest first. */
  readonly seen: readonly Basis[];
  /** Only of an emergency. */
  readonly emergency?: Happening;
}

export type Mark = 'published' | 'restated' | 'practice' | 'agency' | 'memory' | 'derived';

export interface Basis {
  readonly mark: Mark;
  /** The document, where there is one. */
  readonly document?: string;
}

/** How an emergency is known while it happens, and what is done first. */
export interface Happening {
  /** Lower is told first where two are heard. */
  readonly rank: number;
  /** The first thing to do. */
  readonly first: string;
  /** Cue lines (`cue.ts`), each one way to say that it is happening. */
  readonly cues: readonly string[];
}
