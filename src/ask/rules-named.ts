import { byGravity } from '../rules/judge.ts';
import { checkOn } from './judging.ts';
import type { Check } from './reply.ts';
import type { Scene } from './scene.ts';

/** What the rules of these ids say of the job, worst first; those that do not apply are left out. */
export function rulesNamed({ voice }: Scene, ids: readonly string[]): Check[] {
  const { limits, practices } = voice.knowledge;
  return [...new Set(ids)]
    .flatMap((id): Check[] => {
      const rule = limits.get(id) ?? practices.get(id);
      return rule ? [checkOn(rule, voice)] : [];
    })
    .filter(({ status }) => status !== 'not-applicable')
    .sort((a, b) => byGravity.indexOf(a.status) - byGravity.indexOf(b.status) || (a.rule < b.rule ? -1 : 1));
}
