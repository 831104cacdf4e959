import { FIELDS } from '#model/design/scenario'
import type { Check } from '../check.ts'
import { board, coating, overAir_K, type Moment } from '../models/plate-case.ts'

/* What those who paint boards see again and again, and no publication gives as a number. Where a measurement is
 * published, it is in `field.ts` and `panel.ts` instead. */
const trade = (rest: Omit<Check, 'theme' | 'kind' | 'source'>): Check => ({
  theme: 'Facts of the trade',
  kind: 'common practice',
  source: 'commonPractice',
  ...rest,
})

/** Invented weather of the two cases. Clear dry night, a board on the ground. */
const night: Moment = { air_C: 24, dewPoint_C: 4, sun_Wm2: 0, forced_Wm2K: 2 }
/** Summer noon behind a wall: half the sky and its diffuse light. */
const shade: Moment = { air_C: 27, dewPoint_C: 11, sun_Wm2: 90, forced_Wm2K: 3, skyView_frac: 0.5 }

/** Ordinary white wall paint, and the coating a new scenario of this app starts with. */
const ordinary = coating(0.8, 0.9)
const { solarReflectance_frac, windowEmittance_frac, offWindowEmittance_frac } = FIELDS.coating
const started = coating(
  solarReflectance_frac.default,
  windowEmittance_frac.default,
  offWindowEmittance_frac.default,
)

export const tradeChecks: readonly Check[] = [
  trade({
    quantity: 'clear dry night: white coating of high solar reflectance less ordinary white paint',
    unit: 'K',
    got: () => overAir_K(board(started), night) - overAir_K(board(ordinary), night),
    want: 0,
    within: 1,
    because:
      'by night solar reflectance counts for nothing: the two cannot be distinguished by hand, about a kelvin',
  }),
  ...(
    [
      ['ordinary white paint', ordinary],
      ['white coating of high solar reflectance', started],
    ] as const
  ).map(([name, optics]) =>
    trade({
      quantity: `open shade, half the sky in view: ${name}, below air`,
      unit: 'K',
      got: () => -overAir_K(board(optics), shade),
      want: [0.3, 4],
      within: 0,
      because: 'a little below air',
      ...(optics === started
        ? {
            miss: '0.07 K over the band, which is practice and no measurement; air, dew point and wind of the case are invented',
          }
        : {}),
    }),
  ),
]
