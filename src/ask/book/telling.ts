import { fromBase } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';
import type { Engine } from '../engine.ts';
import type { Fact } from '../facts.ts';
import type { Reply, Value } from '../reply.ts';
import { asValue, say, tidy } from '../say.ts';
import type { Understanding } from '../understand.ts';
import { sayFact } from '../views/names.ts';
import { talk as words } from '../wording/book-talk.en.ts';
import { en } from '../wording/en.ts';
import type { Ends, PatchTotals, Totals } from './totals.ts';
import { yieldCheck } from './yield.ts';

/** Words for figures of a job, in the units of whoever asks. */
export interface Telling {
  readonly unit: (id: string) => Unit;
  readonly words: (id: string, base: number) => string;
  readonly value: (id: string, ends: Ends) => Value;
  readonly figure: (base: number, unit: Unit) => { number: number; unit: Unit };
  readonly size: (facts: readonly Fact[]) => string;
  readonly titles: (ids: readonly string[]) => string;
  readonly soFar: (totals: Totals) => string;
  readonly notIn: (open: readonly PatchTotals[]) => string;
  readonly line: (patch: PatchTotals) => string;
  readonly yieldLine: (patch: PatchTotals) => string;
  readonly whole: (totals: Totals) => Partial<Reply> & { text: string };
}

/** What is told beside the tons of a whole job, where it is known. */
const beside = ['tack-volume', 'patch-area'] as const;
const ofJob = ['order-loads', 'order-cost', 'material-cost', 'labor-cost', 'job-cost', 'cost-per-ton'] as const;

export function telling({ knowledge }: Engine, { system }: Pick<Understanding, 'system'>): Telling {
  const { quantities } = knowledge;
  const unit = (id: string): Unit => quantities.get(id)!.units[system];
  const inWords = (id: string, base: number): string => say(quantities.get(id)!, base, unit(id));
  const value = (id: string, ends: Ends): Value => asValue(quantities.get(id)!, ends, unit(id));
  const titles = (ids: readonly string[]): string => ids.map((id) => quantities.get(id)?.title ?? id).join(', ');
  const size = (facts: readonly Fact[]): string => facts.map((fact) => sayFact(fact)).join(', ');
  const notIn = (open: readonly PatchTotals[]): string =>
    open.length > 0 ? words.notIn(open.map(({ patch }) => patch.label)) : '';
  return {
    unit,
    words: inWords,
    value,
    titles,
    size,
    notIn,
    figure: (base, own) => ({ number: tidy(fromBase(base, own)), unit: own }),
    soFar: ({ patches, sums }) =>
      words.soFar(
        patches.length,
        inWords('premix-mass', sums['premix-mass']!.value),
        inWords('premix-order', (sums['premix-order'] ?? sums['premix-mass']!).value),
      ),
    line: ({ patch, facts: _facts, figures, laid, missing }) => {
      const mass = figures['premix-mass'];
      const state = patch.done ? words.stateDone : laid > 0 ? words.stateLaid(inWords('placed-mass', laid)) : '';
      return words.line(
        patch.label,
        size(patch.facts),
        mass ? inWords('premix-mass', mass.value) : words.needs(titles(missing)),
        state,
      );
    },
    yieldLine: ({ solved, laidTo }) => {
      const check = laidTo === undefined ? undefined : yieldCheck(solved);
      return check
        ? `${words.laidAt(inWords('placed-depth', check.depth), inWords('patch-depth', check.meant))} ${{ over: words.thick, under: words.thin, right: words.right }[check.judged]}`
        : '';
    },
    whole: (totals) => {
      const { patches, sums, job, open } = totals;
      const mass = sums['premix-mass'];
      if (!mass) return { text: notIn(open), kind: 'unknown', topic: 'missing-fact', reason: 'missing-fact' };
      const order = sums['premix-order'] ?? mass;
      const more = [
        ...beside.flatMap((id) => (sums[id] ? [[id, sums[id]] as const] : [])),
        ...ofJob.flatMap((id) => {
          const fact = job.get(id);
          return fact ? [[id, fact] as const] : [];
        }),
      ];
      return {
        text: [
          words.total(
            patches.length - open.length,
            inWords('premix-mass', mass.value),
            inWords('premix-order', order.value),
          ),
          words.also(more.map(([id, ends]) => `${capital(quantities.get(id)!.title)}: ${inWords(id, ends.value)}`)),
          notIn(open),
          totals.defaults.length > 0 ? en.assumed(assumedTitles(totals, titles)) : '',
        ]
          .filter(Boolean)
          .join('\n'),
        values: [
          value('premix-mass', mass),
          value('premix-order', order),
          ...more.map(([id, ends]) => value(id, ends)),
        ],
      };
    },
  };
}

/** Defaults that the tons and the tack rest on, by name; each patch tells its own figures. */
function assumedTitles({ patches }: Totals, titles: (ids: readonly string[]) => string): string[] {
  const names = new Set(
    patches
      .slice(0, 50)
      .flatMap(({ solved }) => ['premix-order', 'tack-volume'].flatMap((id) => solved.get(id)?.assumed ?? [])),
  );
  return [...names].map((name) => titles([name.split('=', 1)[0]!]));
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
