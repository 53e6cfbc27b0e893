import type { Value } from '../reply.ts';
import { capital } from '../say.ts';
import { page } from '../wording/page.en.ts';
import { partFigure, rangeOf, titleOf } from './names.ts';

interface Props {
  readonly values: readonly Value[];
  /** The first figure is what was asked for: it stands in the largest type of the page. */
  readonly asked: boolean;
}

/** The figures of an answer: the one asked for, and under it those a foreman wants beside it. */
export function Figures({ values, asked }: Props) {
  const [first, ...others] = values;
  if (!first) return null;
  const beside = asked ? others : values;
  return (
    <>
      {asked && <FigureBlock value={first} main />}
      {beside.length > 0 && (
        <ul class="beside" aria-label={page.also}>
          {beside.map((value) => (
            <li>
              <FigureBlock value={value} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function FigureBlock({ value, main = false }: { readonly value: Value; readonly main?: boolean }) {
  const { number, rest } = partFigure(value.text);
  const range = rangeOf(value);
  return (
    <p class={main ? 'figure main' : 'figure'}>
      <span class="amount">
        <b class="number">{number}</b>
        {rest !== '' && <span class="unit">{page.inUnit(rest)}</span>}
      </span>{' '}
      <span class="of">{main ? titleOf(value.quantity) : capital(titleOf(value.quantity))}</span>
      {range && <span class="range"> ({range})</span>}
    </p>
  );
}
