import type { Knowledge } from '../rules/knowledge.ts';
import type { DefectRecord, FaultRecord, Finding, StepRecord } from '../rules/shapes-work.ts';
import { work as shipped, type Work } from '../rules/work.ts';
import { figuresIn } from './clauses.ts';

/** The size of the patch: what a checklist is filled in from. */
const patch = ['patch-depth', 'patch-width', 'patch-length'];

/** The quantities a goal of the work is about: figures of the question are read as these first. */
export function workFigures(knowledge: Knowledge, kind: string, id: string, work: Work = shipped): string[] {
  const named =
    kind === 'step'
      ? [...patch, ...ofStep(work.steps.get(id))]
      : kind === 'fault'
        ? ofFault(knowledge, work.faults.get(id))
        : ofDefect(work.defects.get(id));
  return [...new Set(named)].filter((name) => knowledge.quantities.has(name));
}

const ofStep = (record: StepRecord | undefined): string[] =>
  record ? [record.text, ...record.checks, ...(record.also ?? []).map(({ text }) => text)].flatMap(figuresIn) : [];

/** What the rules behind the causes judge, and what the remedies speak of. */
function ofFault({ limits }: Knowledge, record: FaultRecord | undefined): string[] {
  return (record?.causes ?? []).flatMap(({ text, remedy, rule }) => [
    ...(limits.has(rule ?? '') ? [limits.get(rule!)!.on.id] : []),
    ...[text, remedy].flatMap(figuresIn),
  ]);
}

function ofDefect(record: DefectRecord | undefined): string[] {
  const findings = (record?.decisions ?? []).flatMap(({ when, ifSaid = [] }): readonly Finding[] => [
    ...when,
    ...ifSaid,
  ]);
  const measured = findings.flatMap((finding) => ('of' in finding ? finding.of.slice(0, 1) : []));
  const rated = (record?.severity ?? []).flatMap((scale) =>
    'rows' in scale ? [scale.rows.by[0], scale.columns.by[0]] : 'by' in scale ? scale.by.slice(0, 1) : [],
  );
  return [...measured, ...rated].map(({ id }) => id);
}
