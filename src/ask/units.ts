import type { NamedUnit } from '../calc/read/named-units.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Engine } from './engine.ts';
import type { Understanding } from './understand.ts';

/**
 * Which unit each quantity is answered in: for what is asked the unit the question names ("how many tonnes"), for a
 * figure that was given the asker's own, else that of the system in use.
 */
export function unitsOf({ knowledge }: Engine, { goal, facts, system, named }: Understanding): (id: string) => Unit {
  const given = new Map(facts.flatMap((fact) => ('unit' in fact ? [[fact.quantity, fact.unit] as const] : [])));
  const asked = goal && knowledge.quantities.get(goal.id);
  const wanted = asked && unitNamedFor(asked, named, system);
  return (id) => {
    const record = knowledge.quantities.get(id);
    if (wanted && id === asked?.id) return wanted;
    return given.get(id) ?? (wanted && record?.units.us === asked?.units.us ? wanted : record?.units[system]) ?? '1';
  };
}

/** The last unit named that measures the quantity; a yard is of length, area or volume as the quantity is. */
function unitNamedFor(record: QuantityRecord, named: readonly NamedUnit[], system: 'us' | 'metric'): Unit | undefined {
  const fits = named.flatMap(({ unit, unclear }): Unit[] => {
    if (unclear === 'tonelada') return record.dimension === 'mass' ? [system === 'us' ? 'ton' : 't'] : [];
    if (unclear === 'yd' && record.dimension === 'area') return ['yd2'];
    if (unclear === 'yd' && record.dimension === 'volume') return ['yd3'];
    return unitRow(unit).dimension === record.dimension && unitRow(unit).shown ? [unit] : [];
  });
  return fits.at(-1);
}
