import { figureText, wordingText } from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import {
  addressCode,
  addressCodeSvg,
  drawnIn,
  escaped,
  scaleNote,
  svgText,
  type Drawing,
} from '#model/handover/drawing'
import { LOCAL_CODES, type Caution, type GroupedPart } from '#model/handover/sheet'
import { part } from './sheet-html-expected.ts'

/** One list of all that is to be bought. */
export function buyHtml(parts: readonly GroupedPart[], system: UnitSystem): string {
  const rows = parts
    .map(({ group, quantity, what }, i) => {
      const head = group === parts[i - 1]?.group ? '' : `<tr><th colspan="2">${escaped(group)}</th></tr>`
      return `${head}<tr><td class="amount">${escaped(figureText(quantity, system))}</td><td>${escaped(wordingText(what, system))}</td></tr>`
    })
    .join('')
  return part('What to buy', `<table>${rows}</table><p>Net quantities: add your own waste.</p>`)
}

/** Cautions under the sentence that holds for all of them. */
export function cautionsHtml(cautions: readonly Caution[], system: UnitSystem): string {
  const items = cautions.map(
    ({ title, text }) => `<li><strong>${escaped(title)}.</strong> ${escaped(wordingText(text, system))}</li>`,
  )
  return part('Cautions', `<p><strong>${escaped(LOCAL_CODES)}</strong></p><ul>${items.join('')}</ul>`)
}

/** How the design is opened again: by its address, with a code to scan, where that is known. */
export function reopenHtml({ fields, address }: Reopen): string {
  if (address === null)
    return part(
      'Open this design again',
      fields === ''
        ? '<p>Choose the same place in Duskbank: this design is the one it opens with, every field at its default. Nothing goes behind the address.</p>'
        : `<p>Choose the same place in Duskbank and put this behind its address; fields that are not named are at their defaults. With --address, the whole address is printed, with a code to scan.</p><p class="code">${escaped(`#${fields}`)}</p>`,
    )
  const code = addressCode(address)
  return part(
    'Open this design again',
    `<p>This address opens the design as it is here; fields that are not named are at their defaults. ${code === null ? 'It is too long for a code that a camera reads with ease.' : 'A telephone’s camera reads it from the square.'}</p><div class="both">${code === null ? '' : addressCodeSvg(code)}<p class="code">${escaped(address)}</p></div>`,
  )
}

/** What opens a design again: its fields that are not at their defaults, and its whole address where that is known. */
export interface Reopen {
  readonly fields: string
  readonly address: string | null
}

/** On paper, notes and key of a drawing no wider than this are beside it. */
const BESIDE_mm = 132

export function pictureHtml(given: Drawing, system: UnitSystem): string {
  const drawing = drawnIn(given, system)
  const scale = scaleNote(given, system)
  const notes = drawing.notes.map((note) => `<p>${escaped(wordingText(note, system))}</p>`).join('')
  const key = drawing.key
    .map(
      ({ mark, what }) =>
        `<div><dt>${escaped(mark)}</dt><dd>${escaped(wordingText(what, system))}</dd></div>`,
    )
    .join('')
  return `<figure><h2>${escaped(drawing.title)} <small>${scale}</small></h2><div${drawing.width <= BESIDE_mm ? ' class="beside"' : ''}><div class="draw" tabindex="0">${svgText(drawing, system)}</div><div>${notes}${key === '' ? '' : `<dl class="key">${key}</dl>`}</div></div></figure>`
}
