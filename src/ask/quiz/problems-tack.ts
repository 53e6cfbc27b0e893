import { type Problem, steps, takes, timesOver } from './problem.ts';

const rates = ['gal/yd2', [0.04, 0.05, 0.06, 0.08, 0.1]] as const;

/** Tack: what is sprayed, what stays, what the tank covers. */
export const tackProblems: readonly Problem[] = [
  {
    id: 'tack-of-area',
    topics: ['tack'],
    level: 'easy',
    finds: 'tack-volume',
    draws: { 'tack-area': ['yd2', steps(200, 1000, 100)], 'tack-rate': rates },
    mistakes: {
      tenfold: timesOver(10),
      'tenth-part': timesOver(1 / 10),
      'two-coats': timesOver(2),
      'feet-not-yards': timesOver(9),
    },
  },
  {
    id: 'tack-gallons',
    topics: ['tack'],
    level: 'medium',
    finds: 'tack-volume',
    draws: {
      'patch-length': ['ft', steps(150, 600, 30)],
      'patch-width': ['ft', [9, 10, 11, 12]],
      'tack-rate': rates,
      'tack-coats': ['1', [1]],
    },
    mistakes: {
      'feet-not-yards': timesOver(9),
      'linear-yards': timesOver(3),
      'two-lanes': timesOver(2),
      'tenth-part': timesOver(1 / 10),
    },
  },
  {
    id: 'sprayed-rate',
    topics: ['tack'],
    level: 'medium',
    finds: 'tack-rate',
    draws: {
      'tack-residual': ['gal/yd2', [0.03, 0.04, 0.05, 0.06]],
      residue: ['%', [57, 60, 62, 65]],
      dilution: ['%', [100]],
    },
    mistakes: {
      'residual-for-sprayed': takes('tack-residual'),
      'times-not-divided': ({ fact }) => fact('tack-residual') * fact('residue'),
      'one-to-one': timesOver(2),
    },
  },
  {
    id: 'sprayed-rate-diluted',
    topics: ['tack'],
    level: 'hard',
    finds: 'tack-rate',
    draws: {
      'tack-residual': ['gal/yd2', [0.02, 0.03, 0.04]],
      residue: ['%', [57, 60, 65]],
      dilution: ['%', [50]],
    },
    mistakes: {
      'diluted-as-undiluted': ({ right, fact }) => right * fact('dilution'),
      'residual-for-sprayed': takes('tack-residual'),
      'residue-forgotten': ({ right, fact }) => right * fact('residue'),
    },
  },
  {
    id: 'what-stays',
    topics: ['tack'],
    level: 'medium',
    finds: 'tack-residual',
    draws: {
      'tack-rate': ['gal/yd2', [0.06, 0.08, 0.1, 0.12]],
      residue: ['%', [57, 60, 65]],
      dilution: ['%', [50, 60, 75]],
    },
    mistakes: {
      'sprayed-for-residual': takes('tack-rate'),
      'diluted-as-undiluted': ({ right, fact }) => right / fact('dilution'),
      'residue-forgotten': ({ right, fact }) => right / fact('residue'),
      'divided-not-times': ({ fact }) => fact('tack-rate') / fact('residue'),
      'one-to-one': timesOver(1 / 2),
    },
  },
  {
    id: 'water-in-tank',
    topics: ['tack'],
    level: 'easy',
    finds: 'water-volume',
    draws: { 'tack-volume': ['gal', [300, 400, 600, 800, 1000]], dilution: ['%', [60, 75, 80]] },
    settled: { 'tack-kind': 'emulsion' },
    mistakes: {
      'emulsion-for-water': ({ right, fact }) => fact('tack-volume') - right,
      'share-of-emulsion': ({ right, fact }) => right / fact('dilution'),
      'one-to-one': ({ fact }) => fact('tack-volume') / 2,
    },
  },
  {
    id: 'tank-run',
    topics: ['tack'],
    level: 'medium',
    finds: 'tack-run-length',
    draws: {
      'tank-volume': ['gal', [200, 300, 400, 500, 600]],
      'tack-rate': ['gal/yd2', [0.05, 0.06, 0.08, 0.1]],
      'spray-width': ['ft', [9, 10, 12]],
    },
    mistakes: {
      'feet-not-yards': timesOver(1 / 9),
      'linear-yards': timesOver(1 / 3),
      'two-lanes': timesOver(1 / 2),
      'half-width': timesOver(2),
    },
  },
  {
    id: 'distributor-speed',
    topics: ['tack'],
    level: 'hard',
    finds: 'distributor-speed',
    draws: {
      'pump-rate': ['gal/min', [20, 25, 30, 40]],
      'tack-rate': ['gal/yd2', [0.06, 0.08, 0.1]],
      'spray-width': ['ft', [10, 12]],
    },
    mistakes: {
      'feet-not-yards': timesOver(1 / 9),
      'linear-yards': timesOver(1 / 3),
      'half-width': timesOver(2),
      'two-lanes': timesOver(1 / 2),
    },
  },
  {
    id: 'tack-used',
    topics: ['tack'],
    level: 'hard',
    finds: 'tack-rate',
    draws: { 'tack-used': ['gal', steps(40, 120, 10)], 'tack-area': ['yd2', steps(800, 1600, 100)] },
    mistakes: {
      'feet-not-yards': timesOver(1 / 9),
      tenfold: timesOver(10),
      'tenth-part': timesOver(1 / 10),
      'two-coats': timesOver(1 / 2),
    },
  },
];
