import { escaped } from '#model/handover/drawing'
import type { BuilderSheet, ControlState } from '#model/handover/sheet'
import { messageIn, wordingText, type SheetLine, type Text, type Wording } from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import { expectedHtml, part } from './sheet-html-expected.ts'
import { page } from './sheet-page.ts'
import { buyHtml, cautionsHtml, pictureHtml, reopenHtml, type Reopen } from './sheet-pieces.ts'
import { workHtml } from './way-html.ts'

/** The builder's sheet as one file of its own: no script, nothing fetched, prints as it is. */
export function sheetHtml(sheet: BuilderSheet, system: UnitSystem, reopen: Reopen): string {
  const text = (given: Text): string => escaped(wordingText(given, system))
  const lines = (title: string, all: readonly SheetLine[], whole = false): string =>
    part(
      title,
      `<dl>${all.map(({ label, value }) => `<dt>${escaped(label)}</dt><dd>${text(value)}</dd>`).join('')}</dl>`,
      whole,
    )
  const items = (all: readonly Wording[]): string => all.map((given) => `<li>${text(given)}</li>`).join('')
  const list = (all: readonly Wording[]): string => `<ul>${items(all)}</ul>`
  return page(
    sheet.title,
    [
      `<header><p>Duskbank builder’s sheet</p><h1>${escaped(sheet.title)}</h1>`,
      `<p class="headline">${text(sheet.headline)}</p>`,
      sheet.sure === null ? '' : `<p class="sure">${text(sheet.sure)}</p>`,
      sheet.note === '' ? '' : `<p>${escaped(sheet.note)}</p>`,
      ...sheet.notBuildable.map(
        (misfit) =>
          `<p class="warn"><strong>Not buildable as it is: ${escaped(messageIn(misfit, system))}</strong> ${escaped(misfit.remedy)}</p>`,
      ),
      ...[sheet.invented, sheet.outOfReach].map((given) =>
        given === null ? '' : `<p class="warn"><strong>${text(given)}</strong></p>`,
      ),
      '</header>',
      ...sheet.drawings.map((drawing) => pictureHtml(drawing, system)),
      part('Control, as a table of states', statesHtml(sheet.states, text)),
      '<div class="columns">',
      lines('Sensors', sheet.sensors, true),
      buyHtml(sheet.parts, system),
      part('Build it', `<ol>${items(sheet.build)}</ol>`),
      part(
        'Start it up, with numbers to measure',
        `<ol>${sheet.commissioning.map(({ what, expect }) => `<li><strong>${escaped(what)}:</strong> ${text(expect)}</li>`).join('')}</ol>`,
      ),
      '</div>',
      ...sheet.works.map((work) => workHtml(work, system)),
      expectedHtml(sheet, system),
      '<div class="columns">',
      lines('The job', sheet.job),
      lines('Site and weather', sheet.site),
      lines('Panels', sheet.panels),
      lines('Loop', sheet.loop),
      lines('Store and room cooling', sheet.store),
      sheet.controls.length > 0 ? lines('Frost', sheet.controls) : '',
      part('Keep it up', list(sheet.maintenance)),
      cautionsHtml(sheet.cautions, system),
      part(
        'Assumptions that matter',
        list([...sheet.assumptions, ...sheet.remarks.map((remark) => [messageIn(remark, system)])]),
      ),
      '</div>',
      reopenHtml(reopen),
    ],
    sheet.notBuildable.length > 0,
  )
}

function statesHtml(states: readonly ControlState[], text: (given: Text) => string): string {
  const rows = (part: ControlState['part']) =>
    states
      .filter((state) => state.part === part)
      .map(
        ({ name, holds, then }) =>
          `<tr><th scope="row">${escaped(name)}</th><td>${text(holds)}</td><td><strong>${escaped(then)}</strong></td></tr>`,
      )
      .join('')
  const table = (title: string, body: string) =>
    body === '' ? '' : `<h3>${title}: of the rows that hold, the higher decides</h3><table>${body}</table>`
  return table('Panel loop', rows('loop')) + table('Cooling of the room', rows('room'))
}
