import type { Load, Place } from '../reply.ts';
import { drawn } from '../wording/drawn.en.ts';
import { itemsOf, ZonePlan } from './drawn/zone.tsx';

interface Props {
  readonly places: readonly Place[];
  readonly load: readonly Load[];
  /** Sets the ids of this drawing apart from others of the page. */
  readonly name: string;
}

/** A work zone: its plan, every part in order, and what the truck carries. */
export function Layout({ places, load, name }: Props) {
  if (places.length === 0) return null;
  return (
    <section class="layout">
      <ZonePlan places={places} name={name} />
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
