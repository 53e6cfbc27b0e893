import type { Reply } from '../../reply.ts';

/** Topics whose figures are drawn. */
export const drawnTopics = [
  'lift-count',
  'lift-thickness',
  'lift-loose',
  'roller-lanes',
  'windrow-section',
  'windrow-height',
  'windrow-base',
] as const;

const topics: ReadonlySet<string> = new Set(drawnTopics);

/** True for an answer that a drawing may stand with. */
export const isDrawn = ({ layout, survey, topic }: Reply): boolean =>
  layout.length > 0 || survey !== undefined || topics.has(topic);
