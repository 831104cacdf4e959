import { figureText, messageIn, stop, wordingText } from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import type { BuilderSheet, WaySheet } from '#model/handover/sheet'
import { answered, studies } from '../answered.ts'
import { designAddress, fieldsOf } from '../design-address.ts'
import { inventedParts } from '../invented-parts.ts'
import type { Options } from '../options.ts'
import { note, type Result } from '../output.ts'
import type { Reopen } from '../sheet-pieces.ts'
import { sheetHtml } from '../sheet-html.ts'
import { wayHtml } from '../way-html.ts'
import { yearOf } from '../weather-source.ts'
import type { Command } from './command.ts'

function systemOf(given: unknown): UnitSystem {
  if (given === undefined || given === 'si') return 'si'
  if (given === 'us') return 'us'
  throw stop('bad-units', `--units ${String(given)} is not known.`, 'Use si or us.')
}

export const sheet: Command = {
  summary:
    'the builder’s sheet with its drawings: --format html for one file to print, else its texts; of a way without panels (job.way) its own',
  html: true,
  options: {
    units: { type: 'string', help: 'si or us (default si)' },
    ranges: { type: 'boolean', help: 'work out the ranges too (a minute or two)' },
    address: {
      type: 'string',
      help: 'where the app is served: the html then has the address of this design, and a code to scan',
    },
  },
  run(options) {
    const system = systemOf(options.values['units'])
    const weather = yearOf(options)
    const { scenario } = options
    const reopen = { fields: fieldsOf(scenario), address: designAddress(options, weather) }
    const answer = answered(studies.size({ scenario, weather }))
    const ranges = options.values['ranges'] === true
    const { area_m2, storeVolume_m3, loop, sizing } = answer
    const built = { area_m2, storeVolume_m3, flow_kgsm2: area_m2 > 0 ? loop.flow_kgs / area_m2 : 0 }
    const doubts = {
      area: ranges && sizing.kind !== 'own' ? answered(studies.range({ scenario, weather, sizing })) : null,
      design: ranges && area_m2 > 0 ? answered(studies.expected({ scenario, weather, built })) : null,
    }
    const found = answered(studies.sheet({ answer, doubts }))
    const way =
      found === null
        ? answered(studies.waySheet({ scenario, weather, ...(ranges ? {} : { draws: 0 }) }))
        : null
    if (way !== null) return wayResult(way, options, { system, reopen }, inventedParts(options, weather))
    if (found === null) {
      throw stop(
        'nothing-to-build',
        sizing.kind === 'notNeeded'
          ? 'There is nothing to build: the room meets its target without panels.'
          : 'There is nothing to build: the panel area is 0.',
        'Change the room, its limit, or target.area_m2.',
      )
    }
    for (const misfit of found.notBuildable) note(`not buildable as it is: ${misfit.message}`)
    const invented = inventedParts(options, weather)
    return options.format === 'html'
      ? { body: { kind: 'text', text: sheetHtml(found, system, reopen) }, invented }
      : { body: { kind: 'record', record: textsOf(found, system) }, invented }
  },
}

/** The sheet of a way without panels, as a page or as its texts. */
function wayResult(
  way: WaySheet,
  { format }: Options,
  { system, reopen }: { readonly system: UnitSystem; readonly reopen: Reopen },
  invented: readonly string[],
): Result {
  if (format === 'html') return { body: { kind: 'text', text: wayHtml(way, system, reopen) }, invented }
  const record = {
    title: way.title,
    headline: wordingText(way.headline, system),
    reaches: way.job.map(({ label, value }) => `${label}: ${wordingText(value, system)}`),
    parts: way.works.flatMap(({ buy }) =>
      buy.map(({ quantity, what }) => `${figureText(quantity, system)}: ${wordingText(what, system)}`),
    ),
    steps: way.works.flatMap(({ name, steps }) =>
      steps.map((step) => `${name}: ${wordingText(step, system)}`),
    ),
    commissioning: way.works.flatMap(({ readings }) =>
      readings.map(({ what, expect }) => `${what}: ${wordingText(expect, system)}`),
    ),
    cautions: way.works.flatMap(({ cautions }) =>
      cautions.map(({ title, text }) => `${title}: ${wordingText(text, system)}`),
    ),
    assumptions: way.assumptions.map((assumption) => wordingText(assumption, system)),
  }
  return { body: { kind: 'record', record }, invented }
}

/** The sheet's texts, list by list. */
function textsOf(found: BuilderSheet, system: UnitSystem) {
  return {
    title: found.title,
    headline: wordingText(found.headline, system),
    notBuildable: found.notBuildable.map((misfit) => messageIn(misfit, system)),
    parts: found.parts.map(
      ({ quantity, what }) => `${figureText(quantity, system)}: ${wordingText(what, system)}`,
    ),
    states: found.states.map(
      ({ part, name, holds, then }) => `${part}, ${name}: ${wordingText(holds, system)}; ${then}`,
    ),
    build: found.build.map((step) => wordingText(step, system)),
    commissioning: found.commissioning.map(({ what, expect }) => `${what}: ${wordingText(expect, system)}`),
    cautions: found.cautions.map(({ title, text }) => `${title}: ${wordingText(text, system)}`),
    assumptions: found.assumptions.map((assumption) => wordingText(assumption, system)),
  }
}
