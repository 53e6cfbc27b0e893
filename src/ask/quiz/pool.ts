import type { Knowledge } from '../../rules/knowledge.ts';
import type { LimitRecord, PracticeRecord } from '../../rules/shapes.ts';
import { work } from '../../rules/work.ts';
import type { UnitSystem } from '../reply.ts';
import { faultForms } from './make/fault-forms.ts';
import { hazardPoints } from './make/hazard-forms.ts';
import { limitForms } from './make/limit-forms.ts';
import { practiceForms } from './make/practice-forms.ts';
import { problemPoint } from './make/problem.ts';
import { repairPoints } from './make/repair-forms.ts';
import { stepPoints } from './make/step-forms.ts';
import { strengthForms } from './make/strength-forms.ts';
import { tablePoints } from './make/table-forms.ts';
import { whyForms } from './make/why-forms.ts';
import { problems } from './problems.ts';
import type { Desk, Point } from './shapes.ts';
import { mustPass, topicsOf } from './topics.ts';

const pools = new WeakMap<Knowledge, Map<UnitSystem, readonly Point[]>>();

/** Everything that can be asked from a knowledge base, in these units; worked out once for each. */
export function poolOf(knowledge: Knowledge, units: UnitSystem = 'us'): readonly Point[] {
  const byUnits = pools.get(knowledge) ?? new Map<UnitSystem, readonly Point[]>();
  pools.set(knowledge, byUnits);
  const pool = byUnits.get(units) ?? pointsOf({ knowledge, units });
  byUnits.set(units, pool);
  return pool;
}

function pointsOf(desk: Desk): Point[] {
  const { limits, practices } = desk.knowledge;
  const rules = [
    ...[...limits.values()].map((rule) => rulePoint(desk, rule, limitForms(desk, rule))),
    ...[...practices.values()].map((rule) => rulePoint(desk, rule, practiceForms(desk, rule))),
  ];
  const faults = [...work.faults.values()].map(
    (fault): Point => ({
      id: `fault/${fault.id}`,
      group: `fault/${fault.id}`,
      topics: ['faults', ...topicsOf(fault.id)],
      mustPass: false,
      forms: faultForms(desk, fault),
    }),
  );
  const all = [
    ...rules,
    ...faults,
    ...problems.flatMap((problem) =>
      problem.inFeetOnly && desk.units === 'metric' ? [] : [problemPoint(desk, problem)],
    ),
  ];
  // The tables of the manual are printed in feet and miles an hour.
  const tables = desk.units === 'us' ? tablePoints(desk) : [];
  return [...all, ...tables, ...stepPoints(), ...repairPoints(desk), ...hazardPoints(desk)].filter(
    ({ forms }) => forms.length > 0,
  );
}

function rulePoint(desk: Desk, rule: LimitRecord | PracticeRecord, forms: Point['forms']): Point {
  const [first = 'other', ...rest] = topicsOf(rule.id);
  const beside = rule.kind === 'limit' && rule.besideRule !== undefined;
  return {
    id: `${rule.kind}/${rule.id}`,
    group: `rule/${rule.id}`,
    topics: [first, ...rest],
    mustPass: mustPass.has(rule.id),
    forms: beside ? [] : [...forms, ...whyForms(desk, rule), ...strengthForms(rule)],
  };
}
