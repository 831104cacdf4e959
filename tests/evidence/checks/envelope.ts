import { WALL_BUILDS } from '#model/building/construction'
import { MATERIALS } from '#inside/model/building/construction/materials.ts'
import { beamFactor, diffuseFactor } from '#inside/model/building/room/windows.ts'
import type { Check } from '../check.ts'
import { gainAtAngle, gainOfHemisphere } from '../models/fresnel.ts'
import { modesDaily } from '../models/modes-daily.ts'

const envelope = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Room', ...rest })

/** The walls, their materials and the glass that can be chosen. */
export const envelopeChecks: readonly Check[] = [
  ...(
    [
      ['solid brick of 220 mm, plastered', WALL_BUILDS.brick.layers, 2.1],
      ['cavity wall of two brick leaves of 105 mm, plastered', WALL_BUILDS.cavityBrick.layers, 1.44],
    ] as const
  ).map(([name, layers, want]) =>
    envelope({
      quantity: `wall to choose, ${name}: U-value`,
      unit: 'W/m²K',
      kind: 'published' as const,
      source: 'cibseA' as const,
      where: 'table of walls',
      fromMemory: true,
      got: () => modesDaily(layers).U_Wm2K,
      want,
      within: 0.07,
      because: 'two digits, and bricks of the same name differ by some 5 % in conductivity',
    }),
  ),
  envelope({
    quantity: 'wall material to choose, straw: conductivity',
    unit: 'W/m K',
    kind: 'published',
    source: 'strawApproval',
    where: 'across and along the stalks',
    fromMemory: true,
    got: () => MATERIALS.straw.conductivity_WmK,
    want: [0.052, 0.08],
    within: 0,
    because: 'bales are laid both ways; ours is near the better of the two',
  }),
  ...([1, 2] as const).flatMap((panes) => [
    ...([40, 60, 80] as const).map((deg) =>
      envelope({
        quantity: `glass of ${panes === 1 ? 'one pane' : 'two panes'} at ${deg}°: solar gain over that at normal incidence`,
        unit: '–',
        kind: 'independent calculation' as const,
        source: 'duffieBeckman' as const,
        where: 'ch. 5, Fresnel’s equations by polarisation, worked out apart',
        got: () => beamFactor(Math.cos((deg * Math.PI) / 180), panes),
        want: Number(gainAtAngle(deg, panes).toFixed(4)),
        within: 0.001,
        because: 'the table has three digits',
      }),
    ),
    envelope({
      quantity: `glass of ${panes === 1 ? 'one pane' : 'two panes'}: gain of light from all over the sky over that at normal incidence`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'duffieBeckman' as const,
      where: 'ch. 5, summed over the hemisphere',
      got: () => diffuseFactor(panes),
      want: Number(gainOfHemisphere(panes).toFixed(4)),
      within: 0.001,
      because: 'three digits',
    }),
  ]),
]
