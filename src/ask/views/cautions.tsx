import { en } from '../wording/en.ts';
import { page } from '../wording/page.en.ts';

/** Cautions in the yellow bar: never folded away. */
export function Cautions({ cautions }: { readonly cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <div class="cautions">
      <b>{page.caution}</b>{' '}
      {cautions.map((caution) => (
        <p>{caution} </p>
      ))}
    </div>
  );
}

/** What holds for every answer: the foot of the page says it once. */
export const standing: readonly string[] = [en.offTheRoad, en.agencyFirst];
