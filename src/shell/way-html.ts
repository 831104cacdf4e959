import { wordingText, type SheetLine, type Text, type Wording } from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import { escaped, wayDrawings } from '#model/handover/drawing'
import type { WaySheet, Work } from '#model/handover/sheet'
import { part } from './sheet-html-expected.ts'
import { buyHtml, cautionsHtml, pictureHtml, reopenHtml, type Reopen } from './sheet-pieces.ts'
import { page } from './sheet-page.ts'

/** The sheet of a way without panels as one file of its own. */
export function wayHtml(sheet: WaySheet, system: UnitSystem, reopen: Reopen): string {
  const text = (given: Text): string => escaped(wordingText(given, system))
  return page(sheet.title, [
    `<header><p>Duskbank builder’s sheet</p><h1>${escaped(sheet.title)}</h1>`,
    `<p class="headline">${text(sheet.headline)}</p>`,
    sheet.sure === null ? '' : `<p class="sure">${text(sheet.sure)}</p>`,
    sheet.note === '' ? '' : `<p>${escaped(sheet.note)}</p>`,
    ...[sheet.invented, sheet.outOfReach].map((given) =>
      given === null ? '' : `<p class="warn"><strong>${text(given)}</strong></p>`,
    ),
    '</header>',
    part('What it reaches', linesHtml(sheet.job, text)),
    ...wayDrawings(sheet.facts).map((drawing) => pictureHtml(drawing, system)),
    '<div class="columns">',
    buyHtml(sheet.parts, system),
    ...sheet.works.map((work) => workHtml(work, system)),
    cautionsHtml(sheet.cautions, system),
    part('Site and weather', linesHtml(sheet.site, text)),
    part('Assumptions that matter', listHtml(sheet.assumptions, text)),
    '</div>',
    reopenHtml(reopen),
  ])
}

export function workHtml(work: Work, system: UnitSystem): string {
  const text = (given: Text): string => escaped(wordingText(given, system))
  const rows = (title: string, body: string): string => (body === '' ? '' : `<h3>${title}</h3>${body}`)
  return part(
    work.name,
    [
      linesHtml(work.sizes, text),
      rows('How to do it', listHtml(work.steps, text, 'ol')),
      rows('Measure it afterwards', readings(work, text)),
      rows('Keep it up', listHtml(work.keep, text)),
    ].join(''),
  )
}

function readings({ readings: all }: Work, text: (given: Text) => string): string {
  if (all.length === 0) return ''
  return `<ul>${all.map(({ what, expect }) => `<li><strong>${escaped(what)}:</strong> ${text(expect)}</li>`).join('')}</ul>`
}

const linesHtml = (all: readonly SheetLine[], text: (given: Text) => string): string =>
  all.length === 0
    ? ''
    : `<dl>${all.map(({ label, value }) => `<dt>${escaped(label)}</dt><dd>${text(value)}</dd>`).join('')}</dl>`

const listHtml = (
  all: readonly Wording[],
  text: (given: Text) => string,
  kind: 'ul' | 'ol' = 'ul',
): string =>
  all.length === 0 ? '' : `<${kind}>${all.map((given) => `<li>${text(given)}</li>`).join('')}</${kind}>`
