import { raw } from 'hono/html';
import type { Child } from 'hono/jsx';
import { page } from '../wording/page.en.ts';

/** Addresses of what a page is drawn with. */
export interface Dress {
  readonly stylesheet: string;
  /** Stylesheet of the trainer's desk, on top of the other. */
  readonly quiz: string;
  readonly icon: string;
  /** What the browser runs; without it every page works as a plain form. */
  readonly client?: ClientDress;
}

export interface ClientDress {
  /** The module of the page, and what it loads at once. */
  readonly page: string;
  readonly needs: readonly string[];
  /** Run before anything is drawn: light and size of type as the reader chose them. */
  readonly look: string;
  /** What answers, to be fetched when the page stands. */
  readonly answers: readonly string[];
  readonly touchIcon: string | undefined;
  readonly manifest: string;
  /** Day it was built on. */
  readonly built: string;
}

interface Props {
  readonly title: string;
  readonly dress: Dress;
  /** A part of the pages with styles of its own. */
  readonly also?: 'quiz';
  /** Version of the rules the page was made with: the script must have the same. */
  readonly version?: string;
  /** What the script finds on it. */
  readonly kind?: 'ask' | 'shell';
  readonly children: Child;
}

/** A whole HTML document round the body of a page. */
export function documentOf({ title, dress, also, version, kind, children }: Props): string {
  const { client } = dress;
  const html = (
    <html
      lang="en"
      data-rules={client && version}
      data-built={client?.built}
      data-page={client && kind}
      data-dress={kind === 'shell' ? JSON.stringify(dress) : undefined}
      data-answers={client?.answers.join(' ')}
    >
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content" />
        <meta name="color-scheme" content="light dark" />
        <title>{title}</title>
        {/* Shown once the head of the page is here whole, so that no part of it pushes another aside. */}
        <link rel="expect" href="#head" blocking="render" />
        <link rel="stylesheet" href={dress.stylesheet} />
        {also && <link rel="stylesheet" href={dress[also]} />}
        <link rel="icon" href={dress.icon} type="image/svg+xml" />
        {client && <ClientHead client={client} />}
      </head>
      <body>{children}</body>
    </html>
  );
  return `${raw('<!DOCTYPE html>')}${html}`;
}

function ClientHead({ client }: { readonly client: ClientDress }) {
  return (
    <>
      <script src={client.look} />
      <link rel="manifest" href={client.manifest} />
      {client.touchIcon && <link rel="apple-touch-icon" href={client.touchIcon} />}
      <script type="module" src={client.page} />
      {client.needs.map((address) => (
        <link rel="modulepreload" href={address} />
      ))}
    </>
  );
}

/** The screens that the head of every page leads to. */
export type Screen = 'ask' | 'job' | 'sheet' | 'quiz' | 'cards' | 'rules' | 'words';

/** Name and screens, the same on every page. */
export function Header({ at, children }: { readonly at?: Screen; readonly children?: Child }) {
  return (
    <header id="head">
      <p class="name">
        <b>{page.name}</b> <span>{page.what}</span>
      </p>
      <nav aria-label={page.screens}>
        {Object.entries(page.places).map(([place, name]) => (
          <a href={place === 'ask' ? '/' : `/${place}`} aria-current={at === place ? 'page' : undefined}>
            {name}
          </a>
        ))}
      </nav>
      {children}
    </header>
  );
}
