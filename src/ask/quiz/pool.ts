import type { Knowledge } from '../../rules/knowledge.ts';
import type { LimitRecord, PracticeRecord } from '../../rules/shapes.ts';
import { work } from '../../rules/work.ts';
import { faultForms } from './make/fault-forms.ts';
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

const pools = new WeakMap<Knowledge, readonly Point[]>();

/** Everything that can be asked from a knowledge base; worked out once for each. */
export function poolOf(knowledge: Knowledge): readonly Point[] {
  const known = pools.get(knowledge);
  if (known) return known;
  const pool = pointsOf({ knowledge });
  pools.set(knowledge, pool);
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
  const all = [...rules, ...faults, ...problems.map((problem) => problemPoint(desk, problem))];
  return [...all, ...tablePoints(desk), ...stepPoints(), ...repairPoints(desk)].filter(({ forms }) => forms.length > 0);
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
