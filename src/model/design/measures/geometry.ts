import type { Scenario } from '#model/design/scenario'

export const floor_m2 = ({ room }: Scenario): number => room.length_m * room.width_m
export const volume_m3 = (scenario: Scenario): number => floor_m2(scenario) * scenario.room.height_m
export const walls_m2 = ({ room }: Scenario): number => 2 * (room.length_m + room.width_m) * room.height_m
export const windows_m2 = ({ room }: Scenario): number =>
  room.windowFront_m2 + room.windowRight_m2 + room.windowBack_m2 + room.windowLeft_m2
