import type { Source } from '../../model/source.js';

/** Water, ice and the air above it. */
export const WATER_SOURCES: readonly Source[] = [
  {
    id: 'iapws-if97',
    grade: 'published',
    title:
      'Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam',
    by: 'IAPWS R7-97(2012)',
    year: 2012,
    place: 'Region 4: equations 29 to 31, Tables 34, 35 and 36',
  },
  {
    id: 'iapws-95',
    grade: 'published',
    title:
      'Release on the IAPWS Formulation 1995 for the Thermodynamic Properties of Ordinary Water Substance for General and Scientific Use',
    by: 'IAPWS R6-95(2018)',
    year: 2018,
    note: 'Values at 101.325 kPa, worked out with an open implementation of the formulation.',
  },
  {
    id: 'iapws-ice',
    grade: 'published',
    title: 'Revised Release on the Equation of State 2006 for H2O Ice Ih',
    by: 'IAPWS R10-06(2009)',
    year: 2009,
    place: 'Table 6',
  },
  {
    id: 'iso-2533',
    grade: 'published',
    title: 'Standard Atmosphere',
    by: 'ISO 2533',
    year: 1975,
    note: 'Days differ from the standard: the boiling point holds to about 0.5 to 1 °C.',
  },
  {
    id: 'icao-7488',
    grade: 'published',
    title: 'Manual of the ICAO Standard Atmosphere',
    by: 'ICAO Doc 7488/3',
    year: 1993,
    note: 'Rows seen in the tests of an open library.',
  },
  {
    id: 'us-atmosphere-1976',
    grade: 'published',
    title: 'U.S. Standard Atmosphere, 1976',
    by: 'NOAA, NASA and US Air Force',
    year: 1976,
    note: 'The same as ISO 2533 up to 32 km. Rows seen in the tests of an open library.',
  },
  {
    id: 'usda-home-canning',
    grade: 'published',
    title: 'Complete Guide to Home Canning',
    by: 'US Department of Agriculture',
    place: 'Boiling temperatures of water by altitude',
    note: 'Seen in copies; rounded to the degree or tenth of a degree Fahrenheit.',
  },
  {
    id: 'west-1996',
    grade: 'published',
    title: 'Prediction of barometric pressures at high altitudes with the use of model atmospheres',
    by: 'J. B. West, Journal of Applied Physiology',
    year: 1996,
    note: 'From memory.',
  },
  {
    id: 'crc-handbook',
    grade: 'published',
    title: 'CRC Handbook of Chemistry and Physics',
    by: 'CRC Press',
    place: 'Physical constants of organic compounds; enthalpies of formation, fusion and vaporisation',
    note: 'Read from the data files of an open chemistry library.',
  },
];
