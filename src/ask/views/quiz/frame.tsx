import type { Child } from 'hono/jsx';
import { quiz } from '../../wording/quiz.en.ts';
import type { Dress } from '../document.tsx';
import { framed } from '../framed.tsx';

interface Props {
  readonly title: string;
  readonly dress: Dress;
  readonly version: string;
  /** The screen is there to be printed: no foot that says what an answer says. */
  readonly paper?: boolean;
  readonly children: Child;
}

/** A screen of the desk as a whole document; every one works as plain forms and links. */
export function deskPage({ title, dress, version, paper = false, children }: Props): string {
  return framed({
    at: 'quiz',
    title,
    dress,
    version,
    also: 'quiz',
    look: paper ? 'desk paper' : 'desk',
    main: 'desk',
    paper,
    children,
  });
}

/** What is said under every set: that it certifies nobody. */
export const Certifies = () => <p class="source">{quiz.certifies}</p>;

/** Fields that carry a call from screen to screen. */
export const Carried = ({ fields }: { readonly fields: readonly (readonly [string, string])[] }) => (
  <>
    {fields.map(([name, value]) => (
      <input type="hidden" name={name} value={value} />
    ))}
  </>
);
