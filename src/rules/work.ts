import { defects, faults, repairs, steps } from './index.generated.ts';
import type { DefectRecord, FaultRecord, RepairRecord, StepRecord } from './shapes-work.ts';

/** What is known of the work itself: its stages, what goes wrong in the mat, what is wrong with the road, and the repairs. */
export interface Work {
  readonly steps: ReadonlyMap<string, StepRecord>;
  readonly faults: ReadonlyMap<string, FaultRecord>;
  readonly defects: ReadonlyMap<string, DefectRecord>;
  readonly repairs: ReadonlyMap<string, RepairRecord>;
}

const byId = <R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> =>
  new Map(records.map((record) => [record.id, record]));

/** The work as shipped. */
export const work: Work = { steps: byId(steps), faults: byId(faults), defects: byId(defects), repairs: byId(repairs) };
