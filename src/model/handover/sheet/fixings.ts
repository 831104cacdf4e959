import { count, figure, words, type Wording } from '#model/basis/words'
import { GUST_ms, PANEL_kgm2 } from './cautions.ts'
import { partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'

/** Screws of a foot; feet and sleeves that a cartridge of sealant does (common practice, no source). */
const SCREWS_FOOT = 2
const FEET_CARTRIDGE = 6
/** Rivets of a module: two at each corner of its edge profile; joints that a rod of brazing alloy does (common practice, no source). */
const RIVETS_MODULE = 8
const JOINTS_ROD = 6
/** A roll of tape closes so much pipe, m (common practice, no source). */
const PIPE_ROLL_m = 15

/** What a frame asks of its fixings: feet, and the pull on each foot and clamp, N. */
interface Held {
  readonly feet: number
  readonly footUplift_N: { readonly mean: number; readonly most: number }
  readonly clampUplift_N: number
}

/** Who sizes what holds the frame down, and what to hand over. */
export function engineerPart({ modulesArea_m2 }: Plant, frame: Held, ground: boolean): Part {
  const { feet, footUplift_N, clampUplift_N } = frame
  const each_kg = (PANEL_kgm2[1] * modulesArea_m2) / feet
  const asks: Wording = ground
    ? words`footings or ballast, their anchors, feet and rails`
    : words`feet, their screws and the rails, and whether the roof carries them`
  const own = ground ? 'the ground' : 'your rafters or purlins: size, distance, wood or steel'
  return partOf('Frame')(
    count(1),
    words`check by a structural engineer, before the frame is bought: ${asks}. Hand over this sheet, with: ${count(feet)} feet; each ${figure(footUplift_N.mean, 'force', 2)} upwards on average and ${figure(footUplift_N.most, 'force', 2)} at the most, a clamp ${figure(clampUplift_N, 'force', 2)}, at a gust of ${figure(GUST_ms, 'ms')} on a roof edge (pull goes with the square of your site’s gust); ${figure(each_kg, 'kg', 2)} a foot downwards, without snow; and ${own}`,
  )
}

/** What holds and seals a foot. The sizes are those to begin with: the engineer’s check decides. */
export function footFixings(ground: boolean, feet: number): Part[] {
  const part = partOf('Frame')
  const bolts = part(
    count(feet),
    words`bolts M8 (5/16 in) with two washers and a lock nut, stainless steel, foot to rail`,
  )
  if (ground)
    return [
      part(
        count(SCREWS_FOOT * feet),
        words`anchor bolts M8 (5/16 in), stainless steel, two a foot, into footing or block, as deep as their maker says; size: the engineer`,
      ),
      bolts,
    ]
  return [
    part(
      count(SCREWS_FOOT * feet),
      words`screws of the feet, two a foot, stainless steel: into timber wood screws with hexagon or disc head 8 mm (lag screws 5/16 in), ${figure(0.06, 'depth')} of thread in the wood; into steel purlins self-drilling 6.3 mm (1/4 in) with sealing washer; size: the engineer`,
    ),
    bolts,
    part(
      count(feet),
      words`flashings or sealed boots for the feet, of the kind that the maker of your roof covering sells for it: ask for “a post flashing for” the profile of your sheet, your tile or your felt, and fit to that maker’s instructions. A standing seam takes seam clamps in place of feet, screws and flashings`,
    ),
    part(
      count(Math.ceil(feet / FEET_CARTRIDGE) + 1),
      words`cartridges of neutral-cure sealant for metal outdoors, 300 mL (10 oz), for feet, sleeves and edges: one that the roof’s maker allows`,
    ),
  ]
}

/** What closes a module. */
export const moduleFixings = ({ layout }: Plant): Part =>
  partOf('Panels')(
    count(RIVETS_MODULE * layout.modules),
    words`blind rivets of aluminium 4 mm (5/32 in), as long as their maker says for two sheets of the profile: two at each corner of a module; and a bead of the frame’s sealant under the back sheet’s edge`,
  )

/** What closes joints of the loop. */
export function loopSealing(plant: Plant, joints: number, pipe_m: number): Part[] {
  const part = partOf('Panel loop')
  const tape = part(
    count(Math.ceil(pipe_m / PIPE_ROLL_m)),
    words`rolls of vapour-tight tape of the insulation’s maker, for every joint and cut of it`,
  )
  if (plant.loopSpec.fluid === 'air')
    return [
      part(
        count(Math.ceil(pipe_m / PIPE_ROLL_m)),
        words`rolls of aluminium duct tape, and duct sealant, for every joint of the ducts; four self-drilling screws 4.2 mm (no. 8) a joint`,
      ),
      tape,
    ]
  return [
    part(
      count(Math.ceil(joints / JOINTS_ROD)),
      words`rods of copper–phosphorus brazing alloy 2 mm (5/64 in), copper to copper without flux; another metal: what its maker names`,
    ),
    part(count(1), words`roll of thread sealing tape (or hemp with paste) for the threads`),
    tape,
  ]
}
