import type { Unit } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts } from '../../src/rules/shapes.ts';

/** How people write the units whose own sign they would not type. */
const written: Partial<Record<Unit, string>> = {
  degF: 'degrees F',
  degC: 'degrees C',
  '1': '',
  yd2: 'sq yd',
  ft2: 'sq ft',
  m2: 'sq m',
  ft3: 'cu ft',
  yd3: 'cu yd',
  'gal/yd2': 'gal/sq yd',
  'lb/yd2': 'lb/sq yd',
  'lb/yd2/in': 'lb/sq yd/in',
};

/** A figure as it is typed. */
export const sayNumber = (number: number, unit: Unit): string => `${number} ${written[unit] ?? unit}`.trim();

/** A fact in words: the title of what it is of, and its figure or its option. */
export function sayFact(id: string, fact: Facts[string]): string {
  if (typeof fact !== 'string') return `${knowledge.quantities.get(id)!.title} ${sayNumber(...fact)}`;
  const choice = knowledge.choices.get(id)!;
  return `${choice.title} ${choice.options.find((option) => option.id === fact)!.title}`;
}

export const sayFacts = (facts: Facts): string =>
  Object.entries(facts)
    .map(([id, fact]) => sayFact(id, fact))
    .join(', ');
