import { choice, number } from './field.ts'
import { figure, words } from '#model/basis/words'

/** When the loop runs. Ranges, words and defaults: see `fields.ts`. */
export const PLAN_FIELDS = {
  kind: choice(
    { nightOnly: 'Night only', allDay: 'All day, whenever it pays', ownHours: 'Own hours' },
    'nightOnly',
    'Running plan',
    'When the loop may run.',
    'All day needs less area where the coating beats the sun, for many more pump hours.',
  ),
  startHour_h: number(
    'h',
    { min: 0, max: 24, default: 20, step: 0.5 },
    'From',
    'Local standard time, own hours only.',
  ),
  endHour_h: number(
    'h',
    { min: 0, max: 24, default: 7, step: 0.5 },
    'Until',
    'Local standard time; may pass midnight.',
  ),
  startDifference_K: number(
    'K',
    { min: 0.2, max: 15, default: 3, usual: [1, 6], step: 0.5 },
    'Start difference',
    'The pump runs all the time once the panel at rest would be this much colder than the store; less and less down to where only the stop difference is left.',
  ),
  stopDifference_K: number(
    'K',
    { min: 0, max: 10, default: 0.3, usual: [0.1, 2], step: 0.1 },
    'Stop difference',
    'It stops when the fluid comes back less than this much colder than it left.',
  ),
  lowestStore_C: number(
    'C',
    { min: 1, max: 25, default: 8, usual: [2, 20], step: 0.5 },
    'Lowest store',
    'The loop stops here.',
    'Colder than the dew point is cold you may not be able to use.',
  ),
  seasonGate_C: number(
    'C',
    { min: -20, max: 30, default: 14, usual: [5, 22], step: 0.5 },
    'Season gate',
    'Off while the running-mean outdoor temperature is below this: an over-cooled room in winter is a failure.',
  ),
  setpoint_C: number(
    'C',
    { min: 2, max: 35, default: 22, usual: [8, 27], step: 0.5 },
    'Let cold in above',
    'Room air temperature at which delivery starts.',
    'Lower starts earlier and banks cold in the room itself.',
  ),
  band_K: number(
    'K',
    { min: 0.1, max: 5, default: 1, usual: [0.5, 3], step: 0.1 },
    'Band',
    'Delivery is fully open this much above.',
  ),
  freeze: choice(
    { drainBack: 'Drain-back', glycol: 'Glycol', stop: 'Stop and drain for winter' },
    'drainBack',
    'Freeze protection',
    words`A panel facing the sky can freeze with the air above ${figure(0, 'C')}.`,
  ),
  freezeLimit_C: number(
    'C',
    { min: -40, max: 10, default: 1, usual: [0, 4], step: 0.5 },
    'Freeze limit',
    'Plate temperature at which protection acts.',
  ),
} as const
