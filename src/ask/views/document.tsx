import { raw } from 'hono/html';
import type { Child } from 'hono/jsx';
import { page } from '../wording/page.en.ts';

/** Addresses of what a page is drawn with. */
export interface Dress {
  readonly stylesheet: string;
  /** Stylesheet of the trainer's desk, on top of the other. */
  readonly quiz: string;
  readonly icon: string;
}

interface Props {
  readonly title: string;
  readonly dress: Dress;
  /** A part of the pages with styles of its own. */
  readonly also?: 'quiz';
  readonly children: Child;
}

/** A whole HTML document round the body of a page. */
export function documentOf({ title, dress, also, children }: Props): string {
  const html = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content" />
        <meta name="color-scheme" content="light dark" />
        <title>{title}</title>
        <link rel="stylesheet" href={dress.stylesheet} />
        {also && <link rel="stylesheet" href={dress[also]} />}
        <link rel="icon" href={dress.icon} type="image/svg+xml" />
      </head>
      <body>{children}</body>
    </html>
  );
  return `${raw('<!DOCTYPE html>')}${html}`;
}

/** Name and screens, the same on every page. */
export function Header({ at, children }: { readonly at?: 'ask' | 'quiz'; readonly children?: Child }) {
  return (
    <header>
      <p class="name">
        <b>{page.name}</b> <span>{page.what}</span>
      </p>
      <nav aria-label={page.screens}>
        <a href="/" aria-current={at === 'ask' ? 'page' : undefined}>
          {page.askScreen}
        </a>
        <a href="/quiz" aria-current={at === 'quiz' ? 'page' : undefined}>
          {page.quizScreen}
        </a>
      </nav>
      {children}
    </header>
  );
}
