import type { Book } from '../../book/book.ts';
import type { Change } from '../../book/change.ts';
import { fieldsOf, type LineKind } from '../../book/fields.ts';
import type { Role } from '../../book/roles.ts';
import type { Sheet } from '../../book/sheet.ts';
import type { Totals } from '../../book/totals.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import type { Dress } from '../document.tsx';
import { FieldInput } from './fields.tsx';

export interface JobPage {
  /** Address of the job, with its key. */
  readonly address: string;
  readonly role: Role;
  readonly book: Book;
  readonly changes: readonly Change[];
  readonly sheet: Sheet;
  readonly totals: Totals;
  readonly said: readonly string[];
  readonly error?: string | undefined;
  /** Rows of a list that stand in the box to be mended. */
  readonly draft?: string | undefined;
  /** The changes that were made last on this page, to be taken back by one press: their stamps, with blanks between. */
  readonly takeBack?: string | undefined;
  readonly by?: string | undefined;
  /** A stamp for a form, so that one that is sent twice is known. */
  readonly once: () => string;
  readonly version: string;
  readonly dress: Dress;
}

/** Fields every form of the page carries: what it does, and how much of the book its maker had seen. */
export function Carried({
  changes,
  by,
  act,
  line,
  once,
}: Pick<JobPage, 'changes' | 'by' | 'once'> & { readonly act: string; readonly line?: string | undefined }) {
  return (
    <>
      <input type="hidden" name="do" value={act} />
      <input type="hidden" name="once" value={once()} />
      <input type="hidden" name="count" value={changes.length} />
      <input type="hidden" name="by" value={by ?? ''} />
      {line && <input type="hidden" name="line" value={line} />}
    </>
  );
}

/** A folded form for a line: a new one, or one that is there. */
export function LineForm(props: JobPage & { readonly kind: LineKind; readonly title: string; readonly line?: string }) {
  const { kind, title, line, totals, book, address } = props;
  const fields = book.lines.get(kind === 'job' ? 'job' : (line ?? ''))?.fields;
  const shown = fieldsOf(kind).filter((name) => !['rules', 'rates', 'done'].includes(name));
  const sizes = kind === 'patch' && line ? ['patch-length', 'patch-width', 'patch-depth', 'deepest-depth'] : [];
  return (
    <details>
      <summary>{title}</summary>
      <form method="post" action={address} novalidate>
        <Carried {...props} act={kind} line={line} />
        {kind === 'patch' && !line && (
          <label class="field">
            {words.forms.size}
            <input name="size" type="text" autocomplete="off" />
          </label>
        )}
        {[...shown, ...sizes].map((name) => (
          <FieldInput kind={kind} name={name} value={fields?.get(name)?.value} patches={totals.patches} />
        ))}
        {kind === 'job' && (
          <label class="field">
            {words.forms.initials}
            <input name="initials" type="text" value={props.by ?? ''} maxlength={4} autocomplete="off" />
          </label>
        )}
        <button type="submit">{line || kind === 'job' ? words.buttons.save : words.buttons.add}</button>
      </form>
    </details>
  );
}

/** A folded form with one box of text. */
export function TextForm(
  props: JobPage & {
    readonly act: string;
    readonly title: string;
    readonly hint: string;
    readonly button: string;
    readonly text?: string | undefined;
    /** Kinds of file that may be sent in place of the text. */
    readonly file?: string;
  },
) {
  return (
    <details open={props.act === 'import' && Boolean(props.text)}>
      <summary>{props.title}</summary>
      <form method="post" action={props.address} enctype={props.file ? 'multipart/form-data' : undefined} novalidate>
        <Carried {...props} act={props.act} />
        {props.act === 'tell' && <input type="hidden" name="change" value={props.takeBack ?? ''} />}
        <label class="field">
          {props.hint}
          <textarea name="text" rows={props.act === 'tell' ? 2 : 8} spellcheck={false}>
            {props.text ?? ''}
          </textarea>
        </label>
        {props.file && (
          <label class="field">
            {words.forms.file}
            <input name="file" type="file" accept={props.file} />
          </label>
        )}
        <button type="submit">{props.button}</button>
      </form>
    </details>
  );
}
