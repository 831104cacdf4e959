/** What is printed at the head and foot of every page of a sheet. */
export interface PageFeet {
  readonly title: string
  /** When, and with which version of the program it was made. */
  readonly made: string
  /** Address of the app; '' where it is not known. */
  readonly address: string
  /** True where something does not fit: every page says so. */
  readonly notBuildable: boolean
}

/** Longest title in the head of a page, characters. */
const LONGEST = 60

/** Style rules for the margins of printed pages: job, date and version on each, and the stamp where it is not buildable. */
export function pageFeet({ title, made, address, notBuildable }: PageFeet): string {
  const font = 'font: 7.5pt sans-serif;'
  const box = (at: string, content: string, style = font): string => `@${at}{content:${content};${style}}`
  const short = title.length > LONGEST ? `${title.slice(0, LONGEST)}…` : title
  return [
    '@page{margin:13mm 11mm 13mm;',
    box('top-left', quoted(short)),
    box(
      'top-right',
      notBuildable ? quoted('NOT BUILDABLE AS IT IS: see page 1') : quoted(made),
      `${font}${notBuildable ? 'font-weight:700;' : ''}`,
    ),
    box('bottom-left', quoted([notBuildable ? made : '', address].filter((text) => text !== '').join(', '))),
    box('bottom-right', `'Duskbank builder’s sheet, page ' counter(page) ' of ' counter(pages)`),
    '}',
  ].join('')
}

/** A text as a string of a style sheet: nothing in it can end the string or the sheet. */
function quoted(text: string): string {
  return `"${text.replaceAll(/[\\"<>&\n\r\f]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`
}
