import type { Card } from '../src/ask/search/card.ts';

export interface KnownNames {
  readonly addresses: readonly string[];
  readonly figures: readonly string[];
  readonly nearest: (name: string, known: readonly string[]) => string | undefined;
}

type RecordIds = (root: string, folder: string) => string[];

export declare function generateCards(root: string, recordIds: RecordIds): Promise<void>;
export declare function renderCards(root: string, recordIds: RecordIds): Promise<Readonly<Record<string, string>>>;
export declare function readCard(name: string, text: string, known: KnownNames): Card;
export declare function knownNames(
  root: string,
  cardFiles: readonly string[],
  recordIds: RecordIds,
): Omit<KnownNames, 'nearest'>;
