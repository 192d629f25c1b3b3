import { MISSING, valueOf, type Given } from '../model/given.js';
import type { FuelType, Item } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import { canisterNetG, liquidFuelG } from '../physics/fuel.js';

/** A fuel bottle is filled to about three quarters; common practice. */
const BOTTLE_FILL = 0.75;

/** Net fuel in one can or bottle, g: stated; else worked out from its volume, its bottle or the gross mass of a gas canister. */
export function netFuel(item: Item, type: FuelType | undefined): Given<number> {
  if (item.fuelMassG.grounds !== 'missing') return item.fuelMassG;
  const gross = valueOf(item.massG);
  if (type === 'gas') {
    const net = gross === undefined ? undefined : canisterNetG(gross)?.likely;
    return net === undefined
      ? MISSING
      : {
          grounds: 'worked-out',
          value: net,
          from: phrase`a canister of ${Math.round(gross!)} g full`,
          cites: ['cp-canister-gross'],
        };
  }
  if (type === 'alcohol' || type === 'liquid-fuel') {
    const volume = valueOf(item.fuelVolumeMl);
    if (volume !== undefined)
      return {
        grounds: 'worked-out',
        value: liquidFuelG(type, volume),
        from: phrase`${Math.round(volume)} mL`,
        cites: ['greet'],
      };
    const bottle = item.capacitiesMl[0] === undefined ? undefined : valueOf(item.capacitiesMl[0]);
    if (bottle !== undefined) {
      return {
        grounds: 'assumed',
        value: liquidFuelG(type, bottle * BOTTLE_FILL),
        because: phrase`a bottle of ${Math.round(bottle)} mL is filled to about three quarters`,
        replaceWith: phrase`write how much fuel is in it`,
      };
    }
  }
  return item.massG;
}
