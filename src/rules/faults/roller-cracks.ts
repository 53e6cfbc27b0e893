import crackLook from '../choices/crack-look.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { pavingHandbook } from '../sources-craft.ts';

export default fault({
  id: 'roller-cracks',
  title: 'cracks behind the roller',
  seen: 'fine cracks across the mat right behind the roller',
  because: 'A mat too tender or too stiff for the drum on it moves, and opens instead of packing.',
  sources: [pavingHandbook('section 18'), commonPractice],
  cues: [
    'checks roller|drum|mat|behind|patch|lift -truck -crew',
    'hairline|hair|check|little|tiny+checks|crack',
    'crack behind|after|under|follow roller|drum|roll|rolled',
    'hairline|small|little|tiny|check+crack mat|patch|roll|roller|new|fresh',
    'roller|drum|roll leave|left|make|made crack',
    'new|fresh+mat|patch crack -half-moon -slid -slide',
    'crack mat -old -base -road',
    'check|hairline|hair crack roller|drum|roll|rolled|behind',
    'checking drum|roller|behind',
  ],
  causes: [
    { text: 'mat too hot and tender', remedy: 'wait a little, then roll', source: pavingHandbook('section 18') },
    {
      text: 'roller too heavy, or vibrating on a thin lift',
      remedy: 'static, a lighter roller',
      rule: 'static-thin-lift',
      source: pavingHandbook('section 18'),
    },
    {
      text: 'rolled on after it had gone cold',
      remedy: 'stop; it packs no more',
      rule: 'roller-keeps-up',
      source: commonPractice,
    },
    { text: 'rolling too fast', remedy: 'slow down', rule: 'roller-speed', source: pavingHandbook('section 18') },
  ],
  now: 'Stop, let it firm up, then roll slowly without vibration, rubber tires best; fine cracks close under them.',
  nextTime: 'Find the heat at which this mix stands the drum, on the first strip.',
  apart: {
    by: crackLook,
    heard: ['crack mat|patch -roll -roller -behind -drum -hairline'],
    leads: { 'half-moon': { fault: 'slippage' } },
  },
  examples: {
    finds: ['hairline cracks right after rolling', 'drum leaves little cracks across the mat'],
    not: ['crescent cracks where trucks brake', 'alligator cracking in the old lane'],
  },
});
