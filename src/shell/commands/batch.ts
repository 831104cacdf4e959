import {
  batchCautions,
  readRecipe,
  writeRecipe,
  DEMO_JOB,
  DEMO_RECIPE,
  type CoatJob,
  type BatchQuantities,
} from '#model/panels/paint'
import { saysInvented } from '#model/basis/words'
import { answered, studies } from '../answered.ts'
import { textOf, type Options } from '../options.ts'
import { note, type Table } from '../output.ts'
import type { Command } from './command.ts'
import { numberOption } from '../number-option.ts'

export const batch: Command = {
  summary: 'what to weigh and measure for an area: every ingredient of a recipe, jars, coats, cost',
  options: {
    recipe: { type: 'string', help: 'recipe (.json); default: an invented example' },
    example: { type: 'boolean', help: 'print the example recipe to start from' },
    area: { type: 'string', help: 'area to coat, m²' },
    'thickness-mm': {
      type: 'string',
      help: `dry thickness, all coats together, mm (invented start: ${DEMO_JOB.dryThickness_m * 1000})`,
    },
    coats: { type: 'string', help: `number of coats (invented start: ${DEMO_JOB.coats})` },
    loss: {
      type: 'string',
      help: `share that does not end on the panel, 0…0.9 (invented start: ${DEMO_JOB.loss_frac})`,
    },
    'jar-L': { type: 'string', help: `size of the mixing jar, L (invented start: ${DEMO_JOB.jar_L})` },
    'jar-fill': {
      type: 'string',
      help: `how full the jar may be, 0.1…1 (invented start: ${DEMO_JOB.jarFill_frac})`,
    },
  },
  run(options) {
    if (options.values['example'] === true)
      return { body: { kind: 'text', text: writeRecipe(DEMO_RECIPE) }, invented: ['the example recipe'] }
    const file = options.values['recipe']
    const recipe = typeof file === 'string' ? readRecipe(textOf(file), file) : DEMO_RECIPE
    const quantities = answered(studies.mixPaint({ recipe, job: jobOf(options) }))
    for (const caution of batchCautions(recipe)) note(`caution: ${caution}`)
    for (const remark of [...summary(quantities), ...quantities.remarks]) note(remark)
    return {
      body: { kind: 'table', table: tableOf(quantities) },
      invented: saysInvented(recipe.basis) ? [`recipe ${recipe.name}`] : [],
    }
  },
}

function jobOf(options: Options): CoatJob {
  return {
    area_m2: numberOption(options, 'area', [0.001, 10000]),
    dryThickness_m: numberOption(options, 'thickness-mm', [0.001, 10], DEMO_JOB.dryThickness_m * 1000) / 1000,
    coats: numberOption(options, 'coats', [1, 50], DEMO_JOB.coats),
    loss_frac: numberOption(options, 'loss', [0, 0.9], DEMO_JOB.loss_frac),
    jar_L: numberOption(options, 'jar-L', [0.01, 1000], DEMO_JOB.jar_L),
    jarFill_frac: numberOption(options, 'jar-fill', [0.1, 1], DEMO_JOB.jarFill_frac),
  }
}

function summary(q: BatchQuantities): string[] {
  return [
    `${q.batches} batches, ${q.wet_L.toFixed(2)} L of wet mix in all, ${q.spread_m2L.toFixed(2)} m² per litre and coat, wet coat ${(q.wetPerCoat_m * 1000).toFixed(2)} mm.`,
    `Stock solution ${q.stock_L.toFixed(2)} L (by its solvent), water and solvent pre-mixed ${q.premix_L.toFixed(2)} L, water measured out ${q.addedWater_mLg.toFixed(2)} mL per gram of binder.`,
  ]
}

function tableOf({ lines }: BatchQuantities): Table {
  return {
    ingredient: lines.map((line) => line.name),
    role: lines.map((line) => line.role),
    mass_kg: lines.map((line) => line.mass_kg),
    volume_L: lines.map((line) => line.volume_L),
    perBatch_g: lines.map((line) => line.perBatch_g),
    perBatch_mL: lines.map((line) => line.perBatch_mL),
    cost: lines.map((line) => line.cost),
  }
}
