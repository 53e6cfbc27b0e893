import type { JobFact } from '../reply.ts';
import { jobSheet } from '../wording/job-sheet.en.ts';
import { page } from '../wording/page.en.ts';
import { ChangeButton } from './assumed.tsx';
import { sayFact } from './names.ts';

/** What is known of the job so far, each fact to be changed by one press. */
export function KnownFacts({ facts, startAgain }: { readonly facts: readonly JobFact[]; readonly startAgain: string }) {
  return (
    <aside class={facts.length === 0 ? 'known nothing' : 'known'} aria-labelledby="known">
      <h2 id="known">{page.facts}</h2>
      {facts.length === 0 ? (
        <p>{page.noFacts}</p>
      ) : (
        <>
          <ul>
            {facts.map((fact) => (
              <li>
                <ChangeButton fact={fact}>
                  <span>{sayFact(fact)}</span> <b>{page.change}</b>
                </ChangeButton>
              </li>
            ))}
          </ul>
          <button type="submit" class="again" form="ask" formaction="/sheet">
            {jobSheet.button}
          </button>
          <a class="again" href={startAgain}>
            {page.startOver}
          </a>
        </>
      )}
    </aside>
  );
}
