/** Every source a check names, once. Counted in the closing line, except common practice. */
export const SOURCES = {
  envelope:
    'ANSI/ASHRAE Standard 140, building thermal envelope and fabric load cases (first published by the International Energy Agency, task 12, 1995)',
  spa: 'I. Reda and A. Andreas, Solar position algorithm for solar radiation applications, NREL/TP-560-34302, 2004',
  nrelSpa: 'nrel-spa 2.0.2, registry library (solar position algorithm of NREL)',
  astronomyEngine: 'astronomy-engine 2.1.19, registry library (VSOP87, IAU precession and nutation)',
  duffieBeckman: 'J. A. Duffie and W. A. Beckman, Solar Engineering of Thermal Processes',
  erbs: 'D. G. Erbs, S. A. Klein and J. A. Duffie, Estimation of the diffuse radiation fraction, Solar Energy 28, 1982',
  spencer: 'J. W. Spencer, Fourier series representation of the position of the sun, Search 2, 1971',
  hayDavies:
    'J. E. Hay and J. A. Davies, Calculation of the solar radiation incident on an inclined surface, 1980',
  kastenYoung: 'F. Kasten and A. T. Young, Revised optical air mass tables, Applied Optics 28, 1989',
  haurwitz: 'B. Haurwitz, Insolation in relation to cloudiness and cloud density, J. Meteorology 2, 1945',
  ineichen:
    'P. Ineichen and R. Perez, A new airmass independent formulation for the Linke turbidity coefficient, Solar Energy 73, 2002',
  psychrolib: 'psychrolib 1.1.1, registry library (ASHRAE Handbook Fundamentals, ch. 1)',
  evaporativeHandbook:
    'Handbook text on evaporative air conditioning, eq. 9.8.6 (probably CRC Handbook of Mechanical Engineering), worked out on moist air of Hyland and Wexler apart from this program',
  en16798part7: 'EN 16798-7:2017, Ventilation for buildings: calculation of air flow rates',
  hylandWexler: 'R. W. Hyland and A. Wexler, ASHRAE Transactions 89(2A), 1983',
  iso2533: 'ISO 2533:1975, Standard atmosphere',
  planck: 'M. Planck’s law integrated numerically',
  incropera: 'F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer',
  hollands:
    'K. G. T. Hollands, T. E. Unny, G. D. Raithby and L. Konicek, Free convective heat transfer across inclined air layers, J. Heat Transfer 98, 1976',
  elSherbiny:
    'S. M. ElSherbiny, G. D. Raithby and K. G. T. Hollands, Heat transfer by natural convection across vertical and inclined air layers, J. Heat Transfer 104, 1982',
  discInFoam:
    'axisymmetric conduction of a disc in foam by finite volumes, worked out apart from this program',
  mcAdams: 'W. H. McAdams, Heat Transmission, 3rd ed., 1954',
  watmuff:
    'J. H. Watmuff, W. W. S. Charters and D. Proctor, Solar and wind induced external coefficients for solar collectors, COMPLES 2, 1977',
  test: 'F. L. Test, R. C. Lessmann and A. Johary, Heat transfer during wind flow over rectangular bodies in the natural environment, J. Heat Transfer 103, 1981',
  sharples:
    'S. Sharples and P. S. Charlesworth, Full-scale measurements of wind-induced convective heat transfer from a roof-mounted flat plate solar collector, Solar Energy 62, 1998',
  kumarMullick:
    'S. Kumar and S. C. Mullick, Wind heat transfer coefficient in solar collectors in outdoor conditions, Solar Energy 84, 2010',
  matsunobu: 'L. M. Matsunobu and C. F. M. Coimbra, JGR Atmospheres, 2024, doi:10.1029/2023JD039798',
  liCoimbra:
    'M. Li and C. F. M. Coimbra, Int. J. Heat and Mass Transfer, 2019, doi:10.1016/j.ijheatmasstransfer.2019.02.040',
  martinBerdahl:
    'M. Martin and P. Berdahl, Characteristics of infrared sky radiation in the United States, Solar Energy 33, 1984',
  brutsaert:
    'W. Brutsaert, On a derivable formula for long-wave radiation from clear skies, Water Resources Research 11, 1975',
  prata:
    'A. J. Prata, A new long-wave formula for estimating downward clear-sky radiation at the surface, Q. J. R. Meteorol. Soc. 122, 1996',
  granqvist:
    'C. G. Granqvist and A. Hjortsberg, Radiative cooling to low temperatures, J. Applied Physics 52, 1981',
  surfrad: 'NOAA SURFRAD station data, San Luis Valley, 2016-01-01, measured longwave',
  ship: 'research-ship series, tropical Atlantic, January and February, measured longwave',
  coareShip:
    'NOAA-PSL/COARE-algorithm 5b144cf, research ship in the trade-wind Atlantic, measured longwave (MIT)',
  fallingCreek:
    'Carey, Breef-Pilz and Delany 2024, Falling Creek Reservoir, EDI edi.389, measured longwave (CC BY 4.0)',
  puechabon: 'FLUXNET2015 FR-Pue, Pastorello et al. 2020, measured longwave (CC BY 4.0)',
  tharandt: 'FLUXNET2015 DE-Tha, measured longwave (CC BY 4.0)',
  alpine: 'M. Stähli and D. Gustafsson, 2006: alpine station 47 N 9 E, measured longwave',
  astmE1980: 'ASTM E1980, Standard practice for calculating solar reflectance index',
  reflectanceIndexLists:
    'makers’ lists of roof products with reflectance, emittance and the index that ASTM E1980 gives them; which lists was not noted',
  raman:
    'A. P. Raman et al., Passive radiative cooling below ambient air temperature under direct sunlight, Nature 515, 2014',
  zhai: 'Y. Zhai et al., Scalable-manufactured randomized glass-polymer hybrid metamaterial, Science 355, 2017',
  liCaco3:
    'X. Li et al., Full daytime sub-ambient radiative cooling in commercial-like paints, Cell Reports Physical Science, 2020',
  liBaso4:
    'X. Li, J. Peoples, P. Yao and X. Ruan, Ultrawhite BaSO₄ paints and films, ACS Applied Materials and Interfaces 13, 2021',
  joseph2023: 'Joseph et al., BaSO₄ coating in Malaysia, 2023',
  kou2017:
    'J. Kou et al., Daytime radiative cooling using near-black infrared emitters, ACS Photonics 4, 2017',
  leroy2019:
    'A. Leroy et al., High-performance subambient radiative cooling enabled by polyethylene aerogel, Science Advances 5, 2019',
  mandal2018: 'J. Mandal et al., Hierarchically porous polymer coatings, Science 362, 2018',
  wang2021:
    'T. Wang et al., A structural polymer for highly efficient all-day passive radiative cooling, Nature Communications 12, 2021',
  liWood2019: 'T. Li et al., A radiative cooling structural material, Science 364, 2019',
  tio2Silicone: 'TiO₂ in silicone paint in humid air, arXiv:2401.11765, 2024',
  goldstein:
    'E. A. Goldstein, A. P. Raman and S. Fan, Sub-ambient non-evaporative fluid cooling with the sky, Nature Energy 2, 2017',
  erellEtzion:
    'E. Erell and Y. Etzion, Analysis and experimental verification of an improved cooling radiator, Renewable Energy 16, 1999',
  itoMiura:
    'S. Ito and N. Miura, Studies of radiative cooling systems for storing thermal energy, J. Solar Energy Engineering 111, 1989',
  michellBiggs: 'D. Michell and K. L. Biggs, Radiation cooling of buildings at night, Applied Energy 5, 1979',
  beysens: 'D. Beysens, Estimating dew yield worldwide from a few meteo data, Atmospheric Research 167, 2016',
  goebel: 'D. G. Goebel, Generalized integrating-sphere theory, Applied Optics 6, 1967',
  din4108: 'DIN 4108-2, minimum thermal insulation: sun protection factors, temperature factor of corners',
  doeAwnings: 'United States Department of Energy, figure on window awnings as quoted by two sites',
  iso10077: 'ISO 10077-1, Thermal performance of windows: glazings',
  carnot: 'Carnot’s efficiency times 0.45, worked out in the check',
  iso13790: 'ISO 13790:2008, Energy performance of buildings, annex C (simple hourly method)',
  iso13786: 'ISO 13786, Thermal performance of building components: dynamic thermal characteristics',
  iso6946: 'ISO 6946, Building components: thermal resistance and thermal transmittance',
  cibseA: 'CIBSE Guide A, Environmental Design, tables of walls',
  strawApproval: 'German building approval Z-23.11-1595, straw bales',
  iso10456: 'ISO 10456 (EN 12524), Building materials and products: tabulated design values',
  iso13370: 'ISO 13370, Heat transfer via the ground',
  floorSheet: 'published U-value sheet for solid ground floors (older UK closed form of Macey)',
  carslaw: 'H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed., 1959',
  givoni:
    'B. Givoni, Effectiveness of mass and night ventilation in lowering the indoor daytime temperatures, Energy and Buildings 28, 1998',
  ashrae55: 'ASHRAE Standard 55, adaptive method',
  en16798: 'EN 16798-1 (formerly EN 15251), adaptive method',
  ashraeFundamentals: 'ASHRAE Handbook Fundamentals',
  kaysLondon: 'W. M. Kays and A. L. London, Compact Heat Exchangers',
  exact: 'closed form of the differential equation, worked out in the test',
  moody: 'C. F. Colebrook, J. Institution of Civil Engineers 11, 1939, in the chart of L. F. Moody, 1944',
  poiseuille: 'Hagen–Poiseuille law of laminar pipe flow',
  bs6700: 'BS 6700:2006, table D.4, copper pipe, cold water',
  pexSheet: 'contractormag.com article 20879069, half-inch PEX at 4 gallons a minute',
  iapws: 'IAPWS-95 and the IAPWS viscosity and conductivity formulations',
  lsbu: 'M. Chaplin, Water structure and science, data page, London South Bank University',
  glycolTable: 'propylene-glycol tables by mass (published property table; Lange’s Handbook)',
  odex: 'odex 2.0.4, registry library (extrapolation ODE solver of Hairer, Nørsett and Wanner)',
  fsec: 'Florida Solar Energy Center, night-sky cooled attics, stars.library.ucf.edu/fsec/468',
  roofPonds:
    'Lawrence Berkeley Laboratory, roof ponds in San Antonio, 1981, Accuracy of a simple method for estimating roof-pond temperatures',
  faiman: 'D. Faiman et al., standby losses of a 100 L tank, 2001',
  modelPage: 'the page src/model/README.md, written again from it alone',
  balance: 'energy balance over all boundaries',
  commonPractice: 'common practice, no source',
} as const
export type SourceKey = keyof typeof SOURCES
