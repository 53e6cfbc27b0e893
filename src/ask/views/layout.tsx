import type { Place } from '../reply.ts';
import { page } from '../wording/page.en.ts';
import { asGiven } from './names.ts';

/** Every sign, taper, device run and space of a work zone, or every dump point, in order. */
export function Layout({ places }: { readonly places: readonly Place[] }) {
  if (places.length === 0) return null;
  const { what, at, side } = page.layoutColumns;
  const sided = places.some((place) => place.side !== undefined);
  return (
    <table class="layout">
      <caption>{page.layout}</caption>
      <thead>
        <tr>
          <th scope="col">{what}</th>
          <th scope="col">{at}</th>
          {sided && <th scope="col">{side}</th>}
        </tr>
      </thead>
      <tbody>
        {places.map((place) => (
          <tr>
            <td>{place.what}</td>
            <td>{asGiven(place.at, place.unit)}</td>
            {sided && <td>{place.side ?? ''}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
