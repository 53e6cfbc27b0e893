import type { Source } from './shapes.ts';

/** Documents that several records rest on, each written once. `place` is where in it the figure stands. */
const manual =
  (document: string, issuer: string, edition?: string) =>
  (place: string): Source => ({ document, issuer, ...(edition ? { edition } : {}), place, seen: 'read' });

export const navyBasic = manual('NAVEDTRA 14081, Equipment Operator, Basic', 'US Navy', '1994');
export const navyAdvanced = manual('NAVEDTRA 14080, Equipment Operator training course', 'US Navy');
export const armyPaving = manual('Subcourse EN5459', 'US Army Engineer School', '6');
export const fm5436 = manual('FM 5-436, Paving and Surfacing Operations', 'US Department of the Army', '28 April 2000');
export const virginia = manual('Asphalt certification study guide', 'Virginia DOT', '2011 v1.0');
export const everett = manual('Special Provisions, section 5-04.3', 'City of Everett, Washington');
export const ufcRepair = manual(
  'UFC 3-270-01, Asphalt Maintenance and Repair',
  'US Department of Defense',
  '15 March 2001',
);
export const ufcFlexible = manual(
  'UFC 3-250-03, Standard Practice Manual for Flexible Pavements',
  'US Department of Defense',
  '15 May 2001',
);
export const bladeSpreading = manual(
  'TM 5-822-14 / AFJMAN 32-1019, Soil Stabilization for Pavements',
  'US Departments of the Army and the Air Force',
);
export const florida = manual('Standard Specifications for Road and Bridge Construction', 'Florida DOT');
export const californiaEmulsion = manual('Standard Specifications, section 94', 'California DOT', '2019 copy');
export const napa = manual('Asphalt Pavement Construction Handbook', 'National Asphalt Pavement Association');
export const pavingHandbook = manual(
  'Hot-Mix Asphalt Paving Handbook 2000',
  'AASHTO, FAA, FHWA, NAPA and US Army Corps of Engineers',
  '2000',
);
export const ncatForum = manual('Asphalt Forum, state replies on density', 'NCAT', 'spring 2019');
export const iowaVolume = manual('Materials I.M. T102C, volume correction of asphalt', 'Iowa DOT');
export const astmVolume = manual('ASTM D4311/D4311M, volume correction of asphalt', 'ASTM International', '2015');
export const texasDesign = manual('Roadway Design Manual', 'Texas DOT');
export const safetyEdge = manual('The Safety Edge, FHWA-SA-09-023', 'FHWA', '2009');
export const dropOffHazards = manual('Edge Drop-Off Hazards', 'US Army SDDC Transportation Engineering Agency');
export const niosh = manual('Preventing Injuries When Working with Ride-On Roller/Compactors', 'NIOSH');
export const oshaRollover = manual('SHIB 09-29-2008, Compactor Rollover Hazard', 'OSHA', '29 September 2008');
export const countyRolling = manual('Paving specification, rolling clauses', 'Indian River County, Florida');
export const rollerArticle = manual('Pavers and rollers, reprinted trade article', 'issuer not shown');

export const floridaEstimates = manual('Asphalt final estimates, training slides', 'Florida DOT');
export const thickLifts = manual('Paving Thick Lifts, implementation spotlight', 'driveasphalt.org');
export const federalWeights = manual('Size and weight questions and answers, 23 CFR 658.17', 'FHWA');
/** The report's conclusions, read in a mix-design course binder that quotes them. */
export const liftToStone: Source = {
  document: 'NCHRP Report 531',
  issuer: 'Transportation Research Board',
  edition: '2004',
  place: 'conclusions',
  seen: 'restated',
};

/** A figure recalled from a document that was not at hand. */
export const fromMemory = (document: string): Source => ({ document, seen: 'memory' });
