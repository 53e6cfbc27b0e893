import type { Job } from '../reply.ts';
import { jobSheet } from '../wording/job-sheet.en.ts';
import { page } from '../wording/page.en.ts';
import { ChangeButton } from './assumed.tsx';
import { sayFact } from './names.ts';

/** What is known of the job so far, each fact to be changed by one press. */
export function KnownFacts({ job, startAgain }: { readonly job: Job | undefined; readonly startAgain: string }) {
  const facts = job?.facts ?? [];
  const patches = job?.book?.patches.length ?? 0;
  const nothing = facts.length === 0 && patches === 0;
  return (
    <aside class={nothing ? 'known nothing' : 'known'} aria-labelledby="known">
      <h2 id="known">{page.facts}</h2>
      {nothing ? (
        <p>{page.noFacts}</p>
      ) : (
        <>
          <ul>
            {patches > 0 && <li>{page.patchesKnown(patches)}</li>}
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
          <button type="submit" class="again" form="ask" formaction="/job" name="carry" value="1">
            {page.carry}
          </button>
          <a class="again" href={startAgain}>
            {page.startOver}
          </a>
        </>
      )}
    </aside>
  );
}
