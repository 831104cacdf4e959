import { AIR_MEASURES, floor_m2, volume_m3 } from '#model/design/measures'
import { MEASURE_SIZES, type Scenario } from '#model/design/scenario'
import { count, figure, line, short, words, type Wording } from '#model/basis/words'
import { FAN_m } from '#model/handover/drawing'
import { ventStop_C } from '#model/design/assembly'
import type { Work } from './work.ts'

const HOUR_s = 3600
/** Speed of air in openings that a fan draws through, m/s, and pressure over fan, mesh and louvre, Pa (common practice, no source). */
export const FACE_ms = 1
const FAN_Pa = 60
/** Across the blades of a fan of some 500 m³/h, m (common practice, no source). */
const FAN_ACROSS_m = 0.25
/** Lowest blades over the floor, m (IEC 60335-2-80, from memory), and what a fan hangs down, m. */
export const BLADES_m = 2.3
export const HANGS_m = 0.3

const powerOf = (id: string, s: Scenario): number =>
  AIR_MEASURES.find((measure) => measure.id === id)?.power_W(s) ?? 0

/** Of a hole behind rain louvre and insect mesh so much is free (common practice, no source). */
export const FREE_frac = 0.5

/** Open when: the rule that the year was simulated by. */
const rule = (s: Scenario): Wording =>
  words`open at night only while outdoors is colder than the room and the room is above ${figure(ventStop_C(s), 'C')}; shut by day`

export const AIR_WORK: Readonly<Record<'nightOpening' | 'nightFan' | 'ceilingFan', (s: Scenario) => Work>> = {
  nightOpening(s) {
    const area_m2 = MEASURE_SIZES.opening_m2m2 * floor_m2(s)
    const flow_m3s = (s.room.nightAirChange_1h * volume_m3(s)) / HOUR_s
    return {
      name: 'Openings for the night',
      sizes: [
        line(
          'Clear opening',
          words`${figure(area_m2, 'm2')} in all, ${figure(MEASURE_SIZES.openingHeight_m, 'span')} high: with two openings ${figure(area_m2 / 2, 'm2')} each, on opposite walls or one low and one high where that can be`,
        ),
        line(
          'Air',
          words`${figure(flow_m3s, 'airFlow')} on average (${figure(s.room.nightAirChange_1h, 'count', 2)} changes an hour), ${figure(100 * MEASURE_SIZES.mesh_frac, 'count', 2)} % of what goes through without mesh and bars`,
        ),
        line('When', rule(s)),
      ],
      buy: [
        {
          quantity: figure(area_m2, 'm2'),
          what: words`of window that can stay open, or louvred vents of that free area, with stays`,
        },
        {
          quantity: figure(area_m2, 'm2'),
          what: words`insect mesh, and bars or a lockable stay against burglars`,
        },
        {
          quantity: count(1),
          what: words`pair of thermometers, in and out; or an opener with rain sensor and clock`,
        },
      ],
      steps: [
        words`Fit stays, mesh, bars and rain hoods. Inner doors stay open, or get an opening of the same area.`,
      ],
      readings: [
        {
          what: 'A clear still night, opened for two hours: smoke at the openings',
          expect: words`goes in low and out high without a break; the room’s air within ${figure(2, 'K')} of outdoors by dawn`,
        },
      ],
      cautions: [
        {
          title: 'Open at night',
          text: words`Bars must open from inside as a way out of fire; children and ledges; rain, insects, burglars.`,
        },
      ],
      keep: [words`Wash mesh twice a summer: a dirty one halves the air.`],
    }
  },
  nightFan(s) {
    const flow_m3h = MEASURE_SIZES.fanChanges_1h * volume_m3(s)
    const fans = Math.ceil(flow_m3h / MEASURE_SIZES.oneFan_m3h)
    const power_W = powerOf('nightFan', s)
    const one = figure(flow_m3h / fans / HOUR_s, 'airFlow')
    const opening_m2 = flow_m3h / HOUR_s / FACE_ms
    return {
      name: 'Night fan',
      sizes: [
        line(
          'Air',
          words`${figure(flow_m3h / HOUR_s, 'airFlow')} in all (${figure(MEASURE_SIZES.fanChanges_1h, 'count')} changes an hour), ${figure(power_W, 'W', 2)}`,
        ),
        line(
          'Way in',
          words`${figure(opening_m2, 'm2', 2)} of free opening on the far side, so that air runs at ${figure(FACE_ms, 'flowSpeed', 2)} at most`,
        ),
        line(
          'When',
          words`runs at night while outdoors is colder than the room and the room is above ${figure(ventStop_C(s), 'C')}, as the year counts it; off by day`,
        ),
      ],
      buy: [
        {
          quantity: count(fans),
          what: words`wall or window fan, ${short(FAN_ACROSS_m, 2)} across, for a hole of ${short(FAN_m, 2)} square, or what its maker asks: ${one} against ${figure(FAN_Pa, 'fanPressure', 2)}, at most ${figure(power_W / fans, 'W', 2)}, with a gravity shutter: its air opens it, and it falls shut`,
        },
        {
          quantity: count(1),
          what: words`vent for the air that comes in, with mesh, rain louvre and a gravity shutter that the fan’s draught opens inwards, without motor: ${figure(opening_m2, 'm2', 2)} free, so a hole of ${figure(opening_m2 / FREE_frac, 'm2', 2)} where louvre and mesh leave half of it free (${figure(100 * FREE_frac, 'count', 2)} %, common practice, no source): its maker’s figure decides`,
        },
        {
          quantity: count(1),
          what: words`difference thermostat: on at ${figure(2, 'K')} colder outdoors, off at ${figure(1, 'K')}, with a clock and a room thermostat that stops the fan at ${figure(ventStop_C(s), 'C')}`,
        },
      ],
      steps: [
        words`Fan high and blowing out, vent low and opposite; both shut tight by day. Supply with residual-current protection.`,
      ],
      readings: [
        {
          what: 'Air speed at the open vent, mean of nine spots',
          expect: words`about ${figure(FACE_ms, 'flowSpeed', 2)} over ${figure(opening_m2, 'm2', 2)}: ${figure(flow_m3h / HOUR_s, 'airFlow')} ± 15 %`,
        },
        { what: 'Power of all fans', expect: words`${figure(power_W, 'W', 2)} or less` },
      ],
      cautions: [
        {
          title: 'Fan and flame',
          text: words`A fan that blows out draws smoke and carbon monoxide from stoves and boilers into the room: never with an open flame. Guard the blades.`,
        },
      ],
      keep: [words`Clean blades, shutter and mesh each spring.`],
    }
  },
  ceilingFan(s) {
    const fans = Math.max(1, Math.round(floor_m2(s) / MEASURE_SIZES.ceilingFan_m2))
    const power_W = powerOf('ceilingFan', s)
    const blades_m = s.room.height_m - HANGS_m
    const ceiling = blades_m >= BLADES_m
    return {
      name: ceiling ? 'Ceiling fan' : 'Wall fan in place of a ceiling fan',
      sizes: [
        line(
          'Fans',
          words`${count(fans)}, one for every ${figure(MEASURE_SIZES.ceilingFan_m2, 'm2')} of floor, ${figure(power_W, 'W', 2)} in all`,
        ),
        line(
          'Air at people',
          words`${figure(MEASURE_SIZES.ceilingFan_ms, 'flowSpeed', 2)}; it moves the limit of comfort and cools nothing`,
        ),
        line(
          'When',
          'the hours above the limit are worked out with it running whenever people are in the warm room: switched by hand, off when they leave',
        ),
        line(
          'Height',
          ceiling
            ? words`blades ${figure(blades_m, 'span')} above the floor, at least ${figure(BLADES_m, 'span')}`
            : words`this room is too low for blades at ${figure(BLADES_m, 'span')}: take wall fans with guards, of the same speed at people`,
        ),
      ],
      buy: [
        {
          quantity: count(fans),
          what: words`${ceiling ? words`ceiling fan, ${short(1.2)} across` : words`wall fan with guard, ${short(0.45)} across`}, ${figure(power_W / fans, 'W', 2)}, three speeds, with ${ceiling ? 'its box or hook fixed to a joist' : 'its bracket fixed to a stud or masonry'}`,
        },
        {
          quantity: count(fans),
          what: words`${ceiling ? 'wall switch with speeds and a fixed connection by an electrician' : 'socket within reach of its cord, high enough that nobody trips over that'}, on a circuit with residual-current protection`,
        },
      ],
      steps: [words`Fix to the structure, not to boards; off when nobody is there.`],
      readings: [
        {
          what: 'Air speed where people sit, at the height of their heads',
          expect: words`${figure(MEASURE_SIZES.ceilingFan_ms, 'flowSpeed', 2)} or more at a speed one can live with`,
        },
      ],
      cautions: [
        {
          title: 'Blades',
          text: words`${ceiling ? words`Blades at least ${figure(BLADES_m, 'span')} above the floor; no loft bed under them.` : words`Blades behind guards that fingers do not pass; cord out of reach of children.`}`,
        },
      ],
      keep: [words`Dust the blades twice a summer; tighten screws once a year.`],
    }
  },
}
