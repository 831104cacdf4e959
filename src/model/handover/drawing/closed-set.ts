import { disc, label, path, type Shape } from './shapes.ts'
import { valve } from './symbols.ts'

/** What a closed, filled loop needs beside: expansion and relief on the suction side. */
export function closedSet(y: number): Shape[] {
  return [
    path(
      [
        [90, y],
        [90, y + 10],
      ],
      'line',
    ),
    disc([90, y + 13], 3, 'paper'),
    label([90, y + 14], 'EX'),
    path(
      [
        [97, y],
        [97, y + 20],
      ],
      'line',
    ),
    ...valve([97, y + 20], '', true),
    label([92, y + 21], 'RV', 'end'),
  ]
}
