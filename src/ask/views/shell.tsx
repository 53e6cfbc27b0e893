import { page } from '../wording/page.en.ts';
import { type Dress, documentOf, Header } from './document.tsx';

/** A page without content, kept on the phone: the script fills it with what the address names, with no network. */
export function shellPage({ dress, version }: { readonly dress: Dress; readonly version: string }): string {
  return documentOf({
    title: page.name,
    dress,
    version,
    kind: 'shell',
    children: (
      <>
        <Header />
        <main id="main">
          <p class="column">{page.opening}</p>
        </main>
      </>
    ),
  });
}
