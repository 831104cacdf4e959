import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { duskbank, scratchFolder } from './run-shell.ts'

const folder = scratchFolder()
const inFolder = (name: string, text: string): string => {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}
mkdirSync(join(folder, 'a-folder'))
const notJson = inFolder('not.json', 'panel = 12')
const list = inFolder('list.json', '[]')
const newer = inFolder('newer.json', '{"duskbankScenario": 99}')
const wrongField = inFolder('wrong.json', '{"panel": {"tilt": 12}}')
const polluted = inFolder('polluted.json', '{"__proto__": {"tilt_deg": 3}}')
const noTable = inFolder('words.csv', 'once upon a time\nthere was no weather\n')
const shortTable = inFolder('short.csv', 'time,air °C\n2023-01-01 00:00,3\n2023-01-01 01:00,4\n')
const climate = ['--weather', 'continental']

/* Each: the words, and what the one sentence must name. */
const CASES: readonly (readonly [what: string, words: readonly string[], names: RegExp])[] = [
  [
    'a subcommand that does not exist',
    ['sizes'],
    /no subcommand sizes.*place, weather, sky, panel, year, decide, size, map, sheet, compare/s,
  ],
  ['an object’s own words as a subcommand', ['constructor'], /no subcommand constructor/],
  ['no weather', ['size'], /No weather is given.*continental/s],
  ['weather that is not there', ['year', '--weather', 'atlantis'], /atlantis: There is no such file/],
  ['a folder as weather', ['sky', '--weather', join(folder, 'a-folder')], /a-folder/],
  ['weather without a table', ['sky', '--weather', noTable], /words\.csv/],
  ['weather of two hours for a year', ['year', '--weather', shortTable], /short\.csv/],
  [
    'an option that does not exist',
    ['size', ...climate, '--wether', 'x'],
    /--wether.*Known options: --weather/s,
  ],
  ['an option without its value', ['size', ...climate, '--out'], /--out/],
  ['a stray word', ['size', 'continental'], /continental/],
  ['a format that does not exist', ['sky', ...climate, '--format', 'xml'], /--format xml.*csv or json/s],
  [
    '--yes-to of no quantity',
    ['sky', '--weather', noTable, '--yes-to', 'wind=fast'],
    /--yes-to wind=fast.*windSpeed=km\/h/s,
  ],
  ['--yes-to of no unit', ['sky', '--weather', noTable, '--yes-to', 'windSpeed=fast'], /windSpeed=fast/],
  ['--set without “=”', ['sky', ...climate, '--set', 'panel.tilt_deg'], /--set panel\.tilt_deg has no “=”/],
  [
    '--set of an unknown field',
    ['sky', ...climate, '--set', 'panel.tilt=3'],
    /panel\.tilt.*Did you mean panel\.tilt_deg/s,
  ],
  [
    '--set out of range',
    ['sky', ...climate, '--set', 'coating.windowEmittance_frac=1.3'],
    /coating\.windowEmittance_frac.*1\.3.*between 0\.02 and 1/s,
  ],
  [
    '--set of no number',
    ['sky', ...climate, '--set', 'panel.tilt_deg=steep'],
    /panel\.tilt_deg.*steep.*must be a number/s,
  ],
  ['--set to nothing', ['sky', ...climate, '--set', 'panel.tilt_deg='], /panel\.tilt_deg.*must be a number/s],
  ['--set infinite', ['sky', ...climate, '--set', 'panel.tilt_deg=Infinity'], /panel\.tilt_deg.*finite/s],
  ['--set of a contradiction', ['sky', ...climate, '--set', 'loop.fluid=air'], /loop\.fluid.*water tank/s],
  [
    'a scenario that is not there',
    ['sky', ...climate, '--scenario', join(folder, 'none.json')],
    /none\.json.*could not be read/s,
  ],
  [
    'a scenario that is no JSON',
    ['sky', ...climate, '--scenario', notJson],
    /not\.json.*not a scenario file/s,
  ],
  ['a scenario that is a list', ['sky', ...climate, '--scenario', list], /list\.json.*not a scenario/s],
  [
    'a scenario of a newer version',
    ['sky', ...climate, '--scenario', newer],
    /newer\.json.*newer Duskbank.*99/s,
  ],
  [
    'a scenario with an unknown field',
    ['sky', ...climate, '--scenario', wrongField],
    /wrong\.json, panel\.tilt:.*panel\.tilt_deg/s,
  ],
  [
    'a scenario that reaches for the prototype',
    ['sky', ...climate, '--scenario', polluted],
    /polluted\.json, __proto__/,
  ],
  ['--draws that are no number', ['size', ...climate, '--draws', 'many'], /--draws many/],
  [
    'a plate temperature out of this world',
    ['panel', ...climate, '--plate-temp', '1000'],
    /--plate-temp 1000/,
  ],
  [
    'a plan that does not exist',
    ['compare', ...climate, '--plans', 'noonOnly'],
    /--plans noonOnly.*nightOnly/s,
  ],
  ['a map over what is no axis', ['map', ...climate, '--over', 'tilt'], /--over tilt.*store or flow/s],
  [
    'a map over the tank where there is none',
    ['map', ...climate, '--set', 'store.kind=slab', '--over', 'store'],
    /--over store.*without a tank.*flow/s,
  ],
  [
    'a map of areas that fall',
    ['map', ...climate, '--areas', '8,4', '--others', '1,2'],
    /--areas 8,4.*rising/s,
  ],
  ['a map of areas alone', ['map', ...climate, '--areas', '4,8'], /--others is missing/],
  ['a measure that does not exist', ['decide', ...climate, '--only', 'prayer'], /--only prayer.*paintRoof/s],
  [
    'a window larger than its wall',
    ['size', ...climate, '--set', 'room.windowFront_m2=90'],
    /room\.windowFront_m2.*wall/s,
  ],
  [
    'an --out that cannot be written',
    ['sky', ...climate, '--out', join(folder, 'a-folder')],
    /a-folder.*could not be written/s,
  ],
]

test.each(CASES)(
  '%s: exit code 2, one clear sentence, nothing on standard output',
  async (_, words, names) => {
    const { code, out, err } = await duskbank(...words)
    expect(err).toMatch(names)
    expect(err).not.toMatch(/\n\s+at |node:|TypeError|RangeError/)
    const sentences = err.trimEnd().split('\n')
    expect(sentences.filter((line) => !line.startsWith('warning: ')).length).toBe(1)
    expect(sentences.at(-1)!.length).toBeLessThan(700)
    expect(code).toBe(2)
    expect(out).toBe('')
  },
)
