import { roundUp, toBase } from '../../calc/quantity.ts';
import { whatFollows } from '../../rules/start.ts';
import { knownFrom, merge } from '../facts.ts';
import type { Reply, Span } from '../reply.ts';
import { understand } from '../understand.ts';
import { talk, pace as words } from '../wording/book-talk.en.ts';
import { en } from '../wording/en.ts';
import { type BookScene, bookAnswer, exact } from './book-scene.ts';
import { type PaceHeard, toGoBase } from './pace.ts';
import { without } from './without.ts';

/** Within a hundredth it comes out as figured. */
const close = 0.01;

/**
 * "Two of five loads gone and we are half way": the loads that the whole takes at this yield, against those there are; or
 * "3 loads left at 14 tons, 38 tons to go": what is to come against what is to be laid. Undefined where neither is told whole.
 */
export function paceReply(scene: BookScene, { loads, share, toGo }: PaceHeard): Reply | undefined {
  const { down, all } = loads;
  if (share && down !== undefined && all !== undefined && down > 0 && down < all) {
    const need = down / share.share;
    const short = need - all;
    const percent = `${tidyPart(share.share * 100)} %`;
    const said = (count: number): string => words.count(tidyPart(count));
    const lines = loads.isShare
      ? [
          words.shareUsed(`${tidyPart(down * 100)} %`, percent, `${tidyPart(need * 100)} %`),
          Math.abs(short) <= close
            ? talk.even
            : short > 0
              ? words.shareShort(percentOf(short))
              : words.shareOver(percentOf(short)),
        ]
      : [
          words.used(tidyPart(down), said(all), percent, said(need)),
          Math.abs(short) <= close * all
            ? talk.even
            : short > 0
              ? words.loadsShort(said(roundUp(short)))
              : words.loadsOver(said(-short)),
        ];
    const left = loads.isShare ? [] : [scene.tell.value('loads-left', exact(roundUp(Math.max(0, need - down))))];
    return told(scene, [...lines.reverse(), short > close ? words.checkDepth : ''], left);
  }
  return toGo && loads.left !== undefined ? againstToGo(scene, loads.left, loads.at, toGo) : undefined;
}

/** Loads still to come, by what each carries, against the tons or the length still to be laid. */
function againstToGo(
  scene: BookScene,
  left: number,
  at: readonly Span[],
  toGo: NonNullable<PaceHeard['toGo']>,
): Reply | undefined {
  const { engine, request, job, tell } = scene;
  const { knowledge } = engine;
  const { base, isMass } = toGoBase(toGo);
  const spans = isMass ? [...at, toGo.figure.at] : at;
  const question = spans.reduce((text, span) => without(text, span), request.question);
  const read = understand(engine, { ...request, question }, job);
  // The one mass that is left is what a truck carries.
  const carries = read.fresh.find(
    (fact) => 'unit' in fact && knowledge.quantities.get(fact.quantity)?.dimension === 'mass',
  );
  const solved = whatFollows(knowledge, knownFrom(merge(read.facts, [])));
  const assumed = carries && 'unit' in carries ? undefined : solved.get('truck-payload');
  const payload = carries && 'unit' in carries ? toBase(carries.number, carries.unit) : assumed?.value;
  const need = isMass ? base : solved.get('premix-mass')?.value;
  if (!payload || need === undefined) return undefined;
  const have = left * payload;
  const short = need - have;
  const mass = (pounds: number): string => tell.words('premix-mass', pounds);
  return told(
    scene,
    [
      Math.abs(short) <= close * need
        ? words.justEnough
        : short > 0
          ? words.massShort(mass(short), words.count(String(roundUp(short / payload))))
          : words.massOver(mass(-short)),
      words.have(words.count(String(left)), tell.words('truck-payload', payload), mass(have), mass(need)),
      assumed && assumed.assumed.length > 0 ? en.assumed([tell.titles(['truck-payload'])]) : '',
    ],
    [tell.value('tons-left', exact(need)), tell.value('loads-left', exact(roundUp(need / payload)))],
  );
}

const told = (scene: BookScene, lines: readonly string[], values: Reply['values']): Reply =>
  bookAnswer(scene, scene.job.book, {
    topic: 'loads-left',
    text: lines.filter(Boolean).join('\n'),
    values,
    given: [],
    next: [],
  });

const tidyPart = (number: number): string => String(Number(number.toPrecision(3)));
const percentOf = (share: number): string => `${tidyPart(Math.abs(share) * 100)} %`;
