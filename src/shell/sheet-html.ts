import { escaped, svgText, type Drawing } from '#model/handover/drawing'
import type { BuilderSheet, ControlState } from '#model/handover/sheet'
import {
  figureText,
  messageIn,
  wordingText,
  type SheetLine,
  type Text,
  type Wording,
} from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import { expectedHtml, part } from './sheet-html-expected.ts'

/** The builder's sheet as one file of its own: no script, nothing fetched, prints as it is. */
export function sheetHtml(sheet: BuilderSheet, system: UnitSystem, code: string): string {
  const text = (given: Text): string => escaped(wordingText(given, system))
  const lines = (title: string, all: readonly SheetLine[]): string =>
    part(
      title,
      `<dl>${all.map(({ label, value }) => `<dt>${escaped(label)}</dt><dd>${text(value)}</dd>`).join('')}</dl>`,
    )
  const list = (all: readonly Wording[]): string =>
    `<ul>${all.map((given) => `<li>${text(given)}</li>`).join('')}</ul>`
  return page(sheet.title, [
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
    lines('Sensors', sheet.sensors),
    part(
      'What to buy',
      `<table>${partRows(sheet, system)}</table><p>Net quantities: add your own waste, screws and sealants.</p>`,
    ),
    part(
      'Start it up, with numbers to measure',
      `<ol>${sheet.commissioning.map(({ what, expect }) => `<li><strong>${escaped(what)}:</strong> ${text(expect)}</li>`).join('')}</ol>`,
    ),
    expectedHtml(sheet, system),
    lines('The job', sheet.job),
    lines('Site and weather', sheet.site),
    lines('Panels', sheet.panels),
    lines('Build-up, from the sky down', sheet.buildUp),
    lines('Loop', sheet.loop),
    lines('Store and room cooling', sheet.store),
    part('Keep it up', list(sheet.maintenance)),
    part(
      'Cautions',
      `<ul>${sheet.cautions.map(({ title, text: given }) => `<li><strong>${escaped(title)}.</strong> ${text(given)}</li>`).join('')}</ul>`,
    ),
    part(
      'Assumptions that matter',
      list([...sheet.assumptions, ...sheet.remarks.map((remark) => [messageIn(remark, system)])]),
    ),
    part(
      'Open this design again',
      `<p>Choose the same place in Duskbank and put this behind its address; fields that are not named are at their defaults:</p><p class="code">${code === '' ? 'every field is at its default' : escaped(`#${code}`)}</p>`,
    ),
  ])
}

function partRows({ parts }: BuilderSheet, system: UnitSystem): string {
  return parts
    .map(({ group, quantity, what }, i) => {
      const head = group === parts[i - 1]?.group ? '' : `<tr><th colspan="2">${escaped(group)}</th></tr>`
      return `${head}<tr><td class="amount">${escaped(figureText(quantity, system))}</td><td>${escaped(wordingText(what, system))}</td></tr>`
    })
    .join('')
}

function pictureHtml(drawing: Drawing, system: UnitSystem): string {
  const scale = drawing.scale === null ? 'not to scale' : `1 : ${drawing.scale} printed at 100 %`
  const notes = drawing.notes.map((note) => `<p>${escaped(wordingText(note, system))}</p>`).join('')
  const key = drawing.key
    .map(({ mark, what }) => `<dt>${escaped(mark)}</dt><dd>${escaped(wordingText(what, system))}</dd>`)
    .join('')
  return `<figure><h2>${escaped(drawing.title)} <small>${scale}</small></h2>${svgText(drawing, system)}${notes}${key === '' ? '' : `<dl class="key">${key}</dl>`}</figure>`
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

const STYLE = `body{font:9.5pt/1.35 system-ui,sans-serif;color:#111;background:#fff;max-width:190mm;margin:0 auto;padding:6mm}
h1,h2{font-family:Georgia,serif;margin:.4em 0 .2em}h2{font-size:1.15em;break-after:avoid}small{font-weight:400}
.headline{font-weight:600;font-size:1.15em}.warn{border:2px solid #000;padding:.3em .6em}
figure{margin:0 0 1em;break-inside:avoid}svg{max-width:100%;height:auto}p{margin:.2em 0}
dl{display:grid;grid-template-columns:9em 1fr;gap:0 .8em;margin:0}.key{grid-template-columns:5em 1fr 5em 1fr}
dt{font-weight:600}dd{margin:0}table{border-collapse:collapse;width:100%}
td,th{text-align:left;vertical-align:top;padding:.1em .6em .1em 0;border-bottom:1px solid #bbb}
.amount,.number{text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums}li{margin-bottom:.25em;break-inside:avoid}
.code{font-family:monospace;overflow-wrap:anywhere;border:1px solid #666;padding:.3em}@page{margin:10mm 11mm 12mm}@media print{body{padding:0;max-width:none;font-size:8.2pt;line-height:1.24}svg{max-width:none}figure{margin:0 0 .6em}.key{grid-template-columns:repeat(3,4em 1fr)}.columns{columns:2;column-gap:6mm}}`

function page(title: string, body: readonly string[]): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}: builder’s sheet</title><style>${STYLE}</style></head>
<body>
${body.filter((piece) => piece !== '').join('\n')}
</body></html>
`
}
