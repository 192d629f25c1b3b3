import type { Source } from '../../model/source.js';

export const SNOW_SOURCES: readonly Source[] = [
  {
    id: 'cuffey-paterson',
    grade: 'published',
    title: 'The Physics of Glaciers, 4th edition',
    by: 'K. M. Cuffey and W. S. B. Paterson',
    year: 2010,
    place: 'Table 2.1, typical densities',
    note: 'Seen as quoted in two places.',
  },
  {
    id: 'ams-glossary',
    grade: 'published',
    title: 'Glossary of Meteorology',
    by: 'American Meteorological Society',
    place: '“snow density”',
  },
  {
    id: 'cogley-2011',
    grade: 'published',
    title: 'Glossary of Glacier Mass Balance and Related Terms',
    by: 'Cogley and others, IHP-VII Technical Documents in Hydrology 86',
    year: 2011,
    place: '“density”',
  },
  {
    id: 'fm-31-70',
    grade: 'published',
    title: 'Basic Cold Weather Manual, FM 31-70',
    by: 'US Department of the Army',
    note: 'The 17 : 1 rule for loose snow is from memory.',
  },
];
