import { FileFault } from '../rules/file-parts.ts';
import { namingAgency, withAgency } from './agency.ts';
import { ratedReply, ratesIn } from './rates/answer.ts';
import { refuse } from './refusal.ts';
import type { FilesPart } from './scene.ts';
import { en } from './wording/en.ts';
import { ratesTalk } from './wording/rates.en.ts';

/** Answers by files that come with a request, as a part of the engine; a file with a fault is answered with the fault alone. */
export const filesPart: FilesPart = {
  ruled(engine, sent, job, answered) {
    const own = withAgency(engine, sent);
    if (own instanceof FileFault) return refuse('no-rule', en.agencyFault(own.place, own.message), job, engine);
    return namingAgency(answered(own), sent);
  },
  rated(engine, request, job, answered) {
    const rates = ratesIn(request.rates);
    if (rates instanceof FileFault) return refuse('no-rule', ratesTalk.fault(rates.place, rates.message), job, engine);
    return ratedReply(engine, request, job, rates, answered);
  },
};
