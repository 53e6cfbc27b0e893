import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'defect-place',
  title: 'place',
  because: 'Where height, weight or something in the road is limited, a layer on top does harm.',
  sources: [commonPractice],
  default: 'open-road',
  options: [
    {
      id: 'pipe',
      title: 'settled over a pipe or at a bridge end',
      cues: ['pipe|culvert settle|sink|sunk|dip|over', 'bridge+end', 'approach|abutment settle|sunk|dip|slab'],
    },
    { id: 'under-bridge', title: 'under a bridge', cues: ['under|underneath|below+bridge|overpass', 'underpass'] },
    {
      id: 'bridge-deck',
      title: 'on a bridge deck',
      cues: ['on|onto|across+bridge', 'bridge+deck', 'bridge+crack|rut|hole', 'on|onto+overpass'],
    },
    { id: 'curb', title: 'beside a curb', cues: ['curb', 'gutter', 'kerb'] },
    {
      id: 'slide',
      title: 'where the ground is moving',
      cues: ['road|ground|hill|bank slide', 'landslide', 'sinkhole', 'bank gone|wash', 'ground move'],
    },
    {
      id: 'railroad',
      title: 'at a railroad crossing',
      cues: ['railroad', 'railway', 'train|rail+track', 'rail+cross'],
    },
    { id: 'open-road', title: 'open road', cues: ['on+open+road'] },
  ],
});
