import { page } from '../wording/page.en.ts';

interface Props {
  readonly label: string;
  /** What the button shows, and what it sends. */
  /** Short ones stand two by two. */
  readonly pairs?: boolean;
  readonly questions: readonly { readonly text: string; readonly send: string }[];
}

/** Questions to send by one press. They go with the form, so what stands in the box stays there. */
export function Buttons({ label, questions, pairs = false }: Props) {
  if (questions.length === 0) return null;
  return (
    <div class={pairs ? 'buttons pairs' : 'buttons'}>
      <p class="label">{label}</p>
      <ul>
        {questions.map(({ text, send }) => (
          <li>
            <button type="submit" class="chip" form="ask" name="send" value={send}>
              {text}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What to ask next. */
export function Next({ next }: { readonly next: readonly string[] }) {
  return <Buttons pairs label={page.next} questions={next.map((text) => ({ text, send: text }))} />;
}
