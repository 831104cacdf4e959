/**
 * Where each equation on paper (src/model/README.md) is in the code: the beginning of its line, in the order of the page,
 * and `file#name` of each function, method (`Class.method`) or constant that works it out, the first one first. What is
 * written after `|` is the source where the code beside it names none. A test fails when a line has no place, a place no
 * line, or a name is not in its file.
 */
export const PLACES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  Air: {
    'ln p_sat =': 'outdoors/air/moist-air.ts#saturationPressureOverWater_Pa #saturationPressureOverIce_Pa',
    'W = 0.621945': 'outdoors/air/moist-air.ts#humidityRatio_frac',
    'p(z) =': 'outdoors/air/moist-air.ts#standardPressure_Pa',
    'h_fg =': 'outdoors/air/moist-air.ts#evaporationHeat_Jkg',
    'ρ = p': 'outdoors/air/air-properties.ts#airDensity_kgm3 | law of ideal gases; ASHRAE Fundamentals ch. 1',
    'Ra =': 'outdoors/air/air-properties.ts#rayleighGroup | definition',
    'Le =': 'outdoors/air/air-properties.ts#LEWIS_NUMBER #LEWIS_FACTOR',
    'F(0→λ) =': 'outdoors/air/blackbody.ts#emissionBelow_frac',
    'M_total =': 'outdoors/air/blackbody.ts#blackbody_Wm2 | law of Stefan and Boltzmann, CODATA 2018',
    'h = (h_free³': 'outdoors/air/convection.ts#blendedConvection_Wm2K',
    'h_forced =':
      'outdoors/air/convection.ts#forcedConvection_Wm2K #WIND_SLOPES | Watmuff 1977 (default); McAdams 1954, Test 1981, Sharples & Charlesworth 1998, Kumar & Mullick 2010',
    'cold face up:': 'outdoors/air/convection.ts#freeFactors #freeNusselt',
    'hot face up:': 'outdoors/air/convection.ts#freeFactors #joinedLaws',
    'upright:': 'outdoors/air/convection.ts#freeFactors #joinedLaws',
    'gap, plate hotter:': 'outdoors/air/convection.ts#hollandsNusselt',
    'gap, plate colder:': 'outdoors/air/upright-gap.ts#coldBelowNusselt panels/plate/balance.ts#gapHeat_Wm2',
    'upright gap:': 'outdoors/air/upright-gap.ts#uprightGap',
    'v/v_met =':
      'outdoors/air/wind.ts#windFactor_frac | ASHRAE Fundamentals, airflow around buildings (from memory)',
    suburb: 'outdoors/air/wind.ts#WIND_TERRAINS',
  },
  Weather: {
    'global =':
      'outdoors/sun/split.ts#splitGlobal outdoors/intake/derive/radiation.ts#deriveRadiation | definition',
    'cloud = 1': 'outdoors/intake/derive/cloud.ts#cloudFromIndex #deriveCloud | Crawford & Duchon 1999',
    'night:':
      'outdoors/intake/derive/cloud.ts#carryOverNight outdoors/sky/longwave.ts#skyEmissivity | own rule, chosen by places left out (tests/evidence/sky)',
  },
  Place: {
    'near:':
      'outdoors/place/nearest.ts#nearbyClimate outdoors/place/months.ts#placeMonths | own rule; lapse common practice, no source; range and wind by regression on 190 station years',
    'dew:':
      'outdoors/place/months.ts#monthTargets | regression on 190 station years (place method of this project)',
    'cloud:':
      'outdoors/place/months.ts#monthTargets | form of Ångström 1924; regression on 190 station years (place method of this project)',
    'spread:': 'outdoors/place/spreads.ts#daySpreads',
    'sun:': 'outdoors/place/cloud-and-sun.ts#placeSun',
  },
  Sun: {
    'E₀ =': 'outdoors/sun/position.ts#extraterrestrial_Wm2',
    'diffuse share:': 'outdoors/sun/split.ts#erbsDiffuse_frac',
    'air mass =': 'outdoors/sun/clear-sky.ts#airMass',
    'clear sky by height alone': 'outdoors/sun/clear-sky.ts#haurwitzGlobal_Wm2',
    'clear sky, global': 'outdoors/sun/clear-sky.ts#ineichenPerez | Ineichen & Perez 2002 (from memory)',
    'clear sky, beam': 'outdoors/sun/clear-sky.ts#ineichenPerez | Ineichen & Perez 2002 (from memory)',
    'on a plane =': 'outdoors/sun/plane.ts#planeIrradiance',
    'F_sky =':
      'outdoors/sun/sky-view.ts#skyView_frac | isotropic part after Liu & Jordan 1963; what the horizon hides by own sum over rings',
  },
  Sky: {
    'L =': 'outdoors/sky/longwave.ts#skyHours | definition of the emissivity',
    'Matsunobu & Coimbra:': 'outdoors/sky/clear.ts#matsunobuCoimbra2024',
    'optional:': 'outdoors/sky/clear.ts#altitudeTerm',
    'Berdahl & Martin:': 'outdoors/sky/clear.ts#berdahlMartin1984',
    'Brutsaert:': 'outdoors/sky/clear.ts#brutsaert1975',
    'Prata:': 'outdoors/sky/clear.ts#prata1996',
    'mean of two:': 'outdoors/sky/clear.ts#matsunobuCoimbraPrata',
    'observed cloud:': 'outdoors/sky/cloud.ts#cloudyMartinBerdahl #cloudBase_m',
    'cloud from sunlight:': 'outdoors/sky/cloud.ts#cloudyCrawfordDuchon',
    'window:': 'outdoors/sky/bands.ts#windowEmissivity #tableWindowShare #TABLE_WINDOW_UM',
    'rest:': 'outdoors/sky/bands.ts#offWindowEmissivity | Li & Coimbra 2019',
    'towards the horizon:': 'outdoors/sky/directional.ts#skyOnPlane #weightedEmissivity',
  },
  Coating: {
    'soiled reflectance': 'panels/coating/ageing.ts#soiledReflectance_frac',
    'light box:': 'panels/readings/light-box.ts#substitutionCorrected',
    'sphere multiplier:': 'panels/readings/light-box.ts#sphereMultiplier',
    'batch:': 'panels/paint/batch.ts#batchQuantities #mixPerGram | own algebra: volumes and masses add up',
  },
  Panel: {
    'bare:':
      'panels/plate/balance.ts#panelBalance #partBalance panels/plate/tangent.ts#bareTangent | own energy balance',
    'film:':
      'panels/plate/exchange.ts#bandExchange #filmExchange | radiosities of grey faces: Incropera & DeWitt',
    'gap:': 'panels/plate/flutter.ts#flutter_Wm2K #outsideFactor_frac panels/plate/balance.ts#gapHeat_Wm2',
    'edges:': 'panels/plate/edge-loss.ts#edgeLoss_Wm2K | conduction of a disc in foam, worked out apart',
    'vapour:': 'panels/plate/hour-inputs.ts#massTransfer panels/plate/face.ts#Face.evaporate',
    'wet face:': 'panels/plate/exchange.ts#WATER_EMITTANCE #filmBand',
    'water:': 'panels/plate/water.ts#waterAfter_kgm2 #waterLimit_kgm2',
  },
  Bench: {
    'resting plate:': 'panels/readings/resting-plate.ts#restingPlate_C | own energy balance',
    'infrared thermometer:':
      'panels/readings/ir-thermometer.ts#irThermometerTrue_C #irThermometerShown_C | radiation balance of the instrument',
    'fit:': 'basis/numbers/weighted-fit.ts#weightedFit',
    'small plate:':
      'outdoors/air/small-plate.ts#smallPlateConvection_Wm2K #smallPlateFactor #ALONG #TURNED #TURNED_FROM_DEG | Pohlhausen, textbooks; Sparrow, Ramsey & Mass 1979 (from memory)',
    'warm plate:': 'panels/readings/warm-plate.ts#warmPlateEmittance | ASTM E1933, ISO 18434-1 (from memory)',
    'paired boards:':
      'panels/readings/paired-boards.ts#pairedReflectance #partOf #LOSS_WM2K #EMITTANCE | own energy balance',
  },
  Notebook: {
    'response:':
      'panels/notebook/response.ts#response #powers | Gelman et al., Bayesian Data Analysis (from memory)',
    'information:': 'panels/notebook/next-sample.ts#nextAmount | Lindley 1956 (from memory)',
    'power:': 'panels/notebook/power.ts#powerOf #TWO_SIDED_SD | own algebra: means of normal errors',
    'coat over a background:':
      'panels/notebook/hiding.ts#filmReflectance_frac #hidingPower | Kubelka & Munk 1931 (from memory)',
  },
  Loop: {
    'fin:': 'panels/loop/plate.ts#finEfficiency',
    'plate:': 'panels/loop/plate.ts#efficiencyFactor',
    'flow:': 'panels/loop/plate.ts#flowFactor #removalFactor',
    'film:':
      'panels/loop/plate.ts#nusselt #hausen #gnielinski | Hausen 1943; Gnielinski 1976, between the two Gnielinski 2013',
    'friction:': 'panels/loop/friction.ts#frictionFactor #haaland #LAMINAR_RE #TURBULENT_RE',
    'loss:':
      'panels/loop/friction.ts#pressureGradient_Pam #dynamicPressure_Pa panels/loop/duty.ts#dutyOf | law of Darcy and Weisbach',
    'rows:':
      'panels/loop/evenness.ts#flowSpread_frac panels/loop/duty.ts#headerFlow | manifold theory with ideal coefficients (common practice, no source)',
    'pipe:':
      'panels/loop/pipes.ts#pipeGain_WmK | conduction through a cylinder; conductivity ISO 10456, outside film common practice, no source',
  },
  Room: {
    'mode:':
      'building/construction/modes.ts#modesOf building/room/rows.ts#roomRows | own algebra: Ritz–Galerkin projection',
    'shapes:':
      'building/construction/modes.ts#shapes #orthonormal #projected | own choice of Ritz functions; passivity: Odabasioglu, Celik & Pileggi 1998 (from memory)',
    'films:':
      'building/room/films.ts#CONVECTION_INSIDE_Wm2K #RADIATION_INSIDE_Wm2K building/construction/modes.ts#conductances',
    'outside:': 'building/room/sol-air.ts#solAir building/room/films.ts#outsideConvection_Wm2K',
    'step:': 'building/room/rows.ts#meanShares #groupStep | exact solution of the mode',
    'face:': 'building/room/rows.ts#groupStep | own algebra',
    'air:':
      'building/room/rows.ts#fillRow building/year/room-step.ts#RoomStep.prepare | own energy balance of the air',
    'radiant:':
      'building/room/rows.ts#fillRow building/year/room-step.ts#RoomStep.prepare | own energy balance of the radiant node',
    'inertia:': 'building/room/mean-step.ts#endOverMean | exact solution of one capacity',
    'sun:':
      'building/room/sun-inside.ts#sunShares building/room/network.ts#FACE_ABSORPTANCE_frac #FLOOR_ABSORPTANCE_frac',
    'angle:':
      'building/room/windows.ts#beamFactor #diffuseFactor #panesOf #windowSun_W | Duffie & Beckman, ch. 5',
    'shade:': 'building/room/window-shade.ts#litShare_frac #diffuseShares #seen_frac',
    'beyond:': 'building/room/parts.ts#partsOf #outdoorShare',
    'ground:':
      'building/room/ground.ts#slabOnGroundU_Wm2K #equivalentThickness_m building/room/slab.ts#floorOnGround',
    'swing:': 'building/room/ground.ts#outdoorSwing_WK',
    'moisture:': 'building/room/air-change.ts#indoorDewPoint_C | own balance of vapour',
    'comfort:': 'design/target/comfort.ts#adaptiveComfort_C #BANDS',
  },
  Store: {
    'C =': 'building/store/model.ts#tankOf | definition',
    'UA =':
      'building/store/model.ts#tankSkin_Wm2K #tankOf | sum of resistances, ISO 6946; outer film common practice, no source',
    'between layers:': 'building/store/model.ts#tankOf | conduction between equal slices',
    'layer flow:': 'building/year/tank-layers.ts#addLayers | own energy balance of a layer',
    'turnover:':
      'building/year/tank-layers.ts#turnOver | own algebra: the least mixing that leaves no cold water on warm',
  },
  Year: {
    'panel:':
      'building/year/panel-exchange.ts#panelExchange_WK building/year/loop-flow.ts#LoopFlow.set | own algebra of Duffie & Beckman, ch. 6',
    'pipes:':
      'building/year/loop-flow.ts#LoopFlow.set #LoopFlow.into_C | exact solution of a pipe in still air',
    'delivery:':
      'building/year/delivery.ts#Delivery.lawOf #Delivery.settle #Delivery.add building/year/open-valve.ts#OpenValve.reaches_W | own control law',
    'port:':
      'building/year/room-port.ts#RoomPort.setPipes #RoomPort.follow #RoomPort.seen_WK | reciprocity and elimination',
    'tray:':
      'building/year/wet-coil.ts#WetCoil #WetCoil.prepare | fan coil, contact factor: bypass-factor method, ASHRAE Handbook, HVAC Systems and Equipment, air-cooling coils (from memory)',
    'mixing:':
      'building/year/mixed-supply.ts#MixedSupply.top_C building/year/plate-course.ts#PlateCourse.prepareMixed | own energy balance',
    'pump:':
      'building/year/pump-duty.ts#PumpDuty.slack_K #shareUsed | own rule: the limits of the controller held by the mean of its bursts',
    'plate:': 'building/year/plate-step.ts#PlateStep.prepare | exact solution of one capacity',
    'step:': 'building/year/hub-system.ts#HubSystem.factor #HubSystem.solve | own algebra',
    'ledger:': 'building/year/books.ts#Books.ledger | conservation of energy',
  },
  Equipment: {
    'wet bulb:': 'building/equipment/wet-bulb.ts#wetBulb_C',
    'cooler:': 'building/equipment/evaporative.ts#evaporativeSupply',
    'machine:':
      'building/equipment/air-conditioner.ts#availableCooling_W #cop_frac #airConditionerPower_W | both slopes from memory; 1.5 common practice, no source',
  },
  Measures: {
    'opening:': 'design/measures/night-flow.ts#openingFlow_m3h',
    'fan felt:': 'design/target/moving-air.ts#fanOffset_K | ASHRAE 55; EN 16798-1 (from memory)',
    'corner:':
      'design/measures/mould.ts#surfaceFactor_frac #winterDamp | EN ISO 13788, monthly method (from memory)',
  },
  'As built': {
    'ln E =':
      'handover/as-built/fit.ts#fitted #weighed | MacKay 2003, Information Theory, Inference, and Learning Algorithms',
    'heat left =': 'handover/as-built/remaining.ts#remaining | definition',
  },
}
