import type { Job, UnitSystem } from '../reply.ts';
import { page } from '../wording/page.en.ts';
import { Buttons } from './asking.tsx';
import { standing } from './cautions.tsx';
import { Composer, EnterButton, UnitsChoice } from './composer.tsx';
import { type Dress, documentOf, Header } from './document.tsx';
import type { Entry } from './entry.ts';
import { KnownFacts } from './facts.tsx';
import { Drawings } from './layout.tsx';
import { Look } from './look.tsx';
import { Sheet } from './sheet.tsx';

export interface AskPage {
  /** The conversation, oldest first. */
  readonly entries: readonly Entry[];
  readonly job?: Job | undefined;
  readonly units?: UnitSystem | undefined;
  /** What stands in the question box. */
  readonly draft?: string;
  /** What is wrong with what was typed. */
  readonly error?: string | undefined;
  readonly notices?: readonly string[];
  /** Form fields that carry the conversation. */
  readonly carried: Readonly<Record<string, string>>;
  readonly ticks?: ReadonlySet<string>;
  readonly version: string;
  readonly dress: Dress;
}

/** The Ask screen as a whole document: works as a plain form, without any script. */
export function askPage(props: AskPage): string {
  const { entries, job, units, draft = '', error, notices = [], carried, ticks = new Set(), version, dress } = props;
  const title = page.title(entries.at(-1)?.question);
  return documentOf({
    title: error ? page.errorTitle(title) : title,
    dress,
    version,
    kind: 'ask',
    children: (
      <>
        <a class="skip" href={entries.length > 0 ? '#latest' : '#question'}>
          {entries.length > 0 ? page.skip : page.skipToAsk}
        </a>
        <EnterButton />
        <Header at="ask">
          <UnitsChoice units={units} />
          <Look />
        </Header>
        <main>
          <h1 class="away">{page.title()}</h1>
          <div class="column talk">
            {notices.map((notice) => (
              <p class="notice" role="status">
                {notice}
              </p>
            ))}
            <Log entries={entries} ticks={ticks} />
            {entries.length === 0 && <Opening />}
          </div>
          <KnownFacts job={job} startAgain={units ? `/?units=${units}` : '/'} />
          <Composer draft={draft} carried={carried} error={error} />
        </main>
        <Foot version={version} />
      </>
    ),
  });
}

function Log({ entries, ticks }: { readonly entries: readonly Entry[]; readonly ticks: ReadonlySet<string> }) {
  return (
    <div role="log" aria-labelledby="log">
      <h2 class="away" id="log">
        {page.log}
      </h2>
      {entries.length > 0 && (
        <ol class="entries">
          {entries.map((entry, at) => (
            <li>
              <Sheet entry={entry} latest={at === entries.length - 1} ticks={ticks} draw={Drawings} />
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}

/** What an empty page says: what can be asked, and a few questions to start with. */
function Opening() {
  const { heading, text, examples, questions } = page.empty;
  return (
    <section class="opening">
      <h2>{heading}</h2>
      <p>{text}</p>
      <Buttons label={examples} questions={questions.map((question) => ({ text: question, send: question }))} />
    </section>
  );
}

/** The standing lines and the version of the rules that answered. */
export function Foot({ version }: { readonly version: string }) {
  return (
    <footer>
      {standing.map((line) => (
        <p>
          <b>{line}</b>
        </p>
      ))}
      <p>{page.rules(version)}</p>
      <p id="phone" />
    </footer>
  );
}
