// biome-ignore-all format: written by `npm run generate`; do not edit.
import { emergencies } from './emergencies.generated.ts';
import type { Card } from './search/card.ts';

export const cards: readonly Card[] = [
{
  "id": "ambulance-through",
  "title": "letting an ambulance through",
  "kind": "traffic",
  "text": "All stop, at both ends, by radio. Machines pull away from the open lane, people step clear, and the flagger waves it through first, before any car.\nThe one who sees it first calls it, with the direction: there may be a second one behind, or one from the other end.\nDo not send the waiting line in front of it, and do not bring it over a row or bare tack. Nothing moves again until both flaggers say clear.",
  "asks": [
    "ambulance wants by",
    "fire truck coming",
    "let emergency vehicles through",
    "siren behind us",
    "police car needs through"
  ],
  "links": [
    "practice/flagger-count",
    "step/brief-crew"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "around-the-grader",
  "title": "working round the grader",
  "kind": "safety",
  "text": "Stay out of it: the hinge, the swing of both blade ends, and everything behind. Operator's eye or horn first, then come up from the side he looks to.\nHe sees the blade and little else. The rear backs faster than you walk; a broken alarm, a dirty window or a loose mirror has killed.\nGetting on and off: three points, face the machine, engine idling, blade down. Start it only from the seat. Under a raised blade nobody goes unless it is blocked.",
  "asks": [
    "grader blind spot",
    "walk behind the grader",
    "between the wheels",
    "articulated hinge",
    "get on and off the grader",
    "swing of the blade"
  ],
  "links": [
    "practice/backing-spotter",
    "step/windrow"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Fatality Assessment and Control Evaluation reports, NIOSH"
    },
    {
      "mark": "restated",
      "document": "29 CFR Part 1926, 600(a)(3)"
    }
  ]
},
{
  "id": "backing",
  "title": "backing trucks and machines",
  "kind": "safety",
  "text": "One spotter, one set of signals, in the driver's mirror all the time. Driver loses sight of him: brakes, at once. Alarm working and loud enough.\nThe spotter stands to the side, never behind, and does nothing else: no rake, no phone. He looks up for wires before the bed rises.\nBed down before the truck moves off. Plan it so they need to back less: drive through, turn where there is room. Nobody cuts behind a truck with its back-up lights on.",
  "asks": [
    "back up a truck",
    "guide the trucks in reverse",
    "truck in reverse",
    "spotter",
    "ground guide",
    "backing alarm",
    "who spots",
    "truck backing to the grader",
    "who backs up"
  ],
  "links": [
    "practice/backing-spotter",
    "step/spread-premix"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "29 CFR Part 1926, 601(b)(4)"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "banked-curve",
  "title": "blading a banked curve",
  "kind": "craft",
  "text": "Match the bank; put no crown in it. String the lane across, lay to the string, and feather slowly into the straight at both ends.\nRoll from the low side, the inside edge, even where that is the center line. Shoulder first is right on a crowned road and wrong on the outside of a curve: nothing below would hold the mat.\nHow steep the bank should be is the engineer's. A bank that has sunk or twisted is not put right by eye.",
  "asks": [
    "superelevation",
    "banked curve",
    "crown in a curve",
    "outside lane of a curve",
    "roll a curve",
    "match the bank"
  ],
  "links": [
    "quantity/cross-slope",
    "practice/roll-low-to-high"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 11"
    },
    {
      "mark": "practice"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "bed-stuck",
  "title": "the bed is up and the load hangs",
  "kind": "safety",
  "text": "Nobody near it, behind it or under it. Lower the bed, move to level ground, loosen it from the side with a long bar, try again.\nA load that hangs lets go all at once, or the truck goes over sideways. Jerking forward and braking to shake it loose is how beds tip.\nLook up first: wires. Touching one? The driver stays in, everyone keeps far back, and it is the emergency number. Nobody climbs into a raised bed, ever.",
  "asks": [
    "load stuck in the bed",
    "mix will not slide out",
    "bed up and stuck",
    "frozen load",
    "tailgate jammed",
    "truck bed will not empty"
  ],
  "links": [
    "step/spread-premix",
    "practice/backing-spotter"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "bees-and-snakes",
  "title": "bees, wasps and snakes",
  "kind": "safety",
  "text": "Look before you reach: sign boxes, culverts, guardrail posts, tarps left over the weekend. Leave a nest alone, mark it, come back with spray in the cool of the evening.\nAsk at the briefing who is allergic, and where his pen is. He should say so before, not after.\nSwelling of face or throat, hives, trouble breathing: emergency number, and his pen at once. Snake bite: keep him still, rings off, no cutting, no sucking, no ice. Tuck trousers in against ticks.",
  "asks": [
    "wasp nest",
    "bee sting",
    "hornets",
    "snakes",
    "stung",
    "insects in the sign box",
    "poison ivy",
    "ticks"
  ],
  "links": [
    "step/brief-crew",
    "card/emergency-sting"
  ],
  "seen": [
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "bikes-and-walkers",
  "title": "bicycles and people on foot",
  "kind": "traffic",
  "text": "Give them a marked way round, or walk them through. Bikes wait with the cars and go last in the line, or are led through on foot.\nTape, rope and chain stop nobody, and a blind man's cane goes under them. A way that was fit for a wheelchair before must be so during the work.\nNobody walks or rides between machines, over tack or over hot mix. A slow bike in the one-lane stretch: the far flagger holds until he is out.",
  "asks": [
    "bicycle",
    "bike rider",
    "pedestrian",
    "walkers",
    "kids walking",
    "sidewalk closed",
    "wheelchair",
    "people on foot"
  ],
  "links": [
    "step/traffic-control-up"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6C.02"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "breakdown-grader",
  "title": "the grader breaks down",
  "kind": "equipment",
  "text": "The lane stays closed. Knock the row down to a lift with a loader or a second blade, or load it out; then roll what is laid.\nTurn the trucks that can still go back, and tell the plant. Hot mix in the row is worth saving only while it still spreads and rolls.\nIt is never opened with a row in it, and never left to the night that way. Working on a broken machine: blade on the ground, engine off, key out, wheels chocked, out of the traffic side.",
  "asks": [
    "hydraulic line blew on the grader",
    "blown hose on the grader",
    "grader quit",
    "blade broke down",
    "motor grader dead",
    "no grader and mix in the lane",
    "row is down and the machine died",
    "cutting edge broke",
    "grader broke down",
    "grader died",
    "grader will not start",
    "grader dead",
    "grader won't start",
    "grader wont run"
  ],
  "links": [
    "practice/overnight",
    "practice/open-to-traffic"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "breakdown-roller",
  "title": "the roller breaks down",
  "kind": "equipment",
  "text": "Lay no more. Hot mix that cannot be rolled while hot is lost: send it to another job or back.\nOn cold mix, rubber-tired trucks may pack it as a stopgap until a roller comes; they do not replace it. No next lift goes on before the one below is rolled.\nThe lane stays shut meanwhile. Unrolled mix ruts under the first car and throws stone. Ask for the second roller before you ask for more trucks.",
  "asks": [
    "roller quit",
    "roller broke",
    "nothing to roll with",
    "roller will not start",
    "roller wont start",
    "loads waiting and no roller",
    "roller broke down",
    "roller died",
    "roller will not run",
    "roller dead",
    "no roller on the job",
    "roller won't start",
    "roller wont run"
  ],
  "links": [
    "practice/roll-each-lift",
    "limit/roller-keeps-up",
    "step/roll-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "bridge-deck",
  "title": "a patch that runs onto a bridge",
  "kind": "craft",
  "text": "Not on the deck without the engineer. Stop short of the joint, and ramp the patch down to meet it.\nMix is dead weight that the bridge was not figured for; it plugs drains, buries joints, and what is cut can go through the sealing below.\nA dip right at the bridge is a settling approach: more mix now and again, and it still settles. Report it. Mind too the posted weight when a loaded truck and the roller stand on it.",
  "asks": [
    "asphalt on a bridge deck",
    "patch on the deck",
    "bridge joint",
    "bridge approach",
    "patch onto a bridge"
  ],
  "links": [
    "repair/engineer",
    "quantity/end-taper-length"
  ],
  "seen": [
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "broom-down",
  "title": "the broom is down",
  "kind": "equipment",
  "text": "Blowers and hand brooms, or wait. No clean surface, no tack: it sticks to the dust, and the dust sticks to nothing.\nA loader bucket takes the heavy stuff first. Work with the wind, from the crown to the edge, and out of the cut corners, where a broom does badly anyhow.\nBlowing makes dust that hurts lungs and blinds drivers: damp it lightly, keep people out of it, hold traffic while you do it, and let it dry before tack.",
  "asks": [
    "no broom",
    "sweeper broke",
    "broom quit",
    "how to clean without a broom",
    "blower instead"
  ],
  "links": [
    "practice/tack-clean-dry",
    "step/sweep"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "broom-dust",
  "title": "the broom makes a cloud",
  "kind": "equipment",
  "text": "Mist it, do not soak it. Shut the cab, keep people out of the cloud, and hold traffic until it has settled.\nRoad dust holds silica, which scars lungs for good; and a driver in a dust cloud sees neither the flagger nor the man behind the broom.\nThen let the road dry before tack: emulsion on damp is your agency's call, on wet it is never right. Two slow sweeps raise less than one fast one, and clean better.",
  "asks": [
    "dust from the broom",
    "dust cloud",
    "cannot see for dust",
    "sweeping dry",
    "broom water"
  ],
  "links": [
    "step/sweep",
    "practice/poor-visibility"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "cars-on-tack",
  "title": "cars on the tack",
  "kind": "material",
  "text": "Close it off now: cones closer, a man at the drive, FRESH OIL signs out ahead. Nothing drives on tack until it is broken and covered.\nWet tack is as slick as ice, it paints every car, and the tires carry it off so the mat has nothing to hold.\nIf they must cross, sand it first and hold them to a walk. Touch up the bare tracks before you lay. And shoot no more than you can guard.",
  "asks": [
    "cars driving on tack",
    "keep traffic off the tack",
    "fresh oil sign",
    "somebody drove through the tack",
    "tack in the open lane",
    "cars sneak onto the tack"
  ],
  "links": [
    "practice/tack-set",
    "practice/open-to-traffic",
    "fault/tack-tracking"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6H.19"
    },
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    }
  ]
},
{
  "id": "cold-day",
  "title": "too cold to lay",
  "kind": "weather",
  "text": "Below {min:air-temperature} air, or falling, wait; for a thin hot lift the road itself should be {min:surface-temperature}. Your agency's figure wins; they differ a good deal.\nThe road takes the heat out of a thin lift in minutes, more than the air does, and tack will not break on a cold road. Frost or ice under tack: never.\nShade, bridges and hollows stay cold longest. Emergency cold patch in winter holds a hole till spring; it is not a blade patch.",
  "asks": [
    "cold weather",
    "minimum temperature",
    "frost",
    "freezing",
    "how cold is too cold",
    "winter patching",
    "road too cold",
    "coldest"
  ],
  "links": [
    "limit/air-temperature",
    "limit/surface-temperature",
    "practice/temperature-trend",
    "quantity/time-to-roll"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "cold-mix-airing",
  "title": "airing cold mix",
  "kind": "material",
  "text": "It is too wet. Blade it back and forth across the patch to let the oil or water out, then lay and roll it. Sun and wind do the work; shade takes longer.\nMix that still shoves under the drum is not ready, and rolling harder only makes waves. Fat clumps: pull it into a tight row and give it days.\nOverdo it and the mix sets up in the row. And cutback vapor burns: no flame, no smoking while it airs.",
  "asks": [
    "cold mix too wet",
    "aerate",
    "dry the cold mix",
    "mix pushes under the roller",
    "blade it back and forth",
    "cure the mix",
    "soft cold mix",
    "mix shoves under the roller"
  ],
  "links": [
    "fault/pushing",
    "fault/soft-spot",
    "choice/mix-kind"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "TM 5-822-14, Soil Stabilization for Pavements"
    },
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
    }
  ]
},
{
  "id": "concrete-below",
  "title": "old concrete under the patch",
  "kind": "craft",
  "text": "Ask the engineer first. The slabs move at their joints, and each joint comes through a thin lift as a crack, often within the year.\nTack figures for concrete are their own, not those for worn asphalt; dust and old joint filler must come off before it.\nA slab that rocks or pumps water is not a job for the blade: what moves below breaks whatever lies above. Saying so now is cheaper than laying it twice.",
  "asks": [
    "old concrete",
    "concrete base",
    "slab joints showing",
    "patching over concrete",
    "white slab under the asphalt",
    "composite road"
  ],
  "links": [
    "repair/engineer",
    "choice/surface"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "covered-line",
  "title": "the center line is under the patch",
  "kind": "traffic",
  "text": "Put NO CENTER LINE signs up before you open, or set temporary marks. The manual has the sign repeated about every two miles of covered line.\nAt night and in rain drivers steer by that line; without it they cut the curve. How soon the real line must be back is your agency's figure.\nNote where a no-passing zone was before you cover it: it has to come back in the same place, and until then drivers do not know.",
  "asks": [
    "covered the yellow line",
    "lost the stripe",
    "no center line",
    "lane line gone",
    "temporary marking after patching",
    "when do we paint the line"
  ],
  "links": [
    "step/clean-up",
    "practice/open-to-traffic"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6H.29"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "craft-blade-angle",
  "title": "blade angle",
  "kind": "craft",
  "text": "Sharp for laying, up to about {high:blade-angle} from square; flatter for sizing the row, about {blade-angle}. Sharp keeps mix rolling along the edge and out; flat covers more width and evens the row.\nOn a second lift start flatter, so the row settles even again, then sharpen for the finish.\nSharper angle means a narrower strip: count the strips again. And with more angle the toe reaches forward past the wheel, so look where it points before you swing it near the line.",
  "asks": [
    "angle of the moldboard",
    "sharp or flat angle",
    "how much angle for laying",
    "set the circle",
    "blade angle for the finish",
    "angle to cover the lane"
  ],
  "links": [
    "quantity/blade-angle",
    "quantity/blade-reach",
    "quantity/blade-passes",
    "step/first-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 10"
    }
  ]
},
{
  "id": "craft-deep-ruts",
  "title": "deep ruts and holes first",
  "kind": "craft",
  "text": "Fill them first, in level layers, each one rolled in the hole. Then lay the full lifts over the top.\nLaid straight across, the mix is deep in the rut and thin beside it. It rolls down by its depth, so the rut comes back; and a steel drum rides on the high sides and never packs the middle.\nRoll inside the rut with a narrow drum, rubber tires or a loaded wheel. Level, not following the rut: a layer with the shape of the rut only moves it up.",
  "asks": [
    "fill the ruts first",
    "deep hole under the lift",
    "level up before the first lift",
    "wheel path filling",
    "low spots before laying"
  ],
  "links": [
    "step/first-lift",
    "practice/drum-bridges-rut",
    "quantity/rut-depth",
    "fault/low-patch"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, ch. 7"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-down-pressure",
  "title": "down pressure",
  "kind": "craft",
  "text": "Some. Enough to pack the mix under the edge and close the surface; on a sizing pass only a touch.\nToo much tears the mat open, chatters, and cuts the old road so that lumps come along. Too little, and the blade rides up, the mat comes out open and the row wanders.\nRead it in the mat behind the edge: tight and one texture is right, torn is heavy, rocky and loose is light. A thin lift with big stone tears whatever you do; that is the lift, not your hand.",
  "asks": [
    "how much pressure on the blade",
    "push down on the blade",
    "down force",
    "blade too heavy or too light",
    "pressure tears the mat"
  ],
  "links": [
    "step/first-lift",
    "fault/tearing",
    "fault/chunks"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-feather-edges",
  "title": "feather edges by hand",
  "kind": "craft",
  "text": "Rake the big stone out of the feather and throw it away; leave the fines, a little proud, and roll at once. Then leave it alone.\nA feather is thinner than its stone, so the stone stands on its own and the first tire pulls it out. Too much raking does the same all over.\nThrow raked stone in the truck, not across the mat or into the ditch. Rakers stand where the operator sees them, never between the blade and the roller.",
  "asks": [
    "rake the feather",
    "big stone in the feather",
    "edges ravel",
    "hand work at the edges",
    "raking",
    "lute the edge",
    "thin edge"
  ],
  "links": [
    "limit/lift-min",
    "fault/thin-edge",
    "fault/drag-marks"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, 3.3"
    }
  ]
},
{
  "id": "craft-fewest-passes",
  "title": "why few passes",
  "kind": "craft",
  "text": "Every extra pass parts the stone from the fines and cools the mix. The coarse streak it leaves ravels first, and traffic throws the loose stone.\nCount the strips the width needs, lay them, and leave it alone. A spot you do not like gets better under the roller more often than under the blade.\nMix that has gone rocky does not mix itself again: rake the rocky part off and throw it out. Cold mix that must air is the one thing that is worked on purpose, in the row.",
  "asks": [
    "keep working the mix",
    "too many passes",
    "leave it alone",
    "overworked mix",
    "rocky streaks from working it",
    "stop blading it",
    "why not keep working it"
  ],
  "links": [
    "limit/fewest-passes",
    "fault/segregation",
    "quantity/least-passes"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, 3.3"
    }
  ]
},
{
  "id": "craft-finish-lift",
  "title": "the finish lift",
  "kind": "craft",
  "text": "Sharp angle, some down pressure to clear loose stone, and almost no adjusting: every touch of a lever shows in the mat. The width gives the number of passes.\nNow bring mix all the way to the outer edge. Leave it slightly full: rolled, it may stand {max:flush-finish} high, never low.\nThe row should give out just short of the far end, with a few lumps and a little fine mix left over the edge to fill drag marks. No pile, and nothing strung out down the road.",
  "asks": [
    "finish pass",
    "last lift",
    "final pass",
    "top lift",
    "how to make it smooth",
    "finish blade setting",
    "last pass blade"
  ],
  "links": [
    "step/finish-lift",
    "practice/material-run-out",
    "limit/flush-finish",
    "limit/placed-before-finish"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-first-lift",
  "title": "laying the first lift",
  "kind": "craft",
  "text": "Straddle the row and carry it outward, from the center-line side to the shoulder, in as few strips as the width asks for. Low gear, throttle open, about {grader-speed}.\nFill deep holes before it. Give both ends their taper now, for the lifts above only follow. Keep the mix short of the outer edge; that comes with the finish.\nMeasure the first strip loose, roll it, measure again: that is your own roll-down. Inside passes swing toward traffic: both flaggers on STOP.",
  "asks": [
    "first lift",
    "lay the bottom lift",
    "first pass with mix",
    "carry the row out to the shoulder",
    "start laying"
  ],
  "links": [
    "step/first-lift",
    "limit/fewest-passes",
    "limit/lay-speed"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-float",
  "title": "letting the blade float",
  "kind": "craft",
  "text": "On a level stretch of a later lift. Floating, the edge takes up the road's own shape and gathers the loose mix without you working the levers.\nNot over ruts and dips: there it follows the hole you want to fill. And not on the finish, where you want some down pressure.\nNo float on your machine? Hold the blade still and make small, slow corrections by hand. Never float with people near: the blade is then free to move by itself.",
  "asks": [
    "blade float",
    "when to float",
    "floating the moldboard",
    "machine without float",
    "follow the shape of the road"
  ],
  "links": [
    "step/next-lift",
    "step/first-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-gear-and-throttle",
  "title": "gear and throttle",
  "kind": "craft",
  "text": "Low gear, throttle open: about {grader-speed}, and not over {max:lay-speed}. The open throttle keeps the hydraulics quick while the wheels stay slow.\nFaster, and the machine bounces; each bounce prints a ripple that later lifts copy. A gear is not a speed: time the machine over a taped stretch.\nIf it bounces even slow, look at tires, cutting edge and circle. Fewer passes make the day's tons, not a higher gear.",
  "asks": [
    "what gear",
    "throttle setting",
    "engine speed while laying",
    "how slow to drive the grader",
    "bouncing grader slow down"
  ],
  "links": [
    "limit/lay-speed",
    "quantity/grader-speed",
    "fault/washboards"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 10"
    }
  ]
},
{
  "id": "craft-next-lift",
  "title": "laying the next lift",
  "kind": "craft",
  "text": "Only on a rolled lift. It runs the other way: from the shoulder back toward the center, the first pass at a flatter angle so the row evens out again.\nFollow the tapers that are there, touch the levers only when you must, and let the blade float where the road is level.\nLaid on a loose lift, the wheels sink, and their tracks come up as ridges under the drum. Dusty, cold or driven on? Then it wants a light tack first, by your agency's rule.",
  "asks": [
    "second lift",
    "middle lift",
    "bring mix back to the center",
    "next lift direction",
    "lift on lift"
  ],
  "links": [
    "step/next-lift",
    "practice/roll-each-lift",
    "step/roll-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-outer-edge",
  "title": "the outer edge and the finish",
  "kind": "craft",
  "text": "Hold the mix short of the outer edge until the finish pass, with a wheel's width free between row and edge. Only the finish brings it all the way out.\nPushed out early, it spills over the shoulder, and the edge comes out thin and wavy, like shells. Mix lost over the side is mix the finish lacks.\nShoot for a straight edge you can see: a string, paint, or the old edge. The roller takes that edge first on a crowned road, and stays off it where it is soft.",
  "asks": [
    "keep mix short of the edge",
    "outer edge",
    "shoulder edge of the mat",
    "wavy edge",
    "wheel width between row and edge",
    "edge comes last"
  ],
  "links": [
    "fault/scallops",
    "step/finish-lift",
    "fault/thin-edge"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-pitch",
  "title": "moldboard pitch",
  "kind": "craft",
  "text": "A little forward for laying mix. Forward pitch drags and rides over, packs the mix under the edge, and does not bite into the old road.\nRolled back, the edge cuts: good for trimming a hump, bad for a mat, for the mix boils over itself and the edge picks up chunks.\nToo far forward and it skids over the mix and leaves it loose. Change it a little at a time, never in the middle of a finish pass.",
  "asks": [
    "tip the moldboard",
    "roll the blade forward",
    "pitch forward or back",
    "tilt the moldboard",
    "blade pitch for asphalt"
  ],
  "links": [
    "step/first-lift",
    "fault/tearing",
    "fault/chunks"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "FM 5-434, Earthmoving Operations, ch. 4"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-reading-rocks",
  "title": "reading the rocks",
  "kind": "craft",
  "text": "Right is when, just behind the toe, the edge touches and rolls a stone now and then. The stones are your feeler for depth.\nStones dragged all the time: too low, or the lift is too thin for that rock. No stone touched: too high, and the mat will come out thick and loose.\nTrust it more than the look of the row. If it drags at every height, stop adjusting: the mix is too coarse for the lift, or cold.",
  "asks": [
    "is the blade height right",
    "reading stones",
    "rocks rolling under the edge",
    "blade too low or too high",
    "how to tell depth from the seat",
    "rock behind the toe"
  ],
  "links": [
    "step/first-lift",
    "fault/drag-marks",
    "limit/lift-min"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-row-gives-out-early",
  "title": "the row gives out early",
  "kind": "craft",
  "text": "Do not stretch it. Stop where the depth is still true, and either bring more mix or end the lift there with a proper taper.\nStretched mix is thinner than its stone: it drags, ravels and leaves the end low. The row was small, uneven, or the loose depth was set too high.\nMore mix on the way? Keep the cut edge clean and warm, tack it if it went cold. None left: ramp, roll, sign, and size the next row by the tickets.",
  "asks": [
    "row ran out before the end",
    "out of material in the pass",
    "row too small",
    "material gone early",
    "row is short",
    "starved end"
  ],
  "links": [
    "practice/material-run-out",
    "fault/runs-short",
    "step/finish-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-row-gives-out-late",
  "title": "mix left in the row at the end",
  "kind": "craft",
  "text": "Bring it back to the middle of the patch and carry it over once more. A small pile is worked back into the mat while it is warm.\nThe row was bigger than the width and depth could take; size the next one smaller, or spread it over the next strip.\nNever drag the rest along the road: it lies on no tack, breaks up and flies. And never bury it at the end, where it becomes the bump that everybody feels.",
  "asks": [
    "too much left in the row",
    "row too fat at the end",
    "material left after the pass",
    "pile at the end of the pass",
    "row did not run out"
  ],
  "links": [
    "practice/material-run-out",
    "fault/pile-at-end",
    "step/finish-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-run-out",
  "title": "coming off the end",
  "kind": "craft",
  "text": "Some feet before the end begin to lower the toe; when about half the blade is past the end, begin with the heel. Carry the mix just beyond the patch, and let it fade to nothing.\nLift the blade there and you leave a pile; drop it early and the end is starved.\nWhat goes past the tack is swept or brought back before the last rolling. Watch the flagger's end: the run-out goes into the work space, never into the buffer.",
  "asks": [
    "run out at the end",
    "come off the patch",
    "fade out",
    "lower the toe at the end",
    "ending a pass",
    "end of the lift",
    "far end taper"
  ],
  "links": [
    "step/finish-lift",
    "step/first-lift",
    "limit/turnout-distance",
    "fault/end-bump"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-sizing-row",
  "title": "sizing the row",
  "kind": "craft",
  "text": "Slight angle, about {blade-angle} from square, and a little down pressure. Cut the fat spots, carry them to the thin ones, and end with one straight row along the inside of the patch.\nThe depth of every lift comes out of the row: where it is thin the mat is thin, and where it bends the mat bends.\nToo much pressure here cuts the old road, and its lumps ride into the new mat. Trust tickets over looks: count the tons dumped to each hundred feet.",
  "asks": [
    "size the windrow",
    "even out the row",
    "straighten the row",
    "fat and thin spots in the row",
    "sizing pass",
    "how do i make the row even",
    "blade for sizing"
  ],
  "links": [
    "step/windrow",
    "quantity/windrow-section",
    "quantity/windrow-mass-per-100ft",
    "quantity/blade-angle"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-tapers",
  "title": "starting a lift from nothing",
  "kind": "craft",
  "text": "Come on with the edge touching the old road, raise the toe a little at a time, then the heel, so the lift grows from nothing.\nBoth ends get their taper with the first lift; every later lift follows the taper already there, a bit farther back. Long tapers are not felt, short ones are a bump.\nFeathered mix cannot hold big stone: rake it out. Tack must reach as far as the finest feather, or it peels and ravels there first.",
  "asks": [
    "taper on to the patch",
    "going on",
    "start from nothing",
    "raise toe then heel",
    "first end of the lift",
    "bump where the patch begins",
    "feather the start"
  ],
  "links": [
    "step/first-lift",
    "fault/end-bump",
    "quantity/end-taper-length"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-toe-and-heel",
  "title": "setting toe and heel",
  "kind": "craft",
  "text": "Toe just outside the track of the front wheel and low enough to hold the row; heel set for the depth you leave. The toe gathers, the heel spreads.\nToe too high or too far in, and mix slips round it: a ridge shows along the pick-up line. Heel too low starves the outside; too high leaves it thick.\nSet both standing still, then trim by fingers' width. Watch that mix off the heel clears the rear wheels.",
  "asks": [
    "set the toe",
    "set the heel",
    "toe and heel height",
    "ridge at the pick up line",
    "toe too loose",
    "where does the toe run",
    "leading end of the blade"
  ],
  "links": [
    "fault/ridge",
    "step/first-lift",
    "fault/spill-under-wheels"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-trailing-end",
  "title": "mix off the heel and the rear wheels",
  "kind": "craft",
  "text": "What comes off the trailing end has to fall clear of the rear wheels. Side-shift the blade or sharpen the angle until it does.\nA wheel that runs over loose mix packs a track, and the track shows as a ridge after rolling, however much you roll.\nArticulated machines can walk the rear wheels off the strip; do it slowly, and with nobody near the hinge. Look back in both mirrors at each start, for raker and roller are behind you.",
  "asks": [
    "trailing end",
    "mix under the rear tires",
    "heel spills under the wheels",
    "side shift the blade",
    "wheel marks in fresh mix"
  ],
  "links": [
    "fault/spill-under-wheels",
    "step/first-lift",
    "fault/wheel-ridges"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "craft-two-ended-row",
  "title": "working the row from both ends",
  "kind": "craft",
  "text": "Work the row from one end, then from the other, and bring it back to the marks each time. So neither end grows fat while the other starves.\nA blade always carries mix along with it. Run one way only, and the far end gets the pile, the near end goes short, and the finish lift shows it.\nBuild it toward the middle of the patch while you size it, so nothing goes over the shoulder. Mix past the marks lies on no tack: pull it back before it cools.",
  "asks": [
    "windrow from both ends",
    "why both ends",
    "bring the row back to the limits",
    "work it back and forth",
    "keep the row inside the patch"
  ],
  "links": [
    "step/windrow",
    "practice/windrow-side",
    "quantity/windrow-length"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "crash-plan",
  "title": "ready for a car through the cones",
  "kind": "safety",
  "text": "Know your way out before the first car, and one signal for everyone: a long horn means run, look later. Buffer empty, cones straight, nobody with his back to traffic.\nIf one comes: jump clear, horn, radio. Nobody steps in front of a moving car, and nobody chases it. Plate number, color, which way; then the police.\nAfter a crash: emergency number, hold both ways, the hurt first. Signs stay where they stood, photos and times are taken, and nobody talks of blame.",
  "asks": [
    "car through the cones plan",
    "escape route",
    "what if a driver does not stop",
    "someone drives into the work",
    "intrusion",
    "horn signal",
    "driver wont stop"
  ],
  "links": [
    "practice/flagger-station",
    "practice/buffer-empty",
    "card/emergency-crash"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6D.05, ch. 6O"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "crew-briefing",
  "title": "the talk before the work",
  "kind": "stage",
  "text": "Ten minutes off the road, everyone there, drivers too. Say what we do today and where, which lane, and how traffic runs.\nThen: who flags and on what channel, who spots trucks, where nobody walks, what is hot and what burns, each man's way out, and the road, direction and milepost to give in an emergency. Anyone may stop the job.\nAsk two people to say it back. What nobody can repeat was not heard. Talk again when the layout, the weather or the crew changes.",
  "asks": [
    "tailgate talk",
    "toolbox talk",
    "safety meeting before work",
    "what to say in the briefing",
    "brief the crew",
    "morning talk topics",
    "what to tell everybody first",
    "what to tell the men",
    "before we start",
    "safety talk",
    "morning meeting",
    "tailgate topics"
  ],
  "links": [
    "step/brief-crew",
    "practice/backing-spotter",
    "practice/flagger-count"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6A.02"
    }
  ]
},
{
  "id": "cross-roll-ends",
  "title": "rolling the ends crosswise",
  "kind": "equipment",
  "text": "Roll the end across the road. At first the drum is nearly all on the old road; each trip it goes a hand's width farther onto the new mat, until the whole drum is on it.\nSo the old road carries the drum and the bump is pressed out, not pushed along. Lay the straightedge on it before: what is high or low now is fixed now.\nCrosswise means the roller noses toward traffic: both flaggers on STOP, or plates and room to run off. Never run off the soft end of the mat.",
  "asks": [
    "roll the end joint",
    "cross roll",
    "bump at the joint",
    "transverse joint",
    "roll across the lane at the end"
  ],
  "links": [
    "fault/end-bump",
    "step/final-roll",
    "limit/straightedge"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 11"
    }
  ]
},
{
  "id": "curb",
  "title": "patching beside a curb",
  "kind": "craft",
  "text": "Do not build up against it. Mill or cut along the curb first, so the new surface meets the gutter where the old one did.\nEach lift added fills the gutter and lowers the curb; then water leaves the gutter and finds the yards and the base. Wheelchair ramps and drains are lost the same way.\nCutting means locates first, and dust under control. Hand-work the strip the blade cannot reach, and roll it with a plate or the edge of the drum.",
  "asks": [
    "curb",
    "gutter",
    "curb and gutter",
    "patch against the curb",
    "overlay fills the gutter",
    "next to a curb",
    "curb on one side"
  ],
  "links": [
    "repair/cut-then-blade",
    "limit/flush-finish"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "cutback-hazard",
  "title": "cutback is a fuel",
  "kind": "material",
  "text": "Yes: it is asphalt thinned with something like gasoline or kerosene. All RC, and the thin MC grades, are sprayed hotter than the heat at which their vapor flashes.\nNo smoking, no flame, no sparks, no running engine near an open lid. Heat it only parked and level, in the open, burner tubes covered, pump turning, nobody leaving it.\nNever water in it: it boils over. Keep a dry-chemical extinguisher at hand, stand upwind, and keep it out of drains. Some places ban it in summer.",
  "asks": [
    "cutback",
    "rc or mc tack",
    "flash point",
    "is cutback dangerous",
    "danger of cutback tack",
    "will cutback catch fire",
    "cut the rc with water",
    "heating cutback",
    "smoking near tack",
    "cutback dangerous",
    "rc dangerous",
    "rc hazards",
    "danger of cutback"
  ],
  "links": [
    "practice/no-water-in-cutback",
    "choice/tack-kind",
    "step/tack"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "AASHTO M 81 and M 82, flash points"
    },
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
    }
  ]
},
{
  "id": "day-record",
  "title": "what goes in the report",
  "kind": "stage",
  "text": "Where, how big, how deep, how many lifts; load tickets and tons; tack gallons; air, road and mix heat; hours of people and machines.\nThen the layout used, signs up and signs down by the clock, delays and why, near misses, photos with something to show the size, and what is left to do. Tons over area should come out at the depth you meant.\nWrite it while you stand there, off the road. After a crash the sign times are the first thing anybody asks for, and memory is no record.",
  "asks": [
    "daily report",
    "what to write down",
    "diary",
    "paperwork",
    "record of the day",
    "end of day notes",
    "what photos"
  ],
  "links": [
    "step/record",
    "quantity/placed-depth"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "Civil Engineering Handbook, 2nd ed., p. 66-26"
    }
  ]
},
{
  "id": "depth-readings",
  "title": "reading the depth of a patch",
  "kind": "stage",
  "text": "Every 10 to 25 feet along, lay a string or a straightedge across the lane and read three places: both wheel paths and the middle. Closer together where it changes fast.\nThe average of all readings gives the tons. The deepest spot gives the lifts. One reading in the worst hole orders far too much mix; one in a good place orders too little.\nCut proud humps first, or the string rides on them and reads deep. Never do this alone or in a live lane: lookout, lights, and a set-up for short work.",
  "asks": [
    "how many readings",
    "where to measure depth",
    "average depth or deepest",
    "string line across the rut",
    "straightedge to measure a rut",
    "how do i read the depth"
  ],
  "links": [
    "step/survey-and-mark",
    "quantity/patch-depth",
    "quantity/deepest-depth",
    "quantity/rut-depth"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "TM 5-623, Pavement Maintenance Management, app. B"
    }
  ]
},
{
  "id": "dump-points",
  "title": "where the trucks dump",
  "kind": "craft",
  "text": "The first load goes where the grader begins. From there one load every so many feet: tons on the truck over tons to the foot. Give me width, depth and the load, and I figure it.\nSay whether that depth is one lift or all of them; it changes the spacing by that many times. Dump {min:end-spread} to {end-spread} past the tack at each end, so the ends never starve.\nOne spotter, look up for wires, bed down before the truck moves, and nobody between truck and blade.",
  "asks": [
    "how far apart to dump",
    "spacing of the loads",
    "where does the first truck dump",
    "spot the trucks",
    "tailgate the load out",
    "how long is one load"
  ],
  "links": [
    "quantity/dump-spacing",
    "quantity/load-length",
    "step/spread-premix",
    "limit/end-spread"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "derived"
    }
  ]
},
emergencies[0]!,
emergencies[1]!,
emergencies[2]!,
emergencies[3]!,
emergencies[4]!,
emergencies[5]!,
emergencies[6]!,
emergencies[7]!,
emergencies[8]!,
emergencies[9]!,
emergencies[10]!,
emergencies[11]!,
emergencies[12]!,
{
  "id": "empty-buffer",
  "title": "keep the buffer empty",
  "kind": "traffic",
  "text": "No. The buffer holds nothing: no truck, no roller, no mix, no people, no turning. It is the road a driver uses up who came through the cones.\nWhat stands there is what he hits, and then he still reaches the crew. Give me the speed and I give you its length.\nShort of room for the grader to turn or for trucks to wait? Make the work space longer, about {turn-room} at each end. Do not borrow it from the buffer.",
  "asks": [
    "park in the buffer",
    "what is the buffer for",
    "stage trucks in the buffer",
    "roller in the buffer",
    "store mix before the work",
    "nothing in buffer"
  ],
  "links": [
    "practice/buffer-empty",
    "quantity/buffer-length",
    "limit/buffer-length"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6B.06"
    }
  ]
},
{
  "id": "even-spray",
  "title": "an even spray bar",
  "kind": "material",
  "text": "Every nozzle the same size and angle, the bar at one height, pressure steady, tack at its heat; then weigh pads. Across the bar they should agree within 15 %, along the road within 10 %.\nStreaks like corduroy mean a low bar, thick cold tack or a plugged tip. Wind wants the bar lower. The cut-off at the ends must be sharp, or the overlap bleeds.\nClear a nozzle with the pump off and the bar cold, from the side, face shield on.",
  "asks": [
    "spray bar even",
    "streaks from the bar",
    "nozzle angle",
    "bar height",
    "pressure",
    "pad test",
    "uneven tack",
    "check the distributor",
    "is the bar shooting even",
    "how to know the bar is even"
  ],
  "links": [
    "fault/bar-streak",
    "quantity/pad-mass",
    "quantity/tack-rate"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
    }
  ]
},
{
  "id": "fire-ready",
  "title": "ready for a fire",
  "kind": "safety",
  "text": "Dry chemical, charged, on the tack truck and on every machine, where you can reach it from outside. Know how to shut burner, pump and engine.\nHeat only parked, level, in the open, tubes covered, and somebody there. No smoking near tack, fuel or open lids.\nIf it burns: emergency number, everyone away and upwind. Fight only what is small, with your back to the way out. Never water on hot asphalt: it throws it. Know how many gallons you carry.",
  "asks": [
    "fire extinguisher",
    "prevent fire",
    "tack fire plan",
    "burner lit",
    "what to do in case of fire",
    "which extinguisher"
  ],
  "links": [
    "step/tack",
    "card/emergency-fire",
    "choice/tack-kind"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
    }
  ]
},
{
  "id": "flagger-break",
  "title": "relief for a flagger",
  "kind": "traffic",
  "text": "A trained relief takes the paddle first, or the work stops and the lane is cleared. Nobody leaves a post with cars still coming at it.\nChange over while traffic is stopped and the other end knows. Hand on what matters: which line runs, what is inside, the channel, the way out.\nPlan it: water, shade, and a break every couple of hours; a tired flagger looks at his phone. With no flagger at the post, his sign is covered or turned.",
  "asks": [
    "flagger needs a break",
    "restroom",
    "relief flagger",
    "bathroom",
    "flagger lunch",
    "swap flaggers",
    "who takes over from the flagger",
    "flagger cannot leave his post",
    "flagger has to pee",
    "flagger has to go"
  ],
  "links": [
    "practice/signs-true"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "fog-and-sun",
  "title": "fog, dust and low sun",
  "kind": "weather",
  "text": "Stop laying, roll what is down, and hold or open. If drivers cannot see the sign and the flagger in time, nothing else about the layout works.\nEvery distance in it takes for granted that they see it. Low sun is worst at the hour people drive home, and the flagger stands right in it.\nMove the start later or the post to the shade side, and have someone drive it from both ends. Fog comes back in hollows after you thought it had gone.",
  "asks": [
    "fog",
    "low sun",
    "glare",
    "cannot see",
    "bad visibility",
    "poor visibility",
    "heavy rain visibility",
    "drivers blinded",
    "sun in the eyes"
  ],
  "links": [
    "practice/poor-visibility",
    "card/lightning",
    "practice/flagger-station"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6A"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "four-lane",
  "title": "a lane closed on a four-lane road",
  "kind": "traffic",
  "text": "No flaggers to take turns: traffic merges into the next lane. That takes a long merging taper, LANE CLOSED signs farther out, an arrow board at the taper, and signs on both sides if it is divided.\nA short flagger taper here kills. Give me the speed and the lane width, and I figure the taper, the buffer and the signs.\nTruck with an attenuator behind the crew, lights on, and the plan signed by somebody who may. It is not a two-lane job with more cones.",
  "asks": [
    "four lane",
    "multilane",
    "divided road",
    "close one of two lanes",
    "freeway",
    "interstate",
    "merging taper road"
  ],
  "links": [
    "quantity/merging-taper",
    "practice/arrow-board-mode",
    "choice/road-type",
    "quantity/sign-spacing-a"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6B.08"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "fumes",
  "title": "asphalt fumes",
  "kind": "safety",
  "text": "Stand upwind, and keep the mix no hotter than the job needs. Blue smoke means too hot. A headache, stinging eyes or a dizzy head: get out of it, and tell someone.\nFumes and cutback vapor irritate at once, and doctors do not like what they do over years. Skin counts: wash with soap, not with fuel.\nNever lean over an open lid or go into a tank: the air there kills. Read the safety sheet, and keep it on the truck.",
  "asks": [
    "smoke from the mix",
    "fumes",
    "smell of asphalt",
    "headache from tack",
    "breathing tack",
    "sick from the smell"
  ],
  "links": [
    "step/tack",
    "choice/tack-kind"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "asphalt fumes, OSHA standards page"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "hand-wand",
  "title": "tack by hand wand",
  "kind": "material",
  "text": "Spray a pad of known size first and weigh it: that shows what your hand is doing. Give me the rate and the pad, and I figure what it should gain.\nWalk at one pace, thin and even, old stone still showing through; no puddles, no bare spots, edges and cut faces too. A hand goes heavy at every turn.\nFace shield, gloves, long sleeves, wind at your back. Hoses under pressure whip: shut the valve and bleed it before you lay it down.",
  "asks": [
    "wand only",
    "hand spray the tack",
    "no distributor",
    "tack with a hose",
    "spray by hand",
    "how much with the wand"
  ],
  "links": [
    "quantity/pad-mass",
    "quantity/pad-area",
    "quantity/tack-rate"
  ],
  "seen": [
    {
      "mark": "derived"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "heat-day",
  "title": "hot days",
  "kind": "weather",
  "text": "Water, rest, shade, and watch each other. Heat index 91 to 103 is moderate, to 115 high, above that very high; full sun and hot mix add to it.\nA cup every 15 to 20 minutes, before you are thirsty. New men, and those back from a week off: a fifth of the day in the heat at first, and a fifth more each day. Most who die of it are in their first week.\nConfused, staggering, hot skin: that is heat stroke. Emergency number, and cool him hard.",
  "asks": [
    "heat index",
    "hot weather work",
    "water breaks",
    "heat illness",
    "working in july",
    "too hot",
    "new man in the heat"
  ],
  "links": [
    "step/brief-crew"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Using the Heat Index, a guide for employers, OSHA"
    },
    {
      "mark": "restated",
      "document": "hydration and acclimatization advice of OSHA and NIOSH"
    }
  ]
},
{
  "id": "help-plan",
  "title": "getting help fast",
  "kind": "safety",
  "text": "Before work, write it on the board: road, direction, milepost, the nearest crossroad, the number, and where a phone works here. Know who is trained in first aid, and where kit, water and defibrillator are.\nIn an emergency one calls and stays on the line, one goes to the road to meet them, flaggers hold both ways and keep a lane open for them.\nCounty lines matter: the call may land in the next county. Say the county first.",
  "asks": [
    "emergency plan",
    "where are we for 911",
    "no phone signal",
    "first aid kit",
    "who calls",
    "nearest hospital",
    "tell the ambulance where"
  ],
  "links": [
    "step/brief-crew",
    "card/emergency-medical"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "holding-repair",
  "title": "a holding repair",
  "kind": "defect",
  "text": "It buys time and does not cure: smoother road, water kept out, a year or a few. That is fine, as long as it is called that.\nOn cracked road it works only where the base is firm, dry and drained, and the pieces do not move. The cracks come through again. Loose pieces, pumping water or a soft base: dig out.\nSay it in the report, so nobody is surprised, and the stretch gets on the list for a real repair. Federal guides want a cut, square repair there.",
  "asks": [
    "patch over alligator cracks",
    "will it fix it",
    "temporary patch",
    "band aid",
    "only buys time",
    "is it a real fix"
  ],
  "links": [
    "repair/blade-patch",
    "defect/alligator-cracking",
    "repair/dig-out"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, ch. 7"
    },
    {
      "mark": "published",
      "document": "Maintenance Operations Manual, Texas DOT"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "hot-or-cold-mix",
  "title": "hot mix or cold mix",
  "kind": "material",
  "text": "Hot for traffic, intersections and places where cars brake, with a warm road, a short haul and the roller on the blade's heels. Cold for a far haul, a shut plant, small spots, and time to let it air.\nThin hot lifts cool in minutes; a blade lays slower than a paver, so not all of it may be laid hot. Cold mix waits for you, but stays soft until its oil or water has left.\nWhich one a road gets is your agency's call.",
  "asks": [
    "hot or cold",
    "should we get hot mix or cold mix",
    "which mix to use",
    "cold mix or hot mix",
    "hma or cold patch",
    "plant is closed",
    "winter mix",
    "hot mix or cold mix better",
    "use cold mix or hot",
    "hot or cold for a small spot"
  ],
  "links": [
    "choice/mix-kind",
    "limit/surface-temperature",
    "quantity/time-to-roll"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "hot-stuff",
  "title": "handling hot tack and mix",
  "kind": "safety",
  "text": "Gloves, long sleeves, boots laced high, face shield at the wand and the hot tank; cuffs over gloves. Mix can come at over 300 degrees, and it sticks.\nKeep clean water enough for a long rinse on the job, and know where it is. If it happens: emergency number first, cool running water for 20 minutes, and do not peel the asphalt off. No ice, no solvent, no grease.\nBleed the hose before you open it. Eyes: rinse, and keep rinsing.",
  "asks": [
    "burns how to avoid",
    "hot tack gloves",
    "face shield",
    "what if someone is burned",
    "how hot is the mix",
    "treat a burn",
    "first aid for burns",
    "somebody gets burned"
  ],
  "links": [
    "step/tack",
    "practice/apparel",
    "card/emergency-burn"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "questions and answers on burns, Cornell Local Roads Program"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "house-drives",
  "title": "drives and houses in the zone",
  "kind": "traffic",
  "text": "Tell them the day before, in person or with a card: the hours, and how to get out. In the zone each drive gets a person, or a clear word which way and when.\nDo not blade a ridge across a drive: tie it in by hand the same day. A tired man with groceries drives over whatever you left.\nSomeone sick, on oxygen or waiting for a ride? Ask, and keep that drive open. Nobody backs out into a one-lane line without a man to bring him out.",
  "asks": [
    "driveway",
    "house in the work zone",
    "resident wants out",
    "farm drive",
    "access to houses",
    "block a driveway"
  ],
  "links": [
    "step/traffic-control-up",
    "step/clean-up"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "how-long-last",
  "title": "how long a patch lasts",
  "kind": "defect",
  "text": "No published life was found. Base, water and traffic decide: on a firm dry base about as long as the road round it, on a wet one till the next thaw.\nWhat helps: clean dry surface, right tack, thin lifts each rolled, a crown that drains, and a shoulder that holds the edge.\nPromise nobody years. If it fails again within one, stop patching: it is water or base, and the engineer's turn. The record of what you laid tells him where to look.",
  "asks": [
    "life of a patch",
    "how many years",
    "when will it fail",
    "does it last",
    "will the patch hold up"
  ],
  "links": [
    "repair/blade-patch",
    "fault/failure-returns"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "how-many-people",
  "title": "people for a blade patch",
  "kind": "quantity",
  "text": "Eight to twelve is usual; no published number was found. Foreman, grader operator, one or two on rollers, tack truck, two or three truck drivers, two rakers, and at least two flaggers.\nOne of the rakers spots trucks. Add a flagger for every side road that is open, and a relief for the rest.\nShort today? Cut the patch, not the flaggers. A job that cannot be flagged at both ends, or has nobody to spot trucks, waits.",
  "asks": [
    "how many people",
    "crew size",
    "how many guys on the crew",
    "who do we need",
    "men needed",
    "short handed"
  ],
  "links": [
    "quantity/crew-size",
    "practice/flagger-count"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "injury-report",
  "title": "telling about an injury",
  "kind": "safety",
  "text": "Super at once, whatever the hour, then your agency's form. US law has clocks, as remembered: a death within 8 hours; a night in hospital, an amputation or a lost eye within 24. State plans may be stricter.\nLeave the scene as it is, once nobody can be hurt by it. Write times, names, machine, layout, photos. What you saw, not what you think.\nSmall ones count: a splinter of hot tack on Tuesday is an infection by Friday, with no record of it.",
  "asks": [
    "report an accident",
    "osha report",
    "who to notify",
    "injury paperwork",
    "death or hospital report",
    "how soon to report",
    "legal deadline injury"
  ],
  "links": [
    "step/record",
    "card/emergency-medical"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "intersection",
  "title": "a patch in an intersection",
  "kind": "traffic",
  "text": "Every leg needs control, and a path to turn. Do it in halves, so there is always one way through, and use a flagger for each leg that is open.\nCars come from where nobody looks, and turning trucks swing over corners and cones. Short, quiet hours help more than extra signs.\nA signal is switched or covered by its owner, not left to argue with your flagger. Lay dense hot mix where cars brake and turn: soft mix shoves there by next week.",
  "asks": [
    "intersection",
    "crossroads in the patch",
    "four way",
    "patch in the middle of a junction",
    "turning traffic"
  ],
  "links": [
    "step/traffic-control-up",
    "practice/flagger-count",
    "choice/mix-kind"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "late-trucks",
  "title": "trucks are late",
  "kind": "equipment",
  "text": "Roll what is down and keep rolling: it cools whether you lay or not. Square or ramp the end. Gone longer than it takes to cool, treat that end as a joint: clean edge, tack, go on.\nAsk the plant how far off they are before you tack any more road.\nDo not make it up with a bigger row or more speed. And use the wait for what gets skipped: straightedge, water, the signs, and the line of cars.",
  "asks": [
    "no mix trucks for an hour",
    "waiting on trucks",
    "no trucks",
    "blade is waiting",
    "trucks held up",
    "gap between loads",
    "mix is late",
    "trucks are late",
    "trucks running late",
    "trucks are not showing up",
    "where are the trucks"
  ],
  "links": [
    "quantity/truck-spacing",
    "quantity/trucks-needed",
    "limit/roller-keeps-up"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Pavers and rollers, reprinted trade article"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "leave-overnight",
  "title": "leaving it for the night",
  "kind": "stage",
  "text": "Either the lane stays closed, lit and watched, or it is made fit to drive on: no row, all of it rolled, every end ramped down over {min:overnight-ramp} or longer, and the signs up: UNEVEN LANES, LOW SHOULDER, BUMP.\nIn the dark nobody sees a row or a lip until the wheel is on it. Devices that stay out at night must shine in headlights.\nNever a windrow in an open lane. Not even for an hour, not even at the edge.",
  "asks": [
    "can not finish today",
    "leave it overnight",
    "finish tomorrow",
    "what may stay on the road at night",
    "patch half done tonight"
  ],
  "links": [
    "practice/overnight",
    "limit/overnight-ramp",
    "practice/night-lighting"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6H.27, 6N.01"
    },
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "left-lane",
  "title": "closing the left lane",
  "kind": "traffic",
  "text": "The mirror image: the taper starts from the left, the arrow points right, and the signs say LEFT LANE CLOSED.\nDrivers expect the slow lane to close, and the left one carries the fast cars. So give it length: signs well out, the taper in full view, nothing over a crest.\nYour trucks get in and out there too, across fast traffic: plan where, use a shadow vehicle, and keep people from crossing lanes on foot. Crown and low side are reversed: check which way to roll.",
  "asks": [
    "left lane",
    "inside lane",
    "fast lane",
    "median lane",
    "work next to the median"
  ],
  "links": [
    "quantity/merging-taper",
    "practice/arrow-board-mode"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "leftover-mix",
  "title": "mix left over",
  "kind": "equipment",
  "text": "Hand-patch holes inside the zone, fix the drive tie-ins, or take it back to the yard. Cold mix goes back on the pile.\nNot in the ditch, not strung out down the road, not spread a bit thicker on a finished mat. A patch laid over size to get rid of mix is a bump with your name on it.\nHot mix that has gone cold is waste: haul it. Look at the tickets and the depths: I figure an extra of {waste}, and yours may be less.",
  "asks": [
    "extra mix",
    "mix left on the truck",
    "tons left on the truck",
    "where leftover mix goes",
    "too much mix",
    "what to do with leftover",
    "half a load left",
    "mix to spare",
    "leftover mix",
    "tons left over",
    "what to do with extra mix"
  ],
  "links": [
    "quantity/premix-order",
    "quantity/waste",
    "practice/waste-disposal"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "lightning",
  "title": "lightning and storms",
  "kind": "weather",
  "text": "Hear thunder, and you are close enough to be struck. Stop, and get everyone off the road and the open machines into closed vehicles, windows up; not under a tree, a raised bed or the wires.\nStart again 30 minutes after the last thunder. A tornado warning is for a solid building, or the lowest ground away from vehicles; the foreman settles the place in the morning talk.\nBefore you go: mix tight or rolled, traffic held or let through by your plan, signs weighted. Nobody stays out with a paddle because cars are waiting.",
  "asks": [
    "lightning",
    "thunder",
    "thunderstorm coming",
    "tornado warning",
    "storm is close",
    "struck by lightning risk",
    "high wind warning"
  ],
  "links": [
    "step/brief-crew",
    "practice/no-rain"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "load-limits",
  "title": "posted bridges and frost laws",
  "kind": "equipment",
  "text": "A posting is the whole truck, not the load. Truck and load together must be under it: as many tons in the bed as the sign says is far over. Go round.\nIn a thaw the road itself is weak, and frost laws cut what every axle may carry. Then it is more trips with lighter loads: give me the empty weight and the limit, and I figure the load.\nThe ticket shows the true weight; guess nothing. An overloaded truck stops badly, tips easily, and breaks the road we mend.",
  "asks": [
    "posted bridge",
    "bridge weight limit",
    "frost laws",
    "spring load limits",
    "overweight truck",
    "legal load",
    "gross weight sign",
    "bridge says so many tons",
    "carrying so many tons over a bridge"
  ],
  "links": [
    "limit/payload",
    "quantity/legal-payload",
    "quantity/posted-weight",
    "quantity/truck-payload"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "published",
      "document": "Size and weight questions and answers, 23 CFR 658.17, FHWA"
    }
  ]
},
{
  "id": "locates",
  "title": "locates before you cut or dig",
  "kind": "safety",
  "text": "Call 811 and wait for the marks before anything cuts into the ground: milling, digging out, cutting a shoulder or a ditch. Sweeping, tacking and laying mix usually need none.\nGas, power and phone lines can lie just under the road, and shallower than the drawings say. Law in your state sets the days to wait and how long the marks hold.\nMarks that are gone or in doubt: stop and call again. If you hit one, nobody strikes a spark, everyone walks upwind, and the emergency number comes first.",
  "asks": [
    "call 811",
    "call before digging",
    "utility locate",
    "when do we need a locate",
    "buried gas or cable marks",
    "before we mill or dig",
    "dig out what is underground",
    "what if we hit a gas line",
    "locate marks",
    "locate before shaving humps"
  ],
  "links": [
    "step/cut-and-clean",
    "repair/dig-out",
    "repair/shoulder-pull"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "look-again",
  "title": "looking at the patch again",
  "kind": "stage",
  "text": "In a few days, and again after the first good rain. Rain shows at once what the eye misses: a low spot holds water, a high edge dams it.\nLook for loose stone, a lip at the ends, ruts that came back, the edge breaking, and a shoulder that has washed away from it. Small things are minutes now and a new patch later.\nLook from the shoulder, with lights and a lookout. What fails again within the year is base or water, not the mix: that one goes to the engineer.",
  "asks": [
    "tell a good patch from a bad one",
    "what a good patch looks like after",
    "check it later",
    "come back and look",
    "inspect after",
    "follow up on the patch",
    "when to check it again"
  ],
  "links": [
    "step/record",
    "fault/ponding",
    "fault/raveling",
    "fault/low-patch"
  ],
  "seen": [
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "loose-and-rolled",
  "title": "loose depth and rolled depth",
  "kind": "material",
  "text": "Blade-laid mix stands about {low:roll-down} to {high:roll-down} times as thick loose as it does rolled. I figure with {roll-down} until you measure your own.\nBehind a paver the mat is half packed already; behind a blade it is not, so expect the higher end. Measure the first strip before and after rolling, and tell me: I then use yours.\nSet for too little roll-down and the whole patch comes out low. Never put roll-down on the tons: the tickets weigh the same either way.",
  "asks": [
    "roll down",
    "how thick before rolling",
    "loose thickness",
    "compaction of the lift",
    "how much does it squash",
    "loose to compacted"
  ],
  "links": [
    "quantity/roll-down",
    "quantity/lift-loose",
    "fault/low-patch"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Asphalt Pavement Construction Handbook, National Asphalt Pavement Association, 7.5"
    },
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, 3.3"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "low-shoulder",
  "title": "the shoulder is low beside the patch",
  "kind": "defect",
  "text": "The patch made it: what you lay at the edge is added to the drop. Measure again after the last lift, and pull the shoulder up the same day.\nA wheel that drops off climbs back with a jerk, and the car crosses the road. From {drop-off-max} it wants a sign or a fix; over {stop:drop-off} it is urgent, with the Shoulder Drop-Off sign.\nNo gravel to pull? Then it must be hauled in. A sign is not a repair, and a roller stays back from that edge.",
  "asks": [
    "shoulder drop after patching",
    "low shoulder",
    "edge drop off",
    "patch made a lip at the shoulder",
    "pull the shoulder up",
    "shoulder sign",
    "shoulders are low now"
  ],
  "links": [
    "limit/drop-off",
    "limit/drop-off-after",
    "repair/shoulder-pull",
    "quantity/edge-drop-after"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6H.26"
    },
    {
      "mark": "published",
      "document": "The Safety Edge, FHWA-SA-09-023"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "manhole",
  "title": "manholes and valve boxes",
  "kind": "craft",
  "text": "Mark it before you start, off to the side where the mix cannot hide it. Lift the blade over it, hand-work the mix round it, and keep the lid clean.\nA cutting edge that catches iron bends, and the operator meets the wheel. A lid buried under a mat cannot be found on the night it is needed.\nRaising it belongs to its owner. Left low, it is a hole: ramp the mix down to it, or sign it.",
  "asks": [
    "manhole",
    "valve box",
    "iron in the lane",
    "casting",
    "lid in the patch",
    "utility cover",
    "water valve",
    "manhole lid",
    "manhole cover"
  ],
  "links": [
    "step/first-lift",
    "step/clean-up"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "mixing-emulsions",
  "title": "mixing two emulsions in a tank",
  "kind": "material",
  "text": "Never. SS and RS carry one charge, CSS and CRS the other; put together they break in the tank, and you pump gum. Flush the tank, pump and bar first.\nEven the same kind from two suppliers should be asked about. A last few gallons are enough to start it.\nCheck the tank is cool and holds no water before anything hotter goes in: water under hot asphalt boils up and out of the lid. Gum in a bar is cleared cold, never with a torch.",
  "asks": [
    "load one grade on top of another",
    "load css-1h on top of a half tank of ss-1",
    "put one kind on top of another kind in the tank",
    "top off with another grade",
    "mix ss and css",
    "different emulsion in the tank",
    "anionic and cationic",
    "load another tack on top",
    "change tack types",
    "flush the tank"
  ],
  "links": [
    "quantity/tank-volume"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "tack coat best practices, roadresource.org"
    }
  ]
},
{
  "id": "near-miss",
  "title": "near misses",
  "kind": "safety",
  "text": "Stop and say it now, to everyone who could be next. Three lines: what nearly happened, why, what we change. No names, no blame.\nA near miss is the accident with better luck, and the same set-up will try again this afternoon. Change the set-up before you go on: where people walk, who spots, how trucks turn.\nWrite it in the day's record, and use it for tomorrow's talk. Crews that laugh it off do not hear about the next one.",
  "asks": [
    "close call",
    "almost hit",
    "near miss",
    "nearly got hurt",
    "somebody could have been killed",
    "nothing happened but",
    "almost backed over",
    "truck nearly got him"
  ],
  "links": [
    "step/record",
    "practice/backing-spotter"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "new-flagger",
  "title": "who may flag",
  "kind": "traffic",
  "text": "Only one who is trained and can show it. The manual says flaggers should be; many states and agencies make it law, with a card to carry.\nHe must give clear signals, move fast, keep his head, know where he would jump, and stay off his phone. He starts beside an old hand, at the quiet end, by day.\nThis page and a quiz certify nobody. A man handed a paddle because we were short is the one the lawyer asks about.",
  "asks": [
    "can a new man flag",
    "flagger training",
    "flagger card",
    "certified flagger",
    "laborer flagging",
    "who is allowed to flag"
  ],
  "links": [
    "practice/flagger-count",
    "practice/apparel"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6D.01"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "next-patch",
  "title": "the next patch up the road",
  "kind": "traffic",
  "text": "If the signs of the second would stand inside the first, treat both as one zone. If not, sign each by itself. There is no federal distance for it.\nGive me the speed and the road, and I figure sign to sign; hold that against the gap between the patches.\nMove the signs along with you. Miles of signs with nobody behind them teach drivers to ignore the next ones, and those are the ones that matter.",
  "asks": [
    "two patches close together",
    "move to the next spot",
    "new signs for each patch",
    "patches down the road",
    "one zone or two"
  ],
  "links": [
    "practice/signs-true",
    "quantity/zone-length",
    "quantity/sign-spacing-a"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6B.06, 6N.01"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "night-work",
  "title": "working after dark",
  "kind": "traffic",
  "text": "Only with your agency's leave, and with more than by day: flagger stations lit, tall cones with bands, signs that shine, Class 3 on flaggers. Over an hour at night counts as a longer kind of work, with its own set-up.\nDrivers are faster, sleepier and more often drunk, and headlights alone show a flagger too late.\nAim lights down and away from drivers: glare hides your people. Street lights do not count as lighting for a flagger. Cooler nights also cool a thin lift faster.",
  "asks": [
    "work at night",
    "night patching",
    "lights for night work",
    "after dark",
    "light plants",
    "flagging at night"
  ],
  "links": [
    "practice/night-lighting",
    "limit/cone-height",
    "practice/apparel",
    "choice/work-duration"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6A.05, 6D.06, 6N.18"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "no-diesel",
  "title": "no fuel on drums, beds or tools",
  "kind": "material",
  "text": "No. Fuel dissolves the binder: the spot stays soft, then ravels. Water on the drum, and a release agent your agency approves in beds and on tools.\nJust enough water to stop the mix from sticking; a puddle cools the mat. Scrapers and mats do more than any soap.\nFuel on hot mix also smokes and can flash, and what drips runs to the ditch. A rag and a scraper while the tool is warm is the old way, and it works.",
  "asks": [
    "diesel in the spray tank",
    "diesel on the drum",
    "fuel to keep mix off the drum",
    "diesel in the roller water",
    "diesel on the lute or the rake",
    "mix sticks to the truck bed",
    "keep mix from sticking",
    "release agent",
    "spray the truck bed",
    "clean the tools with diesel",
    "fuel oil on the drum",
    "soap in the water"
  ],
  "links": [
    "fault/pickup",
    "step/roll-lift",
    "step/clean-up"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 11"
    },
    {
      "mark": "published",
      "document": "Standard Specifications, Florida DOT, section 330"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "no-riders",
  "title": "no riders",
  "kind": "safety",
  "text": "No. One seat, one belt, one person. Nobody rides a step, a fender, a drawbar, a tailgate or the blade.\nA rider falls off when it stops or turns, and falls where the drum or wheel goes next. There are reports of just that.\nMoving cones from a truck is done from a place made for it, with a rail, or on foot. Training someone? From the ground, or on a machine that has a second seat and belt.",
  "asks": [
    "a lift on the roller",
    "ride back on the side step",
    "ride along on the machine",
    "ride on the roller",
    "ride the step",
    "ride on the tailgate",
    "hop on the grader",
    "second man on the machine"
  ],
  "links": [
    "practice/roller-belt",
    "step/roll-lift"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Fatality Assessment and Control Evaluation report 9806, NIOSH"
    }
  ]
},
{
  "id": "old-stockpile",
  "title": "an old cold-mix pile",
  "kind": "material",
  "text": "Yes, if it still breaks up by hand, every stone is black, and it is dry. Dig past the crust, throw the lumps out, and stay off the bottom of the pile.\nCrust is set binder: it never blends again, and rolls in as chunks that pop out. The bottom holds dirt and water.\nStiff but sound? Work it back and forth in the sun first. No flame under it, and no fuel poured in to soften it. A pile that smells only of dust is waste.",
  "asks": [
    "old cold mix",
    "stockpile",
    "pile from last year",
    "pile of cold mix sitting since fall",
    "crusted pile",
    "is the pile still good",
    "mix sat all winter"
  ],
  "links": [
    "fault/chunks",
    "choice/mix-kind"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "one-flagger",
  "title": "one flagger or two",
  "kind": "traffic",
  "text": "Two, one at each end. One will do only where he sees both ends and keeps control of both, all the time.\nSome states print their own limits on length, traffic and sight for one flagger; the rule on flaggers shows two of them. Your agency's figure wins.\nA truck parked in the way, a curve, fog or a steady line of cars ends it: then it is two, or the job waits. Any doubt means two.",
  "asks": [
    "how many flaggers do I need",
    "how many flaggers",
    "number of flaggers",
    "single flagger",
    "one flagger enough",
    "alone flagging",
    "short one flagger",
    "get by with one man flagging"
  ],
  "links": [
    "practice/flagger-count",
    "quantity/flaggers",
    "quantity/one-lane-length"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6E.02"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "open-to-traffic",
  "title": "letting traffic onto the patch",
  "kind": "stage",
  "text": "Yes, once all of this is so: rolled, cool, swept, no bare tack showing, no lip without a ramp or a sign, and the line or its sign in place.\nA hot mat still moves: let it cool to about {max:open-cool}. Cold mix wants to be tight under the roller. Loose stone breaks windshields, bare tack is slick, and a lip throws a motorcycle.\nBoss in a hurry? Open later, not sooner. Signs and flaggers stay until the last machine is off the road.",
  "asks": [
    "when can cars go on it",
    "open the lane",
    "let traffic on",
    "is it ready for cars",
    "how cool before opening",
    "ready to open",
    "drive on the new patch",
    "fresh patch and cars",
    "let them on it"
  ],
  "links": [
    "practice/open-to-traffic",
    "limit/open-cool",
    "step/clean-up"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., part 6"
    },
    {
      "mark": "memory"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "paddle",
  "title": "using the paddle",
  "kind": "traffic",
  "text": "To stop: face traffic, STOP side toward them and still, arm straight out, other palm up toward them. To let go: SLOW side, and motion with the free hand. Never wave the paddle.\nStand on the shoulder or in the closed lane, alone, seen from far, with your way out picked. Step out only when the first car has stopped.\nA flag is for emergencies; hands alone are not allowed. He does not stop? Do not stand in front of him: jump clear, then horn and radio.",
  "asks": [
    "stop slow paddle",
    "flagging signals",
    "how to flag",
    "hand signals",
    "stop traffic with paddle",
    "flag or paddle"
  ],
  "links": [
    "practice/flagger-station",
    "practice/flagger-count"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6D.02, 6D.05"
    }
  ]
},
{
  "id": "phone-off-road",
  "title": "the phone and this page",
  "kind": "safety",
  "text": "Off the road only. Step out of the work and the traffic path, behind something solid, then read. Flaggers and operators: never at the post or in the seat.\nA phone takes eyes and ears at once, and this place has both full. Ask before the pass, not during it; let the foreman ask for you.\nBig letters and talking to it do not cure that. Your agency may forbid phones in machines altogether, and the law does for truck drivers.",
  "asks": [
    "phone in the cab",
    "use the phone while working",
    "reading this on the road",
    "texting",
    "phone while flagging"
  ],
  "links": [
    "step/brief-crew",
    "practice/flagger-station"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "pilot-car",
  "title": "pilot car",
  "kind": "traffic",
  "text": "Where the one-lane stretch is long, bends, or has side roads, so that cars stray or speed. There is no federal length; Iowa says over {max:pilot-car}.\nThe pilot car leads each line through at a walking pace and keeps it off fresh tack and mix. It carries its own sign, PILOT CAR FOLLOW ME, and works with a flagger at each end.\nDrives and side roads inside still need someone: a car that pulls out behind the line meets the next one head on.",
  "asks": [
    "pilot vehicle",
    "lead car",
    "follow me car",
    "when is a pilot car needed",
    "long one lane section"
  ],
  "links": [
    "limit/pilot-car",
    "quantity/one-lane-length"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Design Manual 9C-3, Iowa DOT"
    },
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6E.04"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "ppe",
  "title": "what to wear",
  "kind": "safety",
  "text": "High-visibility vest or jacket, Class 2 or 3, day and night; that one is a shall. Hard hat, laced boots, gloves, long sleeves, eye protection, and ears near saws and machines.\nClass 3 for flagging at night. At the wand and the hot tank: face shield, and cuffs outside the gloves, so nothing hot runs in.\nA faded, dirty or open vest does not show. Long trousers over the boots, no rings or loose strings near anything that turns. Your employer's list comes first.",
  "asks": [
    "what to wear",
    "clothes",
    "clothes and gear",
    "what clothes for the first day",
    "safety gear",
    "vest",
    "hard hat",
    "boots and gloves",
    "class 2 or class 3",
    "long sleeves",
    "ppe",
    "what to wear tomorrow",
    "what gear to bring",
    "what should i wear"
  ],
  "links": [
    "practice/apparel",
    "step/brief-crew"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6C.05"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "preshift-grader",
  "title": "looking over the grader at the start of the shift",
  "kind": "equipment",
  "text": "Look it over at the start of every shift, not the day before: tires equal and hard, cutting edge straight and tight, circle and moldboard with no slack.\nThen steering, brakes, lights, alarm, horn, mirrors, clean windows, belt, leaks, and float if it has it. A worn edge, soft tires or a slack circle print ripples into every lift.\nBlade down, brake set, engine off before anyone goes near the blade. Anything the law asks for that does not work keeps the machine parked.",
  "asks": [
    "walk around the grader",
    "pre-shift check",
    "inspect the blade",
    "grader check in the morning",
    "tires edge circle",
    "what to check on the motor grader"
  ],
  "links": [
    "step/order-and-check",
    "fault/washboards"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "29 CFR Part 1926, 601(b)(14)"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "preshift-roller",
  "title": "looking over the roller at the start of the shift",
  "kind": "equipment",
  "text": "Belt and roll bar first, then brakes, steering, alarm, horn and lights. Water tank full, every spray nozzle working, scrapers and mats touching, drums clean and smooth.\nA dry spot on the drum picks up mix and tears the mat; a nick in the drum prints a mark every turn. Rubber tires: equal pressure, and warm before they touch hot mix.\nNo belt or no brakes means no rolling. Most who die on rollers go over an edge without the belt on.",
  "asks": [
    "roller pre-shift check",
    "inspect the roller",
    "roller water and scrapers",
    "roller walk around",
    "is the roller fit to go",
    "before we start the roller"
  ],
  "links": [
    "step/order-and-check",
    "practice/roller-belt",
    "fault/pickup"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 11"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "queue",
  "title": "cars backed up",
  "kind": "traffic",
  "text": "The line must end before your first sign. When it does not: make the stops shorter, move the signs out, or put a lit vehicle behind the line, now.\nA driver who comes over the hill at speed into stopped cars has had no warning at all; that is the worst crash a work zone makes. Give me the cars an hour and the minutes you hold them, and I figure the length.\nNever across railroad tracks. Plan the inside passes into the stops you make anyway.",
  "asks": [
    "line of cars",
    "backed up past the sign",
    "how long is the line",
    "traffic jam",
    "stacked up cars",
    "queue past the first sign",
    "waiting cars",
    "how far will they stack up",
    "traffic backed up",
    "cars backed up",
    "traffic stacking up",
    "line too long"
  ],
  "links": [
    "practice/queue-end",
    "limit/queue-room",
    "quantity/queue-length",
    "limit/hold-time"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6A.02, 6N.17"
    },
    {
      "mark": "derived"
    }
  ]
},
{
  "id": "railroad",
  "title": "railroad tracks near the work",
  "kind": "traffic",
  "text": "No car stands on the tracks, ever. Move your flagger so the line cannot reach them, or post an officer or a flagger at the crossing itself.\nA driver in a line cannot back off when the gates come down. Figure the line for your longest stop, and add to it.\nWork near the rails, or machines that could reach them, needs the railroad's permission and its own flagman. They want days of notice. Nothing is left lying on the crossing, not even loose mix.",
  "asks": [
    "train tracks",
    "railroad crossing",
    "near the rails",
    "tracks ahead",
    "queue over the tracks",
    "railroad flagman"
  ],
  "links": [
    "practice/queue-end",
    "quantity/queue-length"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6N.17"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "rain-on-row",
  "title": "rain on the row",
  "kind": "weather",
  "text": "Lay and roll only what you can finish dry. Pull the rest into a tight, high row, so it sheds water, and cut drains through it. The lane stays closed.\nRain in loose mix cools it, washes cold mix thin, and shut under a mat it strips the stone. Nothing is laid or rolled in rain, and no tack is shot.\nWhen it stops: spread wet cold mix out to air; hot mix that went cold is hauled. Look at the tack again before you lay on it.",
  "asks": [
    "rain coming",
    "rain on the windrow",
    "row got wet",
    "storm while laying",
    "caught by rain",
    "mix wet in the row"
  ],
  "links": [
    "practice/no-rain",
    "step/windrow",
    "fault/rained-on-tack"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "ran-out-short",
  "title": "ran out of mix",
  "kind": "equipment",
  "text": "End it where you are: ramp the mix down over {min:overnight-ramp} or longer, roll it, put up the BUMP sign. Next day cut back to a clean full edge, tack it, and go on.\nDo not stretch what is left. Thin mix drags and ravels, and you will cut it out anyway.\nTell me what is down and what is left to cover, and I figure what to order. Tack you shot and did not cover wants sand and a sign before cars go on it.",
  "asks": [
    "ran out",
    "came up short",
    "not enough mix",
    "short of mix at the end",
    "out of asphalt before the end"
  ],
  "links": [
    "fault/runs-short",
    "quantity/tons-left",
    "limit/overnight-ramp"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "roller-edge",
  "title": "the roller and the edge",
  "kind": "safety",
  "text": "Only as near as the edge is firm and level. Overhang of about {roller-overhang} is for a supported edge; at a soft shoulder or a drop-off stay back, and bring the shoulder up first.\nThe patch just made the drop deeper, and a drum slides before it tips. Belt on, roll bar up, slow, drum straight: of those who went over belted in a roll bar, next to none died.\nIf it starts to go, hold on and stay in. Never jump from it.",
  "asks": [
    "close to the edge",
    "roller tips over",
    "roller near a drop off",
    "soft shoulder roller",
    "how near the ditch",
    "roller rollover",
    "seat belt on the roller"
  ],
  "links": [
    "practice/roller-edge",
    "practice/roller-belt",
    "quantity/roller-overhang"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Preventing Injuries When Working with Ride-On Roller/Compactors, NIOSH"
    },
    {
      "mark": "published",
      "document": "SHIB 09-29-2008, Compactor Rollover Hazard, OSHA"
    }
  ]
},
{
  "id": "roller-pattern",
  "title": "which way to roll",
  "kind": "equipment",
  "text": "From the low edge up: shoulder to crown on a crowned road, inside edge first on a banked curve. Go out and back in one lane, shift over, overlap about {roller-overlap}, and so on up.\nWhat is rolled below holds what lies above; from the top down, the mat creeps. Steel wheels go no faster than {max:roller-speed}.\nStart and stop gently, turn only on rolled mat, and never stand on it. Look back before every change of direction: most people a roller kills are behind it.",
  "asks": [
    "rolling pattern",
    "low side first",
    "roll from the shoulder",
    "which edge first",
    "overlap of the drum",
    "roller order"
  ],
  "links": [
    "practice/roll-low-to-high",
    "limit/roller-overlap",
    "limit/roller-speed",
    "quantity/roller-lanes"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 11"
    }
  ]
},
{
  "id": "row-over-the-line",
  "title": "blade or row over the center line",
  "kind": "safety",
  "text": "Not while traffic moves. No wheel, blade end, drum or row goes over the line while cars use the other lane.\nA row that lies against the line puts the outside of a grader straddling it well into the open lane. So make inside passes and turnouts with both flaggers on STOP, clear the line, then release; or set the row in and carry it.\nThe toe, the swing of the rear and the turn stick out farther than you think. Have the flagger say clear before and after.",
  "asks": [
    "swing over the yellow",
    "grader over the center line",
    "machine in the open lane",
    "inside passes next to traffic",
    "wheels over the line"
  ],
  "links": [
    "practice/machine-inside-lane",
    "limit/open-lane",
    "step/windrow"
  ],
  "seen": [
    {
      "mark": "derived"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "row-too-big",
  "title": "the row will not fit between the wheels",
  "kind": "craft",
  "text": "Do not straddle it: dump and lay it in two goes, or knock half of it down first. Inside wheels stand about five feet apart on most machines; measure yours.\nGive me the width, the depth and the loose factor, and I figure the base of the row. Deep patches on a full lane do not fit in one row.\nWheels that climb the row tip the machine toward traffic and pack tracks into the mix. And what you cannot lay before it cools should not be on the road yet.",
  "asks": [
    "too big to straddle",
    "row wider than the wheels",
    "windrow too high",
    "huge windrow",
    "split the row",
    "dump in two goes"
  ],
  "links": [
    "quantity/windrow-base",
    "quantity/windrow-section",
    "step/windrow"
  ],
  "seen": [
    {
      "mark": "derived"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "rubber-or-steel",
  "title": "rubber tires or steel drum",
  "kind": "equipment",
  "text": "Rubber in ruts and on leveling lifts, steel to finish. Tires reach down into the low; a steel drum rides on the high sides and leaves the rut loose.\nOnly steel on the job? Roll in the rut first, with a narrow drum or the wheels of a loaded truck, then across.\nCold tires pick up hot mix: warm them on old road first. Steel leaves the surface tight and flat, and shows you every bump you will be asked about.",
  "asks": [
    "rubber tire roller",
    "pneumatic or steel",
    "drum bridges the rut",
    "roller for ruts",
    "steel roller for the finish",
    "which kind of roller"
  ],
  "links": [
    "practice/drum-bridges-rut",
    "step/roll-lift",
    "step/final-roll"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Standard Specifications, Florida DOT, section 330"
    },
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, ch. 7"
    }
  ]
},
{
  "id": "school-bus",
  "title": "a school bus in the zone",
  "kind": "traffic",
  "text": "Get the times from the bus garage beforehand, and be ready for them. When it stops: both ends on STOP, machines still and out of gear, until every child is in the bus or in the house.\nChildren run after a bus and look at machines. They do not look at cars, and a roller operator does not see them.\nOffer the garage a pick-up point outside the zone. The bus's own stop arm counts for your traffic too; the flagger never waves a car past it.",
  "asks": [
    "school bus",
    "bus stop in the zone",
    "kids getting on",
    "children near the work",
    "bus route"
  ],
  "links": [
    "step/traffic-control-up",
    "step/order-and-check"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "should-or-shall",
  "title": "shall, should and may",
  "kind": "trainer",
  "text": "In the traffic manual shall is an order, should is advice to be left only for a reason, may is a choice. Most spacings, tapers and buffers are should; vests, lit flagger stations and signs ahead of a flagger are shall.\nA should is no loophole: whoever shortens it should be able to say why, in writing.\nYour state, plan or contract can turn any should into a shall. So what I call careful here may be forbidden where you stand.",
  "asks": [
    "shall or should",
    "is it required",
    "is it the law",
    "guidance or standard",
    "what does should mean",
    "do we have to by the manual"
  ],
  "links": [
    "limit/sign-spacing",
    "limit/buffer-length",
    "limit/device-spacing"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 1C"
    }
  ]
},
{
  "id": "side-roads",
  "title": "side roads in the zone",
  "kind": "traffic",
  "text": "Yes. Anyone who can turn in needs a sign before he turns and someone or something that tells him when to go, and which way.\nA car that comes out of the side between your two flaggers drives straight at the line you just released.\nThe plan shows how; a busy one gets its own flagger on the radio, a dead end may get a sign and a word. Walk the stretch the day before and count every way in, field roads too.",
  "asks": [
    "cross street",
    "sign the side road",
    "side street",
    "road comes into the work zone",
    "cars turning in",
    "crossroad"
  ],
  "links": [
    "step/traffic-control-up",
    "practice/flagger-count"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Engineering Policy Guide 616.5, Missouri DOT"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "sign-order",
  "title": "which sign goes first",
  "kind": "traffic",
  "text": "Up: farthest sign first, in the direction of travel, then the nearer ones, the taper, the buffer, the work space. Down: the other way round, advance signs last.\nSo a driver always meets the warning before he meets you. Take the advance signs first, and everything behind them is a trap.\nSetting up and taking down is when people get hit: lights on, lookout, never a man on the tailgate facing away. Then drive it once from each end as a stranger would.",
  "asks": [
    "put out signs",
    "setting out signs",
    "sign order",
    "set up sequence",
    "which sign first",
    "take down signs",
    "pick up cones",
    "last sign down"
  ],
  "links": [
    "practice/traffic-control-first",
    "practice/traffic-control-last",
    "step/traffic-control-up",
    "step/traffic-control-down"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "published",
      "document": "practices on removing devices, work zone safety clearinghouse"
    }
  ]
},
{
  "id": "signal-loops",
  "title": "signal loops in the lane",
  "kind": "craft",
  "text": "Do not cut, mill or trim there before the signal people say so. The lines sawn in the lane at a light hold a wire that tells it cars are waiting.\nCut one, and the light skips that lane or sticks. Laying a thin lift over it is usually fine; ask, and mark where the loops lie.\nSignals near the work may need changing while one lane is shut: that is their work too, and it wants days of notice.",
  "asks": [
    "loop detector",
    "signal loops",
    "wires in the pavement",
    "saw cut lines at the light",
    "cutting near a traffic signal",
    "sensors at the stop bar"
  ],
  "links": [
    "step/cut-and-clean",
    "repair/cut-then-blade"
  ],
  "seen": [
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "signs-blow-over",
  "title": "signs that blow over",
  "kind": "traffic",
  "text": "Sandbags low on the legs, a second stand, signs turned a little out of the gusts; double up cones. If they will not stay up, the job stops.\nA sign on its face warns nobody, and a driver who met no sign meets your flagger instead. Somebody drives the whole layout every half hour.\nNothing hard or heavy up on a stand: in a crash it flies. A sandbag by the legs, never a rock, a chain or a spare wheel. Wind cools a thin lift fast, too.",
  "asks": [
    "wind",
    "sign fell over",
    "sandbags on the stand",
    "windy day signs",
    "sign keeps falling",
    "ballast"
  ],
  "links": [
    "practice/advance-sign",
    "limit/cone-height"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6K.01"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "silica",
  "title": "silica dust",
  "kind": "safety",
  "text": "Yes, it scars lungs, and it cannot be undone. Cut, mill and saw wet, or with the machine's own exhaust; stay out of the cloud.\nThe federal table says for each tool what water or exhaust it takes, and when a respirator is worn. Small mills want water with a wetting agent; a hand saw run dry is among the worst.\nDo not sweep or blow it dry near people. A paper mask is not a respirator: fit, filter and doctor's note are your employer's plan.",
  "asks": [
    "stone dust",
    "silica",
    "saw dust from cutting",
    "milling dust",
    "respirator",
    "dust mask",
    "dry cutting",
    "breathing dust",
    "concrete dust",
    "dust from grinding",
    "dust from cutting"
  ],
  "links": [
    "step/cut-and-clean",
    "step/sweep"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "29 CFR 1926.1153, Table 1"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "spill-plan",
  "title": "ready for a spill",
  "kind": "safety",
  "text": "Cover inlets before you spray, carry sand and booms on the tack truck, and know where the valves shut. Park it where a leak runs to flat ground.\nIf it spills: shut it off, dam it, sand it, keep it out of ditch and drain, call the super and the environmental office. No hosing, no soap.\nOil sheen on water must be reported to the National Response Center. Small spills count too: who reports, how much and how fast is your agency's rule, with the law behind it.",
  "asks": [
    "tack spill plan",
    "leak from the tank",
    "spill kit",
    "cover the drains",
    "report a spill",
    "diesel spill",
    "sheen on water"
  ],
  "links": [
    "step/tack",
    "practice/waste-disposal",
    "card/emergency-spill"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "steep-grade",
  "title": "working on a steep hill",
  "kind": "craft",
  "text": "Blade from the bottom up, for mix creeps downhill. Roll with the drive drum leading; if it cannot climb the fresh mix, turn the roller round and let the other drum pack it a little first.\nStart and stop gently, never park on fresh mix or on the slope, and be in low gear before you start down.\nCars need longer to stop coming downhill: the buffer and the flagger's view must grow. Trucks dump with care: a raised bed on a slope tips over.",
  "asks": [
    "steep hill",
    "laying up hill or down",
    "uphill or downhill",
    "roller on a grade",
    "roller will not climb",
    "mix runs downhill",
    "blading up a hill"
  ],
  "links": [
    "step/first-lift",
    "step/roll-lift"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14081, Equipment Operator, Basic, chs. 11 and 16"
    }
  ]
},
{
  "id": "stone-and-lift",
  "title": "big stone in a thin lift",
  "kind": "material",
  "text": "Get a finer mix, or lay it thicker where your agency allows it. A lift thinner than half again its largest stone drags and tears.\nTwo rules meet here: {lift-max} at most for the blade, and a least lift for the stone. With big stone they leave no room between them, and the mix is wrong for the job. Tell me the stone and I show both.\nDense hot mix wants more still to pack tight. Stretched thin it looks laid, then lets go stone by stone.",
  "asks": [
    "rock size for the lift",
    "stone too big",
    "thin lift big rock",
    "half inch mix in a thin lift",
    "lift thickness and stone",
    "which rule wins"
  ],
  "links": [
    "limit/lift-min",
    "limit/stone-fits-lift",
    "limit/lift-max",
    "limit/lift-min-3x"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "TM 5-822-14, Soil Stabilization for Pavements"
    },
    {
      "mark": "restated",
      "document": "NCHRP Report 531"
    }
  ]
},
{
  "id": "stop-the-job",
  "title": "anyone may stop the job",
  "kind": "safety",
  "text": "Anyone. Shout, cross your arms over your head, or hit the horn; machines stop first and talk after.\nThe one on the ground sees what the man in the cab cannot. A stop that proves needless costs two minutes, and nobody is laughed at for it.\nTold to skip a sign, a flagger, the rolling or the belt? Say no, say why, and go one up. Pressure to hurry is in most of these reports. The job starts again when the one who stopped it agrees.",
  "asks": [
    "stop work",
    "say no to the boss",
    "unsafe order",
    "refuse",
    "can a laborer stop the work",
    "boss says hurry"
  ],
  "links": [
    "step/brief-crew",
    "practice/roll-each-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "tack-between-lifts",
  "title": "tack between the lifts",
  "kind": "material",
  "text": "Laid the same shift, clean and still warm: it may be left off, if your engineer agrees. Gone cold, dusty, driven on or left overnight: a light coat.\nFresh asphalt sticks to fresh asphalt; dust and a night between them do not. A fresh lift wants less than a worn road does: there is a rule for each, ask me for the rate.\nMore is not safer. A heavy film between two lifts is grease, and comes up later as a fat spot.",
  "asks": [
    "tack each lift",
    "tack again on the second lift",
    "between lifts",
    "second coat",
    "need tack on fresh lift"
  ],
  "links": [
    "quantity/tack-coats",
    "limit/tack-rate",
    "choice/surface"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "tack-break",
  "title": "when the tack has broken",
  "kind": "material",
  "text": "When it has turned from brown to black all over and is tacky to a glove, with no brown water in the low spots. Go by look and feel, not the clock.\nA warm, windy day does it in minutes; cool, damp or shaded spots may take hours, and watered-down tack longer. Look in the shade, not only in the sun.\nMix on brown tack shuts the water in, and the mat slides. Trucks on brown tack carry it off on their tires and down the road.",
  "asks": [
    "tack broke",
    "tack set",
    "brown to black",
    "is the tack ready",
    "how long for tack to break",
    "wait on tack",
    "sticky to the finger"
  ],
  "links": [
    "practice/tack-set",
    "fault/tack-tracking",
    "step/tack"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "trade questions and answers on tack"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "tack-gone-dirty",
  "title": "tack that has been down too long",
  "kind": "material",
  "text": "Tack only what you cover this shift. Clean and still tacky: lay on it. Dusty, driven on or rained on: sweep it, and tack again lightly.\nDust on tack is a layer that nothing sticks to; you see it as mix that slips in sheets when traffic brakes.\nLeft open, it is slick, it pulls stone, and cars carry it home. What you shot and will not cover gets sand, stays closed, and is signed: ask whoever is in charge.",
  "asks": [
    "old tack",
    "tack down all day",
    "tack got dusty",
    "driven on tack",
    "tack too early",
    "tack yesterday",
    "tacked too far ahead",
    "tacked this morning"
  ],
  "links": [
    "practice/tack-clean-dry",
    "step/tack"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "tack-overspray",
  "title": "tack on somebody's car",
  "kind": "material",
  "text": "Stop spraying. Take the name, phone, plate, a photo of the car and of where it happened, with the time, and tell your super. Be polite and brief.\nPromise nothing, and do not say whose fault it was: claims have their own people. Do not wipe it with fuel or solvent, which spoils paint and makes it ours twice.\nThen find out how it got there: wind, a bar too high, or a gap in the cones. Spray drifts farther than it looks.",
  "asks": [
    "sprayed a car",
    "tack on a car",
    "damage claim",
    "overspray",
    "who pays",
    "driver complains about tack"
  ],
  "links": [
    "practice/open-to-traffic"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-crown",
  "title": "crown",
  "kind": "term",
  "text": "The high line along the middle, from which the road falls to both shoulders, so rain runs off. Paved roads fall about {cross-slope}.\nA patch has to keep it: lay it flat, and water stands; build it too high, and it makes a hump down the lane or a dam at the edge.\nOn a banked curve there is none: the whole road leans one way. Check with a level board in several places; the eye is fooled by a hill or a ditch.",
  "asks": [
    "define crown",
    "crown meaning",
    "what old hands mean by crown",
    "high middle of the road",
    "crown of the road",
    "cross slope",
    "road slopes to the shoulder"
  ],
  "links": [
    "quantity/cross-slope",
    "quantity/crown-drop",
    "fault/center-hump",
    "fault/ponding"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Roadway Design Manual, Texas DOT, 9.2.4"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-distributor",
  "title": "distributor",
  "kind": "term",
  "text": "The truck with a heated tank and a spray bar that shoots tack, so many gallons to the square yard. Also tack truck, oil truck or boot truck.\nSpeed, pump and bar width together make the rate: change one, and the rate changes. Give me the rate and the bar, and I figure speed and feet to a tank.\nHot, under pressure, and with cutback a fire risk: face shield, nobody near the bar, drains covered. Heated only when parked.",
  "asks": [
    "define distributor",
    "distributor meaning",
    "tack truck",
    "oil truck",
    "boot truck",
    "spray bar truck",
    "what sprays the tack",
    "what is a distributor",
    "distributor truck"
  ],
  "links": [
    "quantity/distributor-speed",
    "quantity/tack-run-length",
    "step/tack"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-emulsion",
  "title": "emulsion and cutback",
  "kind": "term",
  "text": "Fine drops of asphalt in water, with a soap that keeps them apart. On the road the water leaves, brown turns black, and asphalt stays. SS is slow, RS rapid; a C in front means the other charge.\nAbout {residue} of it is asphalt; the ticket has the true figure. A cutback is asphalt in a fuel instead, and burns.\nDo not freeze it, boil it, or mix kinds. Never pump it onto hot asphalt: the water in it explodes to steam.",
  "asks": [
    "define emulsion",
    "emulsion meaning",
    "difference of emulsion and cutback",
    "ss css rs",
    "what kind of tack",
    "asphalt in water",
    "slow set"
  ],
  "links": [
    "choice/tack-kind",
    "quantity/residue"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "UFC 3-250-03, Standard Practice Manual for Flexible Pavements, ch. 3"
    }
  ]
},
{
  "id": "term-feather",
  "title": "feather",
  "kind": "term",
  "text": "Where the patch thins out to nothing, at an end or a side. Long feathers at the ends are not felt; a temporary one, for a night, is called a ramp.\nA feather of some length counts as half that length at full depth: tell me whether your length has it in.\nIt is the weakest part: thinner than its stone, so rake the big stone out, and tack as far as it reaches. Where a lip would be felt at speed, key the end in instead.",
  "asks": [
    "define feather",
    "does the length include the feather",
    "is the feather in the length",
    "feather meaning",
    "feather edge",
    "fade out the edge",
    "thin out to nothing",
    "ramp or taper of a patch"
  ],
  "links": [
    "quantity/feather-length",
    "quantity/end-taper-length",
    "limit/overnight-ramp"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-lift",
  "title": "lift",
  "kind": "term",
  "text": "One layer of mix, laid and rolled before the next goes on. A deep patch takes several; for blade work each is at most about {lift-max}, rolled.\nA roller packs only so deep, and a blade lays thin lifts truer than thick ones. Tell me the deepest spot, and I say how many.\nAlways say loose or rolled: a lift loses a good part of its height under the drum. And lift is also what you do to a blade; on the radio, say layer or raise.",
  "asks": [
    "define lift",
    "lift meaning",
    "what is a layer",
    "a lift of asphalt",
    "one lift",
    "layer of mix",
    "course"
  ],
  "links": [
    "limit/lift-max",
    "quantity/lift-count",
    "practice/roll-each-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-moldboard",
  "title": "moldboard",
  "kind": "term",
  "text": "The long curved plate under the grader; most people call it the blade. The cutting edge is the strip bolted along its bottom, which wears and is changed.\nIt turns on the circle for angle, rolls forward or back for pitch, shifts sideways, and each end goes up and down by itself. The leading end is the toe, the trailing end the heel.\nNobody stands in its swing. Parked, it lies on the ground: raised, it can drop.",
  "asks": [
    "define moldboard",
    "moldboard meaning",
    "the blade of the grader",
    "cutting edge",
    "mouldboard",
    "parts of the blade"
  ],
  "links": [
    "quantity/blade-length",
    "quantity/blade-reach"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-pass",
  "title": "pass, strip and coverage",
  "kind": "term",
  "text": "A pass is one trip of the machine. A strip is the width one trip lays. A coverage is the whole width rolled once: with three roller lanes that takes three trips.\nSo ten passes can mean ten trips or ten times over every spot; say which. I give strips for the blade, and both trips and times over for the roller.\nGoing out and coming back in one lane counts as two. Specs differ on that word: read yours.",
  "asks": [
    "define pass",
    "what is a pass",
    "pass or coverage",
    "how to count passes",
    "strips",
    "trips of the roller",
    "one pass"
  ],
  "links": [
    "quantity/blade-passes",
    "quantity/roller-passes",
    "quantity/roller-coverages",
    "quantity/roller-lanes"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "derived"
    }
  ]
},
{
  "id": "term-premix",
  "title": "premix",
  "kind": "term",
  "text": "Stone and asphalt mixed at a plant before it comes to the road. It comes hot, laid and rolled before it cools, or cold, which stays workable in a pile for weeks.\nCrews say mix, hot mix, cold mix or blacktop. Say which one when it matters: heat, rolling, airing and opening are not the same.\nThe ticket says what it is, with tons and time. Road mix is another thing: there the grader does the mixing, on the road.",
  "asks": [
    "define premix",
    "premix meaning",
    "plant mix",
    "blacktop",
    "cold patch material",
    "asphalt mix"
  ],
  "links": [
    "choice/mix-kind",
    "quantity/premix-mass"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-tack",
  "title": "tack",
  "kind": "term",
  "text": "A thin spray of asphalt that glues the patch to the old road. Mostly an emulsion, sprayed brown, that turns black as it breaks.\nWithout it the patch slides off in sheets when cars brake; too much, and it slides on grease or bleeds up. Thin and even is the whole craft of it.\nOperators say oil, and mean tack; say which, or someone checks the engine. Only on a clean, dry road, and only what you cover this shift.",
  "asks": [
    "define tack",
    "tack meaning",
    "what is tack",
    "tack coat",
    "what does tack do",
    "glue coat",
    "the oil",
    "why tack"
  ],
  "links": [
    "step/tack",
    "limit/tack-rate",
    "quantity/tack-residual"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "UFC 3-250-03, Standard Practice Manual for Flexible Pavements, ch. 3"
    }
  ]
},
{
  "id": "term-turnout",
  "title": "turnout",
  "kind": "term",
  "text": "The turn at the end of a pass. Past the end, wheels hard over toward the row, until what is left under the blade lines up with it, ready for the next pass.\nThe mix should have run out by {min:turnout-distance} to {max:turnout-distance} past the patch. Farther, it lies on no tack and has to be fetched.\nThe rear swings wide the other way, toward traffic: both ends on STOP, and room for it inside the work space. In traffic talk a turnout is a pull-off beside the road.",
  "asks": [
    "define turnout",
    "turnout meaning",
    "turning out",
    "turn at the end of the pass",
    "how far past the end to turn",
    "leave the patch and turn",
    "turn sharp toward the row",
    "what is turning out",
    "turning out at the end of a pass"
  ],
  "links": [
    "limit/turnout-distance",
    "quantity/turnout",
    "step/first-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "term-windrow",
  "title": "windrow",
  "kind": "term",
  "text": "The long, straight heap of mix that the grader builds along the patch and then carries across it. Most crews say the row.\nEverything comes out of it: a row of one size gives a lift of one depth. It lies along the inside, the center-line side, when the first lift begins.\nIt is never left in a lane that is open, not for a minute. In dirt work a windrow is also what a grader leaves beside a cut: another thing.",
  "asks": [
    "windrow meaning",
    "define windrow",
    "what is the row",
    "berm of mix",
    "row of mix"
  ],
  "links": [
    "step/windrow",
    "quantity/windrow-section",
    "practice/windrow-side"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "three-tack-rates",
  "title": "three tack rates",
  "kind": "material",
  "text": "Residual is the asphalt left when the water is gone. Sprayed, or bar rate, is what leaves the nozzles. Watered-down tack takes more still for the same asphalt left.\nA worn road wants about {tack-residual} left. With {residue} asphalt in the emulsion, that is a good deal more at the bar; cut it with water and the bar rate doubles.\nMixing them up is how tack goes wrong: residual shot as bar rate leaves too little, and it slips. Say which one you mean and I turn it into the others.",
  "asks": [
    "residual and shot rate",
    "sprayed rate",
    "application rate",
    "diluted rate",
    "which tack rate",
    "bar rate",
    "gallons per yard meaning"
  ],
  "links": [
    "quantity/tack-rate",
    "quantity/tack-residual",
    "quantity/residue",
    "quantity/dilution",
    "limit/tack-rate"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "UFC 3-250-03, Standard Practice Manual for Flexible Pavements, ch. 3"
    },
    {
      "mark": "derived"
    }
  ]
},
{
  "id": "tons-in-a-day",
  "title": "what a crew lays in a day",
  "kind": "quantity",
  "text": "No published figure was found for blade patching. Work it out: the slowest of grader, roller and trucks sets the day.\nMostly it is the roller, for every lift wants rolling before the next one, and one small roller covers far less than the grader can lay. Give me the size, the depth and the drum, and I can figure what each allows.\nTake off for set-up, moving, waiting and take-down. Never make it up with speed: fast passes leave ripples, and fast rolling leaves it loose.",
  "asks": [
    "how much in a day",
    "daily production",
    "tons per shift",
    "how long will the job take",
    "how fast can a crew go",
    "production rate",
    "what gets done in a day"
  ],
  "links": [
    "quantity/laying-rate",
    "quantity/roller-limited-rate",
    "quantity/trucks-needed"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "derived"
    }
  ]
},
{
  "id": "trainer-seats",
  "title": "a quiz for each seat",
  "kind": "trainer",
  "text": "Ask for it by seat: new hand, flagger, raker, roller, tack, truck, blade, foreman. Say how many questions, and about what: quiz me, ten questions on tack for the tack man.\nSome must be right, whatever the score: struck-by, backing, edges, the empty buffer, burns, wires, and who stops the job. Same seed, same quiz; another seed, other figures.\nIt certifies nobody as a flagger or an operator. That is your state's and your agency's paper.",
  "asks": [
    "quiz for new hands",
    "questions for flaggers",
    "test the roller man",
    "training questions",
    "make a quiz",
    "quiz by job",
    "teach the crew"
  ],
  "links": [
    "step/brief-crew"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "trainer-signoff",
  "title": "watching somebody do it",
  "kind": "trainer",
  "text": "Watch, tick, date, both sign. Flagger: paddle, signals, place, way out. Tack: pad test, wand, shut-off. Raker: feather, where he stands. Roller: lanes, low side first, look back, edge. Blade: pre-shift, toe and heel, tapers, turnout.\nA quiz shows what he can say; only watching shows what he does. Once on a quiet job, once on a busy one.\nDone by somebody who does it well, off the live lane first. It is a crew's own record, and certifies nobody.",
  "asks": [
    "sign off an operator",
    "practical test",
    "hands on check",
    "show me list",
    "operator check sheet",
    "watch and tick"
  ],
  "links": [
    "step/brief-crew",
    "practice/flagger-station"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "trainer-tailgate",
  "title": "five questions for a tailgate talk",
  "kind": "trainer",
  "text": "Ask for a tailgate quiz: five questions, one page, read aloud, ten minutes. Pick the day's work: tack, first lift, rolling, flagging.\nLet them argue before you read the key: the reason is what stays. Use yesterday's trouble, without names; last week's ripples make today's question.\nWrite date, who was there, and what most got wrong: that is next week's talk. One that everybody misses is a fault of ours, not theirs.",
  "asks": [
    "tailgate quiz",
    "five question sheet",
    "short quiz for the morning",
    "read aloud questions",
    "quick check before work"
  ],
  "links": [
    "step/brief-crew"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "trooper-opens",
  "title": "police say open it up",
  "kind": "traffic",
  "text": "Do what he says, and make it safe first: people and machines off, row knocked down and rolled or pulled out of the lane, loose stone off.\nTell him plainly what is not fit yet: hot mat, bare tack, a lip, no line. He may then choose to wait, slow them or send them round.\nCall your super at once and write down name, time and what was said. Signs stay up as long as anything is left in the road.",
  "asks": [
    "trooper",
    "police want it open",
    "sheriff says move",
    "officer orders",
    "cop tells us to open the road"
  ],
  "links": [
    "practice/open-to-traffic",
    "practice/traffic-control-last"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "under-bridge",
  "title": "under a bridge or a wire",
  "kind": "craft",
  "text": "Do not add; mill first, and put back what you took. The clearance shrinks by every inch of mix, and the sign on the bridge is then wrong.\nThe first to find out is a truck at full height. Records for routing big loads rest on that number too.\nIf anything must be added, the bridge owner measures and posts it before the lane opens. The same goes for rails, gates and low wires; and a dump bed never goes up under any of them.",
  "asks": [
    "under an overpass",
    "clearance",
    "low bridge",
    "height under the bridge",
    "adding asphalt under a bridge",
    "truck clearance sign",
    "under a bridge"
  ],
  "links": [
    "repair/cut-then-blade",
    "repair/engineer"
  ],
  "seen": [
    {
      "mark": "memory"
    },
    {
      "mark": "agency"
    }
  ]
},
{
  "id": "waste-disposal",
  "title": "where the waste goes",
  "kind": "stage",
  "text": "Haul it: chunks, tacky sweepings, old mix. Only clean fine stuff may be feathered out beside the road, and only where your agency lets you.\nNever in a ditch, drain, wetland or yard. Chunks plug pipes, fly from mowers, and tacked sweepings wash off as oil.\nMillings that are clean can often be used again: ask where the yard wants them. Load it the same day; a pile left on the shoulder is somebody's crash.",
  "asks": [
    "get rid of chunks",
    "dump the sweepings",
    "old asphalt pieces",
    "trash from the cut",
    "where do millings go",
    "haul it away",
    "where the cut stuff goes"
  ],
  "links": [
    "practice/waste-disposal",
    "step/clean-up",
    "step/cut-and-clean"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "water-first",
  "title": "fix the water first",
  "kind": "defect",
  "text": "Yes. Clean the ditch, cut down a shoulder that stands above the road, open the pipe, then patch. Water that has nowhere to go wins.\nIt softens the base, and a patch over a soft base is a lid on a sponge. Most patches that fail twice in one place fail from water.\nCutting a shoulder or a ditch means locates first. Then look at the patch in the first rain: the crown must carry it off, and the edge must not dam it.",
  "asks": [
    "standing water",
    "drainage",
    "water on the road",
    "ditch plugged",
    "shoulder holds water",
    "wet base",
    "fix drainage"
  ],
  "links": [
    "repair/fix-drainage-first",
    "fault/ponding",
    "defect/soft-base"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "FM 5-436, Paving and Surfacing Operations, ch. 7"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "watering-tack",
  "title": "watering down tack",
  "kind": "material",
  "text": "Only emulsion, only if the buyer allows it, only once, and at most one part water to one of emulsion. Warm clean water goes into the emulsion, never the other way.\nTwice the water means twice the shot for the same asphalt; with the bar left as it was, half of it is missing and the patch slides.\nNever water in a cutback or in hot asphalt: it boils over and throws the load at you. A tank that held hot asphalt must be cool and empty first.",
  "asks": [
    "dilute the tack",
    "cut the emulsion with water",
    "one to one",
    "thin the tack",
    "add water to the tank",
    "dilution"
  ],
  "links": [
    "quantity/dilution",
    "quantity/water-volume",
    "limit/dilution-once",
    "practice/no-water-in-cutback"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Special Provisions, section 5-04.3, City of Everett"
    },
    {
      "mark": "restated",
      "document": "AASHTO M 140"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "weigh-mix",
  "title": "what mix weighs",
  "kind": "material",
  "text": "About {unit-weight}, rolled; hot mixes run from {low:unit-weight} to {high:unit-weight}. The lab sheet or a weighed box beats any rule of thumb.\nHeavy stone weighs more, open and cold mix less. No published weight for cold mix was found, so weigh a box of it.\nTons are the same loose or rolled: roll-down changes the thickness, never the tons. Figures of one mix on another order you a truck too many or one too few.",
  "asks": [
    "weight of asphalt",
    "pounds per square yard",
    "why so many pounds",
    "unit weight",
    "density of mix",
    "how heavy is mix",
    "weight per yard"
  ],
  "links": [
    "quantity/unit-weight",
    "quantity/premix-mass",
    "quantity/max-specific-gravity"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "NAVEDTRA 14080, Equipment Operator training course, p. 8-31"
    },
    {
      "mark": "published",
      "document": "Subcourse EN5459, US Army Engineer School"
    }
  ]
},
{
  "id": "what-is-blade-patching",
  "title": "what blade patching is",
  "kind": "stage",
  "text": "Laying asphalt mix with a motor grader in thin rolled lifts, to fill ruts, dips and broken stretches too big for a shovel.\nTrucks dump the mix, the grader pulls it into one straight row, and carries the row across the patch lift by lift; each lift is rolled before the next. A paver lays one even depth; a blade fills what is low and fades out to nothing at the ends.\nIt is a maintenance repair, not a new road: over a soft, wet or breaking base it only buys time.",
  "asks": [
    "what is blade patching",
    "what do we mean by blade patch",
    "patching with a grader",
    "why a grader and not a paver",
    "blade laying mix",
    "how does the job go from start to end",
    "explain blade patching",
    "what is this job",
    "patching blacktop with a grader",
    "what is this blade patch"
  ],
  "links": [
    "repair/blade-patch",
    "step/windrow",
    "step/first-lift"
  ],
  "seen": [
    {
      "mark": "practice"
    },
    {
      "mark": "published",
      "document": "UFC 3-270-01, Asphalt Maintenance and Repair, ch. 7"
    }
  ]
},
{
  "id": "where-to-stand",
  "title": "where to stand",
  "kind": "safety",
  "text": "Where the operator sees your face and you see his. Not seen means stop: get his eye or his horn before you go near.\nNever between machine and truck, behind anything with wheels, in the hinge of the grader, at a tailgate, under a raised bed, on a step, in the buffer, or with your back to traffic.\nMachines back up all day and the noise hides them; most men killed here were run over by their own crew. Lost sight of your raker? Stop until you find him.",
  "asks": [
    "good spot to stand so the operator sees me",
    "new guy where to stand",
    "where to be when the machines run",
    "where nobody hits me",
    "where to be when the roller is working",
    "safe place to be",
    "first day",
    "stay out of the way",
    "blind spots",
    "where not to walk",
    "where to stand by the machines",
    "safe to stand by the grader"
  ],
  "links": [
    "step/brief-crew",
    "practice/backing-spotter",
    "practice/buffer-empty"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Fatality Assessment and Control Evaluation reports, NIOSH"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "which-taper",
  "title": "which taper is which",
  "kind": "traffic",
  "text": "Merging: a lane ends and cars move over at speed; the longest. Shifting: all lanes slide sideways; about half of it. Shoulder: a third. Flagger taper: one lane serves both ways in turn; short, {short-taper-min} to {short-taper-max}, so drivers stop and do not pass.\nA long taper at a flagger invites passing; a short one where cars merge at speed kills. So I ask which before I figure.\nIn talk, taper is also the feathered end of a patch. Another thing altogether.",
  "asks": [
    "merging taper",
    "flagger taper",
    "shifting taper",
    "shoulder taper",
    "taper kinds",
    "long taper or short taper",
    "how long is a taper"
  ],
  "links": [
    "quantity/merging-taper",
    "quantity/flagger-taper",
    "quantity/shoulder-taper",
    "choice/taper-kind",
    "limit/taper-length"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "Manual on Uniform Traffic Control Devices, 11th ed., Table 6B-3"
    }
  ]
},
{
  "id": "who-to-call-first",
  "title": "who to call before a lane is closed",
  "kind": "stage",
  "text": "Call dispatch, fire and ambulance, the school bus garage, transit, and the owner of the road if it is not yours. Tell the mills, farms, shops and houses along the stretch.\nGive the road, which side, from where to where, what hours, and a phone number that is answered on the job. They can then send a long load or an ambulance another way.\nCall again when it moves, runs late or is called off. A permit, a train line or a signal has its own people to ask first.",
  "asks": [
    "notify before closing the road",
    "who needs to know about the closure",
    "tell dispatch",
    "tell the fire and ambulance",
    "tell the school bus garage",
    "call ahead"
  ],
  "links": [
    "step/order-and-check",
    "step/traffic-control-up"
  ],
  "seen": [
    {
      "mark": "agency"
    },
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "wide-load",
  "title": "a wide load wants through",
  "kind": "traffic",
  "text": "Stop everything, machines out of the path, cones in toward the work, one spotter walking it through. Both ends stay on STOP until he is out.\nMeasure the gap before he enters it. If he does not fit on firm, rolled road, he waits or goes round; the shoulder you just pulled will not carry him.\nA call to the farms and the permit office the day before saves the whole scene. Nothing drives over a row, hot mat or open tack, however late he is.",
  "asks": [
    "combine",
    "farm equipment",
    "oversize load",
    "wide tractor",
    "mobile home wants by",
    "too wide for the lane"
  ],
  "links": [
    "limit/open-lane",
    "practice/machine-inside-lane",
    "limit/full-closure"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "wires-overhead",
  "title": "wires over the job",
  "kind": "safety",
  "text": "Do not raise a bed under wires. Mark them on the ground, keep at least ten feet away, more for high-tension lines, and dump somewhere else.\nA raised bed is the usual way a road crew dies by power: the driver looks down at the mix. The spotter looks up, before every load.\nPower jumps; nothing has to touch. If it does: driver stays in, everyone far back, nobody touches truck or mix, emergency number and the power company.",
  "asks": [
    "power lines",
    "overhead wires",
    "raise the bed under wires",
    "how close to wires",
    "low wire",
    "clearance to power lines"
  ],
  "links": [
    "step/spread-premix",
    "practice/backing-spotter",
    "card/emergency-power-line"
  ],
  "seen": [
    {
      "mark": "restated",
      "document": "29 CFR Part 1926, 600(a)(6)"
    },
    {
      "mark": "memory"
    }
  ]
},
{
  "id": "wrong-way-driver",
  "title": "a car against the flow inside the zone",
  "kind": "traffic",
  "text": "Hold both ends at once, by radio. Then bring him out by hand, at a walk, the way he faces if you can; only then release the longer line.\nHe does not know which way the lane runs, and the line you let go does not know of him. Machines stop until he is out.\nAfterwards put a person at that drive: the next one will do the same. No shouting; a scared driver hits things.",
  "asks": [
    "car coming the wrong way",
    "pulled out of a drive into the lane",
    "head on in the zone",
    "somebody going against traffic",
    "car inside between flaggers"
  ],
  "links": [
    "practice/flagger-count",
    "step/traffic-control-up"
  ],
  "seen": [
    {
      "mark": "practice"
    }
  ]
},
{
  "id": "yield-check",
  "title": "checking the yield",
  "kind": "quantity",
  "text": "Add up the tickets, measure what they covered, and give me both: I figure the depth you laid and the tons still needed.\nDo it every few loads, not at the end. An eighth of an inch too thick is nothing to the eye, and a truckload by the end of the day.\nFlorida averages five loads for one check; one load alone says little, since no two rows start and end alike. If it comes out thin, look before you spread: thin is worse than short.",
  "asks": [
    "yield",
    "check tons against area",
    "laying too thick",
    "tickets and square yards",
    "running over or under",
    "how thick did we lay it",
    "are we on track"
  ],
  "links": [
    "quantity/placed-depth",
    "quantity/placed-rate",
    "quantity/tons-left"
  ],
  "seen": [
    {
      "mark": "published",
      "document": "Asphalt final estimates, training slides, Florida DOT"
    }
  ]
},
];

/** The words of the title, then of each way of asking, as a question is read. */
export const wordsOfCards: Readonly<Record<string, readonly string[]>> = {
 "ambulance-through": [
  "let ambulanc",
  "ambulanc",
  "fir truck com",
  "let emergency vehicl",
  "siren behind",
  "polic car"
 ],
 "around-the-grader": [
  "work round grader",
  "grader blind spot",
  "walk behind grader",
  "between wheel",
  "articulat hing",
  "off grader",
  "swing blad"
 ],
 "backing": [
  "back truck machin",
  "back truck",
  "guid truck revers",
  "truck revers",
  "spotter",
  "spotter ground-guid",
  "back alarm",
  "spot",
  "truck back grader",
  "back"
 ],
 "banked-curve": [
  "blad bank curv",
  "superelevation",
  "bank curv",
  "crown curv",
  "outsid lan curv",
  "roll curv",
  "match bank"
 ],
 "bed-stuck": [
  "bed load hang",
  "load stuck bed",
  "mix slid",
  "bed stuck",
  "freeze load",
  "tailgat jam",
  "truck bed empty"
 ],
 "bees-and-snakes": [
  "wasp snak",
  "wasp nest",
  "bee sting",
  "hornet",
  "snak",
  "swung sting",
  "insect sign box",
  "poison ivy",
  "tick"
 ],
 "bikes-and-walkers": [
  "bike person foot",
  "bike",
  "bik river rider",
  "pedestrian",
  "walker",
  "kid walk",
  "sidewalk clos",
  "wheelchair",
  "person foot"
 ],
 "breakdown-grader": [
  "grader break down",
  "hydraulic lin blow grader",
  "blown hos grader",
  "grader quit",
  "blad break down",
  "motor grader dead",
  "grader mix lan",
  "windrow row down machin died",
  "cut edg break",
  "grader break down",
  "grader died",
  "grader start",
  "grader dead",
  "grader won't start",
  "grader run"
 ],
 "breakdown-roller": [
  "roller break down",
  "roller quit",
  "roller break",
  "noth roll",
  "roller start",
  "roller start",
  "load wait roller",
  "roller break down",
  "roller died",
  "roller run",
  "roller dead",
  "roller job",
  "roller won't start",
  "roller run"
 ],
 "bridge-deck": [
  "patch run bridg",
  "mix asphalt bridg deck",
  "patch deck",
  "bridg joint",
  "bridg approach",
  "patch bridg"
 ],
 "broom-down": [
  "broom down",
  "broom",
  "sweeper break",
  "broom quit",
  "clean without broom",
  "blower instead"
 ],
 "broom-dust": [
  "broom cloud",
  "dust from broom",
  "dust cloud",
  "unseen cannot-se dust",
  "sweep dry",
  "broom water"
 ],
 "cars-on-tack": [
  "car tack",
  "car driv tack",
  "traffic off tack",
  "fresh oil sign",
  "somebody drov tack",
  "tack open lan",
  "car sneak tack"
 ],
 "cold-day": [
  "cold lay",
  "cold weather",
  "min minimum temperatur",
  "frost",
  "freez",
  "cold",
  "winter patch",
  "road cold",
  "coldest"
 ],
 "cold-mix-airing": [
  "air cold mix",
  "cold mix wet",
  "aerat",
  "dry cold mix",
  "mix push under roller",
  "blad back forth",
  "cur mix",
  "soft cold mix",
  "mix shov under roller"
 ],
 "concrete-below": [
  "old concret under patch",
  "old concret",
  "concret bas",
  "slab joint show",
  "patch over concret",
  "whit slab under mix asphalt",
  "composit road"
 ],
 "covered-line": [
  "center lin under patch",
  "cover yellow lin",
  "lost strip",
  "center lin",
  "lan lin go",
  "temporary mark after patch",
  "paint lin"
 ],
 "craft-blade-angle": [
  "blad angl",
  "angl blad moldboard",
  "shar sharp flat angl",
  "angl lay",
  "circl",
  "blad angl finish",
  "angl cover lan"
 ],
 "craft-deep-ruts": [
  "deep rut hol first",
  "fill rut first",
  "deep hol under lift",
  "level befor first lift",
  "wheelpath wheel-path fill",
  "low spot befor lay"
 ],
 "craft-down-pressure": [
  "down pressur",
  "pressur blad",
  "push down blad",
  "down forc",
  "blad heavy light",
  "pressur tear mat"
 ],
 "craft-feather-edges": [
  "feather edg hand",
  "rak feather",
  "big ston feather",
  "edg ravel",
  "hand work edg",
  "rak",
  "lut edg",
  "thin edg"
 ],
 "craft-fewest-passes": [
  "few pass",
  "work mix",
  "many pass",
  "leav alon",
  "overwork mix",
  "rocky streak from work",
  "stop blad",
  "work"
 ],
 "craft-finish-lift": [
  "finish lift",
  "finish pass",
  "last lift",
  "final pass",
  "top lift",
  "smooth",
  "finish blad",
  "last pass blad"
 ],
 "craft-first-lift": [
  "lay first lift",
  "first lift",
  "lay bottom lift",
  "first pass mix",
  "carry windrow row shoulder",
  "start lay"
 ],
 "craft-float": [
  "let blad float",
  "blad float",
  "float",
  "float blad moldboard",
  "machin without float",
  "follow shap road"
 ],
 "craft-gear-and-throttle": [
  "gear throttl",
  "gear",
  "throttl",
  "engin sp lay",
  "driv grader",
  "bounc grader slow down"
 ],
 "craft-next-lift": [
  "lay next lift",
  "second lift",
  "middl lift",
  "bring mix back center",
  "next lift direction",
  "lift"
 ],
 "craft-outer-edge": [
  "outer edg finish",
  "mix short edg",
  "outer edg",
  "shoulder edg mat",
  "wavy edg",
  "wheel width between windrow row edg",
  "edg last"
 ],
 "craft-pitch": [
  "blad moldboard pitch",
  "tip blad moldboard",
  "roll blad forward",
  "pitch forward back",
  "tilt blad moldboard",
  "blad pitch mix asphalt"
 ],
 "craft-reading-rocks": [
  "read ston rock",
  "blad height",
  "read ston",
  "ston rock roll under edg",
  "blad low high",
  "depth from seat",
  "ston rock behind toe"
 ],
 "craft-row-gives-out-early": [
  "windrow row giv early",
  "windrow row run befor end",
  "mix material pass",
  "windrow row small",
  "mix material go early",
  "windrow row short",
  "starv end"
 ],
 "craft-row-gives-out-late": [
  "mix left windrow row end",
  "much left windrow row",
  "windrow row fat end",
  "mix material left after pass",
  "pil end pass",
  "windrow row run"
 ],
 "craft-run-out": [
  "com off end",
  "run end",
  "off patch",
  "fad",
  "lower toe end",
  "end pass",
  "end lift",
  "far end taper"
 ],
 "craft-sizing-row": [
  "siz windrow row",
  "siz windrow",
  "even windrow row",
  "straighten windrow row",
  "fat thin spot windrow row",
  "siz pass",
  "windrow row even",
  "blad siz"
 ],
 "craft-tapers": [
  "start lift from noth",
  "taper patch",
  "going",
  "start from noth",
  "rais toe heel",
  "first end lift",
  "bump patch begin",
  "feather start"
 ],
 "craft-toe-and-heel": [
  "toe heel",
  "toe",
  "heel",
  "toe heel height",
  "ridg pick lin",
  "toe loos",
  "toe run",
  "lead end blad"
 ],
 "craft-trailing-end": [
  "mix off heel rear wheel",
  "trail end",
  "mix under rear tir",
  "heel spill under wheel",
  "sid shift blad",
  "wheel mark fresh mix"
 ],
 "craft-two-ended-row": [
  "work windrow row from both end",
  "windrow from both end",
  "both end",
  "bring windrow row back limit",
  "work back forth",
  "windrow row insid patch"
 ],
 "crash-plan": [
  "ready car con",
  "car con plan",
  "escap rout",
  "driver stop",
  "someon driv work",
  "intrusion",
  "horn signal",
  "driver stop"
 ],
 "crew-briefing": [
  "talk befor work",
  "tailgat talk",
  "toolbox talk",
  "safety meet befor work",
  "brief",
  "brief crew",
  "morn talk topic",
  "everybody first",
  "man",
  "befor start",
  "safety talk",
  "morn meet",
  "tailgat topic"
 ],
 "cross-roll-ends": [
  "roll end crosswis",
  "roll end joint",
  "cross roll",
  "bump joint",
  "transvers joint",
  "roll across lan end"
 ],
 "curb": [
  "patch besid curb",
  "curb",
  "gutter",
  "curb gutter",
  "patch against curb",
  "overlay fill gutter",
  "besid next-to curb",
  "curb one sid"
 ],
 "cutback-hazard": [
  "cutback fuel",
  "cutback",
  "rc mc tack",
  "flush flash point",
  "cutback dangerous",
  "danger cutback tack",
  "cutback catch fir",
  "cut rc water",
  "heat cutback",
  "smok near tack",
  "cutback dangerous",
  "rc dangerous",
  "rc hazard",
  "danger cutback"
 ],
 "day-record": [
  "go report",
  "daily report",
  "writ down",
  "diary",
  "paperwork",
  "record day",
  "end day",
  "photo"
 ],
 "depth-readings": [
  "read depth patch",
  "read reading",
  "measur depth",
  "averag depth deepest",
  "str lin across rut",
  "straightedg measur rut",
  "read depth"
 ],
 "dump-points": [
  "truck dump",
  "apart dump",
  "spac load",
  "first truck dump",
  "spot truck",
  "tailgat load",
  "long one load"
 ],
 "emergency-burn": [
  "burn tack mix",
  "burn",
  "hot tack skin",
  "burn mix asphalt"
 ],
 "emergency-crash": [
  "crash car zon",
  "crash zon",
  "car con",
  "wreck"
 ],
 "emergency-driver": [
  "driver threaten",
  "threaten driver",
  "road rag",
  "driver attack flagger"
 ],
 "emergency-eye": [
  "eye",
  "splash eye",
  "tack eye",
  "eye injury"
 ],
 "emergency-fire": [
  "fir",
  "fir",
  "tank fir",
  "truck burn"
 ],
 "emergency-gas": [
  "gas lin cabl hit",
  "gas leak",
  "hit gas lin",
  "cut cabl",
  "smell gas"
 ],
 "emergency-heat": [
  "heat strok",
  "heat strok",
  "pass heat",
  "overheat"
 ],
 "emergency-medical": [
  "somebody down badly hurt",
  "collaps",
  "pass",
  "hurt badly",
  "heart attack",
  "bl bleed"
 ],
 "emergency-power-line": [
  "touch power lin",
  "power lin contact",
  "wir down",
  "truck wir"
 ],
 "emergency-rollover": [
  "machin go over",
  "rollover",
  "machin tip over",
  "roller sid"
 ],
 "emergency-spill": [
  "tack fuel get water",
  "spill",
  "tack ditch",
  "leak tank"
 ],
 "emergency-sting": [
  "sting bit allergy",
  "bee sting reaction",
  "allergic reaction",
  "snak bit"
 ],
 "emergency-struck-by": [
  "stuck struck run over",
  "stuck struck",
  "run over",
  "hit machin",
  "pin"
 ],
 "empty-buffer": [
  "buffer empty",
  "park buffer",
  "buffer",
  "stag truck buffer",
  "roller buffer",
  "stor mix befor work",
  "noth buffer"
 ],
 "even-spray": [
  "even spray bar",
  "spray bar even",
  "streak from bar",
  "nozzl angl",
  "bar height",
  "pressur",
  "pad test",
  "uneven tack",
  "distributor",
  "bar shoot even",
  "bar even"
 ],
 "fire-ready": [
  "ready fir",
  "fir extinguisher",
  "prevent fir",
  "tack fir plan",
  "burn burner lit",
  "cas fir",
  "extinguisher"
 ],
 "flagger-break": [
  "relief flagger",
  "flagger break",
  "restroom",
  "relief flagger",
  "bathroom",
  "flagger lunch",
  "swap flagger",
  "over from flagger",
  "flagger cannot leav post",
  "flagger pee",
  "flagger"
 ],
 "fog-and-sun": [
  "fog dust low sun",
  "fog",
  "low sun",
  "glar",
  "unseen cannot-se",
  "bad visibility",
  "poor visibility",
  "heavy rain visibility",
  "driver blind",
  "sun eye eyes"
 ],
 "four-lane": [
  "lan clos multilan four-lan road",
  "multilan four-lan",
  "multilan",
  "divid road",
  "clos one two lan",
  "expressway freeway",
  "expressway interstat",
  "merg taper road"
 ],
 "fumes": [
  "mix asphalt fum",
  "smok from mix",
  "fum",
  "smell mix asphalt",
  "headach from tack",
  "breath tack",
  "sick from smell"
 ],
 "hand-wand": [
  "tack hand wand",
  "wand only",
  "hand spray tack",
  "distributor",
  "tack hos",
  "spray hand",
  "wand"
 ],
 "heat-day": [
  "hot day",
  "heat index",
  "hot weather work",
  "water break",
  "heat illness",
  "work july",
  "hot",
  "new man heat"
 ],
 "help-plan": [
  "get help fast",
  "emergency plan",
  "911",
  "phon signal",
  "first aid kit",
  "who call",
  "nearest hospital",
  "ambulanc"
 ],
 "holding-repair": [
  "hold repair",
  "patch over alligator crack",
  "fix",
  "temporary patch",
  "band aid",
  "only buy tim",
  "real fix"
 ],
 "hot-or-cold-mix": [
  "hot mix cold",
  "hot cold",
  "hot mix cold",
  "mix",
  "cold mix hot",
  "mix hma cold patch",
  "plant clos",
  "winter mix",
  "hot mix cold better",
  "cold mix hot",
  "hot cold small spot"
 ],
 "hot-stuff": [
  "handl hot tack mix",
  "burn avoid",
  "hot tack glov",
  "fac shield",
  "someon burn",
  "hot mix",
  "treat burn",
  "first aid burn",
  "somebody burn"
 ],
 "house-drives": [
  "driv hous zon",
  "driveway",
  "hous work zon",
  "resident",
  "farm driv",
  "access hous",
  "block driveway"
 ],
 "how-long-last": [
  "long patch last",
  "lif patch",
  "year",
  "fail",
  "last",
  "patch hold"
 ],
 "how-many-people": [
  "person blad patch",
  "person",
  "crew siz",
  "guy crew",
  "who need",
  "man",
  "short hand"
 ],
 "injury-report": [
  "injury",
  "report accident",
  "osha report",
  "notify",
  "injury paperwork",
  "depth death hospital report",
  "soon report",
  "deadlin injury"
 ],
 "intersection": [
  "patch intersection",
  "intersection",
  "crossroad patch",
  "four-way",
  "patch middl junction",
  "turn traffic"
 ],
 "late-trucks": [
  "truck lat",
  "mix truck hour",
  "wait truck",
  "truck",
  "blad wait",
  "truck held",
  "gap between load",
  "mix lat",
  "truck lat",
  "truck run lat",
  "truck show",
  "truck"
 ],
 "leave-overnight": [
  "leav night",
  "finish today",
  "leav overnight",
  "finish tomorrow",
  "stay road night",
  "patch half don tonight"
 ],
 "left-lane": [
  "clos left lan",
  "left lan",
  "insid lan",
  "fast lan",
  "median lan",
  "work besid next-to median"
 ],
 "leftover-mix": [
  "mix left over",
  "extra mix",
  "mix left truck",
  "ton left truck",
  "left mix go",
  "much mix",
  "left",
  "half load left",
  "mix spar",
  "left mix",
  "ton left over",
  "extra mix"
 ],
 "lightning": [
  "lightn storm",
  "lightn",
  "thunder",
  "storm thunderstorm com",
  "tornado warn",
  "storm clos",
  "stuck struck lightn risk",
  "high wind warn"
 ],
 "load-limits": [
  "post bridg frost law",
  "post bridg",
  "bridg weight limit",
  "frost law",
  "spr load limit",
  "overload overweight truck",
  "overload legal-load",
  "gross weight sign",
  "bridg many ton",
  "carry many ton over bridg"
 ],
 "locates": [
  "locat befor cut dig",
  "811",
  "befor dig",
  "utility locat",
  "locat",
  "burn buri gas cabl mark",
  "befor mill dig",
  "dig underground",
  "hit gas lin",
  "locat mark",
  "locat befor shav hump"
 ],
 "look-again": [
  "look patch again",
  "patch from bad one",
  "patch look after",
  "later",
  "back look",
  "inspect after",
  "follow patch",
  "again"
 ],
 "loose-and-rolled": [
  "loos depth roll",
  "roll-down",
  "thick befor roll",
  "loos thickness",
  "compaction lift",
  "squash",
  "loos compact"
 ],
 "low-shoulder": [
  "shoulder low besid patch",
  "shoulder drop after patch",
  "low shoulder",
  "edg drop off",
  "patch lip shoulder",
  "pull shoulder",
  "shoulder sign",
  "shoulder low"
 ],
 "manhole": [
  "manhol valv box",
  "manhol",
  "valv box",
  "iron lan",
  "cost cast",
  "lid patch",
  "utility cover",
  "water valv",
  "manhol lid",
  "manhol cover"
 ],
 "mixing-emulsions": [
  "mix two tack emulsion tank",
  "load one grad top another",
  "load css-1h top half tank ss-1",
  "one kind top another tank",
  "top off another grad",
  "mix ss css",
  "different tack emulsion tank",
  "anionic cationic",
  "load another tack top",
  "chanc chang tack typ",
  "flush tank"
 ],
 "near-miss": [
  "near miss",
  "clos",
  "almost hit",
  "near miss",
  "nearly hurt",
  "somebody kill",
  "noth happen",
  "almost back over",
  "truck nearly him"
 ],
 "new-flagger": [
  "flag",
  "new man flag",
  "flagger train",
  "flagger car card",
  "certifi flagger",
  "laborer flag",
  "flag"
 ],
 "next-patch": [
  "next patch road",
  "two patch clos together",
  "mov next spot",
  "new sign each patch",
  "patch down road",
  "one zon two"
 ],
 "night-work": [
  "work night after-dark",
  "work night",
  "night patch",
  "light night work",
  "night after-dark",
  "light plant",
  "flag night"
 ],
 "no-diesel": [
  "fuel drum bed tool",
  "diesel spray tank",
  "diesel drum",
  "fuel mix off drum",
  "diesel roller water",
  "diesel lut rak",
  "mix stick truck bed",
  "mix from stick",
  "releas arent agent",
  "spray truck bed",
  "clean tool diesel",
  "fuel oil drum",
  "soap water"
 ],
 "no-riders": [
  "rider",
  "lift roller",
  "rid back sid step",
  "rid along machin",
  "rid roller",
  "rid step",
  "rid tailgat",
  "hop grader",
  "second man machin"
 ],
 "old-stockpile": [
  "old mix cold-mix pil",
  "old cold mix",
  "stockpil",
  "pil from last year",
  "pil cold mix sit fall",
  "crust pil",
  "pil",
  "mix sit all winter"
 ],
 "one-flagger": [
  "one flagger two",
  "flagger",
  "flagger",
  "flagger",
  "singl flagger",
  "one flagger",
  "alon flag",
  "short one flagger",
  "one man flag"
 ],
 "open-to-traffic": [
  "let traffic patch",
  "car",
  "open lan",
  "let traffic",
  "ready car",
  "cool befor open",
  "ready open",
  "driv new patch",
  "fresh patch car",
  "let"
 ],
 "paddle": [
  "using puddl paddl",
  "stop slow puddl paddl",
  "flag signal",
  "flag",
  "hand signal",
  "stop traffic puddl paddl",
  "flag puddl paddl"
 ],
 "phone-off-road": [
  "phon pag",
  "order phone-in cab",
  "phon work",
  "read road",
  "text",
  "phon flag"
 ],
 "pilot-car": [
  "pilot car",
  "pilot vehicl",
  "pilot lead-car",
  "pilot follow-me-car",
  "pilot car",
  "long one-lan section"
 ],
 "ppe": [
  "wear",
  "wear",
  "cloth",
  "cloth gear",
  "cloth first day",
  "safety gear",
  "vest",
  "hard hat",
  "boot glov",
  "class 2 class 3",
  "long sleev",
  "ppe",
  "wear tomorrow",
  "gear bring",
  "wear"
 ],
 "preshift-grader": [
  "look over grader start shift",
  "walk around grader",
  "pre-shift",
  "inspect blad",
  "grader morn",
  "tir edg circl",
  "motor grader"
 ],
 "preshift-roller": [
  "look over roller start shift",
  "roller pre-shift",
  "inspect roller",
  "roller water scraper",
  "roller walk around",
  "roller fit",
  "befor start roller"
 ],
 "queue": [
  "car queu backed-up",
  "queu line-of-car",
  "queu backed-up past sign",
  "long lin",
  "queu traffic-jam",
  "queu stacked-up car",
  "queu past first sign",
  "wait car",
  "queu stack-up",
  "traffic queu backed-up",
  "car queu backed-up",
  "traffic queu stacking-up",
  "lin long"
 ],
 "railroad": [
  "railroad railroad-track near work",
  "railroad train-track",
  "railroad railroad-cross",
  "near rail",
  "track ahead",
  "queu over track",
  "railroad flagger flagman"
 ],
 "rain-on-row": [
  "rain windrow row",
  "rain com",
  "rain windrow",
  "windrow row wet",
  "storm lay",
  "caught rain",
  "mix wet windrow row"
 ],
 "ran-out-short": [
  "run mix",
  "run",
  "short",
  "mix",
  "short mix end",
  "mix asphalt befor end"
 ],
 "roller-edge": [
  "roller edg",
  "clos edg",
  "roller tip over",
  "roller near drop off",
  "soft shoulder roller",
  "near ditch",
  "roller rollover",
  "seat belt roller"
 ],
 "roller-pattern": [
  "roll",
  "roll pattern",
  "low sid first",
  "roll from shoulder",
  "edg first",
  "overlap drum",
  "roller order"
 ],
 "row-over-the-line": [
  "blad windrow row over center lin",
  "swing over yellow",
  "grader over center lin",
  "machin open lan",
  "insid pass besid next-to traffic",
  "wheel over lin"
 ],
 "row-too-big": [
  "windrow row fit between wheel",
  "big straddl",
  "windrow row wider than wheel",
  "windrow high",
  "hug windrow",
  "split windrow row",
  "dump two go"
 ],
 "rubber-or-steel": [
  "rubber tir steel drum",
  "rubber tir roller",
  "pneumatic steel",
  "drum bridg rut",
  "roller rut",
  "steel roller finish",
  "kind roller"
 ],
 "school-bus": [
  "school bus zon",
  "school bus",
  "bus stop zon",
  "kid get",
  "child near work",
  "bus rout"
 ],
 "should-or-shall": [
  "shall",
  "shall",
  "need requir",
  "law",
  "guidanc standard",
  "what check should mean",
  "manual"
 ],
 "side-roads": [
  "sid road zon",
  "cross street",
  "sign sid road",
  "sid street",
  "road work zon",
  "car turn",
  "crossroad"
 ],
 "sign-order": [
  "sign go first",
  "sign",
  "sign",
  "sign order",
  "sequenc",
  "sign first",
  "down sign",
  "pick con",
  "last sign down"
 ],
 "signal-loops": [
  "signal look loop lan",
  "loop detector",
  "signal look loop",
  "wir pavement",
  "saw cut lin light",
  "cut near traffic signal",
  "sensor stop-sign stop-bar"
 ],
 "signs-blow-over": [
  "sign blow over",
  "wind",
  "sign fall over",
  "sandbag stand",
  "windy day sign",
  "sign fall",
  "ballast"
 ],
 "silica": [
  "silica dust",
  "ston dust",
  "silica",
  "saw dust from cut",
  "mill dust",
  "respirator",
  "dust mask",
  "dry cut",
  "breath dust",
  "concret dust",
  "dust from grind",
  "dust from cut"
 ],
 "spill-plan": [
  "ready spill",
  "tack spill plan",
  "leak from tank",
  "spill kit",
  "cover drain",
  "report spill",
  "diesel spill",
  "sheet sheen water"
 ],
 "steep-grade": [
  "work steep hill",
  "steep hill",
  "lay hill down",
  "uphill downhill",
  "roller grad",
  "roller climb",
  "mix run downhill",
  "blad hill"
 ],
 "stone-and-lift": [
  "big ston thin lift",
  "ston rock siz lift",
  "ston big",
  "thin lift big ston rock",
  "half inch mix thin lift",
  "lift thickness ston",
  "rul win"
 ],
 "stop-the-job": [
  "anyon stop job",
  "stop work",
  "boss",
  "unsaf order",
  "refus",
  "laborer stop work",
  "boss hurry"
 ],
 "tack-between-lifts": [
  "tack between lift",
  "tack each lift",
  "tack again second lift",
  "between lift",
  "second coat",
  "tack fresh lift"
 ],
 "tack-break": [
  "tack break",
  "tack break",
  "tack",
  "brown black",
  "tack ready",
  "long tack break",
  "wait tack",
  "sticky finger"
 ],
 "tack-gone-dirty": [
  "tack down long",
  "old tack",
  "tack down all day",
  "tack dusty",
  "driven tack",
  "tack early",
  "tack yesterday",
  "tack far ahead",
  "tack morn"
 ],
 "tack-overspray": [
  "tack somebody car",
  "spray car",
  "tack car",
  "damag claim",
  "overspray",
  "pay",
  "driver complain tack"
 ],
 "term-crown": [
  "crown",
  "defin crown",
  "crown",
  "old hand crown",
  "high middl road",
  "crown road",
  "cross slop",
  "road slop shoulder"
 ],
 "term-distributor": [
  "distributor",
  "defin distributor",
  "distributor",
  "distributor tack-truck",
  "distributor oil-truck",
  "distributor boot-truck",
  "spray bar truck",
  "spray tack",
  "distributor",
  "distributor truck"
 ],
 "term-emulsion": [
  "tack emulsion cutback",
  "defin tack emulsion",
  "tack emulsion",
  "differenc tack emulsion cutback",
  "ss css rs",
  "kind tack",
  "mix asphalt water",
  "slow"
 ],
 "term-feather": [
  "feather",
  "defin feather",
  "length includ feather",
  "feather length",
  "feather",
  "feather edg",
  "fad edg",
  "thin noth",
  "ramp taper patch"
 ],
 "term-lift": [
  "lift",
  "defin lift",
  "lift",
  "lift layer",
  "lift mix asphalt",
  "one lift",
  "lift layer mix",
  "lift cours"
 ],
 "term-moldboard": [
  "blad moldboard",
  "defin blad moldboard",
  "blad moldboard",
  "blad grader",
  "cut edg",
  "blad mouldboard",
  "part blad"
 ],
 "term-pass": [
  "pass strip coverag",
  "defin pass",
  "pass",
  "pass coverag",
  "count pass",
  "strip",
  "trip roller",
  "one pass"
 ],
 "term-premix": [
  "mix premix",
  "defin mix premix",
  "mix premix",
  "plant mix",
  "mix blacktop",
  "cold patch mix material",
  "mix asphalt"
 ],
 "term-tack": [
  "tack",
  "defin tack",
  "tack",
  "tack",
  "tack coat",
  "tack",
  "glu coat",
  "oil",
  "tack"
 ],
 "term-turnout": [
  "turnout",
  "defin turnout",
  "turnout",
  "turn",
  "turn end pass",
  "past end turn",
  "leav patch turn",
  "turn shar sharp toward windrow row",
  "turn",
  "turn end pass"
 ],
 "term-windrow": [
  "windrow",
  "windrow",
  "defin windrow",
  "windrow row",
  "windrow berm mix",
  "windrow row mix"
 ],
 "three-tack-rates": [
  "thre tack rat",
  "residual shoot rat",
  "spray rat",
  "application rat",
  "dilut rat",
  "tack rat",
  "bar rat",
  "gallon per yard"
 ],
 "tons-in-a-day": [
  "crew lay day",
  "day",
  "daily production",
  "ton per shift",
  "job",
  "crew",
  "production rat",
  "don day"
 ],
 "trainer-seats": [
  "quiz each seat",
  "quiz new hand",
  "question flagger",
  "test roller man",
  "train question",
  "quiz",
  "quiz job",
  "teach crew"
 ],
 "trainer-signoff": [
  "watch somebody",
  "sign off operator",
  "practical test",
  "hand",
  "show list",
  "operator sheet",
  "watch tick"
 ],
 "trainer-tailgate": [
  "fiv question tailgat talk",
  "tailgat quiz",
  "fiv question sheet",
  "short quiz morn",
  "read aloud question",
  "quick befor work"
 ],
 "trooper-opens": [
  "polic open",
  "trooper",
  "polic open",
  "sheriff mov",
  "officer order",
  "cop open road"
 ],
 "under-bridge": [
  "under bridg wir",
  "under overpass",
  "clearanc",
  "low bridg",
  "height under bridg",
  "add ad mix asphalt under bridg",
  "truck clearanc sign",
  "under bridg"
 ],
 "waste-disposal": [
  "wast go",
  "rid chunk",
  "dump sweep sweeping",
  "old mix asphalt piec",
  "trash from cut",
  "milling",
  "haul away",
  "cut stuff go"
 ],
 "water-first": [
  "fix water first",
  "stand water",
  "drainag",
  "water road",
  "ditch plug",
  "shoulder hold water",
  "wet bas",
  "fix drainag"
 ],
 "watering-tack": [
  "water down tack",
  "dilut tack",
  "cut tack emulsion water",
  "one",
  "thin tack",
  "add water tank",
  "dilution"
 ],
 "weigh-mix": [
  "mix weigh",
  "weight mix asphalt",
  "pound per squar yard",
  "many pound",
  "unit weight",
  "density mix",
  "heavy mix",
  "weight per yard"
 ],
 "what-is-blade-patching": [
  "blad patch",
  "blad patch",
  "blad patch",
  "patch grader",
  "grader pav paver",
  "blad lay mix",
  "job from start end",
  "explain blad patch",
  "job",
  "patch mix blacktop grader",
  "blad patch"
 ],
 "where-to-stand": [
  "stand",
  "spot stand operator see sees",
  "new guy stand",
  "machin run",
  "nobody hit",
  "roller work",
  "plac",
  "first day",
  "stay",
  "blind spot",
  "walk",
  "stand machin",
  "stand grader"
 ],
 "which-taper": [
  "taper",
  "merg taper",
  "flagger taper",
  "shift taper",
  "shoulder taper",
  "taper kind",
  "long taper short",
  "long taper"
 ],
 "who-to-call-first": [
  "befor lan clos",
  "notify befor clos road",
  "closur",
  "dispatch",
  "fir ambulanc",
  "school bus garag",
  "ahead"
 ],
 "wide-load": [
  "wid load",
  "combin",
  "farm equipment",
  "oversiz load",
  "wid tractor",
  "mobil hom",
  "wid lan"
 ],
 "wires-overhead": [
  "wir over job",
  "power lin",
  "overhead wir",
  "rais bed under wir",
  "clos wir",
  "low wir",
  "clearanc power lin"
 ],
 "wrong-way-driver": [
  "car against flow insid zon",
  "car com wrong",
  "pull driv lan",
  "head zon",
  "somebody against traffic",
  "car insid between flagger"
 ],
 "yield-check": [
  "check yield",
  "yield",
  "ton against area",
  "lay thick",
  "ticket squar yard",
  "run over under",
  "thick lay",
  "track"
 ]
};
