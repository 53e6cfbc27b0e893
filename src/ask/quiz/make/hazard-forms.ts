import { capital, saySource } from '../../say.ts';
import { hazardNames, hazardText } from '../../wording/quiz-hazards.en.ts';
import { type Hazard, hazards } from '../hazards.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Point } from '../shapes.ts';
import { wayOf } from './practice-forms.ts';
import { oneOf, type Wrong } from './text.ts';

/** A drawing of a work zone with one thing wrong in it: what is it. */
export function hazardPoints(desk: Desk): Point[] {
  return hazards.map((hazard) => ({
    id: `drawing/${hazard.id}`,
    group: `drawing/${hazard.of}`,
    topics: ['hazards', 'safety'],
    mustPass: true,
    forms: [{ id: 'spot', kind: 'one', level: 'easy', make: (random) => spot(desk, hazard, random) }],
  }));
}

function spot(desk: Desk, hazard: Hazard, random: Random): Draft | undefined {
  const way = wayOf(desk, hazard.rule, hazard.option);
  if (!way || way.status === 'ok') return undefined;
  const others = hazards.filter(({ of }) => of !== hazard.of);
  const wrong = others.map(({ id }): Wrong => ({ text: hazardNames[id]!, mistake: 'not-in-the-drawing' }));
  const { rule, why } = way;
  const ground = {
    stem: hazardText.stem,
    why: capital(why),
    rule: `practice/${rule.id}`,
    source: saySource(rule.sources[0]),
    rests: rule.sources,
  };
  const draft = oneOf(random, ground, hazardNames[hazard.id]!, wrong);
  return draft && { ...draft, item: { ...draft.item, drawing: hazard.id } };
}
