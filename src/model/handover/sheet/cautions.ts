import { ANCHORS_PER_MODULE } from './quantities.ts'
import type { Plant } from './plant.ts'
import { count, figure, words, type Wording } from '#model/basis/words'
import { isTank } from '#model/building/store'
import { judgedLoad_kgm2 } from '#model/design/assembly'
import { RESIDUAL } from '#model/handover/drawing'

/** One hazard where the work happens. */
export interface Caution {
  readonly title: string
  readonly text: Wording
}

/** Said once on every sheet, before its cautions. */
export const LOCAL_CODES = 'Local codes and licensed practice decide.'

/** Gust the sheet reckons with where none is known for the site, m/s (common practice, no source). */
export const GUST_ms = 40
/** Velocity pressure of air at sea level, q = 0.613 V² (Pa, m/s): ½ρ with ρ 1.226 kg/m³. */
const VELOCITY_PRESSURE = 0.613
/** Uplift coefficient at roof edges and corners (from memory). */
const UPLIFT = 1.8
/** Flat solar hardware with its fluid, kg/m² (civic guides for solar hardware: 3–4 psf). */
export const PANEL_kgm2 = [15, 20] as const
/** Design live load of dwelling floors, kg/m² (US residential code table R301.5, 40 psf). */
const DWELLING_kgm2 = 195

/** Velocity pressure of a gust, Pa; `gust_ms` in m/s. */
export function gustPressure_Pa(gust_ms: number): number {
  return VELOCITY_PRESSURE * gust_ms * gust_ms
}

/** Pull on one module at a roof's edge, N. */
export function upliftOfModule_N(moduleArea_m2: number, gust_ms: number): number {
  return gustPressure_Pa(gust_ms) * UPLIFT * moduleArea_m2
}

/** All cautions that bear on this plant, those of the roof first. */
export function cautionsOf(plant: Plant): Caution[] {
  const { loopSpec, tank } = plant
  const wet = loopSpec.fluid !== 'air'
  return [
    wind(plant),
    roof(plant),
    heightCaution,
    ...(tank ? [tankCaution(plant)] : []),
    ...(wet ? [freezing(plant), crossConnection, legionella] : []),
    mains(wet),
    mould(plant),
    ...(loopSpec.fluid === 'glycol' || plant.answer.scenario.plan.freeze === 'glycol' ? [glycol] : []),
    ...(wet ? [stagnation] : []),
    solventsCaution,
    pigment,
  ]
}

const caution = (title: string, text: Wording): Caution => ({ title, text })

/** Each hazard once, where it comes first. */
export const onceEach = (cautions: readonly Caution[]): Caution[] =>
  cautions.filter(({ title }, i) => cautions.findIndex((other) => other.title === title) === i)

function wind({ loopSpec }: Plant): Caution {
  const area_m2 = loopSpec.moduleLength_m * loopSpec.moduleWidth_m
  const pull_N = upliftOfModule_N(area_m2, GUST_ms)
  return caution(
    'Wind',
    words`A gust of ${figure(GUST_ms, 'ms')} presses with ½ ρ V² = ${figure(gustPressure_Pa(GUST_ms), 'load')}; at a roof edge (coefficient −1.8) it lifts each module with ${figure(pull_N, 'force', 2)}, or ${figure(pull_N / ANCHORS_PER_MODULE, 'force', 2)} at each of its ${count(ANCHORS_PER_MODULE)} clamps (feet are fewer and hold more: see Frame), far more than it weighs. Take your site’s design gust, fix to the structure and not to the sheet, keep off edges and corners; an engineer decides rails, feet and bolts.`,
  )
}

function roof({ modulesArea_m2 }: Plant): Caution {
  return caution(
    'Roof load',
    words`Panels with fluid weigh about ${figure(PANEL_kgm2[0], 'kgm2', 2)} to ${figure(PANEL_kgm2[1], 'kgm2', 2)}, here some ${figure(PANEL_kgm2[1] * modulesArea_m2, 'kg', 2)} in few feet; add snow that drifts behind them and people at work. Shed roofs are often made for none of it: have the roof checked, or stand the panels on the ground.`,
  )
}

export const heightCaution = caution(
  'Work at height',
  words`Guard every open edge (many rules begin at ${figure(1.8, 'span', 2)}); never alone, nor in wind, wet or ice. Skylights and old sheets break underfoot; old sheets may hold asbestos.`,
)

function tankCaution({ tank }: Plant): Caution {
  const { load, volume_m3 } = tank!
  const floor_kgm2 = judgedLoad_kgm2(volume_m3, tank!)
  const over = floor_kgm2 > DWELLING_kgm2
  return caution(
    'Tank weight',
    words`Full it weighs ${figure(load.full_kg, 'kg')} and loads its floor with ${figure(floor_kgm2, 'kgm2')}; dwelling floors are usually made for ${figure(DWELLING_kgm2, 'kgm2')}. ${over ? 'Stand it on a slab on firm ground. ' : ''}Hold tall tanks against tipping, plan where a leak would run, keep children out.`,
  )
}

function freezing({ answer }: Plant): Caution {
  const { freezeRisk_h } = answer.year
  const { freezeLimit_C, freeze } = answer.scenario.plan
  const when = freeze === 'glycol' ? 'all through the year' : 'while the loop was in season'
  const risk =
    freezeRisk_h > 0
      ? words`In the simulated year the plate was below ${figure(freezeLimit_C, 'C')} in ${figure(freezeRisk_h, 'h')}, counted ${when}. `
      : words``
  return caution(
    'Freezing',
    words`A panel that faces a clear sky freezes with the air above ${figure(0, 'C')}; thin tubes burst within hours. ${risk}Slope every pipe to the drain, never trap water behind a valve, and let a power cut leave the panel safe.`,
  )
}

const crossConnection = caution(
  'Cross-connection',
  words`Never join the loop to drinking water: fill by hose over an air gap and take the hose away, or use the approved backflow preventer. Mark pipes and tank NOT DRINKING WATER.`,
)

const legionella = caution(
  'Legionella',
  words`It grows between ${figure(20, 'C')} and ${figure(45, 'C')}, where this water lives in summer. Keep the store shut, dark and clean: no taps, no spray, no mist, no wetting of roofs from it; drain it when idle.`,
)

function mains(wet: boolean): Caution {
  return caution(
    'Mains near water',
    words`Each circuit behind a ${RESIDUAL}; isolator within sight, drip loops, splash-proof boxes, bonding, lightning earth; extra-low voltage outdoors where it can be had.${wet ? ' Pump and joints never above electrics.' : ''} No work live.`,
  )
}

function mould({ answer }: Plant): Caution {
  const { store } = answer.scenario
  const held_h = answer.year.dewHeld_h
  const held =
    held_h > 0
      ? words`The guard held cooling back in ${figure(held_h, 'h')} of the simulated year. `
      : words``
  if (store.deliveryKind === 'drained' && isTank(store.kind))
    return caution(
      'Condensation and mould',
      words`The coil drips: ${figure(answer.year.condensate_kg, 'kg')} of water in the simulated year. Lay the drain with a fall and a trap, fit a float switch, wash tray and filter every month of cooling: standing water breeds germs. Insulate and vapour-seal every cold pipe, valve and the tank.`,
    )
  return caution(
    'Condensation and mould',
    words`Cooled surfaces stay ${figure(store.dewMargin_K, 'K')} above the indoor dew point; mould needs only 80 % humidity at the surface for some days, which takes about ${figure(3.5, 'K')} to avoid. ${held}Insulate and vapour-seal every cold pipe; tray and drain under every coil.`,
  )
}

const glycol = caution(
  'Glycol',
  words`Only inhibited propylene glycol; never motor-car ethylene glycol, a small drink of which kills people and pets. Catch, label and hand in what is drained.`,
)

const stagnation = caution(
  'Heat and pressure',
  words`A panel at rest in the sun gets hot: a vented tank, or a safety valve and expansion vessel in a closed loop; beware of scalding when draining by day.`,
)

export const solventsCaution = caution(
  'Solvents',
  words`Coating solvents burn (acetone below ${figure(-18, 'C')}); vapour creeps along the floor. Outdoors, no flame or spark, small amounts, butyl gloves, goggles, respirator when spraying; rags in a shut tin.`,
)

/** What the parts list names contains no barium: its caution is on the page “Batch” of a recipe that does. */
const pigment = caution(
  'Pigment dust',
  words`Dust mask P2/N95 for any pigment; nothing down the drain. A recipe with barium sulfate: the washed one; soluble barium is a poison (page “Batch”).`,
)
