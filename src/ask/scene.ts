import type { SheetOfBook } from './book/talk-reply.ts';
import type { Engine } from './engine.ts';
import type { Voice } from './judging.ts';
import type { Priced } from './rates/answer.ts';
import type { CardHit, Job, Reply, Request } from './reply.ts';
import type { Heard } from './survey/hear.ts';
import type { InForce } from './survey/in-force.ts';
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

/**
 * Parts of the engine that most figures do without, so that a page can load them apart from the rest. Where one that is
 * needed is not there, the reply is none (`kind` is `unknown`), and never another one than with it.
 */
export interface Parts {
  /** Without it replies tell no cards. */
  readonly cards?: CardPart;
  readonly quiz: (scene: Scene) => Reply;
  /** Depth readings that come with a question. */
  readonly readings?: ReadingsPart;
  /** What is said of the patches of a job. */
  readonly book?: BookPart;
  /** Rules of an agency and rates of machines that come with a request. */
  readonly files?: FilesPart;
}

export interface ReadingsPart {
  readonly hear: (engine: Engine, request: Request, job: Job) => Heard | Reply | undefined;
  readonly with: (heard: Heard, understood: Understanding) => InForce | undefined;
  /** True for a figure that readings give. */
  readonly gives: (quantity: string) => boolean;
  /** Asks for what is lacking to work with the readings, or tells them with the answer. */
  readonly tell: (scene: Scene, inForce: InForce, answered: () => Reply) => Reply;
}

export interface BookPart {
  readonly reply: (
    engine: Engine,
    request: Request,
    job: Job,
    heard: Understanding,
    sheetOf?: SheetOfBook,
  ) => Reply | undefined;
}

export interface FilesPart {
  /** Answers by the rules of an agency, or says what is wrong with its file. */
  readonly ruled: (engine: Engine, agency: unknown, job: Job, answered: (own: Engine) => Reply) => Reply;
  /** Answers by the rates that a request brings, or says what is wrong with their file. */
  readonly rated: (engine: Engine, request: Request, job: Job, answered: (priced?: Priced) => Reply) => Reply;
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
