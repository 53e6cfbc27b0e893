import type { Reply } from '../reply.ts';
import { drawn } from '../wording/drawn.en.ts';
import { DumpPlan } from './drawn/dumps.tsx';
import { RollerLanes } from './drawn/lanes.tsx';
import { RowSection } from './drawn/row.tsx';
import { PatchSection } from './drawn/section.tsx';
import { itemsOf, ZonePlan } from './drawn/zone.tsx';

interface Props {
  readonly reply: Reply;
  /** Sets the ids of these drawings apart from others of the page. */
  readonly name: string;
}

/** What an answer shows where looking is quicker than reading; of what it is about, and never more than its figures say. */
export function Drawings({ reply, name }: Props) {
  if (reply.layout.length > 0) return <Layout reply={reply} name={name} />;
  const Drawing = drawings[reply.topic];
  return Drawing ? <Drawing reply={reply} name={name} /> : null;
}

const drawings: Readonly<Record<string, typeof PatchSection>> = {
  'lift-count': PatchSection,
  'lift-thickness': PatchSection,
  'lift-loose': PatchSection,
  'roller-lanes': RollerLanes,
  'windrow-section': RowSection,
  'windrow-height': RowSection,
  'windrow-base': RowSection,
};

/** A work zone or the dump points: the plan, every part in order, and what the truck carries. */
function Layout({ reply: { layout, load }, name }: Props) {
  return (
    <section class="layout">
      <ZonePlan places={layout} name={name} />
      <DumpPlan places={layout} name={name} />
      <details>
        <summary>{drawn.zone.list}</summary>
        <ol>
          {itemsOf(layout).map((item) => (
            <li>{item}</li>
          ))}
        </ol>
      </details>
      {load.length > 0 && (
        <>
          <h4>{drawn.zone.load}</h4>
          <ul class="load">
            {load.map(({ count, what, withRoom }) => (
              <li>{drawn.zone.need(count, what, withRoom)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
