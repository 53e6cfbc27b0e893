import { restsOn, solve } from '../calc/solve.ts';
import { AgencyFault } from '../rules/agency.ts';
import { conflicts } from '../rules/conflicts.ts';
import { startOf } from '../rules/knowledge.ts';
import { namingAgency, withAgency } from './agency.ts';
import { answer } from './answer.ts';
import { conversion } from './convert.ts';
import { emergencyIn } from './emergency.ts';
import { type Engine, engine as shipped } from './engine.ts';
import { factsOfJob, jobFacts, knownFrom } from './facts.ts';
import { goalText } from './goal.ts';
import { emptyJob, readJob } from './job.ts';
import { longestQuestion } from './longest.ts';
import { patchesReply } from './patches.ts';
import { problemWith } from './problems.ts';
import { quizReply } from './quiz/reply.ts';
import { blank, refuse } from './refusal.ts';
import type { Job, Reply, Request } from './reply.ts';
import { type Understanding, understand } from './understand.ts';
import { unitsOf } from './units.ts';
import { en } from './wording/en.ts';

export { refuse };

/**
 * Answers a typed question. Pure and synchronous: the same request gives the same reply. The reply's `job` is to be sent
 * with the next question. Never throws on what a person sends; a question that cannot be answered gets a reply that says why.
 */
export function ask(request: Request): Reply {
  return askWith(shipped, request);
}

/** A job as it was sent back, with only the facts that the records know. Undefined for one that cannot be read. */
export function knownJob(sent: unknown, { knowledge }: Engine = shipped): Job | undefined {
  const job = readJob(sent);
  return job && { ...job, facts: jobFacts(factsOfJob(job, knowledge)) };
}

/** The same over another knowledge base. */
export function askWith(engine: Engine, request: Request): Reply {
  const job = knownJob(request.job, engine);
  const emergency = emergencyIn(request.question, engine, job ?? emptyJob);
  if (emergency) return emergency;
  const notes = [job ? undefined : en.jobDropped, request.lang === 'es' ? en.englishOnly : undefined].filter(
    (note) => note !== undefined,
  );
  const reply = ruledBy(engine, request, job ?? emptyJob);
  return notes.length ? { ...reply, text: [...notes, reply.text].join('\n') } : reply;
}

/** By the agency's rules where the request brings them; a file with a fault is answered with the fault alone. */
function ruledBy(engine: Engine, request: Request, job: Job): Reply {
  if (request.agency === undefined || request.agency === null) return answered(engine, request, job);
  const own = withAgency(engine, request.agency);
  if (own instanceof AgencyFault) return refuse('no-rule', en.agencyFault(own.place, own.message), job, engine);
  return namingAgency(answered(own, request, job), request.agency);
}

function answered(engine: Engine, request: Request, job: Job): Reply {
  const { question } = request;
  if (typeof question !== 'string' || question.trim() === '') return refuse('no-goal', en.empty, job, engine);
  if (question.length > longestQuestion) return refuse('out-of-scope', en.tooLong(longestQuestion), job, engine);

  const understood = upToDate(engine, understand(engine, request, job));
  const { goal, facts, turn, stage, units, commands } = understood;
  const next: Job = {
    v: 1,
    turn,
    facts: jobFacts(facts),
    ...(goal ? { goal: goalText(goal) } : {}),
    ...(stage ? { stage } : {}),
    ...(units ? { units } : {}),
  };
  if (commands.has('start-over') && understood.fresh.length === 0)
    return {
      ...blank,
      kind: 'card',
      topic: 'start-over',
      text: en.startedOver,
      rules: { version: engine.knowledge.version },
      job: emptyJob,
    };
  const solved = solve(engine.knowledge.network, startOf(engine.knowledge, knownFrom(facts), understood.open));
  const voice = {
    knowledge: engine.knowledge,
    solved,
    unit: unitsOf(engine, understood),
    isGiven: (id: string) => facts.some((fact) => fact.quantity === id),
  };
  const scene = { engine, understood, voice, job: next, request };
  if (commands.has('quiz')) return quizReply(scene);
  return conversion(scene) ?? patchesReply(scene) ?? problemWith(scene) ?? answer(scene);
}

/** What was said before gives way to what is said now, where the two cannot both be so: a new area takes the place of the old length and width. */
function upToDate({ knowledge }: Engine, understood: Understanding): Understanding {
  let { facts } = understood;
  for (let tries = 0; tries < 3 && facts.some(({ fresh }) => !fresh) && facts.some(({ fresh }) => fresh); tries++) {
    const solved = solve(knowledge.network, startOf(knowledge, knownFrom(facts)));
    const [clash] = conflicts(knowledge, solved, understood.goal?.id);
    const roots = clash && restsOn(solved, [clash.method.finds, ...clash.method.needs]);
    const kept = facts.filter((fact) => fact.fresh || !roots?.has(fact.quantity));
    if (!roots || kept.length === facts.length || !kept.some((fact) => fact.fresh && roots.has(fact.quantity))) break;
    facts = kept;
  }
  return { ...understood, facts };
}
