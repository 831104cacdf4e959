import { asbuilt } from './asbuilt.ts'
import { batch } from './batch.ts'
import { coating } from './coating.ts'
import type { Command } from './command.ts'
import { compare } from './compare.ts'
import { decide } from './decide.ts'
import { map } from './map.ts'
import { place } from './place.ts'
import { panel } from './panel.ts'
import { size } from './size.ts'
import { sheet } from './sheet.ts'
import { sky } from './sky.ts'
import { weather } from './weather.ts'
import { year } from './year.ts'

/** Every subcommand by its name, in the order of the work. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  place,
  weather,
  sky,
  panel,
  year,
  decide,
  size,
  map,
  sheet,
  compare,
  coating,
  batch,
  asbuilt,
}
