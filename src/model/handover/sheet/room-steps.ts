import { figure, words, type Wording } from '#model/basis/words'
import type { Step } from './step.ts'
import { hasDewSupply } from './controls.ts'
import { factsOf } from './facts-of.ts'
import type { Plant } from './plant.ts'
import { overWater_m, roomTest_Pa } from './room-circuit.ts'
import { roomCoil } from './room-coil.ts'

/** The circuit from tank to room unit: filled, tested, vented, set and guarded. */
export function roomSteps(plant: Plant): Step[] {
  if (plant.tank === null) return []
  const mixes = hasDewSupply(plant)
  const { roomUnit, drained } = factsOf(plant)
  const fan = roomUnit === 'fanCoil'
  const steps: Step[] = [
    {
      what: `Room circuit: H2 off, V3 and V4 shut${mixes ? ', M1 half open' : ''}; fill slowly at D3 with the test pump, AV open until water without air comes; shut AV, test`,
      expect: words`${figure(roomTest_Pa(plant), 'gauge')} for 30 minutes without a fall; then shut D3, open V3 and V4${ventWords(plant)}`,
    },
    {
      what: `H2 on hand${mixes ? ', M1 open to the tank' : ''}: scale of V4`,
      expect: words`${figure(roomCoil(plant).water_m3s, 'liquidFlow', 2)} ± 10 %: else set P2’s highest speed, then V4; no air heard${fan ? ', the coil’s fan runs' : ''}. Air: fill again`,
    },
  ]
  if (fan)
    steps.push({
      what: `A jug of water into the coil’s tray${drained ? '; then lift FS' : ''}`,
      expect: words`all of it runs out at CD${drained ? '; P2 and fan stop, alarm' : ''}`,
    })
  if (mixes)
    steps.push({
      what: 'H2 on auto, tank cold: warm S5 in the hand; then a damp cloth round S6',
      expect: words`P2 starts; with the cloth M1 keeps S9 ${figure(plant.answer.scenario.store.dewMargin_K, 'K')} over the dew point, or P2 stops`,
    })
  return steps
}

/** Over the water of an open tank the circuit is under suction at rest. */
function ventWords(plant: Plant): Wording {
  const over_m = overWater_m(plant)
  return over_m > 0
    ? words`. AV is ${figure(over_m, 'span', 2)} over the tank’s water: at rest it is under suction and takes air in, so open it only with V3 and V4 shut and D3 pressed`
    : words``
}
