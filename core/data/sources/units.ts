import type { Source } from '../../model/source.js';

/** Where the sizes of units are laid down. */
export const UNIT_SOURCES: readonly Source[] = [
  {
    id: 'nist-handbook-44',
    grade: 'published',
    title: 'Specifications, Tolerances, and Other Technical Requirements for Weighing and Measuring Devices',
    by: 'NIST Handbook 44',
    place: 'Appendix C, General Tables of Units of Measurement',
  },
  {
    id: 'nist-sp-811',
    grade: 'published',
    title: 'Guide for the Use of the International System of Units (SI)',
    by: 'NIST Special Publication 811',
    year: 2008,
    place: 'Appendix B',
  },
  {
    id: 'uk-weights-measures',
    grade: 'published',
    title: 'Weights and Measures Act 1985',
    by: 'Parliament of the United Kingdom',
    year: 1985,
    place: 'Schedule 1',
    note: 'The figures were seen in a unit library that cites the act, not in the act itself.',
  },
  {
    id: 'cfr-21-101-9',
    grade: 'published',
    title: 'Nutrition labeling of food',
    by: 'Code of Federal Regulations',
    place: '21 CFR 101.9(b)(5)(viii)',
    note: 'Household measures of food labels only: the cup there is 240 mL.',
  },
  {
    id: 'cp-metric-cup',
    grade: 'common-practice',
    title: 'Metric cup of 250 mL in Australian, New Zealand and Canadian kitchens',
    note: 'From memory.',
  },
];
