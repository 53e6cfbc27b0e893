import type { Scene } from './scene.ts';

/** Words with no figure, fact, unit or command in them are no follow-up of what was asked before. */
export function isBesideThePoint({ understood }: Scene): boolean {
  const { goalKept, fresh, commands, named, sentence, unbound } = understood;
  return (
    goalKept &&
    fresh.length === 0 &&
    unbound.length === 0 &&
    commands.size === 0 &&
    named.length === 0 &&
    !sentence.places.has('@why')
  );
}
