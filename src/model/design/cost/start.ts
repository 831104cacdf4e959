/** Invented: what the boxes of these prices begin with. */
export const STARTING_PRICES = {
  panel_perm2: 120,
  store_perm3: 800,
  pipe_perm: 12,
  pump_each: 300,
  fanCoil_each: 350,
  deliveryPump_each: 120,
  mixingValve_each: 150,
  energy_perkWh: 0.25,
} as const
