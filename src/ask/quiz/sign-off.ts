import type { Knowledge } from '../../rules/knowledge.ts';
import { work } from '../../rules/work.ts';
import { capital } from '../say.ts';
import { filler } from '../step-view.ts';
import { voiceOf } from './facts.ts';
import { rightWays } from './make/practice-forms.ts';
import { seats } from './topics.ts';

/** The steps that each seat is watched at. */
export const watched: Readonly<Record<string, readonly string[]>> = {
  'new-hand': ['brief-crew', 'traffic-control-up', 'sweep', 'clean-up'],
  flagger: ['traffic-control-up', 'traffic-control-down'],
  raker: ['cut-and-clean', 'finish-lift', 'clean-up'],
  roller: ['roll-lift', 'final-roll'],
  tack: ['sweep', 'tack'],
  truck: ['spread-premix', 'clean-up'],
  blade: ['windrow', 'first-lift', 'finish-lift'],
  foreman: ['survey-and-mark', 'order-and-check', 'brief-crew', 'traffic-control-up', 'traffic-control-down', 'record'],
};

/** What is watched and ticked on the job. */
export interface SignOff {
  /** The safety rules of the seat, as they are kept. */
  readonly musts: readonly string[];
  readonly steps: readonly {
    readonly title: string;
    readonly craft: readonly string[];
    readonly checks: readonly string[];
    readonly good: string;
    readonly cautions: readonly string[];
  }[];
}

/** The sheet of a seat, from the records of its steps and rules; undefined for a seat that there is none of. */
export function signOffOf(knowledge: Knowledge, seat: string): SignOff | undefined {
  if (!Object.hasOwn(seats, seat)) return undefined;
  const voice = voiceOf(knowledge, {});
  const desk = { knowledge, units: 'us' } as const;
  const steps = watched[seat]!.map((id) => {
    const step = work.steps.get(id)!;
    const fill = filler({ id }, voice);
    const told = (lines: readonly string[]): string[] => lines.map(fill).filter(Boolean);
    return {
      title: capital(step.title),
      craft: (step.craft ?? []).map(({ title, text }) => `${capital(title)}: ${fill(text)}`),
      checks: told(step.checks),
      good: fill(step.good),
      cautions: step.cautions,
    };
  });
  return { musts: seats[seat]!.musts.flatMap((rule) => rightWays(desk, rule)), steps };
}
