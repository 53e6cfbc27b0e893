import type { Seen, Source } from './shapes.ts';

/** Army manual with the severity classes from which the civil pavement condition index grew. */
export function armyPci(place: string, seen: Seen = 'read'): Source {
  const document = 'TM 5-623, Pavement Maintenance Management';
  return { document, issuer: 'US Department of the Army', edition: 'November 1982', place, seen };
}

/** The civil standard of the pavement condition index; not read itself. */
export function astmPci(place: string, seen: Seen): Source {
  return { document: 'ASTM D6433, pavement condition index surveys', issuer: 'ASTM International', place, seen };
}

/** The federal manual for naming and rating distress, seen in restatements that name it. */
export function ltpp(place: string): Source {
  const document = 'Distress Identification Manual for the LTPP, FHWA-HRT-13-092';
  return { document, issuer: 'FHWA', edition: '5th rev., 2014', place, seen: 'restated' };
}

/** Grader chapter of the Army's earthmoving manual, since replaced by TM 3-34.62. */
export const armyGrader: Source = {
  document: 'FM 5-434, Earthmoving Operations',
  issuer: 'US Department of the Army',
  edition: '15 June 2000',
  place: 'ch. 4, paras 4-1 to 4-5',
  seen: 'read',
};

/** Guide specification for hot mix. */
export const guideSpecification: Source = {
  document: 'UFGS 02749, guide specification for hot-mix asphalt',
  issuer: 'US Department of Defense',
  place: 'compaction and joints',
  seen: 'read',
};

/** State manual: what suits which distress. */
export const texasDistress: Source = {
  document: 'Maintenance Operations Manual',
  issuer: 'Texas DOT',
  place: 'flexible pavement distress maintenance',
  seen: 'read',
};

/** How an emulsion looks as it breaks; the page read was a copy that named no issuer. */
export const tackColour: Source = {
  document: 'trade questions and answers on tack',
  place: 'break and set',
  seen: 'restated',
};

/** Federal rules for machines on construction sites. */
export function osha(place: string): Source {
  return { document: '29 CFR Part 1926', issuer: 'OSHA', place, seen: 'restated' };
}

/** Federal rule for what is cut or milled in the dry. */
export const oshaSilica: Source = { document: '29 CFR 1926.1153', issuer: 'OSHA', place: 'Table 1', seen: 'restated' };

/** What is widely taught and was not found in print. */
export const taught: Source = { document: 'widely taught, no text seen', seen: 'memory' };
