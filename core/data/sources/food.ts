import type { Source } from '../../model/source.js';

export const FOOD_SOURCES: readonly Source[] = [
  {
    id: 'usda-sr28',
    grade: 'published',
    title: 'USDA National Nutrient Database for Standard Reference, Release 28',
    by: 'US Department of Agriculture',
    year: 2015,
    place: 'Tables WEIGHT and ABBREV',
    note: 'Yield worked out from the water contents, dry matter kept.',
  },
  {
    id: 'cimini-2019',
    grade: 'published',
    title: 'Reducing the cooking water-to-dried pasta ratio and environmental impact of pasta cooking',
    by: 'A. Cimini, M. Cibelli and M. Moresi, Journal of the Science of Food and Agriculture',
    year: 2019,
    note: 'The journal is from memory.',
  },
  {
    id: 'cimini-2020',
    grade: 'published',
    title: 'Cooking pasta in little water',
    by: 'A. Cimini and others, Food and Bioproducts Processing',
    year: 2020,
    note: 'Seen in a copy; the title is a description.',
  },
];
