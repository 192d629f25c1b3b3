import type { Source } from '../../model/source.js';

/** Common practice: no published source, or the range that practitioners give. The title says the practice. */
export const PRACTICE_SOURCES: readonly Source[] = [
  {
    id: 'cp-meal-portion',
    grade: 'common-practice',
    title: 'A hot meal is 473 mL (16 US fl oz) at least and 591 mL (20 US fl oz) for a full portion',
    note: 'Practitioners give 400–750 mL a person boil-only, 650–2000 mL cooked in the pot.',
  },
  {
    id: 'cp-hot-drink',
    grade: 'common-practice',
    title: 'A hot drink is 240 mL',
  },
  {
    id: 'cp-fill-ceiling',
    grade: 'common-practice',
    title: 'A pot is filled to 0.90 for water alone, 0.80 for soup or a drink, two thirds for what foams',
    note: 'Practitioners give 0.67–0.90. The Water Boiling Test fills its pots to about two thirds.',
  },
  {
    id: 'cp-label-tolerance',
    grade: 'common-practice',
    title: 'A stated capacity is −2 to +7 % off what the pot holds; worked out from outside sizes, within ±20 %',
  },
  {
    id: 'cp-pot-size',
    grade: 'common-practice',
    title: '700–1000 mL suits one person; about 1 L is best in summer',
    note: 'Practitioners give 450 mL to 2 L for one, by what they cook.',
  },
  {
    id: 'cp-winter-pot',
    grade: 'common-practice',
    title: 'A pot to melt snow in holds about 2 L for one, 3 L for two, half a litre more a head up to 5 L',
    note: 'Practitioners give 1.3–5 L; hard parties of three have chosen 1.7 L.',
  },
  {
    id: 'cp-snow-loads',
    grade: 'common-practice',
    title: 'Two to three loads of hand-packed snow make one filling of water: packed snow is 350–500 kg/m³',
  },
  {
    id: 'cp-snow-starter',
    grade: 'common-practice',
    title: 'Start with water over the base of the pot, feed snow so that it stays slush, lid on',
    note: 'Practitioners start with a cup, with an inch, or with the base covered; summaries of mountaineering handbooks say the same.',
  },
  {
    id: 'cp-snow-water-day',
    grade: 'common-practice',
    title: 'On snow a person drinks and cooks with 3–5 L a day',
    note: 'Practitioners give 2.5–6 L.',
  },
  {
    id: 'cp-bail-shape',
    grade: 'common-practice',
    title: 'A pot that hangs from a bail is best two thirds as wide as tall',
  },
  {
    id: 'cp-stove-shape',
    grade: 'common-practice',
    title: 'On a stove a pot wider than tall catches more of the flame and stands better',
    note: 'Some find no difference on a narrow gas flame.',
  },
  {
    id: 'cp-burner-ratio',
    grade: 'common-practice',
    title: 'An open flame is at least a third narrower than the pot, at best half as wide',
  },
  {
    id: 'cp-arms',
    grade: 'common-practice',
    title: 'A pot’s base is 15 mm wider than the gap between the arms at least, and 1.6 times their span at most',
    note: 'Practitioners give 1.5–1.7.',
  },
  {
    id: 'cp-flame-inside',
    grade: 'common-practice',
    title: 'A gas flame spreads to 10 mm inside the base all round',
  },
  {
    id: 'cp-upright-base',
    grade: 'common-practice',
    title: 'On an upright canister stove a base over 200 mm, a griddle or a windscreen sends heat back to the canister',
    note: 'Rare, and severe.',
  },
  {
    id: 'cp-windscreen',
    grade: 'common-practice',
    title: 'No windscreen is closed round an upright canister',
    note: 'Practitioners disagree whether one that is open on the lee side may stand near it; the instructions of the stove’s maker come first.',
  },
  {
    id: 'cp-upright-cold',
    grade: 'common-practice',
    title: 'Upright canisters with isobutane mixes fade at about −7 °C',
    note: 'Practitioners give −7 to −8 °C; plain butane fades at some 10 °C; liquid feed gains about 11 °C.',
  },
  {
    id: 'cp-canister-chill',
    grade: 'common-practice',
    title: 'A canister in use is some 5 °C colder than the air, more as it empties',
  },
  {
    id: 'cp-fuel-per-litre',
    grade: 'common-practice',
    title: 'A litre boiled on gas takes 12–24 g, from calm to breeze',
    note: 'Practitioners give 10–53 g: 12 with a heat exchanger, 16 as a rule, 24 in a breeze, some 50 in wind.',
  },
  {
    id: 'cp-alcohol-per-boil',
    grade: 'common-practice',
    title: 'Half a litre boiled on alcohol takes 15–30 mL of it',
  },
  {
    id: 'cp-gas-mixes',
    grade: 'common-practice',
    title: 'What the words for canister gas hold, by mass: isobutane mix 80 % isobutane and 20 % propane, and the like',
    note: 'Mixes differ by canister; the label gives the shares.',
  },
  {
    id: 'cp-canister-gross',
    grade: 'common-practice',
    title: 'Canisters of 100–110, 220–230 and 450 g net weigh 175–215, 360–375 and 650–670 g full',
  },
  {
    id: 'cp-wind-factor',
    grade: 'common-practice',
    title: 'An unscreened burner takes 1.2–1.7 times the fuel in a breeze, 2–3 times in wind',
    note: 'No published curve is trusted. Practitioners give twice without a screen, three times at a steady 8 km/h, a fifth more behind a good one.',
  },
  {
    id: 'cp-burner-power',
    grade: 'common-practice',
    title: 'Burners give 2–3 kW on gas and liquid fuel, 0.4–1.4 kW on alcohol, 0.3–0.6 kW on tablets, 1.5–4 kW on wood',
    note: 'The alcohol figures are measured (Boiling Point no. 12).',
  },
  {
    id: 'cp-stove-efficiency',
    grade: 'common-practice',
    title: 'Tablet stoves are taken to put as much of their heat into the pot as small alcohol burners',
    note: 'No published measurement was found: 0.45–0.5 L to a tablet of 14 g is the practitioners’ figure.',
  },
  {
    id: 'cp-heat-exchanger',
    grade: 'common-practice',
    title: 'A pot locked to its burner with a heat exchanger boils a litre with about 12 g of gas',
    note: 'Fins alone gained 8 % in a published test.',
  },
  {
    id: 'cp-fuel-margin',
    grade: 'common-practice',
    title: 'A quarter more fuel than the likely need is carried',
  },
  {
    id: 'cp-ration',
    grade: 'common-practice',
    title: 'Some 1500 kcal a day is a short ration, for up to ten days and only with one hot meal of 473–591 mL',
  },
  {
    id: 'cp-titanium-scorch',
    grade: 'common-practice',
    title: 'Bare thin titanium has hot spots: simmered food and dry snow scorch',
  },
  {
    id: 'cp-aluminium-fire',
    grade: 'common-practice',
    title: 'An empty aluminium pot over an open fire can melt through',
  },
  {
    id: 'cp-plastic-pot',
    grade: 'common-practice',
    title: 'Plastic melts and wood chars over a flame: such vessels are eaten from, not cooked in',
  },
  {
    id: 'cp-can-pot',
    grade: 'common-practice',
    title: 'Pots made of drink cans dent and split',
  },
  {
    id: 'cp-fire-bail',
    grade: 'common-practice',
    title: 'At a fire a pot is hung by its bail, or hooked off by it',
  },
  {
    id: 'cp-lid',
    grade: 'common-practice',
    title: 'A lid of any kind, foil too, and a wider pan covers a smaller pot',
  },
  {
    id: 'cp-lift',
    grade: 'common-practice',
    title: 'A full pot is lifted by a handle, a bail or a gripper',
  },
  {
    id: 'cp-gripper',
    grade: 'common-practice',
    title:
      'A gripper lifts about 2 L or 2.5 kg; more takes a handle on either side, or two people and a stick through the bail; what weighs 10 kg full is ladled out where it stands',
  },
  {
    id: 'cp-pot-mass',
    grade: 'common-practice',
    title:
      'Pots weigh 0.12–0.18 g for each mL in titanium, 0.15–0.3 in aluminium, 0.25–0.6 in steel, 1 g and more in iron',
  },
  {
    id: 'cp-hang-spill',
    grade: 'common-practice',
    title: 'A hung pot that spills at under 6° slops when touched; from 12° it can be handled',
  },
  {
    id: 'cp-tip-angle',
    grade: 'common-practice',
    title: 'A pot on a stove stands to 15° or more before it tips',
    note: 'A 10° slope is the test of a published stove standard.',
  },
  {
    id: 'cp-snow-base',
    grade: 'common-practice',
    title: 'A board, a lid or a shovel under the stove on snow, or it melts in and tips',
  },
  {
    id: 'cp-spirit-cold',
    grade: 'common-practice',
    title: 'Alcohol melts snow slowly and with much fuel; it is not impossible',
    note: 'Practitioners disagree: not for snow, or half a litre in 15 min at −8 °C.',
  },
  {
    id: 'cp-spirit-refill',
    grade: 'common-practice',
    title: 'A spirit burner is cold before it is filled, from a small bottle away from the flame',
  },
  {
    id: 'cp-two-lighters',
    grade: 'common-practice',
    title: 'Something to light the stove with, and a second means apart from it',
  },
  {
    id: 'cp-eat-ware',
    grade: 'common-practice',
    title: 'A bowl, a mug or a pot to eat from for each person; one of several may eat from the pot',
  },
  {
    id: 'cp-water-carried',
    grade: 'common-practice',
    title: 'A person carries room for 2–3 L of water for a day and a night',
  },
  {
    id: 'cp-first-aid-burn',
    grade: 'common-practice',
    title: 'A burn is cooled with running water, wet clothing taken off, then covered',
    note: 'Guideline 9.1.3 of ANZCOR says 20 minutes at least.',
  },
];
