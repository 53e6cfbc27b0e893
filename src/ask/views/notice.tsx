import { page } from '../wording/page.en.ts';
import { type Dress, documentOf, Header } from './document.tsx';

/** A page that only says something: what is not there, or what went wrong, and the way back. */
export function noticePage({
  title,
  detail,
  dress,
}: {
  readonly title: string;
  readonly detail: string;
  readonly dress: Dress;
}): string {
  return documentOf({
    title: page.errorTitle(title),
    dress,
    children: (
      <>
        <Header />
        <main>
          <div class="column opening">
            <h1>{title}</h1>
            <p>{detail}</p>
            <a class="again" href="/">
              {page.backToAsk}
            </a>
          </div>
        </main>
      </>
    ),
  });
}
