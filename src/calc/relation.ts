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
  /** Of ways of second choice the one after the others. */
  readonly third?: boolean;
}

/** One way of working a relation: `finds` from all of `needs`. */
export interface Method {
  readonly relation: RelationShape;
  readonly finds: string;
  readonly needs: readonly string[];
  readonly by: Expression;
}

/** What a method finds and what it needs, as data that can be kept. */
export type Way = readonly [finds: string, ...needs: string[]];

/** A method of a relation from what is kept of it; its formula is turned round when it is first wanted. */
export function methodOf(relation: RelationShape, [finds, ...needs]: Way): Method {
  return finds === relation.finds.id
    ? { relation, finds, needs, by: relation.by }
    : new TurnedRound(relation, finds, needs);
}

class TurnedRound implements Method {
  readonly relation: RelationShape;
  readonly finds: string;
  readonly needs: readonly string[];
  private turned: Expression | undefined;

  constructor(relation: RelationShape, finds: string, needs: readonly string[]) {
    this.relation = relation;
    this.finds = finds;
    this.needs = needs;
    this.turned = undefined;
  }

  get by(): Expression {
    this.turned ??= isolate(this.relation.by, this.finds, { op: 'fact', ...termOf(this.relation.finds) });
    if (!this.turned) throw new RangeError(`relation ${this.relation.id} cannot be turned round for ${this.finds}`);
    return this.turned;
  }
}

const termOf = ({ id, dimension }: Term): Term => ({ id, dimension });

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
