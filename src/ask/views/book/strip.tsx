import type { PatchTotals } from '../../book/totals.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';

const [width, left, right] = [720, 20, 700];
const [road, height, row] = [58, 132, 18];

/** The patches along the road, to scale, low stations at the left: a drawing without a map. Undefined where none has a place. */
export function Strip({ patches }: { readonly patches: readonly PatchTotals[] }) {
  const placed = patches.flatMap((each) =>
    each.patch.at === undefined ? [] : [{ each, at: each.patch.at, long: lengthOf(each) }],
  );
  if (placed.length === 0) return null;
  const from = Math.min(...placed.map(({ at }) => at));
  const to = Math.max(...placed.map(({ at, long }) => at + long), from + 1);
  const x = (at: number): number => round(left + ((at - from) / (to - from)) * (right - left));
  const leftOut = patches.filter(({ patch }) => patch.at === undefined).map(({ patch }) => patch.label);
  const ordered = [...placed].sort((a, b) => a.at - b.at);
  return (
    <figure class="strip">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby="strip-title">
        <title id="strip-title">{words.strip}</title>
        <defs>
          <pattern id="laid" width="6" height="6" patternUnits="userSpaceOnUse">
            <path d="M0 6 6 0" stroke="currentColor" stroke-width="1.5" />
          </pattern>
        </defs>
        <path
          d={`M${left - 10} ${road}H${right + 10}M${left - 10} ${road + 26}H${right + 10}`}
          stroke="currentColor"
          stroke-width="2"
        />
        <path d={`M${left - 10} ${road + 13}H${right + 10}`} stroke="currentColor" stroke-dasharray="12 8" />
        {ordered.map(({ each, at, long }, i) => {
          const start = x(at);
          const wide = Math.max(4, x(at + long) - start);
          const high = i % 2 === 0;
          return (
            <g>
              <rect
                x={start}
                y={road + 2}
                width={wide}
                height="22"
                fill={each.patch.done ? 'url(#laid)' : 'none'}
                stroke="currentColor"
                stroke-width="2"
              />
              {ordered.length <= 40 && (
                <>
                  <path
                    d={`M${start} ${high ? road : road + 26}V${high ? road - 14 : road + 40}`}
                    stroke="currentColor"
                  />
                  <text
                    x={start}
                    y={high ? road - 18 - row * (Math.floor(i / 2) % 2) : road + 54 + row * (Math.floor(i / 2) % 2)}
                    font-size="14"
                    text-anchor="middle"
                    fill="currentColor"
                  >
                    {each.patch.label}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
      <figcaption>
        {ordered[0]!.each.patch.station} – {ordered.at(-1)!.each.patch.stationEnd ?? ordered.at(-1)!.each.patch.station}
        . {words.strip}. {leftOut.length > 0 && words.stripLeftOut(leftOut.join(', '))}
      </figcaption>
    </figure>
  );
}

const lengthOf = ({ solved }: PatchTotals): number => solved.get('patch-length')?.value ?? 0;
const round = (x: number): number => Math.round(x * 10) / 10;
