import { compare, toBase } from '../calc/quantity.ts';
import type { Solution, Solved } from '../calc/solve.ts';
import { optionFact } from './knowledge.ts';
import type { ChoiceRecord, Figure, QuantityRecord } from './shapes.ts';
import type { Decision, DefectRecord, Finding, Measured } from './shapes-work.ts';

type Facts = Solution;

/** Which repair suits, or what must be known first to tell. */
export type Choice =
  /** `rests` are the facts the line was taken for; `assumed` the defaults that ruled out the lines before it. */
  | { readonly decision: Decision; readonly rests: readonly string[]; readonly assumed: readonly string[] }
  | { readonly missing: ChoiceRecord | QuantityRecord }
  | { readonly decision: undefined };

/**
 * The first line of the table whose findings all hold. A line that cannot be told yet stands in the way, unless it comes to
 * the same repair; several that all come to the same leave nothing to ask.
 */
export function decide(defect: DefectRecord, facts: Facts): Choice {
  const assumed = new Set<string>();
  let last: Decision | undefined;
  let open: { decision: Decision; missing: ChoiceRecord | QuantityRecord } | undefined;
  for (const decision of defect.decisions) {
    if (!(decision.ifSaid ?? []).every((finding) => holds(finding, facts) === true)) continue;
    const found = decision.when.map((finding) => holds(finding, facts));
    if (found.includes(false)) {
      for (const fact of decision.when.flatMap((finding) => defaultOf(finding, facts))) assumed.add(fact);
      continue;
    }
    const unknown = decision.when[found.indexOf(undefined)];
    if (unknown === undefined)
      return open && open.decision.repair !== decision.repair
        ? { missing: open.missing }
        : { decision, rests: restsOf(decision, facts), assumed: [...assumed] };
    if (open && open.decision.repair !== decision.repair) return { missing: open.missing };
    if (open) last = decision;
    open ??= { decision, missing: 'choice' in unknown ? unknown.choice : unknown.of[0] };
  }
  if (!open) return { decision: undefined };
  return last ? { decision: last, rests: [], assumed: [...assumed] } : { missing: open.missing };
}

/** The option a choice is settled to. */
export function settled(choice: ChoiceRecord, facts: Facts): string | undefined {
  return choice.options.find(({ id }) => facts.has(optionFact(choice.id, id)))?.id;
}

/** True, false, or undefined while it cannot be told. */
export function holds(finding: Finding, facts: Facts): boolean | undefined {
  if ('choice' in finding) {
    const option = settled(finding.choice, facts);
    return option === undefined ? undefined : finding.is.includes(option);
  }
  const fact = measured(finding.of, facts);
  return fact === undefined ? undefined : isWithin(fact.value, finding);
}

/** The first of these figures that is known. */
export const measured = (of: Measured['of'], facts: Facts): Solved | undefined =>
  of.map(({ id }) => facts.get(id)).find((fact) => fact !== undefined);

function isWithin(value: number, { from, upTo, over, under }: Measured): boolean {
  const against = (end: Figure): number => compare(value, toBase(end.number, end.unit));
  return (
    (!from || against(from) >= 0) &&
    (!upTo || against(upTo) <= 0) &&
    (!over || against(over) > 0) &&
    (!under || against(under) < 0)
  );
}

/** The default that a finding was held against, when nobody said otherwise. */
function defaultOf(finding: Finding, facts: Facts): string[] {
  if (!('choice' in finding)) return [];
  const option = settled(finding.choice, facts);
  const fact = option === undefined ? undefined : facts.get(optionFact(finding.choice.id, option));
  return fact?.assumed.length ? [fact.id] : [];
}

/** Facts that a line was taken for. */
function restsOf({ when, ifSaid = [] }: Decision, facts: Facts): string[] {
  return [...when, ...ifSaid].flatMap((finding) => {
    if ('choice' in finding) return optionFact(finding.choice.id, settled(finding.choice, facts)!);
    return measured(finding.of, facts)?.id ?? [];
  });
}
