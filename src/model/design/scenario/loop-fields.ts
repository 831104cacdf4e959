import { choice, number, onOff } from './field.ts'
import { figure, words } from '#model/basis/words'

/** Fluid, plate and pipes. Ranges, words and defaults: see `fields.ts`. */
export const LOOP_FIELDS = {
  fluid: choice(
    { water: 'Water', glycol: 'Propylene glycol mix', air: 'Air' },
    'water',
    'Fluid',
    'What runs through the panel.',
  ),
  glycol_frac: number(
    'frac',
    { min: 0.1, max: 0.6, default: 0.3, usual: [0.2, 0.5], step: 0.01 },
    'Glycol share',
    words`Propylene glycol, share by mass. 0.3 freezes at ${figure(-12.8, 'C')}.`,
  ),
  autoFlow: onOff(true, 'Choose the flow', 'At the knee of heat against pump power.'),
  flow_kgsm2: number(
    'kgsm2',
    { min: 0.0005, max: 0.1, default: 0.01, usual: [0.003, 0.04], step: 0.001 },
    'Flow per m²',
    words`${figure(0.01, 'kgsm2')} of water is ${figure(1e-5, 'liquidFlow')} for each ${figure(1, 'm2')} of panel.`,
    'Too little leaves the far end of the panel idle; too much only costs pump power.',
  ),
  layout: choice(
    {
      riser: 'Risers between two headers',
      serpentine: 'One tube back and forth',
      wetted: 'Fully wetted (twin-wall)',
    },
    'riser',
    'Plate',
    'How the fluid meets the plate.',
  ),
  plateThickness_m: number(
    'm',
    { min: 0.0001, max: 0.01, default: 0.0007, usual: [0.0003, 0.002], step: 0.0001 },
    'Plate thickness',
    'Sheet between the tubes.',
  ),
  plateConductivity_WmK: number(
    'WmK',
    { min: 0.1, max: 400, default: 200, usual: [0.2, 390], step: 1 },
    'Plate conductivity',
    words`Aluminium about ${figure(200, 'WmK')}, copper ${figure(385, 'WmK')}, steel ${figure(50, 'WmK')}, plastic ${figure(0.2, 'WmK')}.`,
  ),
  tubeSpacing_m: number(
    'm',
    { min: 0.01, max: 0.5, default: 0.12, usual: [0.05, 0.25], step: 0.01 },
    'Tube spacing',
    'Centre to centre.',
  ),
  tubeOuterDiameter_m: number(
    'm',
    { min: 0.004, max: 0.05, default: 0.012, usual: [0.006, 0.022], step: 0.001 },
    'Tube, outside',
    'Outer diameter of the riser or serpentine tube.',
  ),
  tubeInnerDiameter_m: number(
    'm',
    { min: 0.002, max: 0.048, default: 0.01, usual: [0.004, 0.02], step: 0.0005 },
    'Tube, inside',
    'Inner diameter; must be smaller than outside.',
  ),
  pipeLength_m: number(
    'm',
    { min: 0, max: 200, default: 16, usual: [2, 60], step: 1 },
    'Pipe run',
    'Panel to store and back, both ways together.',
  ),
  autoPipe: onOff(true, 'Choose the bore', 'From the usual bores by velocity and friction.'),
  pipeInnerDiameter_m: number(
    'm',
    { min: 0.006, max: 0.3, default: 0.02, usual: [0.01, 0.05], step: 0.001 },
    'Pipe, inside',
    'Bore of supply and return (duct diameter for air).',
  ),
  pipeInsulation_m: number(
    'm',
    { min: 0, max: 0.1, default: 0.013, usual: [0, 0.04], step: 0.001 },
    'Pipe insulation',
    'Thickness.',
  ),
  lift_m: number(
    'm',
    { min: 0, max: 20, default: 0, usual: [0, 6], step: 0.5 },
    'Lift',
    'Height the pump of a drain-back loop holds water up all the time. 0: the return runs full and carries its own weight, and the lift from the store’s water to the top of the panels, for the start, is worked out.',
  ),
  pumpEfficiency_frac: number(
    'frac',
    { min: 0.02, max: 0.8, default: 0.2, usual: [0.05, 0.5], step: 0.01 },
    'Pump efficiency',
    'Electric to hydraulic; small circulators reach 0.05–0.30.',
  ),
} as const
