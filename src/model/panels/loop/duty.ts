import { GRAVITY_MS2 } from '#model/outdoors/air'
import { flowSpread_frac, UNEVEN_frac } from './evenness.ts'
import { fluidProperties } from './fluid.ts'
import {
  dynamicPressure_Pa,
  LAMINAR_RE,
  pressureGradient_Pam,
  tubeReynolds,
  tubeVelocity,
} from './friction.ts'
import {
  builtLayout,
  EVEN_FEED_frac,
  modulePassages,
  smoothLayout,
  wholeModules,
  type FieldLayout,
  type ModulePassages,
} from './layout.ts'
import {
  AIR_RULE,
  designBore_m,
  pipeGain_WmK,
  pipeOuter_m,
  standardBore_m,
  WATER_HEADER_RULE,
  WATER_RULE,
  type PipeRule,
} from './pipes.ts'
import { tubedPlateConductance, tubeFilm_Wm2K, wettedPlateConductance } from './plate.ts'
import type { FluidProperties } from './properties.ts'
import { loopRemarks } from './remarks.ts'
import type { LoopDuty, LoopSpec } from './spec.ts'
import { checkLoopSpec } from './spec-check.ts'

/** Temperature at which the fluid's properties are taken, °C: the middle of a summer night's loop. */
export const LOOP_TEMP_C = 15

/** Bends, valves and unions of the pipe run, as a share of its straight loss (common practice, no source). */
const FITTINGS_SHARE = 0.4
/** Loss of a header that gives up its flow evenly, over that of full flow all along: ½ laminar, 0.36 turbulent. */
const HEADER_SHARE = 0.5

/**
 * The loop for `area_m2` of panel, any area ≥ 0. For the search: modules count in fractions, pipe and header have just
 * the bore that keeps the limits, so that every figure but `modules` (rounded up) is continuous in area. Area 0 has no
 * flow, pressure or power. What will be built is `builtDuty`. Throws RangeError for a spec or area out of range.
 */
export function loopDuty(spec: LoopSpec, area_m2: number): LoopDuty {
  return dutyOf(spec, area_m2, smoothLayout(spec, modulesFor(spec, area_m2)), {
    pipe: (_rule, bore_m) => bore_m,
    header: (_rule, bore_m) => bore_m,
  })
}

/**
 * The loop as it will be built for `area_m2`: whole modules in even rows (the last one part used where they do not divide
 * the area), standard bores, headers wide enough to feed the passages evenly. For page and sheet.
 */
export function builtDuty(spec: LoopSpec, area_m2: number): LoopDuty {
  const layout = builtLayout(spec, modulesFor(spec, area_m2))
  return dutyOf(spec, area_m2, layout, { pipe: standardBore_m, header: evenBore_m })
}

function moduleArea_m2(spec: LoopSpec): number {
  return spec.moduleLength_m * spec.moduleWidth_m
}

function modulesFor(spec: LoopSpec, area_m2: number): number {
  checkLoopSpec(spec)
  if (!(area_m2 >= 0 && area_m2 <= 1e5))
    throw new RangeError(`panel area must be 0…100 000 m², got ${area_m2}`)
  return area_m2 / moduleArea_m2(spec)
}

/** Turns the bore the rules ask for into the bore used. */
interface Fit {
  readonly pipe: (rule: PipeRule, design_m: number) => number
  /** `spread_frac`: unevenness of the row's flow with a bore. */
  readonly header: (rule: PipeRule, design_m: number, spread_frac: (bore_m: number) => number) => number
}

/** Headers are not made wider than this many design bores for evenness (common practice, no source). */
const WIDEST_HEADER_bores = 2.5

/** The first standard bore at or above the design bore that feeds the row evenly; the widest worth having when none does. */
function evenBore_m(rule: PipeRule, design_m: number, spread_frac: (bore_m: number) => number): number {
  const least_m = standardBore_m(rule, design_m)
  const wider = rule.pipes
    .map((pipe) => pipe.bore_m)
    .filter((bore_m) => bore_m >= least_m && bore_m <= WIDEST_HEADER_bores * design_m)
  return wider.find((bore_m) => spread_frac(bore_m) <= UNEVEN_frac) ?? wider.at(-1) ?? least_m
}

function dutyOf(spec: LoopSpec, area_m2: number, layout: FieldLayout, fit: Fit): LoopDuty {
  const fluid = fluidProperties(spec.fluid, spec.glycol_frac, LOOP_TEMP_C)
  const passage = passageFlow(spec, fluid)
  const idle = idleDuty(spec, area_m2, passage.fluidToPlate_Wm2K)
  if (area_m2 === 0 || spec.flow_kgsm2 === 0) return idle
  const flow_kgs = spec.flow_kgsm2 * area_m2
  const header = headerFlow(spec, fluid, layout, passage, fit)
  const pipe = pipeFlow(spec, fluid, flow_kgs, layout, fit)
  const liftLoss_Pa = spec.fluid === 'air' ? 0 : fluid.density_kgm3 * GRAVITY_MS2 * spec.lift_m
  const pressureDrop_Pa = passage.loss_Pa + header.loss_Pa + pipe.loss_Pa + liftLoss_Pa
  const duty: LoopDuty = {
    ...idle,
    flow_kgs,
    capacityRate_WK: flow_kgs * fluid.specificHeat_JkgK,
    pipeGain_WK: pipe.gain_WK,
    pressureDrop_Pa,
    pumpPower_W: ((flow_kgs / fluid.density_kgm3) * pressureDrop_Pa) / spec.pumpEfficiency_frac,
    pipeInnerDiameter_m: pipe.bore_m,
    pipeVelocity_ms: pipe.velocity_ms,
    headerInnerDiameter_m: header.bore_m,
    riserVelocity_ms: passage.velocity_ms,
    riserReynolds: passage.reynolds,
    headerLoss_Pa: header.loss_Pa,
    flowSpread_frac: header.spread_frac,
    riserLoss_Pa: passage.loss_Pa,
    pipeLoss_Pa: pipe.loss_Pa,
    liftLoss_Pa,
  }
  return { ...duty, remarks: loopRemarks(spec, duty, fluid) }
}

function idleDuty(spec: LoopSpec, area_m2: number, fluidToPlate_Wm2K: number): LoopDuty {
  return {
    area_m2,
    modules: wholeModules(area_m2 / moduleArea_m2(spec)),
    flow_kgs: 0,
    capacityRate_WK: 0,
    fluidToPlate_Wm2K,
    pipeGain_WK: 0,
    pressureDrop_Pa: 0,
    pumpPower_W: 0,
    pipeInnerDiameter_m: 0,
    pipeVelocity_ms: 0,
    headerInnerDiameter_m: 0,
    riserVelocity_ms: 0,
    riserReynolds: 0,
    headerLoss_Pa: 0,
    flowSpread_frac: 0,
    riserLoss_Pa: 0,
    pipeLoss_Pa: 0,
    liftLoss_Pa: 0,
    remarks: [],
  }
}

interface PassageFlow {
  readonly velocity_ms: number
  readonly reynolds: number
  readonly loss_Pa: number
  readonly fluidToPlate_Wm2K: number
}

/** One passage of one module: the same at every area, for modules in parallel share the flow evenly. */
function passageFlow(spec: LoopSpec, fluid: FluidProperties): PassageFlow {
  const passages: ModulePassages = modulePassages(spec)
  const tube = {
    flow_kgs: (spec.flow_kgsm2 * moduleArea_m2(spec)) / passages.parallel,
    bore_m: spec.tubeInnerDiameter_m,
    roughness_m: 0,
    fluid,
  }
  const reynolds = tubeReynolds(tube)
  const film_Wm2K = tubeFilm_Wm2K({
    reynolds,
    prandtl: (fluid.viscosity_Pas * fluid.specificHeat_JkgK) / fluid.conductivity_WmK,
    bore_m: tube.bore_m,
    length_m: passages.length_m,
    conductivity_WmK: fluid.conductivity_WmK,
  })
  const conductance = spec.layout === 'wetted' ? wettedPlateConductance : tubedPlateConductance
  return {
    velocity_ms: tubeVelocity(tube),
    reynolds,
    loss_Pa: pressureGradient_Pam(tube) * passages.length_m + passages.localLoss * dynamicPressure_Pa(tube),
    fluidToPlate_Wm2K: conductance(spec, film_Wm2K),
  }
}

/** Headers are not made wider than this asks for, however little the risers lose, Pa/m (common practice, no source). */
const WIDEST_HEADER_Pam = 15

/** Supply and collecting header of one row. */
function headerFlow(
  spec: LoopSpec,
  fluid: FluidProperties,
  layout: FieldLayout,
  passage: PassageFlow,
  { header: fit }: Fit,
) {
  const usual = spec.fluid === 'air' ? AIR_RULE : WATER_HEADER_RULE
  const even_Pam = (EVEN_FEED_frac * passage.loss_Pa) / (2 * HEADER_SHARE * layout.header_m)
  const rule = {
    ...usual,
    gradient_Pam: Math.min(usual.gradient_Pam, Math.max(WIDEST_HEADER_Pam, even_Pam)),
  }
  const flow_kgs = spec.flow_kgsm2 * moduleArea_m2(spec) * layout.modulesPerRow
  const tube = (bore_m: number) => ({ flow_kgs, bore_m, roughness_m: rule.roughness_m, fluid })
  const loss_Pa = (bore_m: number) => 2 * HEADER_SHARE * pressureGradient_Pam(tube(bore_m)) * layout.header_m
  const spread_frac = (bore_m: number) =>
    flowSpread_frac({
      passages: layout.modulesPerRow * modulePassages(spec).parallel,
      headerLoss_Pa: loss_Pa(bore_m),
      headerMomentum_Pa: 2 * dynamicPressure_Pa(tube(bore_m)),
      passageLoss_Pa: passage.loss_Pa,
      exponent: passage.reynolds < LAMINAR_RE ? 1 : 1.75,
    })
  const bore_m = fit(rule, designBore_m(rule, { flow_kgs, fluid }), spread_frac)
  return { bore_m, loss_Pa: loss_Pa(bore_m), spread_frac: spread_frac(bore_m) }
}

/** Supply and return between panel and store. */
function pipeFlow(spec: LoopSpec, fluid: FluidProperties, flow_kgs: number, layout: FieldLayout, fit: Fit) {
  const rule = spec.fluid === 'air' ? AIR_RULE : WATER_RULE
  const bore_m = spec.pipeInnerDiameter_m ?? fit.pipe(rule, designBore_m(rule, { flow_kgs, fluid }))
  const tube = { flow_kgs, bore_m, roughness_m: rule.roughness_m, fluid }
  const length_m = spec.pipeLength_m + layout.rowPipes_m
  return {
    bore_m,
    velocity_ms: tubeVelocity(tube),
    loss_Pa: (1 + FITTINGS_SHARE) * pressureGradient_Pam(tube) * length_m,
    gain_WK: pipeGain_WmK(pipeOuter_m(bore_m), spec.pipeInsulation_m) * length_m,
  }
}
