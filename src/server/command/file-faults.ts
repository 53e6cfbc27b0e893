import { readFileSync } from 'node:fs';
import { readAgency } from '../../rules/agency.ts';
import { FileFault } from '../../rules/file-parts.ts';
import { knowledge } from '../../rules/knowledge.ts';
import { lineOf } from '../../rules/line-of.ts';
import { readRates } from '../../rules/rates.ts';
import { en } from '../wording/en.ts';
import type { Call } from './call.ts';
import type { Files } from './files.ts';

/** The first fault of each file a call names, with the line it stands on: what a reply, which has not seen the text, cannot tell. */
export function fileFaults(call: Pick<Call, 'agency' | 'rates'>, files: Files): string[] {
  return (['agency', 'rates'] as const).flatMap((option) => {
    const path = call[option];
    if (path === undefined) return [];
    try {
      if (option === 'agency') readAgency(files.agency, knowledge);
      else readRates(files.rates);
    } catch (fault) {
      if (!(fault instanceof FileFault)) throw fault;
      const text = readFileSync(path, 'utf8').replace(/^\ufeff/, '');
      return [en.command.fileFault(option, path, lineOf(text, fault.place), fault.place, fault.message)];
    }
    return [];
  });
}
