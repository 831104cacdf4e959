import { HOUR_S } from '#model/basis/hours'
import { SATURATION_PA } from '#model/outdoors/air'
import type { YearInputs } from '../inputs.ts'
import type { YearKernel } from '../kernel.ts'
import { type RestingCourse, restingCourse } from '../resting-course.ts'
import { enterAir } from '../room-flows.ts'
import { faceRowsOf } from './face-rows.ts'
import { filmNumbersOf } from './film-rows.ts'
import type { HoursForm, RunSetting } from './run-setting.ts'
import { PLACES } from './hours-wasm.ts'
import type { Columns, Counts, Given, Kept, Whole } from './numbers.ts'
import { INNER_C, LAYER_C, OUTER_C, PER_GROUP_HERE, PER_LAYER_HERE, PER_MODE_HERE, STATE } from './places.ts'
import { runState } from './run-state.ts'
import { givenOf, groupRowsOf, layerRowsOf, modeRowsOf, NO_PIPES, pipeRowsOf, wholeOf } from './setting.ts'

/** True for what the flat year is written for: a room with nothing, or with panels and anything but a drip tray. */
export function isFlat({ plant }: YearInputs): boolean {
  if (plant === null) return true
  return !plant.store.drained && plant.loop.area_m2 > 0
}

/** Hours handed over at once: V8 swaps code between calls more readily than in the middle of one. */
const AT_ONCE_h = 24 * 7

const NO_NUMBERS = new Float64Array(0)
const NO_FLAGS = new Uint8Array(0)

/**
 * The hours of a kernel, run by the flat year. The kernel is the reference: it begins the run, and after an hour it can be
 * given what the flat year has come to, to be read as if it had run that hour itself.
 */
export class FlatYear {
  private readonly kernel: YearKernel
  private readonly inputs: YearInputs
  private readonly numbers: Float64Array
  private readonly whole: Whole
  private readonly columns: Columns
  private readonly rest: RestingCourse | null
  private readonly setting: RunSetting
  private readonly steps: () => void

  /**
   * Goes on from the beginning of hour `begun`, where the kernel has just been put.
   * @param form        what its hours are stepped in
   * @param room_C      operative temperature of each hour, written as hours are run, °C
   * @param sharesRest  false: the plate is worked out by itself throughout
   */
  constructor(
    form: HoursForm,
    kernel: YearKernel,
    inputs: YearInputs,
    begun: number,
    room_C: Float64Array,
    sharesRest = true,
  ) {
    const { step_s } = kernel
    const { room, plant } = inputs
    this.kernel = kernel
    this.inputs = inputs
    this.whole = wholeOf(inputs, step_s, kernel.keepsBooks)
    this.rest =
      plant !== null && sharesRest
        ? restingCourse(plant.panel, plant.fieldFactor_frac, step_s, begun, kernel.plate_C)
        : null
    const { state, numbers, rows, ends } = runState(
      {
        groupRows: groupRowsOf(room, step_s),
        modeRows: modeRowsOf(room, step_s),
        layerRows: plant === null ? NO_NUMBERS : layerRowsOf(plant, kernel.temp_C[0]!),
        ...(plant === null ? NO_PIPES : pipeRowsOf(room, plant, step_s)),
      },
      room.rowsOf(step_s).ends.map((end) => PER_MODE_HERE * end),
    )
    this.numbers = numbers
    this.columns = {
      rows: room.rowsOf(step_s).rows,
      ...rows,
      ends,
      outdoors_C: room.outdoor_C,
      dews_C: room.indoorDewPoint_C,
      ventAllowed: room.ventAllowed,
      mayRun: plant?.allowed ?? NO_FLAGS,
      balances_C: plant?.panel.equilibrium_C ?? NO_NUMBERS,
      conductances_Wm2K: plant?.panel.conductance_Wm2K ?? NO_NUMBERS,
      faceRows: plant === null ? NO_NUMBERS : faceRowsOf(plant.panel),
      ...(plant === null ? { filmRows: NO_NUMBERS, filmExchange: NO_NUMBERS } : filmNumbersOf(plant.panel)),
      restRows: NO_NUMBERS,
      saturation_Pa: SATURATION_PA,
      room_C,
    }
    this.setting = { columns: this.columns, whole: this.whole, state, numbers, restFilled: 0 }
    this.steps = form(this.setting)
    this.put(givenOf(inputs, step_s))
    this.begin()
  }

  private put(values: Partial<Given & Kept & Counts>): void {
    for (const [name, value] of Object.entries(values))
      this.numbers[PLACES[name as keyof typeof PLACES]] = value
  }

  private begin(): void {
    const { kernel, columns, inputs, rest } = this
    const { masses, air_C } = kernel.room
    masses.forEach((mass, k) => (columns.modeRows[PER_MODE_HERE * k + STATE] = mass))
    const { innerMean, outerMean, ends } = inputs.room.rowsOf(kernel.step_s)
    for (let i = 0, k = 0; i < ends.length; i++)
      for (; k < ends[i]!; k++) {
        columns.groupRows[PER_GROUP_HERE * i + INNER_C]! += innerMean[k]! * masses[k]!
        columns.groupRows[PER_GROUP_HERE * i + OUTER_C]! += outerMean[k]! * masses[k]!
      }
    this.put({
      air_C,
      radiant_C: air_C,
      tank_C: kernel.temp_C[kernel.nodes.sink]!,
      plate_C: kernel.plate_C,
      endOf_WK: NaN,
      tankPace: NaN,
      restHour: -1,
      isOnRest: rest === null ? -1 : 1,
    })
  }

  /** Hours from `from` on to before `to`, one after another; `to` may pass the record's end. */
  run(from: number, to: number): void {
    const { whole, numbers, columns, rest } = this
    whole.fromRun = from
    if (rest !== null) {
      rest.reach(numbers[PLACES.restStep]! + (to - from) * whole.stepsPerHour)
      columns.restRows = rest.known
      this.setting.restFilled = rest.filled
    }
    for (; whole.fromRun < to; whole.fromRun = whole.toRun) {
      whole.toRun = Math.min(to, whole.fromRun + AT_ONCE_h)
      this.steps()
    }
  }

  /** One hour, which the kernel then has as if it had run it itself. */
  hour(hour: number): void {
    this.run(hour, hour + 1)
    this.giveBack()
    if (!this.kernel.keepsBooks) return
    const { books } = this.kernel
    books.gains_J = 0
    enterAir(books, this.inputs.room, hour, HOUR_S, books.air_Cs, books.radiant_Cs)
    books.closeHour(this.whole.tankOutside === 1)
  }

  /** The hours run so far were its warm-up. */
  endWarmUp(): void {
    this.columns.room_C.fill(NaN)
    this.numbers[PLACES.vented_s] = 0
    this.giveBack()
  }

  /** Seconds that windows were open at night since the warm-up. */
  get vented_s(): number {
    return this.numbers[PLACES.vented_s]!
  }

  /** Gives the kernel the state at the end of the hour run last, and that hour's sums. */
  private giveBack(): void {
    const { kernel, columns, numbers: n } = this
    const { room, temp_C, nodes, plate } = kernel
    const { masses } = room
    for (let k = 0; k < masses.length; k++) masses[k] = columns.modeRows[PER_MODE_HERE * k + STATE]!
    room.air_C = temp_C[nodes.air] = n[PLACES.air_C]!
    room.radiantMean_C = n[PLACES.radiant_C]!
    temp_C[nodes.port] = room.portNow_C()
    this.giveSums()
    if (plate === null) return
    if (nodes.tank) temp_C[0] = n[PLACES.tank_C]!
    for (let i = 1; i < nodes.layers; i++) temp_C[i] = columns.layerRows[PER_LAYER_HERE * i + LAYER_C]!
    plate.temp_C = n[PLACES.plate_C]!
    plate.water_kgm2 = n[PLACES.water_kgm2]!
    kernel.controls.freezing = n[PLACES.isFreezing] === 1
    plate.mixing = n[PLACES.isMixing] === 1
    if (kernel.delivery === null) return
    kernel.delivery.law = n[PLACES.law]!
    kernel.delivery.dewHolds = n[PLACES.dewHolds] === 1
  }

  private giveSums(): void {
    const { numbers: n } = this
    const { books } = this.kernel
    books.air_Cs = n[PLACES.air_Cs]!
    books.radiant_Cs = n[PLACES.radiant_Cs]!
    books.envelope_J = n[PLACES.envelope_J]!
    books.ground_J = n[PLACES.ground_J]!
    books.nightVent_J = n[PLACES.nightVent_J]!
    books.shed_J = n[PLACES.shed_J]!
    books.taken_J = n[PLACES.taken_J]!
    books.pipes_J = n[PLACES.pipes_J]!
    books.pump_J = n[PLACES.pump_J]!
    books.fan_J = n[PLACES.fan_J]!
    books.gain_J = n[PLACES.gain_J]!
    books.delivered_J = n[PLACES.delivered_J]!
    books.run_s = n[PLACES.run_s]!
    books.return_Cs = n[PLACES.return_Cs]!
  }
}
