import { work as shipped, type Work } from '../rules/work.ts';
import { repairAsks } from './wording/repair-asks.ts';
import { stepAsks, stepFrames } from './wording/step-asks.ts';

/** Something of the work that can be asked for. */
export interface WorkGoal {
  readonly kind: 'step' | 'fault' | 'defect' | 'repair';
  /** A record's id; for steps also `next`, `done`, `whole`, and `before-`, `after-` and `done-` with the id of a step. */
  readonly id: string;
  readonly cues: readonly string[];
}

/** Everything that can be asked of the work, with its cues, for the index of goals. A question for a figure is none of these. */
export function workGoals({ steps, faults, defects, repairs }: Work = shipped): WorkGoal[] {
  const framed = (id: string, named: readonly string[]): WorkGoal[] =>
    (['before', 'after', 'done'] as const).map((frame) => ({
      kind: 'step',
      id: `${frame}-${id}`,
      cues: named.flatMap((name) => stepFrames[frame].map((line) => line.replace('NAME', name))),
    }));
  return [
    ...(['whole', 'next', 'done'] as const).map((id): WorkGoal => ({ kind: 'step', id, cues: stepAsks[id] })),
    ...[...steps.values()].flatMap(({ id, cues = [], named, doneCues }): WorkGoal[] => [
      { kind: 'step', id, cues: cues.map(noFigure) },
      ...framed(id, named),
      { kind: 'step', id: `done-${id}`, cues: doneCues.map((cue) => `${noFigure(cue)} -@check -@why`) },
    ]),
    ...[...faults.values()].map(({ id, cues }): WorkGoal => ({ kind: 'fault', id, cues: cues.map(noFigure) })),
    ...[...defects.values()].map(
      ({ id, cues }): WorkGoal => ({
        kind: 'defect',
        id,
        cues: cues.map((cue) => `${noFigure(cue)} -ton -gallon -cost`),
      }),
    ),
    { kind: 'repair', id: 'which', cues: repairAsks.which.map(noFigure) },
    ...[...repairs.values()].map(({ id, cues = [] }): WorkGoal => ({ kind: 'repair', id, cues: cues.map(noFigure) })),
  ];
}

/** A cue that is not heard where a figure is asked for. */
const noFigure = (cue: string): string =>
  [cue, ...figureAsks.filter((word) => !cue.includes(word)).map((word) => `-${word}`)].join(' ');
const figureAsks = ['how-many', 'how-far', 'how-fast'];
