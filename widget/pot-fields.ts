import type { CorrectableField, PotInput, StoveInput } from '../core/index.js';

/** Where a field that a question asks for stands in the form of the one pot. */
export const POT_FIELD: Partial<Record<CorrectableField, keyof PotInput>> = {
  capacityMl: 'capacity',
  diameterMm: 'diameter',
  baseDiameterMm: 'baseDiameter',
  heightMm: 'height',
  massG: 'mass',
  material: 'material',
  bail: 'bail',
  lid: 'lid',
  handles: 'handles',
};

export const STOVE_FIELD: Partial<Record<CorrectableField, keyof StoveInput>> = {
  burnerMm: 'burnerDiameter',
  supportsMm: 'armSpan',
  stoveType: 'type',
  stoveForm: 'form',
};
