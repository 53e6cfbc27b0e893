import { dimensions, samePowers } from './dimension.ts';
import { type Expression, factsOf, powersOf, type Term } from './expression.ts';
import { isolate } from './isolate.ts';

/** `finds = by`: a formula that joins quantities. */
export interface RelationShape {
  readonly id: string;
  readonly finds: Term;
  readonly by: Expression;
  /** False for a definition that must not be turned round. */
  readonly bothWays?: boolean;
  /** A way of second choice: taken only where no other is as sure. */
  readonly second?: boolean;
}

/** One way of working a relation: `finds` from all of `needs`. */
export interface Method {
  readonly relation: RelationShape;
  readonly finds: string;
  readonly needs: readonly string[];
  readonly by: Expression;
}

/** Every way a relation can be worked, the one as written first. Throws TypeError when its dimensions do not agree. */
export function methodsOf(relation: RelationShape): Method[] {
  checkDimension(relation);
  const { id, dimension } = relation.finds;
  const methods: Method[] = [{ relation, finds: id, needs: factsOf(relation.by), by: relation.by }];
  if (relation.bothWays === false) return methods;
  for (const fact of factsOf(relation.by)) {
    const by = isolate(relation.by, fact, { op: 'fact', id, dimension });
    if (by) methods.push({ relation, finds: fact, needs: factsOf(by), by });
  }
  return methods;
}

function checkDimension(relation: RelationShape): void {
  let powers: ReturnType<typeof powersOf>;
  try {
    powers = powersOf(relation.by);
  } catch (fault) {
    throw new TypeError(`relation ${relation.id}: ${(fault as Error).message}`);
  }
  const wanted = dimensions[relation.finds.dimension];
  if (samePowers(powers, wanted)) return;
  throw new TypeError(
    `relation ${relation.id}: the formula has powers [${powers}] of length, mass, time, temperature and money, ` +
      `but ${relation.finds.id} is a ${relation.finds.dimension}, [${wanted}]`,
  );
}
