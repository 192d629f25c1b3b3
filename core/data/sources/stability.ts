import type { Source } from '../../model/source.js';

export const STABILITY_SOURCES: readonly Source[] = [
  {
    id: 'derrett',
    grade: 'published',
    title: 'Ship Stability for Masters and Mates',
    by: 'D. R. Derrett and C. B. Barrass',
    place: 'Effect of free surface of liquids on stability',
  },
  {
    id: 'tupper',
    grade: 'published',
    title: 'Introduction to Naval Architecture',
    by: 'E. C. Tupper',
    place: 'Free surface effect',
  },
  {
    id: 'reed-naval',
    grade: 'published',
    title: 'Reed’s Naval Architecture for Marine Engineers, 4th edition',
    by: 'E. A. Stokoe',
    place: 'Example 5.11',
    note: 'The author is from memory.',
  },
  {
    id: 'imo-stability-2008',
    grade: 'published',
    title: 'International Code on Intact Stability',
    by: 'IMO',
    year: 2008,
    place: 'Part B, 3.3.2',
  },
  {
    id: 'truncated-cylinder',
    grade: 'published',
    title: 'Geometry of the obliquely truncated cylinder',
    by: 'Elementary solid geometry and statics',
    note: 'Derived here and checked by numerical integration; no table is copied.',
  },
];
