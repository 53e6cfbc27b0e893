import type { Place } from './reply.ts';
import { drawn } from './wording/drawn.en.ts';

/** A place of a layout in words: how far it is from the work, how far it reaches, and how its devices stand. */
export function placed({ at, atText, side, lengthText, spacingText }: Place): string[] {
  if (side === undefined) return [at === 0 || atText === undefined ? drawn.dumps.start : drawn.dumps.from(atText)];
  const distance =
    at === 0 || atText === undefined
      ? drawn.zone.atWork
      : side === 'past'
        ? drawn.zone.pastWork(atText)
        : drawn.zone.beforeWork(atText);
  const reach = [lengthText && drawn.zone.long(lengthText), spacingText && drawn.zone.cones(spacingText)].filter(
    Boolean,
  );
  return reach.length ? [distance, reach.join(', ')] : [distance];
}
