import type { Unit } from '../calc/units.ts';
import type { Engine } from './engine.ts';
import type { Understanding } from './understand.ts';

/** Which unit each quantity is answered in: the asker's own for a figure they gave, else that of the system in use. */
export function unitsOf({ knowledge }: Engine, { facts, system }: Understanding): (id: string) => Unit {
  const given = new Map(facts.flatMap((fact) => ('unit' in fact ? [[fact.quantity, fact.unit] as const] : [])));
  return (id) => given.get(id) ?? knowledge.quantities.get(id)?.units[system] ?? '1';
}
