import type { Load, Place, Reply } from '../reply.ts';
import { drawn } from '../wording/drawn.en.ts';
import { DumpPlan } from './drawn/dumps.tsx';
import type { drawnTopics } from './drawn/is-drawn.ts';
import { RollerLanes } from './drawn/lanes.tsx';
import { DepthProfile } from './drawn/profile.tsx';
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
  if (reply.layout.length > 0) return <Layout places={reply.layout} load={reply.load} name={name} />;
  if (reply.survey) return <DepthProfile reply={reply} name={name} />;
  const Drawing = drawings[reply.topic as (typeof drawnTopics)[number]];
  return Drawing ? <Drawing reply={reply} name={name} /> : null;
}

const drawings: Readonly<Record<(typeof drawnTopics)[number], typeof PatchSection>> = {
  'lift-count': PatchSection,
  'lift-thickness': PatchSection,
  'lift-loose': PatchSection,
  'roller-lanes': RollerLanes,
  'windrow-section': RowSection,
  'windrow-height': RowSection,
  'windrow-base': RowSection,
};

interface LayoutProps {
  readonly places: readonly Place[];
  readonly load: readonly Load[];
  readonly name: string;
}

/** A work zone or the dump points: the plan, every part in order, and what the truck carries. */
export function Layout({ places, load, name }: LayoutProps) {
  if (places.length === 0) return null;
  return (
    <section class="layout">
      <ZonePlan places={places} name={name} />
      <DumpPlan places={places} name={name} />
      <details>
        <summary>{drawn.zone.list}</summary>
        <ol>
          {itemsOf(places).map((item) => (
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
