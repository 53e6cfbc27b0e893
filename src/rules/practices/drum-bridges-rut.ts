import rutRolling from '../choices/rut-rolling.ts';
import { practice } from '../shapes.ts';
import { florida, ufcRepair } from '../sources-craft.ts';

export default practice({
  id: 'drum-bridges-rut',
  title: 'a rut is rolled inside first',
  on: rutRolling,
  because:
    'A stiff drum rides on the high sides and never reaches the mix in the rut; traffic packs it later, and it is low again.',
  sources: [
    florida('section 330: pneumatic tires for all patching and levelling'),
    ufcRepair('7, p. 40: pneumatic works best in ruts and depressions'),
  ],
  cues: [
    'rut roll|roller|drum|steel|rolled @check',
    'drum|steel bridge rut',
    'roll|rolled rut how|which',
    'rubber|pneumatic|steel tire roller rut|patch',
    'why rut low|roll|rolled',
  ],
  judged: {
    'in-rut-first': { status: 'ok', text: 'Rolled in the rut first, then across.' },
    tires: { status: 'ok', text: 'Rubber tires reach down into the rut.' },
    'drum-across': { status: 'caution', text: 'A steel drum bridges the rut and leaves the mix in it loose.' },
  },
  cannotTell: 'Tell me how the rut is rolled: in it first, with rubber tires, or straight across with the drum.',
  fix: 'Fill it in level lifts and pack each one in the rut, with tires or a narrow drum, before rolling across.',
});
