import { pressureGradient_Pam, type TubeFlow } from './friction.ts'

/** A pipe that can be bought. */
export interface StandardPipe {
  readonly name: string
  readonly bore_m: number
  readonly outer_m: number
}

/** Copper tube of EN 1057 (from memory): outside diameter and bore. */
export const WATER_PIPES: readonly StandardPipe[] = [
  { name: '10 mm', bore_m: 0.0088, outer_m: 0.01 },
  { name: '12 mm', bore_m: 0.0108, outer_m: 0.012 },
  { name: '15 mm', bore_m: 0.0136, outer_m: 0.015 },
  { name: '22 mm', bore_m: 0.0202, outer_m: 0.022 },
  { name: '28 mm', bore_m: 0.0262, outer_m: 0.028 },
  { name: '35 mm', bore_m: 0.0326, outer_m: 0.035 },
  { name: '42 mm', bore_m: 0.0396, outer_m: 0.042 },
  { name: '54 mm', bore_m: 0.0516, outer_m: 0.054 },
  { name: '67 mm', bore_m: 0.0643, outer_m: 0.0667 },
  { name: '76 mm', bore_m: 0.0731, outer_m: 0.0761 },
  { name: '108 mm', bore_m: 0.105, outer_m: 0.108 },
]

/** Round sheet-metal ducts of EN 1506 (from memory), mm. */
export const AIR_DUCTS: readonly StandardPipe[] = [
  63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250,
].map((size_mm) => ({ name: `${size_mm} mm duct`, bore_m: size_mm / 1000, outer_m: size_mm / 1000 + 0.001 }))

/** What a pipe is chosen by. */
export interface PipeRule {
  readonly pipes: readonly StandardPipe[]
  readonly velocity_ms: number
  readonly gradient_Pam: number
  readonly roughness_m: number
}

/** Supply and return of water: 0.5–1.2 m/s and 100–400 Pa/m (common practice, no source); drawn tube 1.5 µm. */
export const WATER_RULE: PipeRule = {
  pipes: WATER_PIPES,
  velocity_ms: 1.2,
  gradient_Pam: 300,
  roughness_m: 1.5e-6,
}
/** Headers of water, kept wide so that the risers share evenly (common practice, no source). */
export const WATER_HEADER_RULE: PipeRule = { ...WATER_RULE, velocity_ms: 0.6, gradient_Pam: 100 }
/** Ducts: 4 m/s and 1 Pa/m (common practice, no source); galvanised sheet 0.09 mm. */
export const AIR_RULE: PipeRule = {
  pipes: AIR_DUCTS,
  velocity_ms: 4,
  gradient_Pam: 1,
  roughness_m: 9e-5,
}

/**
 * The bore that just keeps both limits of the rule, m, never under the smallest that is sold: smooth in the flow, for the
 * search. What is bought is `standardBore_m`.
 */
export function designBore_m(rule: PipeRule, flow: Pick<TubeFlow, 'flow_kgs' | 'fluid'>): number {
  const smallest = rule.pipes[0]!.bore_m
  const section_m2 = flow.flow_kgs / (flow.fluid.density_kgm3 * rule.velocity_ms)
  const byVelocity = Math.max(smallest, Math.sqrt((4 * section_m2) / Math.PI))
  const gradient = (bore_m: number) =>
    pressureGradient_Pam({ ...flow, bore_m, roughness_m: rule.roughness_m }) - rule.gradient_Pam
  if (gradient(byVelocity) <= 0) return byVelocity
  let narrow = byVelocity
  let wide = byVelocity * 2
  while (gradient(wide) > 0) wide *= 2
  for (let halving = 0; halving < 44; halving++) {
    const middle = 0.5 * (narrow + wide)
    if (gradient(middle) > 0) narrow = middle
    else wide = middle
  }
  return wide
}

/** The next standard bore at or above a design bore, m; beyond the largest, the design bore itself. */
export function standardBore_m(rule: PipeRule, design_m: number): number {
  return rule.pipes.find((pipe) => pipe.bore_m >= design_m * (1 - 1e-9))?.bore_m ?? design_m
}

/** Wall added to a bore for the outside diameter of pipes, m: 15 to 42 mm copper has 0.7–1.2 mm. */
const WALL_m = 0.001
/** Outside film of a pipe out of the wind, convection and radiation, W/m²K (common practice, no source). */
const OUTER_FILM_Wm2K = 9
/** Closed-cell foam or wool pipe section, W/mK (ISO 10456 range 0.032–0.040). */
const PIPE_INSULATION_WmK = 0.036

/** Heat gain of a pipe per metre and kelvin, U′, W/mK: insulation and outside film, the pipe's own wall left out. */
export function pipeGain_WmK(outer_m: number, insulation_m: number): number {
  const skin_m = outer_m + 2 * insulation_m
  const insulating = Math.log(skin_m / outer_m) / (2 * Math.PI * PIPE_INSULATION_WmK)
  return 1 / (insulating + 1 / (Math.PI * skin_m * OUTER_FILM_Wm2K))
}

/** Outside diameter of a pipe with this bore, m. */
export function pipeOuter_m(bore_m: number): number {
  return bore_m + 2 * WALL_m
}
