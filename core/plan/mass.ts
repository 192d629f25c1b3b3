import { valueOf, type Given } from '../model/given.js';
import type { Material } from '../model/item.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';

/** g of pot for each mL it holds, lid left out: common practice (`cp-pot-mass`). */
const G_PER_ML: Readonly<Record<Material, number>> = {
  titanium: 0.15,
  aluminium: 0.22,
  steel: 0.35,
  enamel: 0.4,
  iron: 1.1,
  plastic: 0.12,
  wood: 0.3,
  metal: 0.25,
};
/** Where nothing says what it is made of. */
const UNSAID_G_PER_ML = 0.25;

/** Mass of a vessel, g: stated, or assumed from what it is made of and what it holds; missing where neither is known. A pot is never taken as weightless. */
export function massOf({ massG, material, capacityMl }: Vessel): Given<number> {
  const capacity = valueOf(capacityMl);
  if (massG.grounds !== 'missing' || capacity === undefined) return massG;
  const made = valueOf(material);
  return {
    grounds: 'assumed',
    value: capacity * (made === undefined ? UNSAID_G_PER_ML : G_PER_ML[made]),
    because: phrase`its mass is not given, and pots like it weigh about so much`,
    replaceWith: phrase`give its mass`,
  };
}
