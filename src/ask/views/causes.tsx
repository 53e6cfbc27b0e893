import type { Cause } from '../reply.ts';
import { page } from '../wording/page.en.ts';

/** What causes a fault, likeliest first, and what to do about each. */
export function Causes({ causes }: { readonly causes: readonly Cause[] }) {
  if (causes.length === 0) return null;
  return (
    <section class="causes">
      <h4>{page.causes}</h4>
      <ol>
        {causes.map(({ text, remedy }) => (
          <li>
            <p>{text}</p>
            <p>
              <b>{page.remedy}</b> {remedy}
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}
