import { of, toBase } from '../../calc/quantity.ts';
import { derivation, type Known, type Solved } from '../../calc/solve.ts';
import type { Unit } from '../../calc/units.ts';
import { type Knowledge, optionFact, optionTitle } from '../../rules/knowledge.ts';
import type { Facts, Source } from '../../rules/shapes.ts';
import { whatFollows } from '../../rules/start.ts';
import type { UnitSystem } from '../reply.ts';
import { say } from '../say.ts';
import type { Voice } from '../voice.ts';

/** The engine's own answer to the facts of a stem, in these units but for those given otherwise. */
export function voiceOf(knowledge: Knowledge, facts: Facts, units: UnitSystem = 'us'): Voice {
  const known = Object.entries(facts).map(
    ([id, fact]): Known =>
      typeof fact === 'string' ? { id: optionFact(id, fact), value: 1 } : { id, value: of(...fact).base },
  );
  const unit = (id: string): Unit => {
    const fact = facts[id];
    return fact !== undefined && typeof fact !== 'string'
      ? fact[1]
      : (knowledge.quantities.get(id)?.units[units] ?? '1');
  };
  return {
    knowledge,
    solved: whatFollows(knowledge, known),
    unit,
    isGiven: (id) => typeof facts[id] === 'object',
  };
}

/** A fact in words: a figure echoed as it stands, or the title of an option. */
export function sayFact({ quantities, choices }: Knowledge, facts: Facts, id: string): string | undefined {
  const fact = facts[id];
  if (fact === undefined) return undefined;
  if (typeof fact === 'string') return optionTitle(choices, id, fact);
  const record = quantities.get(id);
  return record && say(record, toBase(...fact), fact[1], true);
}

/** Every source that a figure rests on: of the formulas on the way to it, and of the defaults used. */
export function sourcesBehind({ knowledge, solved }: Voice, id: string): Source[] {
  const steps: Solved[] = derivation(solved, id);
  const formulas = steps.flatMap(({ by }) => (by ? (knowledge.relations.get(by.relation.id)?.sources ?? []) : []));
  const tables = steps.flatMap(({ by }) => (by ? tablesBehind(knowledge, by.relation.id) : []));
  const defaults = (solved.get(id)?.assumed ?? []).flatMap((fact) => knowledge.quantities.get(fact)?.sources ?? []);
  return [...formulas, ...tables, ...defaults];
}

function tablesBehind({ tables }: Knowledge, relation: string): Source[] {
  return [...tables.values()].filter(({ id }) => relation.startsWith(`${id}-`)).flatMap(({ sources }) => [...sources]);
}

/** True when nothing of it was recalled: such a figure may be a key. */
export const isFirm = (sources: readonly Source[]): boolean => sources.every(({ seen }) => seen !== 'memory');
