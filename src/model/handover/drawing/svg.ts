import { type Text, wordingText } from '#model/basis/words'
import type { UnitSystem } from '#model/basis/units'
import { drawnIn } from './scales.ts'
import type { Drawing, Fill, Ink, Shape, Spot } from './shapes.ts'

/** One element of the picture: page and file are made from the same list. */
export interface Element {
  readonly tag: 'path' | 'circle' | 'text'
  readonly attributes: Readonly<Record<string, string>>
  readonly text: string
}

/** Height of letters, mm: 8 pt. */
const LETTER = 2.8

const STROKES: Readonly<Record<Ink, { width: number; dash: string }>> = {
  thin: { width: 0.15, dash: 'none' },
  line: { width: 0.3, dash: 'none' },
  thick: { width: 0.6, dash: 'none' },
  hidden: { width: 0.25, dash: '1.2 0.8' },
  supply: { width: 0.7, dash: 'none' },
  return: { width: 0.7, dash: '2.4 1.1' },
}

const FILLS: Readonly<Record<Fill, Readonly<Record<string, string>>>> = {
  none: { fill: 'none' },
  paper: { fill: 'var(--card, #fff)' },
  ink: { fill: 'currentColor' },
  pale: { fill: 'currentColor', 'fill-opacity': '0.08' },
  grey: { fill: 'currentColor', 'fill-opacity': '0.22' },
}

/** The elements of a drawing, with its numbers in the reader's units. */
export function elementsOf(drawing: Drawing, system: UnitSystem): Element[] {
  return drawnIn(drawing, system).shapes.map((shape) => elementOf(shape, system))
}

function elementOf(shape: Shape, system: UnitSystem): Element {
  switch (shape.kind) {
    case 'path':
      return {
        tag: 'path',
        attributes: {
          d: `${shape.points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`).join('')}${shape.closed ? 'Z' : ''}`,
          ...strokeOf(shape.ink),
          ...FILLS[shape.fill],
        },
        text: '',
      }
    case 'circle':
      return {
        tag: 'circle',
        attributes: {
          cx: mm(shape.at[0]),
          cy: mm(shape.at[1]),
          r: mm(shape.radius),
          ...strokeOf(shape.ink),
          ...FILLS[shape.fill],
        },
        text: '',
      }
    case 'text':
      return {
        tag: 'text',
        attributes: {
          x: mm(shape.at[0]),
          y: mm(shape.at[1]),
          'text-anchor': shape.anchor,
          fill: 'currentColor',
          ...(shape.bold ? { 'font-weight': '600' } : {}),
          ...(shape.turned ? { transform: turnedAbout(shape.at) } : {}),
        },
        text: wordingText(shape.text, system),
      }
  }
}

const turnedAbout = ([x, y]: Spot): string => `rotate(-90 ${mm(x)} ${mm(y)})`

function strokeOf(ink: Ink): Record<string, string> {
  const { width, dash } = STROKES[ink]
  return { stroke: 'currentColor', 'stroke-width': String(width), 'stroke-dasharray': dash }
}

const mm = (value: number): string => String(Math.round(value * 100) / 100)

/** Attributes of the picture as a whole; printed at 100 % it has its true size. */
export function frameOf(drawing: Drawing, system: UnitSystem): Record<string, string> {
  const { width, height, summary } = drawnIn(drawing, system)
  return {
    viewBox: `0 0 ${mm(width)} ${mm(height)}`,
    width: `${mm(width)}mm`,
    height: `${mm(height)}mm`,
    'font-size': String(LETTER),
    'font-family': 'system-ui, sans-serif',
    role: 'img',
    'aria-label': plain(summary, system),
  }
}

/** A drawing as a picture of its own. */
export function svgText(drawing: Drawing, system: UnitSystem): string {
  const inside = elementsOf(drawing, system)
    .map(({ tag, attributes, text }) => `<${tag}${attributeText(attributes)}>${escaped(text)}</${tag}>`)
    .join('\n')
  return `<svg xmlns="http://www.w3.org/2000/svg"${attributeText(frameOf(drawing, system))}>\n${inside}\n</svg>`
}

function attributeText(attributes: Readonly<Record<string, string>>): string {
  return Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('')
}

/** Text that is safe between tags and in quotes. */
export function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

const plain = (given: Text, system: UnitSystem): string => wordingText(given, system)
