import { toBase } from '../../../calc/quantity.ts';
import { sayFigure } from '../../../calc/wording.ts';
import { knowledge } from '../../../rules/knowledge.ts';
import { work } from '../../../rules/work.ts';
import { kindOf } from '../../book/book.ts';
import type { Cell, Change, Figure } from '../../book/change.ts';
import { fieldType, type LineKind } from '../../book/fields.ts';
import type { PatchTotals } from '../../book/totals.ts';
import { act } from '../../wording/book-act.en.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import { titleOf } from '../names.ts';

/** What a field is called. */
export const fieldTitle = (name: string): string => act.fields[name] ?? titleOf(name);

/** What a field holds, in words that can be typed again. */
export function cellWords(value: Cell | null | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? words.done : words.open;
  if (Array.isArray(value)) return value.map((each) => figureWords(each as Figure)).join(', ');
  return 'unit' in value ? figureWords(value) : words.aFile;
}

const figureWords = ({ number, unit }: Figure): string => sayFigure(toBase(number, unit), unit, { given: true });

/** A defect or repair by its name. */
export const workTitle = (id: string | undefined): string =>
  id === undefined ? '' : (work.defects.get(id)?.title ?? work.repairs.get(id)?.title ?? id);

/** A change in a line of words: what it was about, and what was set. */
export function changeWords({ line, set, by }: Change, patches: readonly { line: string; label: string }[]): string {
  const labels = new Map(patches.map((patch) => [patch.line, `${words.columns.label} ${patch.label}`]));
  const told = Object.entries(set).map(([name, value]) => {
    const label = typeof value === 'string' ? labels.get(value) : undefined;
    if (label) return label;
    const said = cellWords(value);
    return `${fieldTitle(name)} ${said || words.empty}`;
  });
  return words.logLine(labels.get(line) ?? lineTitle(line), told.join(', '), by ?? '');
}

/** A line that is no patch, by its kind. */
export const lineTitle = (line: string): string => words.kinds[kindOf(line)] ?? kindOf(line);

interface Props {
  readonly kind: LineKind;
  readonly name: string;
  readonly value?: Cell | null | undefined;
  readonly patches: readonly PatchTotals[];
}

/** A labelled field of a form for one field of a line. */
export function FieldInput({ kind, name, value, patches }: Props) {
  const type = fieldType(kind, name, knowledge);
  const said =
    typeof value === 'string' && (type?.type === 'choice' || type?.type === 'line') ? value : cellWords(value);
  return (
    <label class="field">
      {fieldTitle(name)}
      <input type="hidden" name={`has-${name}`} value="1" />
      {type?.type === 'choice' || type?.type === 'line' ? (
        <select name={name}>
          <option value="" />
          {(type.type === 'choice'
            ? type.options.map((id) => [id, words.what[id] ?? workTitle(id)])
            : patches.map(({ patch }) => [patch.line, patch.label])
          ).map(([id, title]) => (
            <option value={id} selected={id === said}>
              {title}
            </option>
          ))}
        </select>
      ) : (
        <input
          name={name}
          type={type?.type === 'date' ? 'date' : type?.type === 'clock' ? 'time' : 'text'}
          value={said}
          autocomplete="off"
        />
      )}
    </label>
  );
}

/** Hours as people say them, from seconds. */
export const hours = (seconds: number): string => sayFigure(seconds, 'h', { rounding: 'tenth' });
