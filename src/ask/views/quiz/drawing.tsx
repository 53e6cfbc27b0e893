import { wordsOf } from '../../quiz/drawing-words.ts';
import { hazardOf, type ZoneScene } from '../../quiz/hazards.ts';
import { hazardText } from '../../wording/quiz-hazards.en.ts';

/** The drawing of a question, or nothing. */
export function Drawing({ id }: { readonly id: string | undefined }) {
  const hazard = hazardOf(id);
  return hazard ? (
    <figure class="zone">
      <Zone scene={hazard.scene} />
    </figure>
  ) : null;
}

/** The drawing as a file of its own. */
export function drawingFile(id: string): string | undefined {
  const hazard = hazardOf(id);
  return hazard && String(<Zone scene={hazard.scene} file />);
}

const { labels } = hazardText;
const black = '#111';
const Person = ({ x, y, arm = false }: { readonly x: number; readonly y: number; readonly arm?: boolean }) => (
  <g fill={black}>
    <circle cx={x} cy={y} r="5" />
    <path d={`M${x - 6} ${y + 18} L${x - 4} ${y + 6} L${x + 4} ${y + 6} L${x + 6} ${y + 18} Z`} />
    {arm && <path d={`M${x + 4} ${y + 8} L${x + 14} ${y - 6}`} stroke={black} stroke-width="3" />}
  </g>
);
const Cone = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <path d={`M${x - 6} ${y + 6} L${x} ${y - 8} L${x + 6} ${y + 6} Z`} fill="#fff" stroke={black} stroke-width="2" />
);
const Box = (props: { readonly x: number; readonly y: number; readonly w: number; readonly h: number }) => (
  <rect x={props.x} y={props.y} width={props.w} height={props.h} fill="#fff" stroke={black} stroke-width="2" />
);
const Car = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <g>
    <Box x={x} y={y} w={28} h={48} />
    <path d={`M${x + 4} ${y + 36} H${x + 24} M${x + 4} ${y + 12} H${x + 24}`} stroke={black} stroke-width="2" />
  </g>
);
const Label = ({
  x,
  y,
  text,
  end = false,
}: {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly end?: boolean;
}) => (
  <text x={x} y={y} font-size="16" font-family="sans-serif" fill={black} text-anchor={end ? 'end' : 'start'}>
    {text}
  </text>
);
const Stem = ({ x, y, w, h }: { readonly x: number; readonly y: number; readonly w: number; readonly h: number }) => (
  <rect x={x} y={y} width={w} height={h} fill="url(#stone)" stroke={black} stroke-width="1" />
);

/**
 * One lane of a two-lane road closed, seen from above; the closed lane is the right one, and the crew lays up the page. From
 * the foot: signs, flagger, taper, buffer, truck, row, blade, roller.
 */
function Zone({ scene, file = false }: { readonly scene: ZoneScene; readonly file?: boolean }) {
  const over = scene.row === 'over-with-traffic';
  const off = scene.roller === 'drop-off';
  const ns = file ? { xmlns: 'http://www.w3.org/2000/svg' } : {};
  return (
    <svg {...ns} viewBox="0 0 360 640" role="img" aria-label={wordsOf(scene)}>
      <defs>
        <pattern id="stone" width="8" height="8" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="2" r="1.4" fill={black} />
          <circle cx="6" cy="6" r="1.4" fill={black} />
        </pattern>
      </defs>
      <rect x="0" y="0" width="360" height="640" fill="#fff" />
      <path d="M90 0 V640 M250 0 V640" stroke={black} stroke-width="3" />
      <path d="M170 0 V640" stroke={black} stroke-width="3" stroke-dasharray="16 12" />
      {/* The shoulder falls away at the top right: short strokes down the slope. */}
      <path
        d={Array.from({ length: 12 }, (_, at) => `M252 ${10 + at * 16} l14 8`).join(' ')}
        stroke={black}
        stroke-width="2"
      />
      <Label x={274} y={30} text={labels.edge} />
      {/* Mat behind the blade, roller on it. */}
      <Stem x={176} y={20} w={70} h={150} />
      <g>
        <Box x={off ? 214 : 186} y={70} w={50} h={14} />
        <Box x={off ? 224 : 196} y={84} w={30} h={34} />
        <Box x={off ? 214 : 186} y={118} w={50} h={14} />
      </g>
      <Label x={274} y={106} text={labels.roller} />
      {/* Blade and row. */}
      <path d="M182 214 L240 190" stroke={black} stroke-width="6" />
      <Box x={198} y={206} w={26} h={48} />
      <Label x={274} y={214} text={labels.blade} />
      <Stem x={over ? 150 : 184} y={262} w={over ? 36 : 22} h={70} />
      <Label x={274} y={290} text={labels.row} />
      {/* The truck, its bed to the blade. */}
      <Box x={196} y={340} w={34} h={44} />
      <Box x={200} y={384} w={26} h={16} />
      <path d="M206 334 l7 -9 l7 9 Z" fill={black} />
      <Label x={274} y={372} text={labels.truck} />
      {scene.backing === 'with-spotter' && <Person x={240} y={316} arm />}
      {/* Buffer. */}
      {scene.buffer === 'occupied' && (
        <>
          <Box x={186} y={420} w={28} h={44} />
          <path d="M190 434 H210" stroke={black} stroke-width="2" />
          <Person x={234} y={430} />
        </>
      )}
      <path d="M262 408 V480 M256 408 H268 M256 480 H268" stroke={black} stroke-width="2" />
      <Label x={274} y={450} text={labels.buffer} />
      {/* Taper, and cones along the line beside the work. */}
      {[190, 260, 330, 400, 470].map((y) => (over && y === 260 ? null : <Cone x={166} y={y} />))}
      {[0, 1, 2, 3].map((at) => (
        <Cone x={182 + at * 20} y={486 + at * 10} />
      ))}
      <Label x={274} y={508} text={labels.taper} />
      {/* Flagger, traffic, signs. */}
      {scene.flagger === 'shoulder' && <Flagger x={268} y={540} />}
      {scene.flagger === 'with-the-crew' && <Flagger x={230} y={296} />}
      {scene.flagger === 'in-live-lane' && <Flagger x={130} y={520} />}
      {scene.flagger === 'shoulder' && <Label x={290} y={556} text={labels.flagger} />}
      <Car x={112} y={scene.flagger === 'in-live-lane' ? 440 : 300} />
      <Car x={112} y={90} />
      <Car x={196} y={570} />
      <Label x={82} y={330} text={labels.open} end />
      {scene.signs === 'out' && (
        <>
          {[586, 606, 626].map((y) => (
            <path d={`M268 ${y} l9 -9 l9 9 l-9 9 Z`} fill="#fff" stroke={black} stroke-width="2" />
          ))}
          <Label x={298} y={612} text={labels.signs} />
        </>
      )}
      <Label x={4} y={630} text={labels.scale} />
    </svg>
  );
}

const Flagger = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <g>
    <Person x={x} y={y} />
    <path d={`M${x + 6} ${y + 16} L${x + 14} ${y - 14}`} stroke={black} stroke-width="2" />
    <path d={`M${x + 10} ${y - 24} h8 l5 5 v8 l-5 5 h-8 l-5 -5 v-8 Z`} fill={black} />
  </g>
);
