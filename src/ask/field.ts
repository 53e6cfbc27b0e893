import type { QuantityRecord } from '../rules/shapes.ts';
import type { Sentence } from './sentence.ts';

/** True for a quantity that people give figures for, rather than one that is only worked out. */
export const isSayable = ({ roles, question, inGroup }: QuantityRecord): boolean =>
  Boolean(roles ?? question ?? inGroup);

/** True for one that goes without saying outside a field of its own: being near to what is asked is not enough for it. */
export const hasField = ({ setting, default: usual }: QuantityRecord): boolean => Boolean(setting && usual);

/** True where the field of a quantity that has one is spoken of. */
export const isInSetting = ({ setting }: QuantityRecord, { places }: Sentence): boolean =>
  setting?.some((word) => places.has(word)) ?? true;
