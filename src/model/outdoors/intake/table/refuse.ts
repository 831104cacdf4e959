import type { Problem } from '#model/basis/words'

/** Longest text read, characters: a year of one-minute rows is about 60 MB. */
export const LONGEST_TEXT = 150_000_000

/** Why the text cannot be a weather table at all, or null. Looks at the first part only. */
export function refusal(head: string, length: number, file: string): Problem | null {
  const refuse = (code: string, message: string, remedy: string): Problem => ({
    code,
    severity: 'error',
    message,
    remedy,
    place: { file },
  })
  if (length > LONGEST_TEXT) {
    return refuse(
      'weather-too-large',
      `The file holds ${Math.round(length / 1e6)} MB; up to ${LONGEST_TEXT / 1e6} MB are read.`,
      'Cut it to one year, or average it to ten-minute or hourly rows first.',
    )
  }
  if (head.trim() === '') {
    return refuse('weather-empty', 'The file is empty.', 'Choose a file with hourly rows.')
  }
  return looksBinary(head)
    ? refuse(
        'weather-binary',
        'The file is not text (it looks like a picture, an archive or a spreadsheet program’s own file).',
        'Save the table as text with separators (CSV) and open that.',
      )
    : null
}

function looksBinary(head: string): boolean {
  const sample = head.slice(0, 20_000)
  let odd = 0
  for (let i = 0; i < sample.length; i += 1) {
    const code = sample.charCodeAt(i)
    if (code === 0) return true
    if ((code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12) || code === 0xfffd) odd += 1
  }
  return odd > 2 + sample.length * 0.02
}
