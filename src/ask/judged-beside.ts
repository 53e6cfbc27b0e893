import type { LimitRecord, PracticeRecord } from '../rules/shapes.ts';
import { verdictOf } from './judging.ts';
import type { Scene } from './scene.ts';

/**
 * A limit beside a rule that stops the work where the rule itself does not, or that is broken already while a practice
 * cannot be judged: too hot to open, whatever else. Else the one on a figure that was just given, where the rule itself
 * cannot be judged by it, or holds while that one does not.
 */
export function judgedBeside(
  { engine, voice, understood }: Scene,
  rule: LimitRecord | PracticeRecord,
): LimitRecord | undefined {
  const own = verdictOf(rule, voice).status;
  if (own === 'stop' || own === 'not-applicable') return undefined;
  const { limits } = engine.knowledge.records;
  const beside = limits.filter(({ besideRule }) => besideRule === rule.id);
  const kin = limits.filter(
    (each) => each.on !== rule.on && (beside.includes(each) || nameOf(each) === nameOf(rule)) && isGiven(each),
  );
  const first = (list: readonly LimitRecord[], ...status: string[]): LimitRecord | undefined =>
    list.find((limit) => status.includes(verdictOf(limit, voice).status));
  return (
    first(beside, 'stop') ??
    (rule.kind === 'practice' && own === 'cannot-tell' ? first(beside, 'caution') : undefined) ??
    first(kin, 'caution', 'stop') ??
    (own === 'cannot-tell' ? first(kin, 'ok') : undefined)
  );

  function isGiven({ on }: LimitRecord): boolean {
    return understood.fresh.some(({ quantity }) => quantity === on.id);
  }
}

/** The name under which a rule's verdicts are given. */
const nameOf = ({ id, underRule }: LimitRecord | PracticeRecord): string => underRule ?? id;

/** The limit on what is asked about, where it is to be judged and nothing was given: "blows a foot all right?" */
export function unjudgedOn({ understood, engine }: Scene, id: string): string | undefined {
  const { sentence, facts } = understood;
  if (!sentence.places.has('@check') || facts.some((fact) => 'unit' in fact)) return undefined;
  return engine.knowledge.records.limits.find(({ on, cues }) => cues && on.id === id)?.id;
}
