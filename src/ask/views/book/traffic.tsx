import type { JobLayout } from '../../book/layout.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import { Layout } from '../layout.tsx';

/** The traffic layout of the job, drawn and as a list, with what the truck carries for it. */
export function TrafficSection({ layout }: { readonly layout: JobLayout | undefined }) {
  if (!layout) return null;
  const { patch, zone } = layout;
  return (
    <section class="traffic" aria-labelledby="traffic">
      <h2 id="traffic">{words.traffic}</h2>
      <h3>{words.trafficOf(patch.patch.label)}</h3>
      <p>{words.trafficFor}</p>
      <Layout places={zone.layout} load={zone.load} name="job-traffic" />
      <p>{zone.lines.at(-1)}</p>
    </section>
  );
}
