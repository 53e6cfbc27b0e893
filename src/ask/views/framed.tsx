import type { Child } from 'hono/jsx';
import { page } from '../wording/page.en.ts';
import { type Dress, documentOf, Header, type Screen } from './document.tsx';
import { Foot } from './page.tsx';

interface Props {
  readonly at: Screen;
  readonly title: string;
  readonly dress: Dress;
  readonly version: string;
  /** What the main part is, for its style. */
  readonly look: string;
  readonly also?: 'quiz';
  /** Data of the main part, for the script. */
  readonly data?: Readonly<Record<`data-${string}`, string>>;
  /** Its main part's place in the page, where that has a name of its own. */
  readonly main?: string;
  /** The screen is there to be printed: no foot that says what an answer says. */
  readonly paper?: boolean;
  readonly children: Child;
}

/** A screen as a whole document: a way past the head, the head, its main part, the foot. */
export function framed({
  at,
  title,
  dress,
  version,
  look,
  also,
  data,
  main = 'main',
  paper = false,
  children,
}: Props): string {
  return documentOf({
    title,
    dress,
    version,
    ...(also ? { also } : {}),
    children: (
      <>
        <a class="skip" href={`#${main}`}>
          {page.skipToContent}
        </a>
        <Header at={at} />
        <main id={main} class={look} {...data}>
          {children}
        </main>
        {!paper && <Foot version={version} />}
      </>
    ),
  });
}
