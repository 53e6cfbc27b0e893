import type { Seen, Source } from './shapes.ts';

/** The manual of traffic control in force in the United States, seen in restatements that name it. */
export function manual(place: string, seen: Seen = 'restated'): Source {
  return {
    document: 'Manual on Uniform Traffic Control Devices',
    issuer: 'FHWA',
    edition: '11th ed., 2023',
    place,
    seen,
  };
}

/** An earlier edition, the last that printed metric figures; read as scanned pages. */
export function manual2003(place: string, seen: Seen = 'read'): Source {
  return { document: 'Manual on Uniform Traffic Control Devices', issuer: 'FHWA', edition: '2003', place, seen };
}

/** California's adoption of the manual, which adds tables of its own. */
export function californiaManual(place: string): Source {
  return { document: 'California MUTCD', issuer: 'Caltrans', edition: '2026', place, seen: 'restated' };
}

/** Iowa's rules for flagging: a State's, for want of federal figures. */
export function iowa(document: string, place?: string): Source {
  return { document, issuer: 'Iowa DOT', seen: 'read', ...(place ? { place } : {}) };
}
