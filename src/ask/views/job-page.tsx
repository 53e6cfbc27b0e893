import type { SheetPatch } from '../job-sheet.ts';
import { capital } from '../say.ts';
import { en } from '../wording/en.ts';
import { jobSheet as words } from '../wording/job-sheet.en.ts';
import { page } from '../wording/page.en.ts';
import { withoutOutcome } from './basis.ts';
import { Cautions } from './cautions.tsx';
import type { Dress } from './document.tsx';
import { framed } from './framed.tsx';
import { Layout } from './layout.tsx';
import { rangeOf, sayFact, titleOf } from './names.ts';

interface Props {
  readonly patches: readonly SheetPatch[];
  readonly version: string;
  readonly dress: Dress;
}

/** The job sheet as a whole document, to be read and to be printed. */
export function jobPage({ patches, version, dress }: Props): string {
  const told = patches.filter(({ facts }) => facts.length > 0);
  return framed({
    at: 'sheet',
    look: 'jobsheet',
    title: `${words.title} – ${page.name}`,
    dress,
    version,
    children: (
      <>
        <h1>{words.heading}</h1>
        {told.length === 0 ? (
          <p>
            {words.nothing} <a href="/">{page.backToAsk}</a>
          </p>
        ) : (
          <>
            <p class="hint">{words.print}</p>
            <Blanks named="head" blanks={words.head} />
            {told.map((patch) => (
              <PatchSheet patch={patch} several={told.length > 1} />
            ))}
            <section>
              <h2>{words.record}</h2>
              <Blanks named="record" blanks={words.blanks} />
            </section>
            <p>
              <b>{words.agency}</b> {words.version(version)}
            </p>
          </>
        )}
      </>
    ),
  });
}

function PatchSheet({ patch, several }: { readonly patch: SheetPatch; readonly several: boolean }) {
  return (
    <section class="answer">
      {several && <h2>{words.patch(patch.label)}</h2>}
      <p>
        <b>{words.known}:</b> {patch.facts.map(sayFact).join(', ')}.
      </p>
      <Figures patch={patch} />
      <Cautions cautions={patch.cautions} />
      <Lines heading={words.assumed} lines={patch.assumed.map(({ text }) => ['', capital(text)])} />
      <Lines
        heading={words.rules}
        lines={patch.checks.map(({ status, text }) => [en.status[status], withoutOutcome(text, status)])}
      />
      <Layout places={patch.layout} load={patch.carried} name={`sheet-${patch.label}`} />
      <Steps patch={patch} />
      <Lines heading={words.open} lines={patch.open.map((text) => ['', text])} />
      <section class="sources">
        <h3>{words.sources}</h3>
        <p class="source">{patch.sources.join('; ')}</p>
      </section>
    </section>
  );
}

/** What to order first, then what is laid, in the order of the work. */
function Figures({ patch }: { readonly patch: SheetPatch }) {
  return (
    <div class="figures">
      {patch.parts.map(({ heading, values }) => (
        <table class="rows">
          <caption>{heading}</caption>
          <tbody>
            {values.map((value) => (
              <tr>
                <th scope="row">{capital(titleOf(value.quantity))}</th>
                <td>
                  <b>{value.text}</b>
                  {rangeOf(value) && <span class="range"> ({rangeOf(value)})</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

function Lines({
  heading,
  lines,
}: {
  readonly heading: string;
  readonly lines: readonly (readonly [strong: string, text: string])[];
}) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{heading}</h3>
      <ul class="lines">
        {lines.map(([strong, text]) => (
          <li>
            {strong && <b>{strong}: </b>}
            {text}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Steps({ patch }: { readonly patch: SheetPatch }) {
  if (patch.steps.length === 0) return null;
  return (
    <section class="boxes">
      <h3>{words.checklist}</h3>
      <ol>
        {patch.steps.map(({ title, text, checks, cautions }) => (
          <li>
            <label class="tick">
              <input type="checkbox" />
              <span>
                <b>{title}.</b> {text}
                {checks.map((check) => (
                  <>
                    {' '}
                    <span class="check">{check}</span>
                  </>
                ))}
              </span>
            </label>
            <Cautions cautions={cautions} />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Lines to be filled in with a pencil. */
function Blanks({ named, blanks }: { readonly named: string; readonly blanks: readonly string[] }) {
  return (
    <table class={`rows blanks ${named}`}>
      <tbody>
        {blanks.map((blank) => (
          <tr>
            <th scope="row">{blank}</th>
            <td class="blank" />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
