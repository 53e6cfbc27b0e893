import { compare, toBase } from '../../../calc/quantity.ts';
import { decide } from '../../../rules/decide.ts';
import type { Facts } from '../../../rules/shapes.ts';
import type { Decision, DefectRecord, Finding } from '../../../rules/shapes-work.ts';
import { work } from '../../../rules/work.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { sayFact, voiceOf } from '../facts.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Level, Point } from '../shapes.ts';
import { sharesWord } from '../words.ts';
import { oneOf, type Wrong } from './text.ts';

/** Every line of every defect's table as a point: which repair suits. */
export function repairPoints(desk: Desk): Point[] {
  return [...work.defects.values()].flatMap((defect) =>
    defect.decisions.map(
      (decision, at): Point => ({
        id: `defect/${defect.id}/${at + 1}`,
        group: `defect/${defect.id}/${at + 1}`,
        topics: ['repairs'],
        mustPass: false,
        forms: [
          {
            id: 'which',
            kind: 'one',
            level: levels[Math.min(2, Math.max(0, decision.when.length + (decision.ifSaid?.length ?? 0) - 1))]!,
            make: (random) => whichRepair(desk, defect, decision, random),
          },
        ],
      }),
    ),
  );
}

/** By the number of findings that decide. */
const levels: readonly Level[] = ['easy', 'medium', 'hard'];

/** What is so unless the line says otherwise, in the order it is told; told so that no other line can be meant. */
const usual: Facts = {
  'defect-place': 'open-road',
  'base-state': 'firm',
  'water-state': 'drained',
  recurring: 'first-time',
  'crack-state': 'network',
  'rut-edges': 'level',
};

/** Of these, what the table of the defect asks about. */
function usualFor({ decisions }: DefectRecord): Facts {
  const findings = decisions.flatMap(({ when, ifSaid = [] }) => [...when, ...ifSaid]);
  const asked = new Set(findings.flatMap((finding) => ('choice' in finding ? [finding.choice.id] : [])));
  return Object.fromEntries(Object.entries(usual).filter(([id]) => asked.has(id)));
}

function whichRepair({ knowledge }: Desk, defect: DefectRecord, decision: Decision, random: Random): Draft | undefined {
  const facts: Record<string, Facts[string]> = { ...usualFor(defect) };
  for (const finding of [...decision.when, ...(decision.ifSaid ?? [])]) Object.assign(facts, factFor(finding, random));
  const chosen = decide(defect, voiceOf(knowledge, facts).solved);
  if (
    !('rests' in chosen) ||
    chosen.decision !== decision ||
    chosen.assumed.some((id) => !(id.split('=')[0]! in facts))
  )
    return undefined;
  const key = work.repairs.get(decision.repair)!;
  const lighter = facts['crack-state'] === 'hairline' ? ['surface-seal', 'crack-seal', 'watch-it'] : [];
  const allowed = new Set([
    decision.repair,
    ...(decision.with ?? []),
    ...(decision.engineer ? ['engineer'] : []),
    // On a few fine cracks a seal, or time, is a matter of judgement, not a mistake.
    ...lighter,
  ]);
  const wrong = [...work.repairs.values()]
    .filter(({ id, title }) => !allowed.has(id) && !sharesWord(title, decision.because))
    .map(({ title }): Wrong => ({ text: capital(title), mistake: 'other-repair' }));
  const told = Object.keys(facts).map((id) => {
    const record = knowledge.quantities.get(id) ?? knowledge.choices.get(id)!;
    return quiz.found(record.title, sayFact(knowledge, facts, id)!);
  });
  const why = `${capital(key.title)}: ${decision.because}.`;
  const ground = { why, rule: `repair/${key.id}`, source: saySource(decision.source), rests: [decision.source] };
  return oneOf(random, { stem: quiz.repair(defect.seen, told), ...ground }, capital(key.title), wrong);
}

/** A fact that makes a finding so: an option, or a figure clear of its ends. */
function factFor(finding: Finding, random: Random): Facts {
  if ('choice' in finding) return { [finding.choice.id]: random.pick(finding.is) };
  const { of, from, over, upTo, under } = finding;
  const low = from ?? over;
  const high = upTo ?? under;
  const unit = (low ?? high)!.unit;
  const inBase = (end: typeof low): number | undefined => end && toBase(end.number, end.unit);
  const [least, most] = [inBase(low), inBase(high)];
  const steps = [0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2.25, 2.5, 2.75, 3.5, 4];
  const fitting = steps.filter((figure) => {
    const base = toBase(figure, unit);
    return (least === undefined || compare(base, least) > 0) && (most === undefined || compare(base, most) < 0);
  });
  return fitting.length ? { [of[0].id]: [random.pick(fitting), unit] } : {};
}
