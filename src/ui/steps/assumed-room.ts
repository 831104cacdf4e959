import { defaultScenario, type Scenario } from '#model/design/scenario'
import { count, figure, words, type Wording } from '#model/basis/words'

/** That a verdict is on the room the page begins with; null once anything of it was described, and where its name says so. */
export function inventedRoom({ room, job }: Scenario): Wording | null {
  const usual = defaultScenario()
  if (job.name.includes('invented') || JSON.stringify(room) !== JSON.stringify(usual.room)) return null
  return words`This is for an invented workshop of ${figure(room.length_m, 'm')} × ${figure(room.width_m, 'm')}, not yet for your room.`
}

/** What the year takes for granted of a room, with what would follow if it is otherwise; a sentence or two each. */
export function assumedOfRoom({ room, target }: Scenario): readonly Wording[] {
  const most_W = room.gains_W.reduce((most, gain_W) => Math.max(most, gain_W), 0)
  const walls = [room.behindFront, room.behindRight, room.behindBack, room.behindLeft]
  const outdoors = walls.filter((behind) => behind === 'outdoors').length
  const leaks = figure(room.airChange_1h, '1h', 2)
  const { occupiedFrom_h: from_h, occupiedUntil_h: until_h } = target
  const panes_m2 = room.windowFront_m2 + room.windowRight_m2 + room.windowBack_m2 + room.windowLeft_m2
  return [
    words`The roof sends back ${percent(room.roofReflectance_frac)} % of the sunlight and the walls ${percent(room.wallReflectance_frac)} %. Dark felt sends back 10 %, weathered sheet 30 %, white paint 80 %: the darker it is, the warmer the room.`,
    ...(panes_m2 === 0
      ? []
      : [
          words`Blinds and trees let ${percent(room.shading_frac)} % of the sunlight through to the windows. With nothing before the panes that is 100 %, and the room is warmer.`,
        ]),
    room.nightVent
      ? words`Windows are shut by day and opened on nights when outdoors is cooler; otherwise air comes in by leaks alone, ${leaks} without wind. Opened in the heat of the day, the room gets warmer than is worked out.`
      : words`Windows and doors are shut, day and night: air comes in by leaks alone, ${leaks} without wind. Opened on cool nights the room stays cooler, opened in the heat of the day warmer.`,
    room.floorKind === 'raised'
      ? words`The floor is raised, with outdoor air below it. On the ground it would stay cooler.`
      : words`The floor lies on the ground, which takes heat in summer. Raised on posts it would be warmer.`,
    words`${count(outdoors)} of the four walls have outdoors behind them. A wall against a room kept the same lets nothing in.`,
    words`People, lamps and machines give off up to ${figure(most_W, 'W')} at the busiest hour. What runs beyond that has to be cooled as well.`,
    from_h === until_h
      ? words`Every hour of the day counts as too warm or not. Where nobody is in at night, leave those hours out.`
      : words`Only the hours from ${count(from_h)} to ${count(until_h)} count. What it is like in the others is not judged.`,
  ]
}

const percent = (share: number) => count(Math.round(100 * share))
