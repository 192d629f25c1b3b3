import { defineCheck, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import type { Material } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';

/** Materials that no flame may touch. */
const NO_FLAME: ReadonlySet<Material> = new Set(['plastic', 'wood']);

/** Does what the pot is made of suit the cooking and the heat? */
export const material = defineCheck({
  id: 'material',
  title: 'Material',
  asks: 'Does what the pot is made of suit how they cook and what they cook on?',
  costs: 'Food scorches, or the pot melts.',
  needs: ['pots', 'trip'],
  cites: ['cp-titanium-scorch', 'cp-aluminium-fire', 'cp-plastic-pot'],
  limits: 'It knows the metal and neither its thickness nor a coating; a non-stick one spoils over a fire.',
  options: {},
  messages: {
    'no-flame': 'A pot of {material} over a flame melts or burns.',
    scorches: 'Bare titanium has hot spots: what simmers or fries in it scorches.',
    'scorches-snow': 'Bare titanium has hot spots: dry snow in it scorches and tastes of it.',
    'fire-melts': 'Aluminium over a fire: empty, it can melt through.',
    suits: 'The pot of {material} takes this cooking.',
    unknown: 'What the pot is made of is not said: bare titanium scorches, other metals seldom.',
    margin: '{material}',
    'margin-scorches': '{material}, to {use}',
    'margin-fire': '{material}, at a fire',
    'margin-unknown': 'material not given',
    'fix-metal': 'A pot of steel, enamel or aluminium.',
    'fix-scorches': 'A pot of steel, enamel or aluminium. Or boil-only in this one.',
    'fix-fire': 'A pot of steel or enamel.',
    'caution-snow': 'A pot of dry snow scorches on any stove. Start with water in it, feed the snow, stir.',
    'caution-fire': 'An empty pot over a fire heats in moments. Fill it first, then hang it.',
    question: 'What is it made of?',
    simmer: 'simmer',
    scratch: 'cook from scratch',
    snow: 'melt snow',
    titanium: 'titanium',
    aluminium: 'aluminium',
    steel: 'steel',
    iron: 'iron',
    enamel: 'enamel',
    plastic: 'plastic',
    wood: 'wood',
  },
  judge({ pots, trip }): Verdict[] {
    const [pot] = pots;
    if (pot === undefined) return [];
    const made = valueOf(pot.material);
    const style = trip.mealStyle.grounds === 'assumed' ? undefined : valueOf(trip.mealStyle);
    const cooks = style === 'simmer' || style === 'scratch';
    const snow = valueOf(trip.waterFrom) !== 'liquid';
    const fire = trip.cookAt.grounds !== 'assumed' && valueOf(trip.cookAt) === 'fire';
    const about = { evidence: [pot.evidence], item: pot.item };

    if (made === undefined || made === 'metal') {
      if (!cooks) return [];
      const item = pot.item === null ? {} : { item: pot.item };
      return [
        {
          ...about,
          grade: 'cant-tell',
          message: 'unknown',
          margin: 'margin-unknown',
          figures: {},
          question: { ...item, field: 'material', message: 'question' },
          cites: ['cp-titanium-scorch'],
        },
      ];
    }
    const figures = { material: made };
    if (NO_FLAME.has(made)) {
      return [
        {
          ...about,
          grade: 'falls-short',
          message: 'no-flame',
          margin: 'margin',
          figures,
          fix: 'fix-metal',
          cites: ['cp-plastic-pot'],
        },
      ];
    }
    if (made === 'titanium' && (cooks || snow)) {
      return [
        {
          ...about,
          grade: 'costs-you',
          message: cooks ? 'scorches' : 'scorches-snow',
          margin: 'margin-scorches',
          figures: { ...figures, use: cooks ? style : 'snow' },
          fix: cooks ? 'fix-scorches' : 'fix-metal',
          cites: ['cp-titanium-scorch'],
          cautions: snow ? ['caution-snow'] : [],
          assumptions: cooks ? [] : assumed([[phrase`where the water comes from`, trip.waterFrom]]),
        },
      ];
    }
    if (made === 'aluminium' && fire) {
      return [
        {
          ...about,
          grade: 'costs-you',
          message: 'fire-melts',
          margin: 'margin-fire',
          figures,
          fix: 'fix-fire',
          cites: ['cp-aluminium-fire'],
          cautions: ['caution-fire'],
        },
      ];
    }
    // Titanium holds up for water alone, and that is only said where they are known to boil only.
    if (made === 'titanium' && style === undefined) return [];
    return [
      { ...about, grade: 'holds-up', message: 'suits', margin: 'margin', figures, cites: ['cp-titanium-scorch'] },
    ];
  },
});
