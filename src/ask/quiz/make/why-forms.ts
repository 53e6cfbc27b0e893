import type { LimitRecord, PracticeRecord } from '../../../rules/shapes.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import type { Desk, Form } from '../shapes.ts';
import { topicsOf } from '../topics.ts';
import { sharesWord } from '../words.ts';
import { oneOf, type Wrong } from './text.ts';

type Rule = LimitRecord | PracticeRecord;

/** Why a rule is so: its own reason among those of other rules, none of which speaks of the same things. */
export function whyForms({ knowledge }: Desk, rule: Rule): Form[] {
  if (/\{/.test(rule.because)) return [];
  const others = [...knowledge.limits.values(), ...knowledge.practices.values()].filter(
    (other) =>
      other.on.id !== rule.on.id &&
      !other.because.includes('{') &&
      !sharesWord(other.because, rule.because + rule.title),
  );
  const own = new Set(topicsOf(rule.id));
  const wrong = others.map(({ id, because }): Wrong => {
    const near = topicsOf(id).some((topic) => own.has(topic));
    return { text: capital(because), mistake: 'other-rule', near };
  });
  const ground = {
    stem: quiz.whyRule(rule.title),
    why: quiz.because(rule.because),
    rule: `${rule.kind}/${rule.id}`,
    source: saySource(rule.sources[0]),
    rests: rule.sources,
  };
  return [
    { id: 'why', kind: 'one', level: 'medium', make: (random) => oneOf(random, ground, capital(rule.because), wrong) },
  ];
}
