import type { Words } from './words.js';

export const en: Words = {
  language: 'en',
  name: 'English',
  decimal: '.',
  tellTale:
    'the, and, with, of, for, is, my, one, not, it, that, this, from, to, on, or, each, you, we, are, no, all, but, w/',

  kinds: {
    pot: 'pressure cooker, pot, pasta pot, soup pot, stew pot, rice pot, dinner pot, porridge pot, noodle pot, cook pot, cookpot, cooking pot, stock pot, stockpot, hot pot, saucepan, sauce pan, milk pan, billy, billy can, billycan, billy pot, mucket, mug pot, mess tin, army tin, dixie, boiler, dutch oven, cauldron, melting pot, snow pot, melt pot, grease pot, canteen cup, canteen pot, cookset, cook set, cooking set, cookware set, cookware, cook kit, pot set, pan set, nesting set, storm set, camp oven, cooker pot, cooking kit, stewpot, billy tin | pressure cookers, pots, cook pots, cookpots, cooking pots, stock pots, stockpots, saucepans, sauce pans, milk pans, billies, billys, billy cans, billycans, mess tins, dixies, boilers, dutch ovens, muckets, canteen cups, cooksets, cook sets, soup pots, pasta pots, rice pots, stewpots, pot sets, billy tins, camp ovens',
    mug: 'mug, cup, beaker, tumbler, sierra cup, kuksa, noggin, thermo mug, thermal mug, insulated mug, coffee cup, tea cup, teacup | mugs, cups, beakers, tumblers, sierra cups, kuksas, coffee cups, tea cups, teacups',
    kettle:
      'kettle, tea kettle, teakettle, teapot, tea pot, coffee pot, coffeepot, coffee kettle, water boiler | kettles, tea kettles, teapots, tea pots, coffee pots, coffeepots, coffee kettles, water boilers',
    pan: 'pan, fry pan, frypan, frying pan, skillet, griddle, pan lid, fry pan lid, lid pan, spider pan, crepe pan, wok, doubles as pan, doubles as a pan, doubles as frying pan, is your frying pan, griddle plate | pans, fry pans, frypans, frying pans, skillets, griddles, woks, frying pan lids',
    lid: 'lid, pot lid, pot cover | lids, pot lids',
    stove:
      'stove, burner, cooker, camp stove, gas stove, gas burner, gas cooker, spirit burner, spirit stove, alcohol stove, alcohol burner, meths burner, canister stove, wood stove, twig stove, twig burner, hobo stove, hobo, gasifier, rocket stove, firebox, fire box stove, storm cooker, pressure stove, tablet stove, hexi stove, hexi burner, hexi cooker, camping stove, backpacking stove, cook stove, cookstove, cook system, cooking system, integrated system, cat stove, cat food can stove, soda can stove, beer can stove, soda can burner, stove top, gas ring, hot plate, stove system, can in a can thing, canister top | stoves, burners, cookers, gas burners, spirit burners, alcohol stoves, gas rings',
    fuel: 'stove gas, camping stove gas, camp stove gas, stove fuel, camp stove fuel, camping stove fuel, fuel, stove fuel, fuel bottle, fuel flask, fuel canister, fuel can, fuel cell, fuel container, fuel tank, gas, gas can, gas canister, gas cartridge, gas cylinder, gas bottle, gas tin, gas tank, butane can, propane bottle, propane cylinder, propane tank, propane can, bottle for fuel, bottle of fuel, can of fuel, spirit bottle, alcohol bottle, meths bottle, petrol bottle, charcoal, briquettes | fuels, bottles of fuel, cans of fuel, fuel bottles, fuel canisters, fuel cans, gas cans, gas canisters, gas cartridges, gas cylinders, propane bottles, propane cylinders, alcohol bottles, gas tins, propane tanks',
    windscreen:
      'windscreen, wind screen, windshield, wind shield, windbreak, wind break, wind guard, windguard, heat reflector screen, flame shield, shield, cone, wind deflector, foil screen, wind foil | windscreens, wind screens, windshields, wind shields, wind guards',
    bottle:
      'water drum, bottle, water bottle, drink bottle, drinking bottle, flask, thermos, thermos flask, vacuum flask, vacuum bottle, canteen, jug, water jug, jerry can, jerrycan, water can, hip flask, insulated bottle, growler, jerrican, water canister | water drums, bottles, water bottles, drink bottles, drinking bottles, flasks, thermoses, thermos flasks, canteens, jugs, water jugs, jerry cans, jerrycans, jerricans, water cans',
    bladder:
      'dromedary bag, dromedary, hydration pack, bladder, water bladder, hydration bladder, water bag, water sack, water carrier, reservoir, resevoir, hydration reservoir, hydration pack bladder, soft flask, soft bottle, collapsible bottle, folding bottle, collapsible container, roll top bottle, water pouch, folding bucket, collapsible bucket, bucket for water, water bucket, dirty bag, dirty water bag, water container, hydration bag, folding water container, collapsible water container | dromedary bags, hydration packs, bladders, water bladders, water bags, water sacks, water carriers, reservoirs, soft flasks, soft bottles, collapsible bottles, folding bottles, water pouches, water containers, collapsible containers, folding buckets, collapsible buckets, hydration bladders',
    bowl: 'bowl, cold soak jar, soak jar, soaking jar, cold soaking jar, deep plate, deep dish, mixing bowl, eating bowl, dish bowl, pudding basin, porringer, soup plate | bowls, deep plates, mixing bowls, soup plates',
    utensil:
      'spoon, spork, fork, ladle, spatula, flipper, cutlery, utensils, eating utensils, utensil, knife fork spoon, eating irons, chopsticks, whisk, wooden spoon, cooking spoon, teaspoon, slotted spoon, kitchen tongs, skewer, kfs, knife fork and spoon, knife/fork/spoon, turner, fish slice, egg slice, tongs | spoons, sporks, forks, ladles, spatulas, wooden spoons, cooking spoons, teaspoons, skewers, whisks',
    'other-cook':
      'mess kit, pot gripper, pot grabber, pot grip, pot grips, pot hook, pan grip, pot lifter, pot holder, pan gripper, pan handle, pan grabber, gripper, grabber, pot tongs, pot pliers, pot handle, pan holder, lid lifter, hot grip, oven glove, cosy, cozy, pot cosy, pot cozy, insulating cosy, plate, trivet, pot stand, burner stand, stove stand, pot support, coffee dripper, coffee cone, dripper, coffee filter holder, coffee press, french press, moka pot, moka, espresso maker, percolator, measuring cup, measuring jug, stove board, stove base, base board, stove platform, burner board, insulated stove base, tripod, pot hanger, hanger, hanging kit, hanging chain, pot chain, fire grate, grate, grill grate, grill, fire irons, reflector oven, oven, heat exchanger collar, heat exchanger, clip on feet, canister feet, canister stand, feet for the can, canister support, stove feet, strainer, colander, sieve, lighter, matches, match, fire steel, firesteel, ferro rod, striker, foil, aluminum foil, aluminium foil, tin foil, tinfoil, fire pan, tea infuser, tea strainer, hook to hang it from, pot hooks, oven mitt, reflector, plywood board, plywood square, plywood base, plywood pad, piece of plywood, board for the stove, base for the stove, plate for the stove, snow plate, cafetiere, kitchen foil, cooking grate, cooling rack | plywood boards, stove boards, boards for the stoves, bases for the stoves, pot grippers, pot grabbers, pot lifters, pot holders, grippers, cosies, cozies, plates, trivets, pot stands, measuring cups, hangers, lighters, oven gloves, oven mitts, pot hangers, grates, strainers, cafetieres, pan grips, stove boards',
  },
  containers: {
    rigid:
      'bottle, flask, jug, container, squeeze bottle, jar, dropper bottle, plastic bottle, tin | bottles, flasks, jugs, containers, squeeze bottles, jars',
    soft: 'bag, sack, pouch, collapsible, roll top | bags, sacks, pouches',
    can: 'can, canister, cartridge, cylinder, tank | cans, canisters, cartridges, cylinders, tanks',
  },
  pronoun: 'one, ones',
  notKit:
    'water treatment tabs, water treatment tablets, treatment tabs, treatment tablets, water tabs, water tablets, pan scraper, pan scaper, pine cone, pine cones, traffic cone, ice cream cone, bug shield, sun shield, face shield, heat shield blanket, dry bag, dry bags, potato, potatoes, pot ring, pot supports, pots from, water tablets, purification tablets, water purification tablets, vitamin tablets, potty, pot luck, pot noodle, pot of, pots of, pot roast, one pot meal, one pot meals, one pot noodles, one pot dinner, one pot dish, pill pot, jam pot, flower pot, plant pot, under the pot, chamber pot, travel pot, pot cleaner, pot scraper, potscraper, pot scrubber, pot scourer, pot brush, pan brush, pan scraper, pan scrubber, dish pan, dish pans, dishpan, wash pan, wash basin, sink bowl, dog bowl, dog bowls, washing up bowl, wash bowl, wash bowls, dish bowl for washing, frying pan game, pan flute, pan european, pan american, pan lane, panel, pants, pancake, pancakes, pannier, panniers, can opener, tin opener, bottle opener, bottle jack, bottle brush, bottle cage, bottle cages, bottle holder, bottle sleeve, bottle net, bottle of wine, gas lantern, gas lamp, lantern fuel, lantern gas, lamp oil, lighter fluid, lighter fuel, turn off the gas, gas money, gas station, gas mileage, gas mask, bear can, bear canister, bear cans, bear spray can, bear spray, spray can, food can, food canister, cat food can, canned, canopy, canoe, candle, canvas, mug shot, cupboard, cup holder, cup of, cups of, cup soup, cup noodles, measuring tape, pee bottle, pee bottles, pee cup, hot water bottle, hot water bottles, baby bottle, spray bottle, bottle filter, water filter, water pump, water treatment, water purifier, bladder filter, stove repair kit, stove maintenance kit, spare pump, fuel pump, fuel filter, fuel line, fuel funnel, fuel tabs for the car, windscreen wash, windscreen wiper, windshield wiper, windscreen washer, wind shell, windshirt, wind jacket, sleeping bag, stuff sack, bin bag, trash bag, food bag, tea bag, bucket fire, lid of the box, lid on, lid off, with the lid on, flipper of, spoon knife, pump bottle, soap bottle, bowl cut, coffee cups of, milk jug, stove house, kettle farm, kettle chips, gas giant, jar lid, jam jar, jam jar lid, bottle cap, bottle caps, tent stove jack, stove jack, melting pot of, mess of, half a cup, tin of, tins of, can of, cans of, bottle of, bottles of, jar of, jug of, bag of, pouch of, tank top, tank tops, gas tank of the car, think tank, water tank of the van, ground plate, tent plate, plate carrier, fork of, road fork, tuning fork, grill lighter, boiler suit, boiler room, billy goat, billy goats, billhook, pan of, solid fuel for thought, fuel for thought, fuel use, fuel consumption, cooker hood, lid of the cool box, bra cup, b cup, c cup, food for thought, bowl of, bowls of, plate of, fuel for the car, car fuel, petrol for the car, mug warmer, coffee mug holder, kettle bell, pot hole, pot belly, hotpot restaurant, can do, gas log, toilet bowl, cup cake, saucer, priming saucer, fuel tax, cup size, world cup, plate tectonics, pots and pans cleaner, dinner pot pie, pot pie, matches played, tea pot luck, burner phone, cd burner, burner account, washing up bowls, washing bowl, washing bowls, knife, knives, tarp, tarps, tent, tents, axe, hatchet, sponge, towel, tea towel, rope, compass, hammock, trowel, headlamp, head torch, chopping board, chopping boards, cutting board, cutting boards, cool box, first aid kit, filter',
  tails:
    'hose, regulator, adapter, adaptor, valve, connector, bottom, sits, stands, sit, lid lifter, scrubber, scrubbers, scraper, brush, bag, bags, sack, stuff sack, pouch, case, cases, sleeve, sleeves, cover, opener, jack, wash, pump, repair, kit bag, cage, cages, game, cleaner, soap, sponge, towel, cloth, cap, caps, holster, strap, straps, carrier, noodles, noodle, soup, mix, maintenance, tool, tools, spares, spare parts, gasket, o ring, funnel, filter, lane, farm, house, road, street',
  heads:
    'bag for, sack for, case for, sleeve for, sleeves for, cover for, brush for, soap for, strap for, box for, parts for, spares for, lighter for, hook for, find the, where is the, size of, the size of, sold as, looks like',
  asides:
    'takes, take, they carry, for, in, on, of, inside, into, onto, under, from, fits, around, over, like, as, than, by, against, out of, at, next to, through, near, beside, behind, without using, to, off, holds the, fits inside, fits in, outside, goes inside, nests in, nests inside, wraps around, which, where, when, while, if, because',
  fits: 'fits, fit, fits in, fits inside, suits, for, takes, accepts',
  otherUse:
    'bailer, bailers, lantern, lamp, lamps, lanterns, car, the van, my van, our van, camper van, campervan, truck, spray, wipes, wipe, sanitizer, sanitiser, pee, urine, food, bear, gel, sunscreen, shampoo, soap, oil, cooking oil, olive oil, vinegar, beer, wine, whisky, whiskey, bilge, bailer, first aid, toothbrush, toothpaste, dog, film, paint, lens, gear, clothes, clothing, trash, rubbish, waste, toilet, laundry, heater, torch lamp, generator, boat',
  food: 'soup, noodles, jam, honey, tea, coffee, cocoa, rice, oats, porridge, pasta, beans, milk, stew, sauce, fish, tuna, meat, cream, salve, pills, vitamins, spice, spices, salt, sugar, butter, syrup, couscous, lentils, chilli, dinner, breakfast, potatoes, bread, cheese, nuts, chocolate, curry, flour, eggs, fruit, snack, snacks, meal, meals',
  water: 'water, drinking, hydration, drink, rinse',

  materials: {
    titanium: 'titanium, ti, titan',
    aluminium: 'aluminium, aluminum, alu, alum, alloy, hard anodised, hard anodized, anodised, anodized, hardcoat, al',
    steel: 'steel, stainless, stainless steel, inox, tin plate, carbon steel, ss, s/s',
    iron: 'iron, cast iron',
    enamel: 'enamel, enamelled, enameled, enamelware',
    plastic: 'plastic, hdpe, pet, polypropylene, pp plastic, silicone, nylon, melamine, polycarbonate, rubber',
    wood: 'wood, wooden, birch, plywood, ply, bamboo, hazel, timber',
    metal: 'metal, metallic',
  },
  stoveTypes: {
    gas: 'gas, canister, butane, propane, isobutane, cartridge, can, on the can, screw on, screws on the can, screws onto, canister top, lpg, upright, remote canister',
    alcohol:
      'alcohol, spirit, meths, spirits, denatured, ethanol, methylated, soda can, drinks can, drink can, beer can, cat can, penny, priming ring',
    wood: 'can in a can, wood, twig, twigs, stick, sticks, hobo, gasifier, rocket, wood burning, wood gas, pellet, firebox, biomass',
    'liquid-fuel':
      'liquid fuel, white gas, petrol, gasoline, multi fuel, multifuel, kerosene, paraffin, naphtha, pressure, liquid, dual fuel, diesel, unleaded',
    'solid-fuel': 'solid fuel, tablet, tablets, tab, hexi, hexamine, solid, fuel tab, fuel tablet, tabs',
    integrated:
      'integrated, all in one, cook system, cooking system, pot clicks on, heat exchanger system, pot locks on, stove system, integrated system',
  },
  stoveForms: {
    upright:
      'upright, on its canister, on the canister, canister top, top, screw on, screws on, screws onto, sits on top of the can, on top of the canister, top burner',
    remote:
      'remote, remote canister, hose, with hose, spider, low profile, stands on three legs, liquid feed, invertible',
  },
  saucepans: 'pan, pans',
  fuelTypes: {
    gas: 'gas, butane, propane, isobutane, iso butane, iso pro, isopro, lpg, winter gas, butane propane, isobutane propane',
    alcohol:
      'alcohol, meths, spirit, spirits, denatured alcohol, methylated spirits, methylated spirit, ethanol, bioethanol, fuel alcohol, rubbing alcohol, surgical spirit',
    wood: 'firewood, charcoal, briquettes, pellets, twigs, kindling',
    'liquid-fuel':
      'white gas, petrol, gasoline, kerosene, paraffin, naphtha, liquid fuel, unleaded, diesel, camp fuel, stove petrol, lamp fuel for the stove',
    'solid-fuel':
      'fuel tablets, fuel tablet, fuel tabs, fuel tab, hexamine tablets, hexamine tablet, hexi tablets, hexi tabs, hexi blocks, hexi, hexamine, solid fuel tablets, solid fuel tablet, solid fuel tabs, solid fuel, tablets, tabs, fuel cubes, fuel blocks, gel fuel',
  },
  tablets: 'tablets, tablet, tabs, tab',
  gasMixes: {
    butane: 'butane',
    isobutane: 'isobutane, iso butane, iso pro, isopro, isobutane mix, isobutane propane',
    winter: 'winter gas, winter mix, four season gas, 4 season gas, cold weather gas',
    propane: 'propane',
  },
  roles: {
    gripper:
      'gripper, grippers, grabber, lifter, pot holder, pot holders, pliers, tongs, oven glove, oven gloves, oven mitt, oven mitts, hot grip, pot handle, pan handle, pan holder',
    lighter: 'lighter, lighters, fire steel, firesteel, ferro rod, striker',
    matches: 'matches, match',
    board:
      'plywood boards, stove boards, boards for the stoves, bases for the stoves, stove board, stove base, base board, stove platform, burner board, board, plywood board, plywood square, plywood base, plywood pad, piece of plywood, board for the stove, base for the stove, plate for the stove, snow plate',
    tripod: 'tripod, pot hanger, hanger, hanging kit, hanging chain, pot chain',
    foil: 'foil, aluminum foil, aluminium foil, tin foil, tinfoil, kitchen foil',
  },
  bail: 'bail, bails, bale, wire bail, wire handle, bail handle, bucket handle, swing handle, hanging handle, bow handle, swinging handle',
  hung: 'billy, billies, billy can, billy cans, billycan, billycans, billy pot, billys',
  handles:
    'handle, handles, folding handle, folding handles, side handles, butterfly handles, wing handles, fold out handles, grips, grip',
  lidded: 'lidded, covered',

  numbers: [
    [0, 'zero, nil'],
    [1, 'one'],
    [2, 'two'],
    [3, 'three'],
    [4, 'four'],
    [5, 'five'],
    [6, 'six'],
    [7, 'seven'],
    [8, 'eight'],
    [9, 'nine'],
    [10, 'ten'],
    [11, 'eleven'],
    [12, 'twelve'],
    [13, 'thirteen'],
    [14, 'fourteen'],
    [15, 'fifteen'],
    [16, 'sixteen'],
    [18, 'eighteen'],
    [20, 'twenty'],
    [21, 'twenty one'],
    [24, 'twenty four'],
    [30, 'thirty'],
    [40, 'forty'],
    [50, 'fifty'],
    [0.5, 'half, half a, half an'],
    [0.25, 'quarter, a quarter of a'],
    [0.75, 'three quarter, three quarters'],
  ],
  article: 'a, an',
  determiners:
    'the, my, it, this, that, all, each, case, total, use, camp, there, its, your, our, which, winter, summer, his, her, their',
  pieces: 'of, pcs, pc, piece, pieces, of them, off, x, nos, units, unit, ea',
  parts: 'piece, part',
  flames: 'burner, flame, ring, hob',
  countLabels: 'qty, count, quantity, number, how many',
  pair: 'pair, pairs, a couple of, couple of, pr, both, double, twin',
  packOf: 'pack of, packs of, pack, packs, box of, boxes of, packet of, packets of, set of, sets of, sleeve of',
  set: 'set, sets, nesting, nested, kit, cookset',
  each: 'each, ea, apiece, a piece, per piece, per one, @, per can, per bottle, per tablet, per mug, per cup, per spoon, per pot, per bowl, per lid',
  together: 'the pair, the lot, for both, both, all together, total, altogether, for all, in all, combined, all in',
  perPerson:
    'per person, one each, two each, three each, each, each of us, each person, each person needs, per head, a head, pp, everyone, everyone brings, everyone needs, everybody, each student, each scout, per student, every scout brings, every scout, each one brings, each brings, individual, personal kit, for everyone, one per person, apiece, p.p., /person, /pers, /pp, each scout, each participant, each member, every person, every student, per participant, personal gear, personal equipment, bring your own, personal:, individual:, individual kit, everyone has, each has, own, per scout, per child, each with own, each with their own, each with his own, each with her own, each with a, each with their, everyone with own, everybody has, each their own, each his own',
  shared:
    'shared, group, group gear, communal, common, shared gear, shared kit, group kit, group equipment, communal gear',
  perGroup: 'per, between, for every, one set per, one cook set per, to each, for each, among',

  no: 'no, without, none, not, never, w/o, minus a, lacks, nope, not any, no more, n/a, nobody',
  yes: 'yes, included, incl',
  missing: 'missing, lost, gone, broken off, not included, is missing',
  with: 'with, w/, incl, including, includes, plus, +, w, has',
  and: 'and, plus, &, +',
  or: 'or, alternatively',
  to: 'to, through',
  if: 'if, only if, when, in case',
  about:
    'about, approx, approximately, roughly, around, ca, circa, some, nearly, almost, just under, just over, a bit under',
  away: {
    left: 'at home, stays home, stays at home, leave at home, left at home, leave behind, leaving behind, left behind, leaving at home, leaving the, stay home, stays in the car, in the car, stays behind, not coming, not taking, not bringing, not packed, not carried, not in it, not_taking, what we left, left out, leave in car, leave in the car, left in the car, leave at base, stays at base, leave it home, leave it at home, leave home, left it at home, left home, leave them home, leave them at home',
    wished:
      'wish list, wishlist, wish, want to buy, would like, to buy some day, shopping list, someday, on my list, birthday, dream kit, next year, if i had the money, want',
    replaced:
      'replaced, what it replaced, getting rid of, got rid of, sold, sold mine, gave away, given away, used to, i used, old kit, before, previous, previously, went back, sent back, returned, broken, broke, died, threw out, thrown out, retired, upgrade from, instead of, outgrown, swapped, swapped for, ordered the, my niece has it, forget the, no longer',
    forbidden:
      'do not bring, don’t bring, please do not bring, banned, are banned, forbidden, not allowed, prohibited, leave these, never bring, must not bring',
    unneeded:
      'not needed, not necessary, pointless, was pointless, waste of weight, a waste of weight, don’t need, do not need, no need, unnecessary, skip, skipping, skipped, useless, not worth, decided against, no more, do i need, not for me, didn’t bring, did not bring, changed my mind, not in use, is not used, isn’t used, will not be used, won’t be used, didn’t need, did not need, never used, never used it',
    compared:
      'compared with, compared to, versus, vs, weighs only, would be, i have been told, other people, a friend carries, the alternative, considered, looked at, options, comparison, on the market, you can also buy, second cup',
  },
  carries:
    'carry, carried, carries, carrying, i take, we take, you take, to take, i’ll take, we’ll take, took, taking, bring, brought, brings, bringing, pack, packed, need, use, used, uses, consists of, consist of, is made up of, comprises',
  halfFull: 'half full, half empty',
  both: 'both, all with, each with',
  optional: 'optional, maybe, perhaps, not sure, if there is room, tbd, possibly, nice to have',

  gross: 'full, gross, new, full weight, with can, incl can, unopened, brand new',
  net: 'net, contents, fill, of gas, of fuel, filling',
  empty: 'empty',
  holds: 'holds, takes, capacity, volume, to the brim, brimful, vol, cap, size, holding, contains',
  weighs: 'weighs, weights, weight, weighing, weighed, wt, mass, on my scale, heavy',
  dimensions: {
    diameter: 'diameter, dia, diam, across, wide, width, dia., d, rim, top, across the top, mouth, in diameter',
    height: 'height, ht, high, tall, deep, depth, h, height with lid',
    base: 'base, bottom, at the bottom, at the base, base diameter',
    burner:
      'burner, burner head, head, flame, flame ring, fire chamber, burn chamber, fire pot, firepot, fire box, ring of jets, jets, flame holes, across the flame holes, combustion chamber, chamber',
    supports:
      'supports, support, arms, pot supports, prongs, circle, ring, pot ring, tip to tip, legs spread, lugs, platform, stand, square, pot platform, arms reach out, serrated arms, fins, apart',
    ignore:
      'blade, hose, cord, line, chain, thick, thickness, above, gap, board, handle, long, length, inseam, apart from, rope, cable, tube, under it, away, legs, wall, strap',
  },
  rate: 'per day, a day, per person per day, per night, a night, per meal, per litre, per liter, a boil, per boil, to boil, boil, boils, boiled, of water, litre of water, per week, a week, in the morning, every morning, in the evening, at breakfast, for dinner, minutes, per trip, in it, graduated to, of gas for, mark, times',

  columns: {
    item: 'item, items, name, gear, what, description, kit, thing, equipment, object, piece, part, article, group stuff, mine alone, stuff',
    quantity: 'qty, quantity, #, no, no., count, number, amount, pcs, how many, pieces, units, nr',
    each: 'each, ea, each (g), oz ea, oz each, unit weight, unit wt, weight each, wt each, g each, g ea, per piece, weight per item, single',
    total: 'total, all, all (g), oz tot, total weight, total wt, tot, sum, weight total, line weight, ext wt',
    mass: 'weight, wt, wt., mass, grams, gram, g, oz, ounces, lb, lbs, kg, pounds, weighs, weight (g), weight (oz), weight_kg, weight_g, g (total)',
    capacity: 'capacity, volume, vol, vol., litres, liters, l, ml, holds, cap',
    size: 'size, dimensions, dims, diameter, dia, height, width, measures, size (mm), measurements',
    unit: 'unit, units, uom',
    category: 'category, sort, type, class, section, group, kind, cat',
    material: 'material, made of',
    owner: 'who, owner, carried by, who keeps it, who brings, who got it, carrier, person, with',
    notes:
      'notes, note, remarks, remark, comment, comments, why, details, about, model, what i settled on, spec, specs, info',
    ignore:
      'price, cost, paid, link, url, brand, worn, consumable, packed, have, need, buy, got it, photo, picture, image, status, check, done, have it, maker, $, usd, eur',
  },
  sections: {
    cook: 'kitchen, cooking, cook, cook kit, cook system, cooking gear, cookware, kitchen gear, stove, stoves, pots, pots and pans, eat, eating, eat and drink, food + fire, food and fire, fire, heat, table, mess, galley, hot, burner, spirit, twigs, gas, food prep, food preparation, cooking and eating, kitchen list, kitchen bag, cook gear, cooking equipment, brew kit, cooking system, camp kitchen',
    water: 'water, hydration, drink, drinking, drinks, water treatment, water system',
    fuel: 'fuel',
    food: 'food, meals, menu, groceries, rations, provisions, snacks, food to start with, breakfast, dinner, lunch, shopping',
    clothes:
      'clothes, clothing, worn, wear, wearing, clothes in the bag, footwear, on me, mine alone, layers, worn clothing, packed clothing, rain gear, what i wear',
    sleep:
      'sleep, sleeping, bed, shelter, sleep system, tent, tent and sleep, tent & sleep, pack + roof, packs, pack, bedding, sleeping gear',
    wash: 'wash, wash bag, washing, hygiene, toiletries, toilet, bathroom, personal care, personal hygiene, cleaning',
    medicine: 'first aid, medicine, medical, meds, health, fix + first aid, first aid kit, pharmacy',
    car: 'car, vehicle, van, driving, bike, bicycle, repair, bike repair, boat',
    play: 'tags, fun, games, play, entertainment, toys, music, books, leisure',
    other:
      'tools, electronics, paper, papers, light, lights, lighting, odds, misc, miscellaneous, extras, navigation, where am i, other, ditty, ditty bag, accessories, gadgets, documents, power, photo, safety, before we go, why not, regrets, after last year, climbing, snow',
  },
  totals:
    'total, totals, sum, subtotal, sub total, all of it, grand total, adds up to, base weight, in all, all in, comes to, altogether, overall, total weight, pack weight, kitchen total, skin out, combined',

  units: {
    millilitre: 'millilitre, millilitres, milliliter, milliliters',
    centilitre: 'centilitre, centilitres, centiliter, centiliters',
    decilitre: 'decilitre, decilitres, deciliter, deciliters',
    litre: 'litre, litres, liter, liters, ltr, ltrs',
    'fluid-ounce': 'fluid ounce, fluid ounces, fl ounce, fl ounces',
    cup: 'cup, cups',
    pint: 'pint, pints',
    quart: 'quart, quarts',
    gallon: 'gallon, gallons',
    gram: 'gram, grams, gramme, grammes',
    kilogram: 'kilogram, kilograms, kilo, kilos',
    ounce: 'ounce, ounces',
    pound: 'pound, pounds',
    millimetre: 'millimetre, millimetres, millimeter, millimeters',
    centimetre: 'centimetre, centimetres, centimeter, centimeters',
    metre: 'metre, metres, meter, meters',
    inch: 'inch, inches',
    foot: 'foot, feet',
    'degree-c': 'degrees, degree, degrees c, celsius, below',
    'degree-f': 'degrees f, fahrenheit',
  },
  us: 'us, u.s., american',
  imperial: 'imperial, imp, imp., british, uk',
  imperialSigns:
    'litre, litres, aluminium, colour, enamelled, anodised, grey, metre, metres, paraffin, meths, torch, tyre, tyres, washing up, car park, whilst, favourite, billy can, head torch, rucksack, tin opener',

  trip: {
    people:
      'leaders, leader, staff, teachers, instructors, adult, kid, child, toddler, toddlers, teenager, scout, people, ppl, persons, person, pax, p, students, climbers, hikers, scouts, paddlers, skiers, walkers, of us, adults, participants, friends, members, mates, campers, team members, folks, pupils, teenagers, teens, cadets, cubs, explorers, children, guides, paddlers, man, women, men, kids, buddies, others, boys, girls, rovers, juniors, seniors, guests, clients, riders, cyclists, lads, helpers, volunteers, brownies, team, party',
    anyone: 'people, ppl, persons, person, pax, p, participants, members, folks, team, party',
    peopleBefore: 'group size, party size, for, party of, group of, team of, family of, crew of, we are, we’re',
    party: [
      [1, 'solo, alone, on my own, just me, by myself, just me this time, one person'],
      [2, 'the two of us, two of us, for two, as a couple, both of us, for the pair of us'],
      [3, 'the three of us, three of us, for three'],
      [4, 'the four of us, four of us, for four'],
      [5, 'the five of us, five of us, for five'],
      [6, 'the six of us, six of us, for six'],
      [7, 'the seven of us, seven of us'],
      [8, 'the eight of us, eight of us, for eight'],
    ],
    outing:
      'trip, trips, hike, hiking, trek, trekking, tour, touring, walk, walking, walked, hiked, expedition, journey, outing, backpacking, itinerary, trail, route, traverse, circuit, ski, skis, skiing, ski tour, canoe trip, kayak trip, paddle, paddling, climb, climbing, ride, cycling, bikepacking, weekend, course, camp, holiday, vacation, we camp, tramp, tramping, in the mountains, in the hills, out there, in the backcountry, on the river, on the lake, hut to hut',
    past: 'last weekend, last week, last month, last year, last summer, last winter, last spring, last autumn, last fall, last time, ago, yesterday, used to, years back',
    climb:
      'gain, elevation gain, ascent, total ascent, descent, climb, climbing, up and down, vertical, drop, below, under, less than',
    cookGroup: [
      [
        0,
        'cook group, cook groups, cooking group, cooking groups, cook team, cook teams, cooking team, cooking teams, mess group, mess groups, food group, food groups, tent group, tent groups, kitchen group, kitchen groups, cook unit, cook units, patrol, patrols',
      ],
      [2, 'pair, pairs, twosome, twosomes, team of two, teams of two, rope of two, ropes of two'],
    ],
    eachGroup: [
      [
        0,
        'per cook group, each cook group, every cook group, for each cook group, per cooking group, each cooking group, per cook team, each cook team, per group, each group, every group, for each group, per tent group, each tent group, per tent, each tent, every tent, per mess group, each mess group, per patrol, each patrol, every patrol, for each patrol, per rope, each rope, per rope team, each rope team, per team, each team, per kitchen, each kitchen, per boat, each boat, per canoe, each canoe, a cook group',
      ],
      [
        2,
        'per pair, each pair, every pair, for each pair, in pairs, per two, per couple, each couple, per team of two',
      ],
    ],
    self: 'me, i, myself',
    companion:
      'wife, husband, partner, girlfriend, boyfriend, dad, father, mum, mom, mother, son, daughter, brother, sister, friend, mate, buddy, pal, cousin, uncle, grandad, grandpa, kid, child, nephew, niece, granddaughter | friends, mates, buddies, pals, sons, daughters, brothers, sisters, kids, children, grandkids, grandchildren, others',
    day: 'day, days, d',
    night: 'night, nights, n',
    week: 'week, weeks',
    monthLong: 'month, months, month long',
    notDays:
      'every, food, of food, between, resupply, last, lasts, ration, rations, per, ahead, worth, do, does, did, should do, for the can, see us through, ago, later, before, old, the size of, walking, on day, day of food, sites, on sites',
    span: [
      [1, 'day walk, day hike, day trip, day out'],
      [2, 'overnighter, overnight'],
    ],
    seasons: {
      spring: 'spring',
      summer: 'summer, high summer',
      autumn: 'autumn, fall',
      winter: 'winter, winters',
    },
    months: [
      'january, jan',
      'february, feb',
      'march',
      'april, apr',
      'may',
      'june, jun',
      'july, jul',
      'august, aug',
      'september, sept, sep',
      'october, oct',
      'november, nov',
      'december, dec',
    ],
    weekday: [
      'monday, mon',
      'tuesday, tue, tues',
      'wednesday, wed',
      'thursday, thu, thurs, thur',
      'friday, fri',
      'saturday, sat',
      'sunday, sun',
    ],
    meltsSnow:
      'melt snow, melting snow, snow to melt, melting pot, snow melting, snow melt, water from snow, comes out of a snowbank, snowmelt, snow for all, snow for our water, snow for the water, snow for water, snow for drinking, water is snow, nothing but snow for water, melt water from snow, melt',
    snow: {
      new: 'new snow, fresh snow, powder snow',
      settled: 'settled snow, old snow, firn, corn snow',
      'wind-packed': 'wind packed snow, wind slab, hard snow, windpacked',
      packed: 'packed snow, pressed snow',
    },
    noSnow: 'no snow, without snow, no snow expected, snow free',
    minus: 'minus, below zero, below freezing, below, negative',
    lows: 'lows, low of, low temp, low temperature, coldest night, overnight low, overnight lows, night temp, min temp, minimum temperature, lowest, low temps, night temps, overnight temps, lowest temp',
    cold: 'low, lows, coldest, cold, expect, expected, forecast, at night, nights, night, overnight, down to, nights down to, temperature, temperatures, morning, frost, coldest_night, min, temp, temps, freezing, drops to, drop to, as low as',
    rated:
      'tent, tents, rated, rating, comfort, limit, sleeping bag, bag, quilt, bags, mat, pad, claim, duvet, boots, works down to, sulks, liner, washed at, wash at',
    altitude:
      'camp, camps, high camp, top camp, pass, passes, altitude, elevation, above sea level, summit, high, up to, hut, asl, masl, base camp, plateau, bivouac, bivvy, bivi, camping at, sleep at, night at, sleeping at, high point, col, ridge, cooking at',
    fireAllowed:
      'fires allowed, fire allowed, fire is allowed, fires are allowed, open fire, campfire allowed, campfires allowed, fires ok, fires permitted',
    fireForbidden:
      'fire ban, no fires, no fire, fires forbidden, fires are banned, no open fire, no open fires, fires not allowed, no campfires, fires are not allowed, fire bans, total fire ban',
    cookOnFire:
      'cook on the fire, cook over fire, cook over a fire, over the fire, open fire the whole time, cooking on the fire, campfire cooking, cook on fire, on an open fire',
    cookInside:
      'cook in the tent, cooking in the tent, cook in a tent, cooking in a tent, cook in our tent, cook in my tent, cook inside the tent, cooking inside the tent, cook inside, cooking inside, cook in the porch, cooking in the porch, cook in the vestibule, cooking in the vestibule, cook in the awning, cooking in the awning, cook in the hut, cooking in the hut, cook in the van, cooking in the van, cook in the snow hole, cook in the snow cave, stove in the tent, stove in the porch, stove in the vestibule, hanging kit, hanging set, hanging stove, hanging system',
    turnedOver:
      'canister stands upside down, canister upside down, upside down canister, stands upside down, canister turned over, canister inverted, inverted canister, liquid feed',
    wind: {
      calm: 'calm, no wind, windless, little wind, wind still, sheltered',
      breeze: 'breeze, breezy, light wind, light winds, moderate wind, some wind',
      windy: 'windy, strong wind, exposed, gale, gales',
    },
    youth:
      'scouts, scout, students, pupils, kids, children, patrol, troop, cubs, cadets, youth, school, year 9, class, guides, teenagers, young people, explorers',
    scratch: 'from scratch, real cooking, frying, baking, bake, fry, fry up, stews',
    simmer: 'simmer, simmering, pasta, rice, cook in the pot, one pot meals',
    boilOnly:
      'freeze dried, dehydrated, boil only, just boil, only boil water, boil water only, just add water, boiling water only, freezer bag',
  },
};
