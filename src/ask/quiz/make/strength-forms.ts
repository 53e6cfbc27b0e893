import type { LimitRecord, PracticeRecord } from '../../../rules/shapes.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { type Strength, strengths, strengthWords } from '../../wording/quiz-strength.en.ts';
import type { Form } from '../shapes.ts';

/** How strongly the manual puts a rule: asked only where the place in the manual says which it is, and says one only. */
export function strengthForms(rule: LimitRecord | PracticeRecord): Form[] {
  const source = rule.sources.find(
    ({ place, document }) => strengthIn(place) && document.startsWith('Manual on Uniform'),
  );
  const strength = strengthIn(source?.place);
  if (!source || !strength) return [];
  const options = strengths.map((each) => {
    const text = strengthWords[each].option;
    return each === strength ? { text } : { text, mistake: 'other-strength' };
  });
  return [
    {
      id: 'strength',
      kind: 'one',
      level: 'hard',
      make: () => ({
        item: {
          kind: 'one',
          stem: quiz.strength(rule.title),
          options,
          key: strengthWords[strength].option,
          why: capital(strengthWords[strength].why),
          rule: `${rule.kind}/${rule.id}`,
          source: saySource(source),
        },
        order: 'fixed',
        rests: rule.sources,
        collides: [],
        printed: false,
        unsaid: [],
      }),
    },
  ];
}

function strengthIn(place: string | undefined): Strength | undefined {
  const found = strengths.filter((each) => place?.includes(strengthWords[each].heading));
  return found.length === 1 ? found[0] : undefined;
}
