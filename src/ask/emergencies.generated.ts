// biome-ignore-all format: written by `npm run generate`; do not edit.
import type { Card } from './search/card.ts';

export const emergencies: readonly Card[] = [
  {
    "id": "emergency-burn",
    "title": "burned by tack or mix",
    "kind": "emergency",
    "text": "Take off rings, belt and boots near it while you cool, and clothes that are not stuck. Keep the rest of him warm.\nLeave the asphalt where it is: it comes off with the skin. If it runs all the way round a finger, an arm or a leg, it can choke it as it cools: tell the medics first thing. Face or eyes: keep rinsing, lids open.\nNo ice, no fuel, no solvent, no grease, no butter. Send the safety data sheet with him. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "burn",
      "hot tack on skin",
      "burned by asphalt"
    ],
    "links": [
      "card/hot-stuff",
      "step/tack"
    ],
    "seen": [
      {
        "mark": "published",
        "document": "questions and answers on burns, Cornell Local Roads Program"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 9,
      "first": "Cool the burn at once with cool running water, 20 minutes or more. Do not peel the asphalt off.",
      "cues": [
        "burn|burning person|body -fumes -smoke",
        "hot liquid|hot-mix person|body -track|tracks -getting -cold -cool -quicker -faster",
        "liquid|hot-mix splash|blew person|body",
        "quemado",
        "body hot blister",
        "got|gets liquid|hot-mix on+body -off -track|tracks -cold -cool",
        "body in+hot-mix|liquid burn",
        "got|gets|been|getting+splash person -track|tracks",
        "hose let|burst|split|blew|broke got|hit|caught person|body",
        "hot-mix|liquid fell|dropped|landed+on+person|body",
        "liquid|hot-mix in+body -track|tracks",
        "stuck liquid|hot-mix body -glove|gloves",
        "hot-mix|liquid in+glove|gloves|sleeve|collar"
      ]
    }
  },
  {
    "id": "emergency-crash",
    "title": "a crash or a car in the zone",
    "kind": "emergency",
    "text": "A driver who will not stop: do not step in front. Your way out, horn, radio; plate, color, which way.\nA crash: a lit vehicle well ahead of it, engines off, look for fuel and wires. Leave the hurt in their seats unless there is fire. Press on bad bleeding, keep them warm, talk to them.\nSigns and cones stay where they stood. Later photos, times, the layout; call the super. No talk of blame, to anybody. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "crash in the zone",
      "car through the cones",
      "wreck"
    ],
    "links": [
      "card/crash-plan",
      "card/injury-report",
      "practice/flagger-station"
    ],
    "seen": [
      {
        "mark": "restated",
        "document": "Manual on Uniform Traffic Control Devices, 11th ed., ch. 6O"
      },
      {
        "mark": "practice"
      }
    ],
    "emergency": {
      "rank": 10,
      "first": "Horn, everyone out of the path, STOP both ways. Go to the hurt only when nothing more can hit you.",
      "cues": [
        "crash -crash+truck|cushion|report|rate|attenuator|barrel",
        "vehicle|truck|drunk went|hit|blew through zone|sign|person",
        "vehicle|person|truck drove in|into|through|inside zone",
        "vehicle|drunk in+zone -park -picks|pick -stop",
        "drunk driver|person|vehicle",
        "wont-stop person|vehicle|truck -bleed|bleeding",
        "vehicle+hit",
        "vehicle|truck went+into|through zone|machine|worker",
        "vehicle went+into|through truck",
        "vehicle|truck drove|went through|into zone",
        "vehicle smashed|slammed machine|truck|vehicle",
        "vehicle|person|truck crash|ran|slammed|drove|plowed+into queue|vehicle|truck|machine|sign",
        "vehicle|person|truck crash queue",
        "vehicle ran|came+through zone|cone|sign|taper|line",
        "vehicle+ran|came+through -day -hour -at"
      ]
    }
  },
  {
    "id": "emergency-driver",
    "title": "a driver who threatens",
    "kind": "emergency",
    "text": "Keep hold of the paddle, palms open, voice low: you are sorry for the wait, it will not be long. Step back, not forward; put a machine or a truck between you.\nIf he comes into the work, machines stop: he does not know what moves. If he has a weapon, leave the post by your way out, and the crew with you; traffic is stopped at the other end.\nPlate, color, what he looks like, the time. Nobody grabs him or his keys. Afterwards write it down.",
    "asks": [
      "threatening driver",
      "road rage",
      "driver attacks the flagger"
    ],
    "links": [
      "card/paddle",
      "card/crash-plan"
    ],
    "seen": [
      {
        "mark": "restated",
        "document": "Manual on Uniform Traffic Control Devices, 11th ed., 6D.05"
      },
      {
        "mark": "practice"
      }
    ],
    "emergency": {
      "rank": 12,
      "first": "Keep your distance and your way out; radio the foreman and both ends. No arguing.",
      "cues": [
        "threaten person",
        "threaten+person",
        "person|vehicle weapon",
        "angry person out"
      ]
    }
  },
  {
    "id": "emergency-eye",
    "title": "something in the eye",
    "kind": "emergency",
    "text": "Head tilted, bad eye down, water from the nose side outward, so none runs into the good one. Contact lens out if it comes easily.\nHot tack that sticks: cool it with water, and leave it. Do not pick, rub, wipe or put anything in it: no drops, no oil, no solvent.\nSomething stuck in the eye stays in it: cover both eyes loosely. Keep rinsing on the way in, and take the safety data sheet along. This is first aid, not a doctor.",
    "asks": [
      "splash in the eye",
      "tack in the eye",
      "eye injury"
    ],
    "links": [
      "card/hot-stuff",
      "practice/apparel"
    ],
    "seen": [
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 6,
      "first": "Rinse the eye with clean water now, lids held open, and keep rinsing for at least 15 minutes.",
      "cues": [
        "eye liquid|hot-mix|chemical|something|dust|lime|cement|splash|rock -sun -protection -glasses -goggles -eye+on|out -keep -fumes -lash|lashes"
      ]
    }
  },
  {
    "id": "emergency-fire",
    "title": "fire",
    "kind": "emergency",
    "text": "Shut burner, pump and engine if you can reach them safely. Never water on hot asphalt: it boils up and throws it. Dry chemical, at the base of the flame.\nStay clear of the ends of a tank, and of tires that burn. Hold traffic well back both ways; smoke blinds drivers.\nTell the dispatcher what is in the tank and how many gallons, and have the safety data sheet ready. Count your people. Clothes on fire: drop, roll, then water on the burns.",
    "asks": [
      "fire",
      "tank on fire",
      "truck burning"
    ],
    "links": [
      "card/fire-ready",
      "choice/tack-kind"
    ],
    "seen": [
      {
        "mark": "published",
        "document": "NAVEDTRA 14081, Equipment Operator, Basic, ch. 16"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 3,
      "first": "Everyone away and upwind. Fight it only if it is small, with the right extinguisher and your way out behind you.",
      "cues": [
        "fire -up -department|dept|extinguisher|hydrant|station|chief|marshal|drill|point|code|person|plan|risk|ready|safety|watch|hazard|police -fire+truck -ambulance -fire+burner|kettle|tank|heater|machine",
        "on+fire",
        "caught|catch|catching+fire",
        "fire+in|on|under+machine|truck|tank|engine|ditch|grass",
        "there|theres|there's|have|got+fire",
        "flames coming|shooting|out|from -lit -stay -heater -burner",
        "machine|truck|engine|tank|hose|pot burn|burning -person -body -burn+liquid -burner -off",
        "smoke pouring|rolling|coming machine|truck|engine|tank",
        "exploded|explosion",
        "incendio",
        "machine|truck|engine|tank|hose blew+up",
        "flames smoke|machine|truck|engine|hood|tank|hose -heater -burner -lit",
        "smoke under|inside+hood|cab|engine"
      ]
    }
  },
  {
    "id": "emergency-gas",
    "title": "a gas line or a cable is hit",
    "kind": "emergency",
    "text": "Leave the machine where it is, door open, engine off only if it takes no second. Hold traffic back both ways. Call the gas company too, and warn the nearest houses.\nDo not pinch it, plug it or cover it: gas then runs along the pipe into a house. Do not put out gas that burns; keep others off.\nAn electric cable: the operator stays in, everyone else stays far back. Nobody returns until the company says so. A nick counts too: it fails later.",
    "asks": [
      "gas leak",
      "hit a gas line",
      "cut a cable",
      "smell gas"
    ],
    "links": [
      "card/locates",
      "repair/dig-out"
    ],
    "seen": [
      {
        "mark": "practice"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 2,
      "first": "No flame, no switch, no engine started; walk everyone upwind, well away, and call from there.",
      "cues": [
        "gas-line hit|cut|broke|broken|break|nick|nicked|ruptured|leak|tore|punctured|dug|drilled|milled",
        "gas-leak",
        "power-cable hit|cut|broke|nick|nicked|tore|dug"
      ]
    }
  },
  {
    "id": "emergency-heat",
    "title": "heat stroke",
    "kind": "emergency",
    "text": "Confused, staggering, talking oddly, throwing up, hot to the touch, or passed out: that is heat stroke, sweating or not, and minutes count.\nBoots, vest and shirt off, soak him, keep soaking. Nothing to drink if he is confused; sips if he is clear. On his side if he throws up.\nNever send him to sit alone in a truck or to drive home. Look at the others now: they worked in the same heat. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "heat stroke",
      "passed out in the heat",
      "overheated"
    ],
    "links": [
      "card/heat-day"
    ],
    "seen": [
      {
        "mark": "published",
        "document": "Using the Heat Index, a guide for employers, OSHA"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 7,
      "first": "Shade, and cool him hard now: cold water all over, ice at neck, armpits and groin, fan him. Do not wait for them.",
      "cues": [
        "heat-stroke",
        "pass-out heat|hot|sun|calor",
        "collapsed|down heat|sun person",
        "dizzy|confused|staggering|vomit|crazy heat|sun|sweating",
        "quit|stopped|stop+sweating",
        "down|weak|sick heat -slow -cool",
        "making|makes+sense heat",
        "confused|dizzy|crazy|staggering hot person|body",
        "hot+skin confused|dizzy|red|dry",
        "dizzy|confused vomit"
      ]
    }
  },
  {
    "id": "emergency-medical",
    "title": "somebody is down or badly hurt",
    "kind": "emergency",
    "text": "Bad bleeding: press hard with a clean cloth, and keep pressing. Chest pain: sit him down, keep him still. A fall: head and neck still. A fit: clear the space, hold nothing down, nothing in the mouth; on his side when it ends.\nKeep him warm, talk to him, give him nothing to eat or drink. Do not move him unless something worse is coming.\nThen the super at once; the law has clocks for the report. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "collapsed",
      "passed out",
      "hurt badly",
      "heart attack",
      "bleeding"
    ],
    "links": [
      "card/help-plan",
      "card/injury-report"
    ],
    "seen": [
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 13,
      "first": "Stop the machines near him and stay with him. Not breathing: chest compressions now, and send for a defibrillator.",
      "cues": [
        "collapsed|collapse|slumped person",
        "pass-out",
        "unconscious",
        "no-breath",
        "heart-attack",
        "grabbed|clutching|holding chest person",
        "seizure",
        "bleed|bleeding person|bad|badly|lot|body -patch -mat -road -surface -hot-mix -pavement -liquid -wheel",
        "hurt person|bad|badly",
        "got|is|are|been+hurt",
        "broke|broken+body",
        "cut|lost|severed+body -windrow|row|hump|lift",
        "fell|fall|fallen+off|from|down|through person",
        "need|call|send|get+ambulance",
        "man|person+down -lunch -today -put|write|mark|let|call|calm|settle|slow+man|person",
        "choking person",
        "drowning",
        "not+moving person -traffic -truck -car",
        "cut|lost|severed|took body off -windrow|row|hump|lift",
        "dizzy|confused|vomit person -from"
      ]
    }
  },
  {
    "id": "emergency-power-line",
    "title": "touching a power line",
    "kind": "emergency",
    "text": "Every wire is live until the power company says otherwise. Hold traffic well back both ways; the ground itself can carry it, and wet ground farther.\nHe may try to drive clear only if it is free and nobody is near. Only if the machine burns: he jumps as far as he can, feet together, never touching machine and ground at once, and shuffles away with feet together.\nNobody goes in to help him, not even if he lies there, until the line is off. That is how the second man dies.",
    "asks": [
      "power line contact",
      "wire down",
      "truck in the wires"
    ],
    "links": [
      "card/wires-overhead",
      "practice/backing-spotter"
    ],
    "seen": [
      {
        "mark": "practice"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 1,
      "first": "Everyone well back; the operator stays in, and nobody touches the machine, the load or the ground near it.",
      "cues": [
        "line+down across|on|sparking|over truck|machine|road|lane|person|hood -paint|center|centerline|yellow|white|string|edge|cone|chalk|fog|stop|stripe",
        "live+wire|line|power",
        "wire+down|across|sparking|arcing|fell",
        "wire+is|are|came|come+down|sparking|arcing",
        "hit|touch|touched|contacted|snag|snagged|caught|tore+wire",
        "truck|machine|bed|boom in|on|into|against|touching+wire",
        "bed|truck|boom touch|touched|hit wire",
        "wire spark|sparking|arc|arcing|buzzing",
        "electrocuted",
        "bed|truck|boom|bucket touch|touched|hit|against|touching line -center|centerline|yellow|white|paint|string|edge|fog|stop",
        "cable cut|broke|down|hit spark|sparks|sparking",
        "zapped person",
        "shocked person"
      ]
    }
  },
  {
    "id": "emergency-rollover",
    "title": "a machine has gone over",
    "kind": "emergency",
    "text": "Talk to the operator, tell him to stay still and hang on. Shut the engine off only if you can reach it from a safe side. Do not pull him out, unless there is fire or water; in water, his face above it comes first.\nChock or block what could slide farther. Nobody stands downhill of it.\nPress on bad bleeding, keep him warm. The machine stays as it lies until rescue and the super say so. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "rollover",
      "machine tipped over",
      "roller on its side"
    ],
    "links": [
      "card/roller-edge",
      "practice/roller-belt"
    ],
    "seen": [
      {
        "mark": "practice"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 5,
      "first": "Everyone back; nobody gets under it or tries to lift it. Look for wires, fuel and fire before you go near.",
      "cues": [
        "machine|truck tip|tipped|flop|flopped+over",
        "machine|truck tipped|flip|flipped|overturn|overturned -load -bed+down",
        "machine|truck turned+over -wont -engine -start -not",
        "machine|truck on+side -side+street|road|of|step",
        "machine|truck upside-down",
        "machine rolled+over -joint -mat -patch -lift -twice -again -surface -times",
        "machine|truck went+off|over edge|bank|bridge|embankment|cliff -patch -mat -lift",
        "machine|truck slid|slipped edge|drain|bank|embankment",
        "machine|truck in|into+water -tack|emulsion|diesel|oil|fuel+leak|leaking|spill|spilled|spilling|run|running|ran|pour|poured|pouring -leak|leaking|spill|spilled|spilling|running|pouring|draining+tack|emulsion|diesel|oil|fuel|out|from|off",
        "machine|truck slid|slipped|rolled|fell|drove+in|into+water",
        "machine rolled person",
        "volcado",
        "machine|truck went+over+sideways|side",
        "machine|truck rolled|slid|ran|went+down|off|over bank|hill|embankment|slope|ravine|cliff -patch -mat -lift -joint",
        "machine|truck+gone|went+over -line -tack -zone -cone -it -patch -mat -lift -road -surface -joint -twice -again -times -windrow -area -spot -edges -crack -cracks -after",
        "machine|truck has|have+gone+over -line -tack -zone -cone -it -patch -mat -lift -road -surface -joint -twice -again -times -windrow -area -spot -edges",
        "machine|truck rolled|ran|drove|went|slid+in|into|off drain|bank|embankment|edge -liquid -leak -hot-mix -mat -patch -lift -windrow"
      ]
    }
  },
  {
    "id": "emergency-spill",
    "title": "tack or fuel getting into water",
    "kind": "emergency",
    "text": "Fuel or cutback: no flame, no engine, everyone upwind. Keep people and cars off it: hot, slick, or both.\nSand and soil, booms across the ditch; block the inlet. No hosing, no soap: that sends it farther and deeper.\nSuper and environmental office at once. Oil sheen on water must be reported in the US to the National Response Center, 1-800-424-8802. Write down time, product, gallons, and where it went. Keep the safety data sheet at hand. Clean-up is their call, disposal too.",
    "asks": [
      "spill",
      "tack in the ditch",
      "leaking tank"
    ],
    "links": [
      "card/spill-plan",
      "practice/waste-disposal"
    ],
    "seen": [
      {
        "mark": "memory"
      },
      {
        "mark": "agency"
      }
    ],
    "emergency": {
      "rank": 11,
      "first": "Shut it off if you can do it safely, and dam the ditch or drain with sand or soil.",
      "cues": [
        "liquid|machine|truck leak|went|got in|into|to|toward|towards|for|down+water|drain",
        "liquid in|into+water",
        "sheen water|liquid",
        "lost|dumped|leak liquid drain|water"
      ]
    }
  },
  {
    "id": "emergency-sting",
    "title": "a sting, a bite, an allergy",
    "kind": "emergency",
    "text": "Danger signs: hives, swelling, hoarse voice, wheezing, faint, throwing up. They come within minutes, and the second sting of a life can be the bad one.\nLay him down, legs up; sitting if he breathes hard that way. Scrape the stinger out. Stay with him: it can come back after the pen.\nSnake: keep him and the limb still, rings and boots off, no cutting, no sucking, no ice, no tying off; remember its color. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "bee sting reaction",
      "allergic reaction",
      "snake bite"
    ],
    "links": [
      "card/bees-and-snakes"
    ],
    "seen": [
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 8,
      "first": "If face or throat swells or he cannot breathe well, use his epinephrine pen at once; away from the nest.",
      "cues": [
        "sting person|bee|throat|bad",
        "stung",
        "snake bite|bit",
        "allergic",
        "bee got+person",
        "bee face|throat swell|swelling",
        "throat|tongue|face swell|swelling|closing"
      ]
    }
  },
  {
    "id": "emergency-struck-by",
    "title": "struck or run over",
    "kind": "emergency",
    "text": "Shut the machine down, chock it, and set a man to watch that nothing rolls. Pinned: leave it as it is, and ask the dispatcher before you move it.\nPress hard on bad bleeding with a clean cloth, and keep pressing. Head and neck still, keep him warm, talk to him. Not breathing: start chest compressions; the dispatcher talks you through.\nNobody else gets hurt: stay out of the traffic. Then the super at once. This is first aid, not a doctor: do what the dispatcher says.",
    "asks": [
      "struck by",
      "run over",
      "hit by a machine",
      "pinned"
    ],
    "links": [
      "card/where-to-stand",
      "card/injury-report",
      "practice/backing-spotter"
    ],
    "seen": [
      {
        "mark": "practice"
      },
      {
        "mark": "memory"
      }
    ],
    "emergency": {
      "rank": 4,
      "first": "Stop every machine and all traffic; then go to him. Do not move him unless something worse is coming.",
      "cues": [
        "hit+person -windshield",
        "got|was|been|is|were|getting|gets+hit person|body",
        "person hit+by -windshield",
        "run-over person|body -zone",
        "got|been|gets+run-over",
        "ran-him-over",
        "backed|rolled|drove|swung+into|onto|over+person|body",
        "came|comes+down+on+person|body",
        "pinned person|body",
        "body stuck|caught under|between|in machine|truck|drum|wheel|tire|tailgate|vehicle",
        "pinned between|under",
        "crushed body",
        "got|was|been|is|getting+crushed person",
        "caught body in|between|under",
        "person under machine|truck|drum|wheel|tire -fix -grease -check",
        "atropellado",
        "fell|dropped|slammed|landed|rolled+on|onto+person|body -hot -hot-mix -liquid",
        "caught+body",
        "backed|rolled|drove|swung|hit|ran|knocked not+moving|breathing person",
        "caved|cave|collapsed+in|down|on|onto person -heat -sun -hot -out",
        "buried person",
        "person+down vehicle|truck|machine -heat"
      ]
    }
  }
];
