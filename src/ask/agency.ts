import { AgencyFault, overlay, readAgency } from '../rules/agency.ts';
import { knowledgeOf } from '../rules/knowledge.ts';
import { type Engine, engineOf } from './engine.ts';

/** Engines made for the last few agency files, so that a crew's own is laid over once. */
const made = new Map<string, Engine>();
const mostKept = 4;
const longestFile = 64 * 1024;

/** The engine with an agency's rules laid over its records, or what is wrong with the file and where. */
export function withAgency(engine: Engine, sent: unknown): Engine | AgencyFault {
  const text = JSON.stringify(sent) ?? '';
  if (text.length > longestFile) return new AgencyFault('', `the file is over ${longestFile} characters`);
  const before = made.get(text);
  if (before) return before;
  try {
    const agency = readAgency(sent, engine.knowledge);
    const own = engineOf(knowledgeOf(overlay(engine.knowledge.records, agency)));
    if (made.size >= mostKept) made.delete(made.keys().next().value!);
    made.set(text, own);
    return own;
  } catch (fault) {
    if (fault instanceof AgencyFault) return fault;
    throw fault;
  }
}
