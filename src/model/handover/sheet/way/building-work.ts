import { floor_m2, walls_m2, windows_m2, type Measure } from '#model/design/measures'
import { MEASURE_SIZES, describedRoom, type Scenario } from '#model/design/scenario'
import { count, figure, line, words } from '#model/basis/words'
import { heightCaution } from '../cautions.ts'
import { shadeWork, windowList } from './shade-work.ts'
import { EMPTY, type Work } from './work.ts'

/** A jar, m³, and how far it is filled (common practice, no source). */
export const JAR_m3 = 0.02
export const FILLED_frac = 0.9

type BuildingId = Exclude<Measure['id'], 'paintRoof' | 'nightOpening' | 'nightFan' | 'ceilingFan'>

/** What each change of the building asks for, but paint. */
export const BUILDING_WORK: Readonly<Record<BuildingId, (scenario: Scenario) => Work>> = {
  insulateRoof: (s) => insulationWork('roof', floor_m2(s), describedRoom(s.room).roofU_Wm2K),
  insulateWalls: (s) =>
    insulationWork('walls', walls_m2(s) - windows_m2(s), describedRoom(s.room).wallU_Wm2K),
  shade: shadeWork,
  glazing: (s) => ({
    ...EMPTY,
    name: 'Reflective film and a second pane',
    sizes: [
      line('Glass', words`${figure(windows_m2(s), 'm2')} in all: ${windowList(s)}`),
      line(
        'After it',
        words`U ${figure(s.room.windowU_Wm2K, 'Wm2K')}, ${figure(100 * s.room.windowGain_frac, 'count', 2)} % of the sun let in`,
      ),
    ],
    buy: [
      {
        quantity: figure(windows_m2(s), 'm2'),
        what: words`solar film for the outside of the glass that lets in at most ${figure(100 * MEASURE_SIZES.film_frac, 'count', 2)} % of what the bare glass does`,
      },
      {
        quantity: figure(windows_m2(s), 'm2'),
        what: words`second pane (acrylic, polycarbonate or glass) in a tight frame, 12 to 20 mm (1/2 to 3/4 in) off the first`,
      },
    ],
    steps: [
      words`Film goes on clean glass with soapy water and a squeegee; the pane goes on inside, tight, with a bag of drying agent or a small hole to the cold side against mist.`,
    ],
    readings: [
      {
        what: 'Noon, sun on the window: hand or thermometer behind the glass',
        expect: words`clearly cooler than behind a window left bare`,
      },
    ],
    cautions: [
      {
        title: 'Glass that cracks',
        text: words`Film that takes up sun can crack double or wired glass: ask the maker of the glass.`,
      },
    ],
  }),
  mass: (s) => {
    const mass_kg = MEASURE_SIZES.jars_kgm2 * floor_m2(s)
    return {
      ...EMPTY,
      name: 'Mass inside',
      sizes: [
        line(
          'Mass',
          words`${figure(mass_kg, 'kg', 2)} of water, or about five times as much masonry, within reach of the room’s air`,
        ),
      ],
      buy: [
        {
          quantity: count(Math.ceil(mass_kg / (1000 * JAR_m3 * FILLED_frac))),
          what: words`closed jars of ${figure(JAR_m3, 'content', 2)}, filled to nine tenths, each with air around it`,
        },
      ],
      steps: [
        words`Put them on racks along inner walls, two fingers apart, none in the sun and none against an outer wall; they only help where the room is cooled at night.`,
      ],
      cautions: [
        {
          title: 'Weight',
          text: words`${figure(MEASURE_SIZES.jars_kgm2, 'kgm2')} over the whole floor, several times that under a rack: have the floor checked and tie racks to the wall. Keep jars shut and dark.`,
        },
      ],
    }
  },
  fewerGains: (s) => {
    const now_W = s.room.gains_W.reduce((sum, gain) => sum + gain, 0) / s.room.gains_W.length
    return {
      ...EMPTY,
      name: 'Less heat inside',
      sizes: [
        line(
          'Heat given off inside',
          words`${figure(now_W, 'heat', 2)} on average after it, ${figure(now_W / (1 - MEASURE_SIZES.gainsAway_frac), 'heat', 2)} before`,
        ),
      ],
      buy: [{ quantity: count(1), what: words`plug-in watt meter, to find what draws most` }],
      steps: [
        words`Measure each lamp and machine for a day; move compressors, chargers and freezers out, lamps to LED, hot work to the morning, until ${figure(now_W, 'heat', 2)} are left.`,
      ],
      readings: [
        {
          what: 'Meter reading over a usual week',
          expect: words`${figure(now_W, 'heat', 2)} on average or less`,
        },
      ],
    }
  },
  airtight: (s) => ({
    ...EMPTY,
    name: 'Seal the leaks',
    sizes: [
      line(
        'Air through leaks',
        words`${figure(s.room.airChange_1h, 'count', 2)} changes an hour after it, ${figure(s.room.airChange_1h / (1 - MEASURE_SIZES.leaksAway_frac), 'count', 2)} before`,
      ),
      line(
        'Walls to look at',
        words`${figure(walls_m2(s), 'm2')}, all joints with roof, floor, doors and windows`,
      ),
    ],
    buy: [
      {
        quantity: count(1),
        what: words`smoke pen; sealing tape, foam and strips for what it shows: measure the joints`,
      },
    ],
    steps: [
      words`On a windy day go along every joint with smoke; seal from the inside, tape on board and membrane, strips in doors and windows.`,
      words`Keep one opening that can be set: people need fresh air.`,
    ],
    cautions: [
      {
        title: 'Air to breathe',
        text: words`Never seal a room with an open flame or a stove that takes its air from it: carbon monoxide kills. Fit an alarm; watch for damp.`,
      },
    ],
  }),
}

function insulationWork(where: 'roof' | 'walls', area_m2: number, after_Wm2K: number): Work {
  const { insulation_m, insulation_WmK } = MEASURE_SIZES
  const resistance = insulation_m / insulation_WmK
  const left = 1 / after_Wm2K - resistance
  return {
    ...EMPTY,
    name: where === 'roof' ? 'Insulate the roof' : 'Insulate the walls',
    sizes: [
      line(
        'Area',
        words`${figure(area_m2, 'm2')}${where === 'walls' ? ' of wall, windows taken off' : ', flat'}`,
      ),
      line(
        'Insulation',
        words`${figure(insulation_m, 'board', 2)} of ${figure(insulation_WmK, 'WmK')} (${figure(resistance, 'rValue')}), without gaps; another material by the same R`,
      ),
      line(
        'U-value',
        words`${figure(after_Wm2K, 'Wm2K')} after it${left > 0 ? words`, ${figure(1 / left, 'Wm2K')} before` : words``}`,
      ),
    ],
    buy: [
      {
        quantity: figure(area_m2, 'm2'),
        what: words`boards or mats ${figure(insulation_m, 'board', 2)}, in two layers with joints apart`,
      },
      {
        quantity: figure(area_m2, 'm2'),
        what: words`vapour barrier on the side that is warm in winter, with tape`,
      },
      {
        quantity: figure(area_m2, 'm2'),
        what: words`weather-tight outer layer or inner lining, with battens 24 × 48 mm (1 × 2 in) every ${figure(0.6, 'depth')}, screws as long as insulation and batten together and 40 mm (1 1/2 in) more, one every 300 mm (12 in)`,
      },
    ],
    steps: [
      words`Outside is better than inside: it keeps the mass in the room. Inside, the barrier must be unbroken, taped at every cable and edge.`,
      words`Gaps at edges and battens cost more than they look: cut tight, foam the joints.`,
    ],
    readings: [
      {
        what: 'A cold night, room heated: inner surface by infrared thermometer',
        expect: words`all of it within ${figure(1, 'K')}; a cold stripe is a gap`,
      },
    ],
    cautions: [
      ...(where === 'roof' ? [heightCaution] : []),
      {
        title: 'Damp in the layers',
        text: words`Insulation on the inside moves the dew point into the wall or roof: without a tight barrier it rots. Foam near heat or cables needs a fire-rated lining.`,
      },
    ],
    keep: [words`Look for damp spots in the first two winters.`],
  }
}
