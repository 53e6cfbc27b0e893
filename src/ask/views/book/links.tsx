import { type Role, roles } from '../../book/roles.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import type { Dress } from '../document.tsx';
import { framed } from '../framed.tsx';

export interface LinksPage {
  /** Address of the job, with the key it was opened by. */
  readonly address: string;
  readonly links: readonly {
    readonly id: string;
    readonly role: string;
    readonly day: string;
    /** The one this page was opened by. */
    readonly own: boolean;
    readonly revoked?: string | undefined;
  }[];
  /** A link that was just made, to be copied. */
  readonly fresh?: { readonly role: Role; readonly address: string };
  readonly error?: string;
  readonly version: string;
  readonly dress: Dress;
}

/** The links of a job: made for a role, and taken back. */
export function linksPage({ address, links, fresh, error, version, dress }: LinksPage): string {
  return framed({
    at: 'job',
    look: 'job',
    version,
    title: words.title(words.forms.links),
    dress,
    children: (
      <>
        <p class="buttons">
          <a href={address}>{words.back}</a>
        </p>
        <h1>{words.forms.links}</h1>
        <p>{words.linksText}</p>
        {error && (
          <p class="error" id="error" role="alert">
            {error}
          </p>
        )}
        {fresh && (
          <p class="notice" role="status">
            {words.newLink(words.roles[fresh.role])} <a href={fresh.address}>{fresh.address}</a>
          </p>
        )}
        <div class="buttons">
          {roles.map((role) => (
            <form method="post" action={`${address}/links`}>
              <input type="hidden" name="role" value={role} />
              <button type="submit">
                {words.buttons.make}: {words.roles[role]}
              </button>
            </form>
          ))}
        </div>
        <ul>
          {links.map((link) => (
            <li>
              {words.roles[link.role as Role] ?? link.role},{' '}
              {link.revoked ? words.revoked(link.revoked) : words.linkMade(link.day)}
              {link.own && `, ${words.linkOwn}`}
              {!link.revoked && !link.own && (
                <form method="post" action={`${address}/links`}>
                  <input type="hidden" name="revoke" value={link.id} />
                  <button
                    type="submit"
                    aria-label={words.revokeThis(words.roles[link.role as Role] ?? link.role, link.day)}
                  >
                    {words.buttons.revoke}
                  </button>
                </form>
              )}
            </li>
          ))}
        </ul>
      </>
    ),
  });
}
