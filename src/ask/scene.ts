import type { Engine } from './engine.ts';
import type { Voice } from './judging.ts';
import type { CardHit, Job, Reply, Request } from './reply.ts';
import type { Understanding } from './understand.ts';

/** All that an answer is made from. */
export interface Scene {
  readonly engine: Engine;
  readonly understood: Understanding;
  readonly voice: Voice;
  /** The job as it goes back, facts and goal of this turn included. */
  readonly job: Job;
  readonly request: Request;
  readonly parts: Parts;
}

/** Parts of the engine that no figure needs, so that a page can load them apart from the rest. */
export interface Parts {
  /** Without it replies tell no cards. */
  readonly cards?: CardPart;
  readonly quiz: (scene: Scene) => Reply;
}

/** What answers want of the cards. */
export interface CardPart {
  /** The card that a text asks for by name, as a choice sends it. */
  readonly named: (question: unknown) => string | undefined;
  /** The card that answers a question better than what it was taken to be after. */
  readonly instead: (scene: Scene) => string | undefined;
  /** The card that tells about a record, given as `kind/id`, where a question about it gives nothing to judge or to work with. */
  readonly about: (scene: Scene, record: string) => string | undefined;
  /** Answers with a card. */
  readonly reply: (scene: Scene, id: string) => Reply;
  /** The cards that bear on records given as `kind/id`. */
  readonly linked: (addresses: readonly string[], voice: Voice) => CardHit[];
  readonly search: (scene: Scene, most?: number) => CardsFound;
}

/** What a search gives: cards that answer, or, where none does, the nearest ones to ask about. */
export interface CardsFound {
  readonly hits: readonly CardHit[];
  readonly didYouMean: readonly CardHit[];
  /** How many of the words asked with the cards know as they were typed. */
  readonly heard: number;
}
