import type { LayoutKind, Part, Plan } from './layout-plan.ts';
import { manual } from './manual.ts';
import type { Source } from './shapes.ts';

const drawing: Source = {
  document: 'standard drawing 102.603',
  issuer: 'issuer not shown',
  place: 'order of the signs',
  seen: 'read',
};

const signs = (nearest: Part, ...others: readonly Part[]): readonly Part[] => [nearest, ...others];
const flaggerSigns = signs(
  { is: 'post', part: 'flagger-ahead', after: 'sign-spacing-a', sign: true },
  { is: 'post', part: 'one-lane-road-ahead', after: 'sign-spacing-b', sign: true },
  { is: 'post', part: 'road-work-ahead', after: 'sign-spacing-c', sign: true },
);

/** The three layouts of a blade patch, each told from the work outward. */
export const plans: Readonly<Record<LayoutKind, Plan>> = {
  flaggers: {
    kind: 'flaggers',
    length: 'zone-length',
    shows: ['zone-length-turning', 'one-lane-length'],
    approach: [
      { is: 'stretch', part: 'buffer', length: 'buffer-length' },
      { is: 'stretch', part: 'flagger-taper', length: 'flagger-taper', spacing: 'short-taper-spacing' },
      { is: 'post', part: 'flagger' },
      ...flaggerSigns,
    ],
    past: [
      { is: 'stretch', part: 'downstream-taper', length: 'downstream-taper', spacing: 'short-taper-spacing' },
      { is: 'post', part: 'flagger' },
      ...flaggerSigns,
    ],
    spacing: 'device-spacing-tangent',
    with: [{ part: 'paddle', perPost: 'flagger' }],
    mayAdd: ['prepared-to-stop', 'end-road-work'],
    sources: [drawing, manual('Figure 6P-10', 'memory')],
  },
  'lane-closed': {
    kind: 'lane-closed',
    length: 'closure-length',
    shows: [],
    approach: [
      { is: 'stretch', part: 'buffer', length: 'buffer-length' },
      { is: 'stretch', part: 'merging-taper', length: 'merging-taper', spacing: 'long-taper-spacing' },
      { is: 'post', part: 'arrow-board' },
      { is: 'post', part: 'lane-ends', after: 'sign-spacing-a', sign: true },
      { is: 'post', part: 'lane-closed-ahead', after: 'sign-spacing-b', sign: true },
      { is: 'post', part: 'road-work-ahead', after: 'sign-spacing-c', sign: true },
    ],
    past: [{ is: 'stretch', part: 'downstream-taper', length: 'downstream-taper', spacing: 'short-taper-spacing' }],
    spacing: 'device-spacing-tangent',
    with: [],
    mayAdd: ['end-road-work'],
    sources: [manual('Figure 6P-33', 'memory')],
  },
  shoulder: {
    kind: 'shoulder',
    length: 'shoulder-zone-length',
    shows: [],
    approach: [
      { is: 'stretch', part: 'buffer', length: 'buffer-length' },
      { is: 'stretch', part: 'shoulder-taper', length: 'shoulder-taper', spacing: 'long-taper-spacing' },
      { is: 'post', part: 'shoulder-closed-ahead', after: 'sign-spacing-a', sign: true },
      { is: 'post', part: 'road-work-ahead', after: 'sign-spacing-b', sign: true },
    ],
    past: [],
    spacing: 'device-spacing-tangent',
    with: [],
    mayAdd: ['end-road-work'],
    sources: [manual('section 6N.06 and Figure 6P-5', 'memory')],
  },
};
