import { roundUp, toBase } from '../../calc/quantity.ts';
import { whatFollows } from '../../rules/start.ts';
import { type Fact, knownFrom, merge } from '../facts.ts';
import type { Reply, TalkPatch } from '../reply.ts';
import { understand } from '../understand.ts';
import { pace as paceSaid, talk as words } from '../wording/book-talk.en.ts';
import { assumedBy, workingOf } from '../working.ts';
import { type BookScene, bookAnswer } from './book-scene.ts';
import type { HeardOfBook } from './hear.ts';
import type { LoadsHeard } from './pace.ts';
import { isOfPatch, patchFacts, patchOf, withPatch } from './talk-book.ts';
import { yieldCheck } from './yield.ts';

/**
 * "3 loads down at 140 ft of 300, will we run short?": what the part laid tells of the rest. With width and depth it is
 * held against what was meant; without, it still says what the rest takes. Undefined when no tons are told.
 */
export function yieldReply(
  scene: BookScene,
  progress: NonNullable<HeardOfBook['progress']>,
  loads?: LoadsHeard,
): Reply | undefined {
  const { engine, request, job, tell } = scene;
  const { knowledge } = engine;
  const [to, whole] = [progress.to, progress.of];
  if (!to.unit || !whole.unit) return undefined;
  const patch = meant(scene, toBase(whole.number, whole.unit));
  const spans = [scene.heard.label?.at, to.at, whole.at, ...(loads?.at ?? [])].filter((span) => span !== undefined);
  const question = spans.reduce(
    (text, [start, end]) => text.slice(0, start) + ' '.repeat(end - start) + text.slice(end),
    request.question,
  );
  const rest = understand(engine, { ...request, question }, job);
  const turn = rest.turn;
  const told: Fact[] = [
    { quantity: 'placed-length', number: to.number, unit: to.unit, turn, fresh: true, from: to.at },
    ...(loads?.down && !loads.isShare
      ? [{ quantity: 'loads-placed', number: loads.down, unit: '1', turn, fresh: true } as const]
      : []),
    { quantity: 'patch-length', number: whole.number, unit: whole.unit, turn, fresh: true, from: whole.at },
  ];
  const fresh = [...rest.fresh.map(asPlaced), ...told];
  const old = patch
    ? merge(
        job.facts.filter(({ quantity }) => !isOfPatch(knowledge, quantity)),
        patchFacts(patch, knowledge),
      )
    : rest.facts.filter((fact) => !fact.fresh);
  const facts = merge(old, fresh);
  const solved = whatFollows(knowledge, knownFrom(facts));
  const placed = solved.get('placed-mass');
  const [atYield, leftAtYield] = [solved.get('mass-at-yield'), solved.get('left-at-yield')];
  if (!placed || !atYield || !leftAtYield) return undefined;
  const voice = {
    knowledge,
    solved,
    unit: tell.unit,
    isGiven: (id: string) => facts.some(({ quantity }) => quantity === id),
  };
  const check = yieldCheck(solved);
  const [payload, short] = [solved.get('truck-payload'), check?.short];
  const moreLoads = payload && leftAtYield.value > 0 ? roundUp(leftAtYield.value / payload.value) : undefined;
  const figured = solved.get('premix-mass');
  const shown = ['placed-mass', 'mass-at-yield', 'placed-depth', 'premix-mass'].filter(
    (id) => solved.has(id) && (id !== 'premix-mass' || check),
  );
  const ids = ['left-at-yield', ...shown];
  const book = patch
    ? withPatch(job.book, {
        ...patch,
        laid: tell.figure(placed.value, tell.unit('placed-mass')),
        laidTo: { number: to.number, unit: to.unit },
      })
    : job.book;
  return bookAnswer(
    { ...scene, understood: { ...rest, facts, fresh } },
    book,
    {
      topic: 'left-at-yield',
      text: [
        patch ? words.forPatch(patch.label) : '',
        short === undefined || !figured
          ? ''
          : verdict(short, figured.value, (base) => tell.words('premix-mass', Math.abs(base))),
        words.goingBy(
          tell.words('placed-mass', placed.value),
          tell.words('mass-at-yield', atYield.value),
          tell.words('left-at-yield', Math.max(0, leftAtYield.value)),
        ),
        moreLoads === undefined
          ? ''
          : words.moreLoads(paceSaid.count(String(moreLoads)), tell.words('truck-payload', payload!.value)),
        loads?.left === undefined || moreLoads === undefined || loads.isShare
          ? ''
          : moreLoads > loads.left
            ? paceSaid.leftShort(paceSaid.count(String(loads.left)), paceSaid.count(String(moreLoads - loads.left)))
            : paceSaid.leftEnough(paceSaid.count(String(loads.left))),
        check
          ? `${words.laidAt(tell.words('placed-depth', check.depth), tell.words('patch-depth', check.meant))} ${{ over: words.thick, under: words.thin, right: words.right }[check.judged]}`
          : words.giveDepth,
      ]
        .filter(Boolean)
        .join('\n'),
      values: ids.flatMap((id) => {
        const fact = solved.get(id);
        return fact ? [tell.value(id, fact)] : [];
      }),
      assumed: assumedBy(ids, voice),
      working: workingOf(['left-at-yield', ...(check ? ['placed-depth'] : [])], voice),
      next: [words.next.left],
    },
    patch ? facts.filter(({ quantity }) => !isOfPatch(knowledge, quantity)) : facts,
    'quantity/left-at-yield',
  );
}

/** Tons of what is down, whatever role their figure was read in: in such a report no other tons are told. */
function asPlaced(fact: Fact): Fact {
  return fact.quantity === 'premix-mass' || fact.quantity === 'truck-count'
    ? { ...fact, quantity: fact.quantity === 'premix-mass' ? 'placed-mass' : 'loads-placed' }
    : fact;
}

/** The patch that is reported on: the one named, or the one on the job that is as long as that. */
function meant({ job: { book }, heard, engine }: BookScene, length: number): TalkPatch | undefined {
  if (heard.label) return patchOf(book, heard.label.text);
  const long = (book?.patches ?? []).filter((patch) =>
    patchFacts(patch, engine.knowledge).some(
      (fact) =>
        fact.quantity === 'patch-length' && 'unit' in fact && Math.abs(toBase(fact.number, fact.unit) - length) < 1,
    ),
  );
  const open = long.filter(({ done }) => !done);
  return open.length === 1 ? open[0] : undefined;
}

/** Within a hundredth it comes out as figured. */
const close = 0.01;

function verdict(short: number, figured: number, said: (base: number) => string): string {
  if (Math.abs(short) <= close * figured) return words.even;
  return short > 0 ? words.short(said(short)) : words.over(said(short));
}
