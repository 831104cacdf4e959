import { Face, tangentAt, waterAfter_kgm2, type PanelHours } from '#model/panels/plate'
import { copyPoint, newPoint } from './plate-point.ts'
import { dryingParts, PlateStep } from './plate-step.ts'

/** The plate and its water, alone under the sky or about to run: its state, its tangent, and a rest through one step. */
export class PlateAlone {
  /** Plate temperature at the end of the last step, °C. */
  temp_C = 0
  /** Water or frost on the panel, kg/m². */
  water_kgm2 = 0
  /** Heat given off in the rest finished last, J. */
  shed_J = 0
  readonly relaxation: PlateStep
  /** How fast what the loop draws from changed in the last step, K/s. */
  sinkDrift_Ks = 0
  readonly point = newPoint()
  readonly step_s: number
  protected readonly panel: PanelHours
  /** At the step's beginning: the same for every share that is tried. */
  protected readonly begun = newPoint()
  protected hasBegun = false
  /** Hour in which the plate last rested, so that its tangent is this hour's. */
  protected restHour = -1
  private readonly face = new Face()

  /** @param shed_m2  area that sheds heat: of all panels, times their field factor */
  constructor(panel: PanelHours, capacity_JK: number, shed_m2: number, step_s: number) {
    this.panel = panel
    this.step_s = step_s
    this.relaxation = new PlateStep(capacity_JK, shed_m2)
  }

  /** At rest through the whole step. A dry plate that rested in the same hour goes on with the tangent it has. */
  prepareAlone(hour: number): void {
    const { relaxation } = this
    relaxation.step_s = this.step_s
    relaxation.setLoop(null, 0)
    if (hour === this.restHour && this.water_kgm2 === 0) relaxation.start_C = this.temp_C
    else this.beginAtPlate(hour)
    relaxation.prepare()
    this.refine(0)
    this.restHour = hour
  }

  /** The prepared rest is taken: while it dries off in finer steps, since that takes minutes. */
  finishAlone(hour: number): void {
    const { relaxation } = this
    const parts = dryingParts(this.water_kgm2, this.begun.water_kgm2s, this.step_s)
    const part_s = this.step_s / parts
    relaxation.step_s = part_s
    this.shed_J = 0
    for (let k = 0; k < parts; k++) {
      if (parts > 1) {
        this.hasBegun = false
        this.beginAtPlate(hour)
        relaxation.prepare()
        this.refine(0)
      }
      this.shed_J += part_s * (relaxation.shed_WK * relaxation.mean_C(0) - relaxation.rest_W)
      this.water_kgm2 = this.waterAfter(part_s)
      this.temp_C = relaxation.end_C(0)
    }
    this.hasBegun = false
  }

  protected beginAtPlate(hour: number): void {
    const { point, begun, relaxation } = this
    relaxation.start_C = this.temp_C
    relaxation.drift_Ks = this.sinkDrift_Ks
    if (!this.hasBegun) {
      begun.plate_C = this.temp_C
      begun.water_kgm2 = this.water_kgm2
      if (this.face.hour !== hour) this.face.set(this.panel, hour)
      tangentAt(this.face, begun)
      this.hasBegun = true
    }
    copyPoint(begun, point)
    relaxation.setTangent(point)
  }

  /** Takes the tangent again about the mean that was just found; twice where dew or drying change fast. */
  protected refine(sink_C: number): void {
    const { point, relaxation } = this
    const passes = this.water_kgm2 > 0 || point.water_kgm2s > 0 ? 2 : 1
    for (let pass = 0; pass < passes; pass++) {
      point.plate_C = relaxation.mean_C(sink_C)
      point.water_kgm2 = this.waterAfter(0.5 * relaxation.step_s)
      tangentAt(this.face, point)
      relaxation.setTangent(point)
      relaxation.prepare()
    }
  }

  /** Water after some seconds at the tangent's rate, kg/m². */
  protected waterAfter(seconds_s: number): number {
    const { waterLimit_kgm2 } = this.panel
    return waterAfter_kgm2(this.water_kgm2, this.point.water_kgm2s, seconds_s, this.temp_C, waterLimit_kgm2)
  }
}
