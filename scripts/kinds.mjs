/**
 * The kinds of record: the folder under src/rules they live in, one record a file, and the shape they have. A new kind is
 * one line here and its shape; `module` names the file with the shape, which also exports the function of the kind's name
 * that makes one. Kinds may share a folder and a `shape`, each with `fields` of its own. A kind marked `later` is left out
 * of the index until it has a record.
 */
export const kinds = [
  { kind: 'quantity', folder: 'quantities', shape: 'QuantityRecord', module: 'shapes.ts' },
  { kind: 'choice', folder: 'choices', shape: 'ChoiceRecord', module: 'shapes.ts' },
  { kind: 'relation', folder: 'relations', shape: 'RelationRecord', module: 'shapes.ts' },
  { kind: 'limit', folder: 'limits', shape: 'LimitRecord', module: 'shapes.ts' },
  { kind: 'practice', folder: 'practices', shape: 'PracticeRecord', module: 'shapes.ts' },
  { kind: 'table', folder: 'tables', shape: 'TableRecord', fields: 'FigureTable', module: 'shapes.ts' },
  { kind: 'choice-table', folder: 'tables', shape: 'TableRecord', fields: 'ChoiceTable', module: 'shapes.ts' },
  { kind: 'step', folder: 'steps', shape: 'StepRecord', module: 'shapes-work.ts', later: true },
  { kind: 'fault', folder: 'faults', shape: 'FaultRecord', module: 'shapes-work.ts', later: true },
  { kind: 'repair', folder: 'repairs', shape: 'RepairRecord', module: 'shapes-work.ts', later: true },
  { kind: 'defect', folder: 'defects', shape: 'DefectRecord', module: 'shapes-work.ts', later: true },
];

export const idPattern = /^[a-z][a-z0-9]{0,30}(-[a-z0-9]{1,30}){0,9}$/;
