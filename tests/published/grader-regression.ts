import type { Regression } from './premix-regression.ts';

const blade = (feet: number, angle: number) =>
  ({ 'blade-length': [feet, 'ft'], 'blade-angle': [angle, 'deg'] }) as const;
const strips = { 'blade-reach': [10.392, 'ft'], 'blade-overlap': [1, 'ft'] } as const;
const crown = { 'cross-slope': [2, '%'], 'old-cross-slope': [1.2, '%'], 'patch-width': [11, 'ft'] } as const;

/** Worked out apart from this project, by the formula in `what`. */
export const graderRegressions: readonly Regression[] = [
  {
    what: '6 passes of 0.25 mi at 3 mph, 60 %: P D ÷ (S E)',
    given: {
      'grader-passes': [6, '1'],
      'work-distance': [0.25, 'mi'],
      'grader-speed': [3, 'mph'],
      'grader-efficiency': [60, '%'],
    },
    finds: 'grading-time',
    worked: [0.8333, 'h'],
    within: 0.0001,
  },
  {
    what: '6 passes of 0.4 km at 5 km/h, 60 %',
    given: {
      'grader-passes': [6, '1'],
      'work-distance': [0.4, 'km'],
      'grader-speed': [5, 'km/h'],
      'grader-efficiency': [60, '%'],
    },
    finds: 'grading-time',
    worked: [0.8, 'h'],
    within: 0.0001,
  },
  {
    what: '6 passes of 200 ft at 264 ft/min with turns of half a minute',
    given: {
      'grader-passes': [6, '1'],
      'work-distance': [200, 'ft'],
      'grader-speed': [264, 'ft/min'],
      'turn-time': [0.5, 'min'],
    },
    finds: 'grading-time',
    worked: [7.545, 'min'],
    within: 0.001,
  },
  {
    what: '6 passes of 248.3 ft at 220 ft/min with turns of half a minute',
    given: {
      'grader-passes': [6, '1'],
      'work-distance': [248.3, 'ft'],
      'grader-speed': [220, 'ft/min'],
      'turn-time': [0.5, 'min'],
    },
    finds: 'grading-time',
    worked: [9.771, 'min'],
    within: 0.001,
  },
  { what: '12 ft blade at 30°', given: blade(12, 30), finds: 'blade-reach', worked: [10.392, 'ft'], within: 0.001 },
  { what: '12 ft blade at 45°', given: blade(12, 45), finds: 'blade-reach', worked: [8.485, 'ft'], within: 0.001 },
  { what: '14 ft blade at 30°', given: blade(14, 30), finds: 'blade-reach', worked: [12.124, 'ft'], within: 0.001 },
  { what: '12 ft blade at 15°', given: blade(12, 15), finds: 'blade-reach', worked: [11.59, 'ft'], within: 0.005 },
  { what: '14 ft blade at 50°', given: blade(14, 50), finds: 'blade-reach', worked: [9, 'ft'], within: 0.005 },
  {
    what: 'strips for 11 ft',
    given: { ...strips, 'patch-width': [11, 'ft'] },
    finds: 'blade-passes',
    worked: [2, '1'],
    within: 0,
  },
  {
    what: 'strips for 19.5 ft: the first gives up no overlap',
    given: { ...strips, 'patch-width': [19.5, 'ft'] },
    finds: 'blade-passes',
    worked: [2, '1'],
    within: 0,
  },
  {
    what: '3 mph × 9.392 ft × 5,280 × 0.60',
    given: { ...strips, 'grader-speed': [3, 'mph'], 'grader-efficiency': [60, '%'] },
    finds: 'grading-area-rate',
    worked: [9918, 'yd2/h'],
    within: 1,
  },
  {
    what: '5 km/h × 2.9 m × 0.8',
    given: {
      'blade-reach': [3.2, 'm'],
      'blade-overlap': [0.3, 'm'],
      'grader-speed': [5, 'km/h'],
      'grader-efficiency': [80, '%'],
    },
    finds: 'grading-area-rate',
    worked: [11600, 'm2/h'],
    within: 0.01,
  },
  {
    what: 'taper of an inch at 25 ft an inch',
    given: { 'patch-depth': [1, 'in'], 'end-taper-ratio': [25, 'ft/in'] },
    finds: 'end-taper-length',
    worked: [25, 'ft'],
    within: 1e-9,
  },
  {
    what: 'taper of an inch at 1:50, 4.167 ft',
    given: { 'patch-depth': [1, 'in'], 'end-taper-ratio': [50 / 12, 'ft/in'] },
    finds: 'end-taper-length',
    worked: [4.167, 'ft'],
    within: 0.001,
  },
  {
    what: 'mix in a wedge of 1 in × 25 ft × 11 ft at 145 lb/ft³',
    given: {
      'patch-depth': [1, 'in'],
      'end-taper-length': [25, 'ft'],
      'patch-width': [11, 'ft'],
      'unit-weight': [145, 'lb/ft3'],
    },
    finds: 'end-taper-mass',
    worked: [0.831, 'ton'],
    within: 0.001,
  },
  {
    what: 'mix in a feather of 20 ft from 1.5 in, 12 ft wide, at 110',
    given: {
      'patch-depth': [1.5, 'in'],
      'end-taper-length': [20, 'ft'],
      'patch-width': [12, 'ft'],
      'unit-weight': [110, 'lb/yd2/in'],
    },
    finds: 'end-taper-mass',
    worked: [1.1, 'ton'],
    within: 0.006,
  },
  {
    what: 'fall of 2 % over 12 ft',
    given: { 'cross-slope': [2, '%'], 'patch-width': [12, 'ft'] },
    finds: 'crown-drop',
    worked: [2.88, 'in'],
    within: 1e-9,
  },
  {
    what: 'fall of 1.5 % over 11 ft',
    given: { 'cross-slope': [1.5, '%'], 'patch-width': [11, 'ft'] },
    finds: 'crown-drop',
    worked: [1.98, 'in'],
    within: 1e-9,
  },
  {
    what: 'an inch in 7 ft',
    given: { 'crown-drop': [1, 'in'], 'patch-width': [7, 'ft'] },
    finds: 'cross-slope',
    worked: [1.19, '%'],
    within: 0.01,
  },
  {
    what: 'from 1.2 to 2 % over 11 ft: build-up',
    given: crown,
    finds: 'crown-build',
    worked: [1.056, 'in'],
    within: 1e-9,
  },
  { what: 'its average depth', given: crown, finds: 'crown-wedge-depth', worked: [0.528, 'in'], within: 1e-9 },
  {
    what: 'its mix in 100 ft at 145 lb/ft³',
    given: { ...crown, 'patch-length': [100, 'ft'], 'unit-weight': [145, 'lb/ft3'] },
    finds: 'crown-wedge-mass',
    worked: [3.51, 'ton'],
    within: 0.01,
  },
];
