import { gunzipSync, unzipSync, type UnzipFileInfo } from 'fflate'
import { stop } from '#model/basis/words'
import { encodingOf, type Decoder } from './encoding.ts'
import { isJson, tableOfJson } from './json-table.ts'
import { LONGEST_TEXT } from './refuse.ts'

const starts = (bytes: Uint8Array, ...magic: readonly number[]): boolean =>
  magic.every((byte, at) => bytes[at] === byte)
const isZip = (bytes: Uint8Array): boolean => starts(bytes, 0x50, 0x4b, 3, 4)
const isGzip = (bytes: Uint8Array): boolean => starts(bytes, 0x1f, 0x8b)

/** True where a file must be whole before a line of it can be read: packed, or JSON. Its first bytes are enough to say. */
export function needsWhole(head: Uint8Array, decode: Decoder): boolean {
  return (
    isZip(head) || isGzip(head) || isJson(decode(head.subarray(0, 1000), encodingOf(head, decode), false))
  )
}

/**
 * The text of a whole file as lines of a table: unpacked, decoded, JSON laid out.
 * @throws ProblemError where an archive is broken, holds several tables or none, or unpacks to more than is read
 */
export function textOfFile(bytes: Uint8Array, decode: Decoder, file: string): string {
  const plain = unpacked(bytes, file)
  const text = decode(plain, encodingOf(plain, decode), false)
  return isJson(text) ? tableOfJson(text, file) : text
}

function unpacked(bytes: Uint8Array, file: string): Uint8Array {
  if (isZip(bytes)) return onlyTable(bytes, file)
  if (!isGzip(bytes)) return bytes
  // the last four bytes of the format are the length of what it holds
  const tail = bytes.subarray(-4)
  if (new DataView(tail.buffer, tail.byteOffset, tail.length).getUint32(0, true) > LONGEST_TEXT)
    throw tooLarge(file)
  return opened(() => gunzipSync(bytes), file)
}

const TABLE = /\.(csv|tsv|txt|dat|asc|json|prn)$/i

/** The one table of an archive; of several files, the one whose name ends as tables do. */
function onlyTable(bytes: Uint8Array, file: string): Uint8Array {
  const inside: UnzipFileInfo[] = []
  opened(
    () =>
      unzipSync(bytes, {
        filter: (entry) => {
          inside.push(entry)
          return false
        },
      }),
    file,
  )
  const files = inside.filter(({ name }) => !name.endsWith('/') && !/(^|\/)[._]/.test(name))
  const tables = files.length === 1 ? files : files.filter(({ name }) => TABLE.test(name))
  const [only] = tables
  if (only === undefined || tables.length > 1) {
    throw stop(
      'weather-archive',
      only === undefined
        ? 'The archive holds no table.'
        : `The archive holds ${tables.length} tables: ${tables
            .slice(0, 4)
            .map(({ name }) => name)
            .join(', ')}${tables.length > 4 ? ' …' : ''}.`,
      'Unpack it and open the one with hourly values.',
      { file },
    )
  }
  if (only.originalSize > LONGEST_TEXT) throw tooLarge(file)
  return opened(() => unzipSync(bytes, { filter: ({ name }) => name === only.name })[only.name]!, file)
}

function opened<T>(unpack: () => T, file: string): T {
  try {
    return unpack()
  } catch (error) {
    throw stop(
      'weather-archive-broken',
      `The archive can't be unpacked (${(error as Error).message}).`,
      'Fetch it again, or unpack it and open the table.',
      { file },
    )
  }
}

function tooLarge(file: string) {
  return stop(
    'weather-too-large',
    `What the archive holds is more than the ${LONGEST_TEXT / 1e6} MB that are read.`,
    'Unpack it and cut it to one year.',
    { file },
  )
}
