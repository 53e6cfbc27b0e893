import type { Telling } from '../../book/telling.ts';
import { yieldCheck } from '../../book/yield.ts';
import { bookPage as words } from '../../wording/book-page.en.ts';
import { sayFact } from '../names.ts';
import { workTitle } from './fields.tsx';
import { Carried, type JobPage, LineForm } from './forms.tsx';

/** The patches in the order they are laid, each with what it comes to and what can be done with it. */
export function PatchTable(props: JobPage & { readonly tell: Telling }) {
  const { totals, tell, role, address } = props;
  const { columns } = words;
  if (totals.patches.length === 0) return null;
  return (
    <section aria-labelledby="patches">
      <h2 id="patches">{words.patches}</h2>
      {words.orders[props.sheet.order] && <p>{words.orders[props.sheet.order]}</p>}
      <ol class="patches">
        {totals.patches.map((each) => {
          const { patch, figures, laid, missing, disagree, solved, laidTo } = each;
          const check = laidTo === undefined ? undefined : yieldCheck(solved);
          return (
            <li class={patch.done ? 'done' : undefined}>
              <p>
                <b>
                  {columns.label} {patch.label}
                </b>{' '}
                {[patch.station, patch.stationEnd].filter(Boolean).join(' – ')} {patch.lane ?? ''}{' '}
                {workTitle(patch.defect)} {patch.repair ? `→ ${workTitle(patch.repair)}` : ''}
              </p>
              <p>
                {patch.facts
                  .filter(({ quantity }) => quantity !== 'defect')
                  .map((fact) => sayFact(fact))
                  .join(', ')}
              </p>
              {figures['premix-mass'] ? (
                <p>
                  {columns.mass}: <b>{tell.words('premix-mass', figures['premix-mass'].value)}</b>
                  {figures['premix-order'] &&
                    `, ${columns.order.toLowerCase()} ${tell.words('premix-order', figures['premix-order'].value)}`}
                  {figures['tack-volume'] &&
                    `, ${columns.tack.toLowerCase()} ${tell.words('tack-volume', figures['tack-volume'].value)}`}
                  {figures['lift-count'] && `, ${columns.lifts.toLowerCase()} ${figures['lift-count'].value}`}
                  {(['zone-length', 'device-count'] as const).map((id) =>
                    figures[id] ? `, ${tell.titles([id])} ${tell.words(id, figures[id].value)}` : '',
                  )}
                  {laid > 0 && `, ${columns.down.toLowerCase()} ${tell.words('placed-mass', laid)}`}
                </p>
              ) : (
                <p class="asked">{words.missing(tell.titles(missing))}</p>
              )}
              {disagree.length > 0 && <p class="error">{words.disagree(tell.titles(disagree))}</p>}
              {check && <p>{tell.yieldLine(each)}</p>}
              {patch.note && <p class="source">{patch.note}</p>}
              {role !== 'look' && (
                <div class="buttons">
                  <form method="post" action={address}>
                    <Carried {...props} act={patch.done ? 'open' : 'done'} line={patch.line} />
                    <button type="submit">{patch.done ? words.buttons.open : words.buttons.done}</button>
                  </form>
                  {role === 'edit' && (
                    <form method="post" action={address}>
                      <Carried {...props} act="remove" line={patch.line} />
                      <button type="submit">{words.buttons.remove}</button>
                    </form>
                  )}
                </div>
              )}
              {role === 'edit' && (
                <LineForm {...props} kind="patch" line={patch.line} title={words.forms.edit(patch.label)} />
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
