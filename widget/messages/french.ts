import type { Words } from './en.js';

const list = new Intl.ListFormat('fr', { type: 'conjunction' });

/** What the core says. A placeholder that is printed in the English is printed here. */
const sentences: Readonly<Record<string, string>> = {
  // Room for the meal
  'Room for the meal': 'Place pour le repas',
  'One meal for {people} fits in one round.': 'Un repas pour {people} tient en une fois.',
  'The least portion fits in one round; a full one takes two.':
    'La portion minimale tient en une fois ; une pleine en demande deux.',
  'One meal for {people} fits in {pots#} pots side by side.':
    'Un repas pour {people} tient dans {pots#} casseroles côte à côte.',
  'Each has a pot of their own: the last eats {wait} after the first.':
    'Chacun a sa casserole : le dernier mange {wait} après le premier.',
  'Each has a pot of their own, and the flames are used {rounds#} times one after another.':
    'Chacun a sa casserole, et les flammes servent {rounds#} fois l’une après l’autre.',
  'A pot of {beside} beside what is there, on a flame of its own.':
    'Une casserole de {beside} à côté de ce qu’il y a, sur sa propre flamme.',
  'Flames for {flames#} pots at once.': 'Des flammes pour {flames#} casseroles à la fois.',
  'and beside it': 'et à côté',
  'The {pots#} pots, {have} in all, melt the water of {people}: {loads#} {loads:load|loads} of each a day.':
    'Les {pots#} casseroles, {have} en tout, font fondre l’eau de {people} : {loads#} {loads:charge|charges} de chacune par jour.',
  'If snow is the water, the {pots#} pots, {have} in all, melt that of {people}: {loads#} {loads:load|loads} of each a day.':
    'Si l’eau vient de la neige, les {pots#} casseroles, {have} en tout, font fondre celle de {people} : {loads#} {loads:charge|charges} de chacune par jour.',
  '{turns#} {turns:turn|turns} of {each}': '{turns#} {turns:tour|tours} de {each}',
  '{turns#} {turns:load|loads}, {litres} of water': '{turns#} {turns:charge|charges}, {litres} d’eau',
  'Open fire': 'Feu ouvert',
  'No flame known': 'Aucune flamme connue',
  '{alike#} × {name}': '{alike#} × {name}',
  '{capacity} {name}': '{name} de {capacity}',
  gas: 'gaz',
  '{grams} of {fuel}': '{grams} de {fuel}',
  'One person eats {eaten} after lighting; all is done after {done}.':
    'Une personne mange {eaten} après l’allumage ; tout est fini après {done}.',
  'One person eats {eaten} after lighting.': 'Une personne mange {eaten} après l’allumage.',
  'All {people#} eat {eaten} after lighting; all is done after {done}.':
    'Les {people#} mangent {eaten} après l’allumage ; tout est fini après {done}.',
  'All {people#} eat {eaten} after lighting.': 'Les {people#} mangent {eaten} après l’allumage.',
  'All is done {done} after lighting.': 'Tout est fini {done} après l’allumage.',
  '{wind} the open pot stops at {stalls}: with a lid it boils, and a day takes {grams} of fuel.':
    '{wind}, la casserole ouverte s’arrête à {stalls} : avec un couvercle elle bout, et un jour demande {grams} de combustible.',
  '{wind} the pot stops at {stalls}: out of the wind it boils, and a day takes {grams} of fuel.':
    '{wind}, la casserole s’arrête à {stalls} : à l’abri du vent elle bout, et un jour demande {grams} de combustible.',
  '{wind} the pot stops at {stalls}: with a lid and out of the wind it boils, for {grams} of fuel a day.':
    '{wind}, la casserole s’arrête à {stalls} : avec un couvercle et à l’abri du vent elle bout, pour {grams} de combustible par jour.',
  '{wind} the pot stops at {stalls}, with a lid and out of the wind too: there is no day to work out.':
    '{wind}, la casserole s’arrête à {stalls}, et ne bout pas non plus avec un couvercle à l’abri du vent : il n’y a pas de journée à calculer.',
  '{stalls} of {boil}': '{stalls} sur {boil}',
  'A place out of the wind, or the screen that the stove’s maker allows.':
    'Un endroit à l’abri du vent, ou le pare-vent que permet le fabricant du réchaud.',
  'A lid, and a place out of the wind.': 'Un couvercle, et un endroit à l’abri du vent.',
  'A stronger stove, or a smaller pot with a lid.':
    'Un réchaud plus puissant, ou une casserole plus petite avec couvercle.',
  'In still air': 'En air calme',
  'In a breeze': 'Sous une brise',
  'In wind': 'Sous le vent',
  'Strength of the flame': 'Force de la flamme',
  'One meal takes {rounds#} rounds.': 'Un repas se fait en {rounds#} fois.',
  'Without its size, nobody can tell whether it holds a meal.':
    'Sans sa contenance, impossible de dire si un repas y tient.',
  'There is a stove and nothing on the list to cook in.': 'Il y a un réchaud, mais rien où cuire sur la liste.',
  '{room#} of {need}': '{room#} sur {need}',
  'size not given': 'taille non donnée',
  'no pot': 'pas de popote',
  'A pot of {brim} or more.': 'Une popote de {brim} ou plus.',
  'A pot of {brim} or more. Or boil-only in this one: {boilRoom} of room.':
    'Une popote de {brim} ou plus. Ou n’y bouillir que de l’eau : {boilRoom} utiles.',
  'Add a pot of {brim} or more.': 'Ajouter une popote de {brim} ou plus.',
  '“{name}”: how much does it hold?': '« {name} » : quelle contenance ?',
  'to the brim': 'à ras bord',
  'the share that is filled, {style}': 'part remplie, {style}',
  'room in one round': 'volume utile en une fois',
  'one meal for {people}, 473–591 mL a head': 'un repas pour {people}, 473–591 mL par tête',
  'water alone': 'eau seule',
  'when it simmers': 'plat mijoté',
  'when it is cooked in': 'vraie cuisine',
  'one person': 'une personne',
  '{count#} people': '{count#} personnes',

  // Shape
  Shape: 'Forme',
  'Close to 2 : 3, the best compromise on a bail.': 'Proche de 2 : 3, le meilleur compromis sous une anse.',
  'Narrower than a pot on a bail is at its best: slow to take heat.':
    'Plus étroite que le mieux sous une anse : lente à prendre la chaleur.',
  'Wider than 2 : 3 on a bail: it takes heat well and slops sooner.':
    'Plus large que 2 : 3 sous une anse : chauffe bien et déborde plus tôt.',
  'Tall and narrow: much of the heat goes past it into the air.':
    'Haute et étroite : beaucoup de chaleur passe à côté et se perd.',
  'Wide enough for its flame and not so wide that it cools.': 'Assez large pour la flamme, pas au point de refroidir.',
  'Narrow, and right for a narrow burner with the lid on.':
    'Étroite ; c’est bien pour un brûleur étroit, couvercle mis.',
  'Narrow over a flame that spreads: heat goes up the wall.':
    'Étroite sur une flamme large : la chaleur monte le long de la paroi.',
  'Narrow and open: it heats slowly and loses heat from the top.':
    'Étroite et sans couvercle : chauffe lentement et perd par le haut.',
  'Pan-shaped: it slops when moved and cools quickly.':
    'En forme de poêle : déborde quand on la bouge et refroidit vite.',
  'Without width and height, its shape cannot be judged.': 'Sans largeur ni hauteur, la forme ne peut se juger.',
  'Narrow; whether that costs heat hangs on the stove.': 'Étroite ; que cela coûte ou non dépend du réchaud.',
  '{ratio} as wide as tall': '{ratio} de large pour 1 de haut',
  'At this height a pot {width} across.': 'À cette hauteur, une popote large de {width}.',
  'At this width a pot {lower} tall or more.': 'À cette largeur, une popote haute de {lower} ou plus.',
  '“{name}”: how wide and how tall is it, outside?': '« {name} » : quelles largeur et hauteur, à l’extérieur ?',
  'What does the stove burn?': 'Que brûle le réchaud ?',
  'width at the rim': 'largeur au bord',
  height: 'hauteur',
  'as wide as tall': 'de large pour 1 de haut',
  'wall for each base area, 4 × height ÷ width: the share of the pot that only hot air touches':
    'paroi par surface de fond, 4 × hauteur ÷ largeur : la part que seul l’air chaud touche',

  // Fit on the stove
  'Fit on the stove': 'Accord avec le réchaud',
  'The base suits the burner.': 'Le fond convient au brûleur.',
  'Flame goes up the wall: heat is lost and the handles get hot.':
    'La flamme monte le long de la paroi : chaleur perdue, poignées brûlantes.',
  'The flame is nearly as wide as the pot: most of it goes past.':
    'La flamme est presque aussi large que la popote : le gros passe à côté.',
  'The pot is wider than this burner heats evenly.':
    'La popote est trop large pour que ce brûleur la chauffe uniformément.',
  'The base barely spans the gap between the arms: it can drop or slide.':
    'Le fond couvre à peine l’écart entre les bras : il peut passer au travers ou glisser.',
  'The base reaches far over the arms: it stands loosely.': 'Le fond déborde loin des bras : la popote tient mal.',
  'A base this wide sends heat down onto an upright canister, which can burst.':
    'Un fond si large renvoie la chaleur vers la cartouche dessous, qui peut éclater.',
  'No burner width is given: this pot suits a burner of {burners}.':
    'Largeur du brûleur non donnée : à cette popote convient un brûleur de {burners}.',
  'Without its width, nobody can tell whether the pot suits the burner.':
    'Sans sa largeur, impossible de dire si la popote convient au brûleur.',
  '{ratio#} of {band} burners': '{ratio#} sur {band} largeurs de brûleur',
  '{base#} of {band}': '{base#} sur {band}',
  'width not given': 'largeur non donnée',
  'A pot of {pots} across, or a burner of {burners}.': 'Une popote large de {pots}, ou un brûleur de {burners}.',
  'A pot {atLeast} across or more, or a burner of {gasBurner} or less.':
    'Une popote large de {atLeast} ou plus, ou un brûleur de {gasBurner} ou moins.',
  'A pot {atLeast} across or more, or a grate over the arms.':
    'Une popote large de {atLeast} ou plus, ou une grille sur les bras.',
  'A pot {atMost} across or less, or a stove with wider arms.':
    'Une popote large de {atMost} ou moins, ou un réchaud aux bras plus larges.',
  'A pot {atMost} across or less, or a stove on a hose.':
    'Une popote large de {atMost} ou moins, ou un réchaud à tuyau.',
  'If the canister feels warm, turn the stove off and let it cool.':
    'Si la cartouche semble chaude, éteindre le réchaud et laisser refroidir.',
  'Boiling water burns in a second. Keep feet and hands clear of a pot that stands badly.':
    'L’eau bouillante brûle en une seconde. Pieds et mains à l’écart d’une popote qui tient mal.',
  'How wide is the burner or its fire-pot?': 'Quelle est la largeur du brûleur ou de son foyer ?',
  '“{name}”: how wide is it at the base?': '« {name} » : quelle largeur de fond ?',
  'base of the pot': 'fond de la popote',
  burner: 'brûleur',
  'burners wide': 'largeurs de brûleur',
  'burner and 10 mm a side': 'brûleur et 10 mm de chaque côté',
  'gap between the arms and 15 mm': 'écart entre les bras et 15 mm',
  '1.6 times the span of the arms': '1,6 fois l’envergure des bras',

  // Stated capacity
  'Stated capacity': 'Contenance annoncée',
  'Stated capacity and dimensions agree.': 'Contenance annoncée et dimensions concordent.',
  'Stated capacity and dimensions agree loosely; a rounded or lipped pot may be so.':
    'Contenance annoncée et dimensions concordent à peu près ; une popote arrondie ou à rebord peut être ainsi.',
  '{outside} outside is much for a pot that states {stated}. Which is right?':
    '{outside} à l’extérieur, c’est beaucoup pour {stated} annoncés. Lequel est juste ?',
  '{stated} cannot fit in {size}. Which is right?': '{stated} ne tiennent pas dans {size}. Lequel est juste ?',
  '{stated} stated, {outside} outside': '{stated} annoncés, {outside} à l’extérieur',
  '“{name}”: how much does it hold, filled to the brim?': '« {name} » : quelle contenance, à ras bord ?',
  'outside volume, {size}': 'volume extérieur, {size}',
  stated: 'annoncé',
  'outside to stated': 'extérieur sur annoncé',

  // Sturdiness
  Sturdiness: 'Solidité',
  'A drink can for a pot dents and splits.': 'Une canette en guise de popote se bosselle et se fend.',
  '{width#} × {height} at {mass} is a drink can: it dents and splits.':
    '{width#} × {height} pour {mass}, c’est une canette : elle se bosselle et se fend.',
  '{mass} for {capacity} is as thin as a drink can: it dents and splits.':
    '{mass} pour {capacity}, c’est mince comme une canette : cela se bosselle et se fend.',
  'a drink can': 'une canette',
  '{ratio#} of {least}': '{ratio#} sur {least}',
  'A pot made for cooking.': 'Une popote faite pour cuire.',
  'A pot of this size that weighs {heavier} or more.': 'Une popote de cette taille, de {heavier} ou plus.',
  mass: 'poids',
  'mass for what it holds': 'poids pour la contenance',

  // Material
  Material: 'Matière',
  'A pot of {material} over a flame melts or burns.': 'Sur la flamme, un récipient en {material} fond ou brûle.',
  'Bare titanium has hot spots: what simmers or fries in it scorches.':
    'Le titane nu a des points chauds : ce qui y mijote ou y frit attache.',
  'Bare titanium has hot spots: dry snow in it scorches and tastes of it.':
    'Le titane nu a des points chauds : la neige sèche y brûle et en prend le goût.',
  'Aluminium over a fire: empty, it can melt through.': 'Aluminium sur le feu : vide, il peut fondre et percer.',
  'The pot of {material} takes this cooking.': 'Une popote en {material} supporte cette cuisine.',
  'What the pot is made of is not said: bare titanium scorches, other metals seldom.':
    'La matière de la popote n’est pas dite : le titane nu attache, les autres métaux rarement.',
  '{material}': '{material}',
  '{material}, to {use}': '{material}, pour {use}',
  '{material}, at a fire': '{material}, au feu de bois',
  'material not given': 'matière non donnée',
  'A pot of steel, enamel or aluminium.': 'Une popote en acier, émail ou aluminium.',
  'A pot of steel, enamel or aluminium. Or boil-only in this one.':
    'Une popote en acier, émail ou aluminium. Ou n’y bouillir que de l’eau.',
  'A pot of steel or enamel.': 'Une popote en acier ou émail.',
  'A pot of dry snow scorches on any stove. Start with water in it, feed the snow, stir.':
    'La neige sèche brûle sur tout réchaud. Commencer avec un peu d’eau, ajouter la neige, remuer.',
  'An empty pot over a fire heats in moments. Fill it first, then hang it.':
    'Une popote vide sur le feu chauffe en quelques instants. La remplir d’abord, la suspendre ensuite.',
  'What is it made of?': 'En quelle matière est-elle ?',
  simmer: 'mijoter',
  'cook from scratch': 'vraiment cuisiner',
  'melt snow': 'faire fondre la neige',
  titanium: 'titane',
  aluminium: 'aluminium',
  steel: 'acier',
  iron: 'fer',
  enamel: 'émail',
  plastic: 'plastique',
  wood: 'bois',

  // Hanging
  Hanging: 'Suspension',
  'It may lean {spill} on its bail before it spills.': 'Sous l’anse, elle peut pencher de {spill} avant de déborder.',
  'It spills at {spill} on its bail: it slops when touched.':
    'Sous l’anse, elle déborde à {spill} : au moindre contact.',
  'It spills at {spill} on its bail: nobody carries that without slopping.':
    'Sous l’anse, elle déborde à {spill} : personne ne la porte sans en renverser.',
  'Its weight hangs above the ears of the bail: it turns over.':
    'Son poids est au-dessus des attaches de l’anse : elle se retourne.',
  '{spill} to the spill': '{spill} avant de déborder',
  '{metacentric} below the ears': '{metacentric} sous les attaches',
  'Fill it to {lessFill} at most: {costsUnder} to the spill.':
    'La remplir de {lessFill} au plus : {costsUnder} avant de déborder.',
  'Ears nearer the rim, or less water in it.': 'Des attaches plus près du bord, ou moins d’eau.',
  'Boiling water burns in a second. Lift it off with a stick through the bail, low, and away from legs.':
    'L’eau bouillante brûle en une seconde. La retirer avec un bâton passé dans l’anse, bas, loin des jambes.',
  'from the fill line to the rim': 'du niveau au bord',
  'half the width': 'demi-largeur',
  'leans before it spills, the arc of that slope': 'pente avant de déborder, en degrés',
  'ears above the middle of the water': 'attaches au-dessus du milieu de l’eau',
  'the free surface, r² ÷ 4h': 'la surface libre, r² ÷ 4h',
  'weight acts below the ears': 'le poids agit sous les attaches',

  // Standing
  Standing: 'Stabilité',
  'It goes over at {tip}, before it spills.': 'Elle bascule à {tip}, avant même de déborder.',
  'It spills at {spill} and goes over at {tip}.': 'Elle déborde à {spill} et bascule à {tip}.',
  'It leans {tip} before it goes over.': 'Elle penche de {tip} avant de basculer.',
  '{tip} of {least}, before it tips': '{tip} sur {least} avant de basculer',
  'Feet {feet} across, or fill it less.': 'Des pieds larges de {feet}, ou la remplir moins.',
  'A stove with arms {feet} across, or fill it less.': 'Un réchaud aux bras larges de {feet}, ou la remplir moins.',
  'Boiling water burns in a second. Cook on the ground, sit to one side of the pot, keep feet clear.':
    'L’eau bouillante brûle en une seconde. Cuisiner au sol, s’asseoir à côté de la popote, pieds à l’écart.',
  'from the middle to the edge it goes over': 'du milieu à l’arête où elle bascule',
  'height of the filled pot’s weight, about': 'hauteur du centre de gravité, remplie, environ',
  'leans before it tips, its water running to the low side': 'pente avant de basculer, l’eau coulant du côté bas',
  'leans before it spills': 'pente avant de déborder',

  // Lifting
  Lifting: 'Soulever la popote',
  'It is lifted by {grips}.': 'On le soulève avec : {grips}.',
  'Nothing on it or beside it lifts the full pot.': 'Rien sur elle ni à côté ne soulève la popote pleine.',
  'Full it is {filled}, too much for {grips}.': 'Plein, il pèse {filled}, trop pour : {grips}.',
  'Full it is {filled} on a bail: two people lift it, on a stick.':
    'Plein, il pèse {filled} sur une anse : on le soulève à deux, avec un bâton.',
  'Full it is {filled}: too heavy for anyone to lift while it boils.':
    'Plein, il pèse {filled} : trop lourd pour qu’on le soulève bouillant.',
  'Nothing says how it is lifted when full.': 'Rien ne dit comment la soulever pleine.',
  '{filled#} of {limit}, lifted full': '{filled#} sur {limit}, soulevé plein',
  '{holds#} of {limitL}, lifted full': '{holds#} sur {limitL}, soulevé plein',
  'no grip': 'aucune prise',
  'no handle named': 'aucune poignée nommée',
  'A gripper, or a pot with a bail or handles.': 'Une pince, ou une popote avec une anse ou des poignées.',
  'A pot with a handle on either side. Or fill it to {least} at most.':
    'Une popote avec une poignée de chaque côté. Ou la remplir à {least} au plus.',
  'A pot with a handle on either side.': 'Une popote avec une poignée de chaque côté.',
  'Ladle it out where it stands. Or fill it to {least} at most.':
    'La vider à la louche là où elle est. Ou la remplir à {least} au plus.',
  'Ladle it out where it stands.': 'La vider à la louche là où elle est.',
  '“{name}”: has it a handle, a bail or a gripper?': '« {name} » : une poignée, une anse ou une pince ?',
  'Boiling water burns in a second. Set cups on the ground to pour, and keep feet clear.':
    'L’eau bouillante brûle en une seconde. Poser les tasses au sol pour verser, pieds à l’écart.',
  'a bail': 'une anse',
  'two handles': 'deux poignées',
  'one handle': 'une poignée',
  'a gripper': 'une pince',
  'water to the brim, and the pot': 'l’eau à ras bord, et la popote',
  'the most that {grips} may lift': 'le plus que soulève : {grips}',
  'the most that {grips} may hold': 'le plus que tient : {grips}',

  // At the fire
  'At the fire': 'Au feu de bois',
  'The bail hangs it over the fire and hooks it off.': 'L’anse la suspend au-dessus du feu et permet de la décrocher.',
  'No bail: nothing to hang it by or to hook it off the fire.':
    'Pas d’anse : rien pour la suspendre ni la décrocher du feu.',
  'No bail: the pot comes off by hand each time the stove is fed.':
    'Pas d’anse : la popote s’ôte à la main chaque fois qu’on recharge.',
  'Nothing says whether it has a bail.': 'Rien ne dit si elle a une anse.',
  'Fires are said to be forbidden where this kit cooks on one.':
    'Les feux sont dits interdits là où ce matériel cuit sur un feu.',
  bail: 'anse',
  'no bail': 'pas d’anse',
  'bail not named': 'anse non nommée',
  'no fires': 'feux interdits',
  'A pot with a bail, or a wire through two holes under the rim.':
    'Une popote à anse, ou un fil de fer dans deux trous sous le bord.',
  'A gas or spirit stove, where local rules allow it.': 'Un réchaud à gaz ou à alcool, là où les règles le permettent.',
  '“{name}”: has it a bail, a handle that swings over the top?': '« {name} » : une anse, qui se rabat par-dessus ?',

  // Lid
  Lid: 'Couvercle',
  'It has a lid.': 'Elle a un couvercle.',
  'No lid: an open pot gives away heat and spills at once.':
    'Pas de couvercle : une popote ouverte perd sa chaleur et déborde aussitôt.',
  'No lid: near the boil the open top gives away {watts}, {grams} of fuel an hour.':
    'Pas de couvercle : près de l’ébullition, {watts} partent par le haut, {grams} de combustible par heure.',
  'No lid to melt snow under: the heat goes into the cold.':
    'Pas de couvercle pour faire fondre la neige : la chaleur part dans le froid.',
  'Nothing says whether it has a lid.': 'Rien ne dit si elle a un couvercle.',
  lid: 'couvercle',
  'no lid': 'pas de couvercle',
  'A lid of any kind: foil or a plate will do.': 'N’importe quel couvercle : papier alu ou assiette suffisent.',
  '“{name}”: has it a lid?': '« {name} » : avec un couvercle ?',
  'lost by open water at 95 °C in still air': 'perte d’une eau découverte à 95 °C, air calme',
  'open top': 'surface ouverte',
  'given away': 'perdu',
  'saved by a lid: 6 % over a whole pasta cook, 30 % on hobs; the loss above is used':
    'gagné par un couvercle : 6 % sur toute une cuisson de pâtes, 30 % sur plaques ; le calcul prend la perte ci-dessus',

  // Melting snow
  'Melting snow': 'Faire fondre la neige',
  'If snow is the water, a {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Si l’eau vient de la neige, une popote de {have} fond assez de neige pour {people} : {loads#} {loads:charge|charges} par jour.',
  'A {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Une popote de {have} fond assez de neige pour {people} : {loads#} {loads:charge|charges} par jour.',
  'A {have} pot means {loads#} {loads:load|loads} of snow a day.':
    'Une popote de {have}, c’est {loads#} {loads:charge|charges} de neige par jour.',
  'If snow is the water, a {have} pot means {loads#} {loads:load|loads} a day.':
    'Si l’eau vient de la neige, une popote de {have}, c’est {loads#} {loads:charge|charges} par jour.',
  'A {have} pot is small to melt the water of {people}.':
    'Une popote de {have} est petite pour faire fondre la neige de {people}.',
  'A {have} pot is large enough to melt the water of {people}.':
    'Une popote de {have} est assez grande pour faire fondre la neige de {people}.',
  'If snow is the water, a {have} pot is small to melt the water of {people}.':
    'Si l’eau vient de la neige, une popote de {have} est petite pour {people}.',
  'If snow is the water, a {have} pot is large enough for {people}.':
    'Si l’eau vient de la neige, une popote de {have} est assez grande pour {people}.',
  'No pot to melt snow in: none of metal.': 'Pas de popote où faire fondre la neige : aucune en métal.',
  'If snow is the water, there is no pot to melt it in: none of metal.':
    'Si l’eau vient de la neige, pas de popote où la faire fondre : aucune en métal.',
  'Without its size, nobody can tell whether it melts enough snow.':
    'Sans sa contenance, impossible de dire si elle fond assez de neige.',
  'If snow is the water, nobody can tell without its size whether the pot melts enough.':
    'Si l’eau vient de la neige, impossible de dire sans sa contenance si la popote en fond assez.',
  '{have} of {need}': '{have} sur {need}',
  '{have} of {wanted}': '{have} sur {wanted}',
  'no melt pot': 'pas de popote à neige',
  'A lidded metal pot of {better} or more: {betterLoads#} {betterLoads:load|loads}.':
    'Une popote en métal à couvercle de {better} ou plus : {betterLoads#} {betterLoads:charge|charges}.',
  'Add a lidded metal pot of {wanted}.': 'Ajouter une popote en métal à couvercle de {wanted}.',
  'A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.':
    'La neige sèche brûle. Commencer avec un peu d’eau, ajouter la neige de sorte qu’elle reste en bouillie, couvercle mis.',
  'no metal pot': 'pas de popote en métal',
  'a day, {each} for {people}': 'par jour, {each} chacun, {people}',
  'the pot, to the brim': 'la popote, à ras bord',
  'water in {snow} snow, by volume': 'eau dans la neige {snow}, en volume',
  'loads a day': 'charges par jour',
  'over the stove a day': 'au réchaud par jour',
  'fuel a day': 'combustible par jour',
  'hand-packed': 'pressée à la main',
  settled: 'tassée',
  'wind-packed': 'soufflée',
  new: 'fraîche',

  // Stove and fuel
  'Stove and fuel': 'Réchaud et combustible',
  'The stove burns what is carried: {burns}.': 'Le réchaud brûle ce qui est emporté : {burns}.',
  'The stove burns {burns}; the list carries {carried}.':
    'Combustible du réchaud : {burns} ; sur la liste : {carried}.',
  'There is a stove, and nothing on the list for it to burn.': 'Il y a un réchaud, mais rien à y brûler sur la liste.',
  'Fuel is carried ({carried}), and no stove on the list burns it.':
    'Du combustible est emporté ({carried}), et aucun réchaud de la liste ne le brûle.',
  'Nothing on the list burns in the stove on {burns}.': 'Rien sur la liste ne brûle dans ce réchaud ({burns}).',
  'No stove on the list burns the {carried}.': 'Aucun réchaud de la liste ne brûle cela ({carried}).',
  'no stove': 'pas de réchaud',
  'A stove for {carried}. Or add the line of the stove, if it is carried.':
    'Un réchaud pour {carried}. Ou ajouter la ligne du réchaud, s’il est emporté.',
  'Carry {burns} for it, or leave it at home.': 'Emporter de quoi l’alimenter ({burns}), ou le laisser à la maison.',
  'A stove for it, or leave it at home.': 'Un réchaud pour cela, ou le laisser à la maison.',
  '{burns}': '{burns}',
  '{carried} for a stove on {burns}': '{carried}, et non {burns}',
  'no fuel named': 'aucun combustible nommé',
  'Carry {burns} for this stove, or the stove for this fuel.':
    'Pour ce réchaud : {burns}. Ou le réchaud de ce combustible.',
  'What does the stove burn, and how much of it is carried?': 'Que brûle le réchaud, et combien en est emporté ?',
  'no fuel': 'pas de combustible',
  'canister gas': 'gaz en cartouche',
  alcohol: 'alcool',
  'liquid fuel': 'combustible liquide',
  'solid fuel': 'combustible solide',

  // Fuel carried
  'Fuel carried': 'Combustible emporté',
  'The fuel lasts {days#} {days:day|days} with a quarter to spare.':
    'Le combustible dure {days#} {days:jour|jours}, avec un quart de réserve.',
  'The fuel covers the likely need for {days#} {days:day|days} and leaves little over.':
    'Le combustible couvre le besoin probable de {days#} {days:jour|jours} et laisse peu de reste.',
  'The fuel runs short of {days#} {days:day|days}.': 'Le combustible ne suffit pas pour {days#} {days:jour|jours}.',
  'It covers {days#} {days:day|days} from streams and not from snow.':
    'Le combustible suffit pour {days#} {days:jour|jours} avec l’eau des ruisseaux, pas avec la neige.',
  'It lasts {lasts#} {lasts:day|days}; nothing says how long the trip is.':
    'Le combustible dure {lasts#} {lasts:jour|jours} ; rien ne dit la durée de la sortie.',
  'Nothing says how much fuel is carried; {days#} {days:day takes|days take} about {need}.':
    'Rien ne dit combien de combustible est emporté ; {days#} {days:jour demande|jours demandent} environ {need}.',
  '{carried} of {need}': '{carried} sur {need}',
  'amount not given': 'quantité non donnée',
  'Carry {more} more, about {wanted} in all.': 'Emporter {more} de plus, environ {wanted} en tout.',
  'How many days is the trip?': 'Combien de jours dure la sortie ?',
  '“{name}”: how much fuel is in it?': '« {name} » : combien de combustible dedans ?',
  'Will the water come from streams, or from snow?': 'L’eau viendra-t-elle de ruisseaux ou de la neige ?',
  'fuel a day, {low} to {high}': 'combustible par jour, {low} à {high}',
  days: 'jours',
  'likely need': 'besoin probable',
  'a quarter to spare': 'un quart de réserve',
  wanted: 'à prévoir',
  'carried, net': 'emporté, net',

  // Gas in the cold
  'Gas in the cold': 'Le gaz au froid',
  'At {low} the gas leaves the canister until it is nearly empty.':
    'À {low}, le gaz sort de la cartouche jusqu’à ce qu’elle soit presque vide.',
  'At {low} the canister gives liquid gas, turned over as the list says.':
    'À {low}, la cartouche donne du gaz liquide, retournée comme le dit la liste.',
  'At {low} the gas leaves the canister at first; it fades when {used} is used.':
    'À {low}, le gaz sort d’abord de la cartouche ; il faiblit quand {used} sont consommés.',
  'At {low} one canister still gives gas and another, {gas}, gives none or fades sooner.':
    'À {low}, une cartouche donne encore du gaz ; une autre ({gas}) n’en donne pas ou faiblit plus tôt.',
  'At {low} the gas barely leaves the canister.': 'À {low}, le gaz sort à peine de la cartouche.',
  '{gas} stays liquid below {liquid} at {altitude}; at {canister} none comes out.':
    '{gas} reste liquide sous {liquid} à {altitude} ; à {canister}, rien ne sort.',
  'At {low} no canister gas vaporises.': 'À {low}, aucun gaz en cartouche ne s’évapore.',
  'At {low} the canister has to be turned upside down, on a stove made for that.':
    'À {low}, la cartouche doit être retournée, sur un réchaud fait pour cela.',
  'At {low} it depends on the mix: butane stays liquid, a winter mix burns.':
    'À {low}, tout dépend du mélange : le butane reste liquide, un mélange d’hiver brûle.',
  '{pressure#} of {wanted}, from nearly empty to full': '{pressure#} sur {wanted}, de presque vide à pleine',
  'A canister of isobutane and propane: {better} at {low}. Or keep it warm.':
    'Une cartouche d’isobutane et propane : {better} à {low}. Ou la garder au chaud.',
  'A stove on a hose that takes liquid gas, or a petrol stove.':
    'Un réchaud à tuyau qui prend le gaz liquide, ou un réchaud à essence.',
  'A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.':
    'Une cartouche chauffée sur une flamme peut éclater. La réchauffer sous la veste, ou dans une eau que la main supporte.',
  'Plain butane': 'Le butane pur',
  'An isobutane mix': 'Un mélange à l’isobutane',
  'A winter mix': 'Un mélange d’hiver',
  Propane: 'Le propane',
  'What does the canister hold: butane, isobutane mix, winter mix?':
    'Que contient la cartouche : butane, mélange à l’isobutane, mélange d’hiver ?',
  'pressure in the canister at {canister}, from nearly empty to full; in use it is colder than the air':
    'pression dans la cartouche à {canister}, de presque vide à pleine ; en marche elle est plus froide que l’air',
  'the air at this altitude': 'l’air à cette altitude',
  'over the air, to run well': 'au-dessus de l’air, pour bien marcher',
  'This mix': 'Ce mélange',
  'what the pot weighs': 'ce que pèse la popote',
  'its mass is not given, and pots like it weigh about so much':
    'son poids n’est pas donné, et de telles popotes pèsent à peu près autant',
  'give its mass': 'donner son poids',
  'Guideline 9.1.3 of ANZCOR says 20 minutes at least.': 'La recommandation 9.1.3 d’ANZCOR dit 20 minutes au moins.',
  'A gripper lifts about 2 L or 2.5 kg; more takes a handle on either side, or two people and a stick through the bail; what weighs 10 kg full is ladled out where it stands':
    'Une pince soulève environ 2 L ou 2,5 kg ; au-delà il faut une poignée de chaque côté, ou deux personnes et un bâton dans l’anse ; ce qui pèse 10 kg plein se vide à la louche sur place',
  'Pots weigh 0.12–0.18 g for each mL in titanium, 0.15–0.3 in aluminium, 0.25–0.6 in steel, 1 g and more in iron':
    'Les popotes pèsent par ml 0,12–0,18 g en titane, 0,15–0,3 en aluminium, 0,25–0,6 en acier, 1 g et plus en fonte',
  'The law as textbooks of distillation give it; the paper itself was not seen.':
    'La loi telle que la donnent les manuels de distillation ; l’article lui-même n’a pas été vu.',
  'The abstract was read, not the paper.': 'Le résumé a été lu, non l’article.',

  // Alcohol in the cold
  'Alcohol in the cold': 'L’alcool au froid',
  'An alcohol stove at {low} lights slowly and heats slowly.':
    'À {low}, un réchaud à alcool s’allume lentement et chauffe lentement.',
  'Melting snow on alcohol is slow and takes much fuel; it is not impossible.':
    'Faire fondre la neige à l’alcool est lent et gourmand ; ce n’est pas impossible.',
  'If snow is the water, alcohol melts it slowly and with much fuel; it is not impossible.':
    'Si l’eau vient de la neige, l’alcool la fait fondre lentement et à grands frais ; ce n’est pas impossible.',
  'If snow is the water, alcohol melts it in {minutes} and {grams} a day: slow, not impossible.':
    'Si l’eau vient de la neige, l’alcool la fait fondre en {minutes} et {grams} par jour : lent, pas impossible.',
  'Melting snow on alcohol takes {minutes} and {grams} a day; it is slow, not impossible.':
    'Faire fondre la neige à l’alcool demande {minutes} et {grams} par jour : lent, pas impossible.',
  '{low}, alcohol': '{low}, alcool',
  'snow on alcohol': 'neige à l’alcool',
  'Carry the bottle warm and screen the burner. Or a gas or petrol stove made for the cold.':
    'Porter le flacon au chaud et abriter le brûleur. Ou un réchaud à gaz ou à essence fait pour le froid.',

  // Something to light it
  'Something to light it': 'De quoi allumer',
  'Something to light the stove with: {what}.': 'De quoi allumer le réchaud : {what}.',
  'Nothing on the list lights the flame.': 'Rien sur la liste pour allumer la flamme.',
  'One thing to light the stove with, {what}: in the snow a second means, kept apart from it, is usual.':
    'Un seul moyen d’allumer, {what} : dans la neige, l’usage est d’en avoir un second, rangé à part.',
  '{have#} on the list': '{have#} sur la liste',
  'none on the list': 'rien sur la liste',
  'Add a lighter, and matches kept dry apart from it.': 'Ajouter un briquet, et des allumettes gardées au sec, à part.',
  'no lighter, no matches': 'ni briquet ni allumettes',
  'a lighter': 'un briquet',
  matches: 'des allumettes',
  'a lighter and matches': 'un briquet et des allumettes',

  // Water carried
  'Water carried': 'Eau emportée',
  'Room for {have} of water.': 'De quoi porter {have} d’eau.',
  'Room for {have} of water, filled again on the way.': 'De quoi porter {have} d’eau, à remplir en route.',
  'Room for {have} of water: water has to be near.': 'De quoi porter {have} d’eau : il en faut à proximité.',
  'Nothing on the list carries water.': 'Rien sur la liste pour porter l’eau.',
  'Nothing says how much water the {count} {count:piece holds|pieces hold}.':
    'Rien ne dit combien d’eau tient dans {count} {count:contenant|contenants}.',
  'no bottle': 'pas de gourde',
  'Room for {more} more.': 'De quoi porter {more} de plus.',
  'Add bottles or a bladder for {need}.': 'Ajouter des gourdes ou une poche à eau pour {need}.',
  'no bottle, no bladder': 'ni gourde ni poche à eau',
  'carried in all': 'porté en tout',
  people: 'personnes',
  'a day and a night, each': 'un jour et une nuit, chacun',
  'room wanted': 'volume à prévoir',

  // Boiling drinking water
  'Boiling drinking water': 'Faire bouillir l’eau à boire',
  'Water boils at {boil} here. Keep it at a rolling boil for {minutes} before anyone drinks it.':
    'L’eau bout ici à {boil}. La garder à gros bouillons {minutes} avant d’en boire.',
  '{minutes} at a rolling boil': '{minutes} à gros bouillons',
  'Of three published rules the longest is used: {high} above {above}. Others say {high} above {elsewhere}, or that reaching a rolling boil is enough at any altitude.':
    'De trois règles publiées, la plus longue est suivie : {high} au-dessus de {above}. D’autres disent {high} au-dessus de {elsewhere}, ou qu’atteindre les gros bouillons suffit à toute altitude.',
  'Boiling kills germs. It takes out no poison, fuel or salt: leave water that may hold those.':
    'Bouillir tue les germes. Cela n’enlève ni poison, ni combustible, ni sel : laisser l’eau qui peut en contenir.',
  'where they cook': 'là où l’on cuisine',
  'boiling point there': 'point d’ébullition en ce lieu',

  // A hot meal a day
  'A hot meal a day': 'Un repas chaud par jour',
  'A hot meal of {portion} a person each day.': 'Un repas chaud de {portion} par personne chaque jour.',
  'Less than one hot meal a day: some {kcal} a day is bearable for {days#} days at most, and only with one.':
    'Moins d’un repas chaud par jour : environ {kcal} par jour se supportent {days#} jours au plus, et seulement avec un.',
  'Nothing to heat a meal in: some {kcal} a day is bearable for {days#} days at most, and only with a hot meal.':
    'Rien où chauffer un repas : environ {kcal} par jour se supportent {days#} jours au plus, et seulement avec un repas chaud.',
  '{meals#} of {least#} hot meals a day': '{meals#} sur {least#} repas chaud par jour',
  'hot meals a day: {meals#}': 'repas chauds par jour : {meals#}',
  'One hot meal of {portion} a person a day.': 'Un repas chaud de {portion} par personne et par jour.',
  'A pot and a stove, for one hot meal of {portion} a person a day.':
    'Une popote et un réchaud, pour un repas chaud de {portion} par personne et par jour.',
  'hot meals a day': 'repas chauds par jour',
  'one meal, from the least to a full portion': 'un repas, de la portion minimale à la pleine',
  'hot food a person a day': 'nourriture chaude par personne et par jour',

  // Something to eat from
  'Something to eat from': 'De quoi manger',
  'Something to eat from for {people#} {people:person|people}.':
    'Bols ou tasses pour {people#} {people:personne|personnes}.',
  'Something to eat from for {have#} of {people#}: the rest wait their turn.':
    'Bols ou tasses pour {have#} sur {people#} : les autres attendent leur tour.',
  'How many pieces “{name}” are is not said: {have#} of {people#} are sure to have something to eat from.':
    'Le nombre n’est pas dit pour « {name} » : {have#} sur {people#} ont à coup sûr de quoi manger.',
  '{have#} of {people#}': '{have#} sur {people#}',
  '{more#} more {more:bowl or mug|bowls or mugs}.': '{more#} {more:bol ou tasse|bols ou tasses} de plus.',
  'How many {name} are there?': 'Combien y en a-t-il : {name} ?',
  'bowls and mugs': 'bols et tasses',
  'eat from the pot': 'mangent dans la popote',
  'pots of their own': 'popotes personnelles',
  'have something to eat from': 'ont de quoi manger',

  // Boiling water
  'Boiling water': 'Eau bouillante',
  'Young people around {water} of boiling water: it burns in {fast} or less, and cooled to {cooled} still in {slow}.':
    'Des jeunes autour de {water} d’eau bouillante : elle brûle en {fast} ou moins, en {slow} encore à {cooled}.',
  '{water} at {boil}': '{water} à {boil}',
  'A ladle and a pot that stays put. Or fills under {limit}.':
    'Une louche et une popote qui ne bouge pas. Ou des remplissages sous {limit}.',
  'Cups stand on the ground to be filled. Feet stay clear, and one person alone handles the pot.':
    'Les tasses se remplissent posées au sol. Pieds à l’écart ; une seule personne manie la popote.',
  'A burn: cool running water, wet clothing off, cover it; blisters on face, hands or feet need a doctor.':
    'En cas de brûlure : eau courante fraîche, vêtements mouillés ôtés, couvrir ; cloques au visage, aux mains ou aux pieds, voir un médecin.',
  'the share that is filled': 'part remplie',
  'of boiling water': 'd’eau bouillante',

  // Air to cook in
  'Air to cook in': 'L’air où l’on cuisine',
  'Cook outside: a stove in a tent, a porch, a hut or a van fills it with carbon monoxide.':
    'Cuisiner dehors : un réchaud dans une tente, une abside, une cabane ou un fourgon les remplit de monoxyde de carbone.',
  'The list speaks of cooking inside: a stove fills a tent, a porch, a hut or a van with carbon monoxide.':
    'La liste parle de cuisiner à l’intérieur : un réchaud remplit une tente, une abside, une cabane ou un fourgon de monoxyde de carbone.',
  'A pan {base} wide makes a stove give off more carbon monoxide: in a test {wide} gave more than {narrow}.':
    'Sous une poêle de {base}, un réchaud dégage plus de monoxyde de carbone : dans un essai, {wide} en donnaient plus que {narrow}.',
  '{inside#} of {guideline}, carbon monoxide': '{inside#} sur {guideline} de monoxyde de carbone',
  '{base#} of {wide}': '{base#} sur {wide}',
  'A pot or pan less than {wide} across the base.': 'Une popote ou une poêle au fond de moins de {wide}.',
  'Cook outside, under a tarp that is open on all sides where it rains.':
    'Cuisiner dehors ; sous la pluie, sous un tarp ouvert de tous les côtés.',
  'Stoves in tents and snow caves gave {inside} of carbon monoxide in tests; a guideline for {minutes} is {guideline}. It has no smell, and a flap or a door that is open does not rule it out.':
    'Des réchauds dans des tentes et des grottes de neige ont donné {inside} de monoxyde de carbone dans des essais ; une valeur guide pour {minutes} est {guideline}. Il n’a pas d’odeur, et un pan ou une porte ouverts ne l’excluent pas.',
  'If anyone has a headache or feels dull or sick: everybody out into the air at once, stove off, and get help.':
    'Si quelqu’un a mal à la tête, se sent engourdi ou nauséeux : tout le monde dehors aussitôt, réchaud éteint, et chercher de l’aide.',

  // Filling the burner
  'Filling the burner': 'Remplir le brûleur',
  'Young people fill a burner from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'Des jeunes remplissent un brûleur avec {bottle} d’alcool : versé sur une flamme invisible, il s’enflamme jusqu’au flacon.',
  'The burner is filled from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'Le brûleur se remplit avec {bottle} d’alcool : versé sur une flamme invisible, il s’enflamme jusqu’au flacon.',
  'Young people fill an alcohol burner: poured into an unseen flame it flashes back.':
    'Des jeunes remplissent un brûleur à alcool : versé sur une flamme invisible, il s’enflamme jusqu’au flacon.',
  '{bottle} in one bottle': '{bottle} en un seul flacon',
  'alcohol, young people': 'alcool, des jeunes',
  'A bottle of {small} or less to fill from.': 'Un flacon de {small} ou moins pour remplir.',
  'A burner for gas. Or a leader fills it, cold, from {small} or less.':
    'Un brûleur à gaz. Ou un encadrant le remplit, froid, avec {small} ou moins.',
  'The flame is not seen by day. Feel that the burner is cold, then fill it from a small bottle, well away from any flame.':
    'La flamme ne se voit pas de jour. S’assurer de la main que le brûleur est froid, puis le remplir d’un petit flacon, loin de toute flamme.',
  'A burn: cool running water, wet clothing off, cover it.':
    'En cas de brûlure : eau courante fraîche, vêtements mouillés ôtés, couvrir.',

  // Heat on the canister
  'Heat on the canister': 'Chaleur sur la cartouche',
  'If the windscreen closes round the canister, it traps heat and the canister can burst.':
    'Si le pare-vent se ferme autour de la cartouche, il retient la chaleur et elle peut éclater.',
  'A griddle or pan this wide sends heat down onto an upright canister, which can burst.':
    'Une plancha ou une poêle si large renvoie la chaleur vers la cartouche dessous, qui peut éclater.',
  'A windscreen that closes round a canister under the burner traps heat.':
    'Un pare-vent fermé autour d’une cartouche sous le brûleur retient la chaleur.',
  '× {ratio#} pressure, {cool#} to {warm}': '× {ratio#} de pression, {cool#} à {warm}',
  'A stove on a hose, with the screen between burner and canister. On this one no screen, unless its maker’s instructions allow it.':
    'Un réchaud à tuyau, le pare-vent entre brûleur et cartouche. Sur celui-ci aucun, sauf si la notice du fabricant le permet.',
  'A pan of {wide} or less. Or a stove on a hose.': 'Une poêle de {wide} ou moins. Ou un réchaud à tuyau.',
  'If the canister feels warm, turn the stove off and let it cool. Canisters are made for the pressure at {warm}, and for no more.':
    'Si la cartouche semble chaude, éteindre le réchaud et laisser refroidir. Les cartouches sont faites pour la pression à {warm}, pas plus.',
  'Does the stove screw onto the canister, or stand beside it on a hose?':
    'Le réchaud se visse-t-il sur la cartouche, ou est-il à côté, au bout d’un tuyau ?',
  'pressure of the gas carried at {warm}': 'pression du gaz emporté à {warm}',
  'the same at {cool}': 'la même à {cool}',
  'times the pressure': 'fois la pression',

  // Under the stove
  'Under the stove': 'Sous le réchaud',
  'Nothing on the list goes under the stove: on snow it melts in and tips.':
    'Rien sur la liste à mettre sous le réchaud : sur la neige, il s’enfonce et bascule.',
  'The stove has something to stand on, on snow.': 'Sur la neige, le réchaud a de quoi se poser.',
  'no board': 'pas de planchette',
  'a board': 'une planchette',
  'A board under the stove. Or a spare lid or a shovel blade.':
    'Une planchette sous le réchaud. Ou un couvercle en trop, ou une lame de pelle.',
  'A stove that tips spills boiling water. Tread the snow hard and level before it is lit.':
    'Un réchaud qui bascule renverse de l’eau bouillante. Tasser la neige ferme et plane avant d’allumer.',

  // The day
  'What to look for': 'Ce qu’il faut chercher',
  'For {who}, {style}: {least} or more to the brim; {full} for full portions.':
    'Pour {who}, {style} : {least} ou plus à ras bord ; {full} pour des portions pleines.',
  'On a bail or at a fire 2 : 3 is best, and {ratio#} as wide as tall holds up.':
    'Sous une anse ou au feu, 2 : 3 est le mieux ; {ratio#} de large pour 1 de haut convient.',
  'On a stove, {ratio#} as wide as tall holds up.': 'Sur un réchaud, {ratio#} de large pour 1 de haut convient.',
  'This stove suits {widths} across.': 'À ce réchaud conviennent {widths} de large.',
  'This stove wants {leastWidth} across or more.': 'Ce réchaud demande {leastWidth} de large ou plus.',
  'This stove carries {mostWidth} across or less.': 'Ce réchaud porte {mostWidth} de large ou moins.',
  'With the width of the burner, the widths that suit it are marked too.':
    'Avec la largeur du brûleur, les largeurs qui lui conviennent sont marquées aussi.',
  'No pot is all of that on this stove. Another stove, or two pots.':
    'Aucune popote n’est tout cela sur ce réchaud. Un autre réchaud, ou deux popotes.',
  'This pot is one of them.': 'Cette popote en est une.',
  '{width} across and {height} tall would do: {brim}.': '{width} de large et {height} de haut conviendraient : {brim}.',
  'width across, {unit}': 'largeur, {unit}',
  'height, {unit}': 'hauteur, {unit}',
  'this pot; the dotted corner is its outline': 'cette popote ; le coin pointillé est son contour',
  'the nearest pot that suits': 'la popote la plus proche qui convienne',
  'suits shape and least portions; closer lines, full ones':
    'convient pour la forme et les portions minimales ; lignes serrées : les pleines',
  'suits stove, shape and least portions; closer lines, full ones':
    'convient pour le réchaud, la forme et les portions minimales ; lignes serrées : les pleines',
  '{least}: least portions': '{least} : portions minimales',
  '{full}: full portions': '{full} : portions pleines',
  '{boil}: least portions, water alone': '{boil} : portions minimales, eau seule',
  '{ratio#} as wide as tall': '{ratio#} de large pour 1 de haut',
  '{widths}: suits the stove': '{widths} : convient au réchaud',
  'Snow to water': 'De la neige à l’eau',
  'Hot meal': 'Repas chaud',
  'Hot drinks': 'Boissons chaudes',
  'Water boiled to drink': 'Eau bouillie à boire',
  'water a person a day, from snow': 'eau par personne et par jour, de la neige',
  'a meal, least to full portion': 'un repas, portion minimale à pleine',
  'a hot drink': 'une boisson chaude',
  'water a day': 'eau par jour',
  'heat into the pot': 'chaleur dans la popote',
  'heat of a gram of fuel that reaches the pot': 'chaleur d’un gramme de combustible qui arrive à la popote',
  round: 'fois',
  rounds: 'fois',
  loads: 'charges',
  'A day heats {litres} of water, with {minutes} at the flame and {grams} of fuel.':
    'Une journée chauffe {litres} d’eau, avec {minutes} à la flamme et {grams} de combustible.',
  'A day heats {litres} of water, with {minutes} at the fire and {kg} of dry wood, gathered.':
    'Une journée chauffe {litres} d’eau, avec {minutes} au feu et {kg} de bois sec, ramassé.',
  '{days#} {days:day takes|days take} {grams} of fuel.':
    '{days#} {days:jour demande|jours demandent} {grams} de combustible.',
  '{days#} {days:day takes|days take} {kg} of dry wood.':
    '{days#} {days:jour demande|jours demandent} {kg} de bois sec.',
  '{days#} {days:day takes|days take} {grams} of fuel; {carried} are carried.':
    '{days#} {days:jour demande|jours demandent} {grams} de combustible ; {carried} sont emportés.',

  // A letter
  'An answer to send': 'Une réponse à envoyer',
  'Before you go': 'Avant de partir',
  'A small gain': 'Un petit gain',
  'One question': 'Une question',
  Questions: 'Questions',
  'Write back with the answer, and I will look again.': 'Réponds-moi, et je regarderai de nouveau.',
  'Write back with the answers, and I will look again.': 'Envoie-moi les réponses, et je regarderai de nouveau.',
  'Nothing I read here falls short.': 'Rien de ce que je lis ici n’est insuffisant.',
  Sources: 'Sources',
  'Before they go': 'Avant leur départ',
  'To ask': 'À demander',
  'The letter': 'La lettre',
  'First line': 'Première ligne',
  caution: 'prudence',
  'settles {checks}': 'règle {checks}',
  'Cautions, at the thick line, stay while their finding is ticked. What you wrote stays until the list changes.':
    'Les mises en garde, au trait épais, restent tant que leur constat est coché. Ce que tu as écrit reste jusqu’à ce que la liste change.',
  'Copy as': 'Copier comme',
  letter: 'lettre',
  'plain text': 'texte brut',
  Markdown: 'Markdown',
  'Sources at the end': 'Sources à la fin',
  'Copy the letter': 'Copier la lettre',
  Copied: 'Copié',
  'The browser refused to copy. Copy the text here by hand.':
    'Le navigateur a refusé de copier. Copier le texte ici à la main.',
  '{n#} {n:sentence|sentences}. Nothing is sent from here.': '{n#} {n:phrase|phrases}. Rien n’est envoyé d’ici.',
  'Back to the findings': 'Retour aux constats',

  // The headline
  'the pan can overheat the canister': 'la poêle peut surchauffer la cartouche',
  'the windscreen can overheat the canister': 'le pare-vent peut surchauffer la cartouche',
  'the pot can overheat the canister': 'la casserole peut surchauffer la cartouche',
  'the pot can slip off the stove': 'la casserole peut glisser du réchaud',
  'the pot turns over on its bail': 'la casserole se retourne sur son anse',
  'the full pot spills on its bail': 'la casserole pleine déborde sur son anse',
  'the pot can tip over': 'la casserole peut basculer',
  'the full pot is too heavy for its grip': 'la popote pleine est trop lourde pour sa prise',
  'the full pot is too heavy to lift': 'la popote pleine est trop lourde à soulever',
  'no stove burns the fuel carried': 'aucun réchaud ne brûle le combustible emporté',
  'a stove or a fuel is carried for nothing': 'un réchaud ou un combustible est emporté pour rien',
  'nothing lifts the full pot': 'rien ne soulève la casserole pleine',
  'the alcohol can flash back': 'l’alcool peut s’enflammer d’un coup',
  'the pot can burn or melt': 'la casserole peut brûler ou fondre',
  'young people are close to boiling water': 'des jeunes sont près d’eau bouillante',
  'the stove fills the air with carbon monoxide': 'le réchaud emplit l’air de monoxyde de carbone',
  'there is no pot to cook in': 'il manque une casserole pour cuire',
  'a meal takes more than one round': 'un repas demande plus d’une tournée',
  'the stove does not burn the fuel carried': 'le réchaud ne brûle pas le combustible emporté',
  'the fuel': 'le combustible',
  'the gas': 'le gaz',
  'the pot': 'la casserole',
  'the water carried': 'l’eau emportée',
  'not everybody can eat at once': 'tous ne peuvent pas manger en même temps',
  'there is no lid to melt snow under': 'il manque un couvercle pour fondre la neige',
  'fires are forbidden there': 'les feux y sont interdits',
  'nothing hangs the pot over the fire': 'rien ne suspend la casserole au-dessus du feu',
  'the pot melts or burns over a flame': 'la casserole fond ou brûle sur une flamme',
  'the pot is too narrow for its height': 'la casserole est trop étroite pour sa hauteur',
  'the flame goes past the pot': 'la flamme passe à côté de la casserole',
  'the water never boils': 'l’eau n’arrive jamais à ébullition',
  'the flame is too weak for the pot as it stands': 'la flamme est trop faible pour la casserole telle qu’elle est',
  'there is no hot meal': 'il manque un repas chaud',
  'a full meal takes two rounds': 'un repas complet demande deux tournées',
  'the pan slops and cools quickly': 'la poêle déborde et refroidit vite',
  'the pot slops easily on its bail': 'la casserole déborde vite sur son anse',
  'the pot is slow to take heat': 'la casserole prend mal la chaleur',
  'the pot is too wide for the burner': 'la casserole est trop large pour le brûleur',
  'the pot stands loosely on the stove': 'la casserole tient mal sur le réchaud',
  'the flame goes up the wall': 'la flamme monte le long de la paroi',
  'the pot dents and splits': 'la casserole se bosselle et se fend',
  'left empty, the pot can melt': 'vide, la casserole peut fondre',
  'food scorches in the pot': 'la nourriture attache dans la casserole',
  'the pot slops on its bail': 'la casserole déborde sur son anse',
  'the pot tips easily': 'la casserole bascule facilement',
  'the pot comes off the fire by hand': 'la casserole se retire du feu à la main',
  'no lid is named': 'aucun couvercle n’est nommé',
  'the full pot is hard to lift': 'la casserole pleine est dure à soulever',
  'melting snow takes many loads': 'fondre la neige demande beaucoup de charges',
  'the fuel leaves little to spare': 'le combustible laisse peu de marge',
  'the gas is weak in the cold': 'le gaz faiblit au froid',
  'alcohol is slow in the cold': 'l’alcool est lent au froid',
  'nothing named lights the stove': 'rien de nommé n’allume le réchaud',
  'nothing named carries water': 'rien de nommé ne porte l’eau',
  'little water is carried': 'peu d’eau est emportée',
  'there is less than one hot meal a day': 'il y a moins d’un repas chaud par jour',
  'a wide pot makes more carbon monoxide': 'une casserole large fait plus de monoxyde de carbone',
  'alcohol poured into a flame flashes back': 'l’alcool versé sur une flamme s’enflamme d’un coup',
  'on snow the stove melts in': 'sur la neige le réchaud s’enfonce',
  'the size of the bottles': 'la contenance des bouteilles',
  'the number of bowls': 'le nombre de bols',
  'the size of the pot': 'la contenance de la casserole',
  'the width of the pot': 'la largeur de la casserole',
  'the height of the pot': 'la hauteur de la casserole',
  'the material of the pot': 'la matière de la casserole',
  'a word on the lid': 'un mot sur le couvercle',
  'a word on the bail': 'un mot sur l’anse',
  'a word on the handles': 'un mot sur les poignées',
  'the width of the burner': 'la largeur du brûleur',
  'the width of the stand': 'la largeur du support',
  'the kind of stove': 'le type de réchaud',
  'the place of the canister': 'la place de la cartouche',
  'the kind of fuel': 'le type de combustible',
  'the kind of gas': 'le type de gaz',
  'the amount of fuel': 'la quantité de combustible',
  'the number of days': 'le nombre de jours',
  'the place of the water': 'l’origine de l’eau',
  '{a} falls short': '{a} ne suffit pas',
  '{a} and {b} fall short': '{a} et {b} ne suffisent pas',
  '{a}, {b} and {c} fall short': '{a}, {b} et {c} ne suffisent pas',
  'if it snows, {a} falls short': 's’il neige, {a} ne suffit pas',
  'if it snows, {a} and {b} fall short': 's’il neige, {a} et {b} ne suffisent pas',
  'if it snows, so does {a}': 's’il neige, {a} non plus',
  'if it snows, so do {a} and {b}': 's’il neige, {a} et {b} non plus',
  '{a} is wanted': 'reste à savoir : {a}',
  '{a} and {b} are wanted': 'restent à savoir : {a} et {b}',
  '{a}, {b} and {more#} more are wanted': 'restent à savoir : {a}, {b} et {more#} de plus',
  'one answer is wanted': 'il reste une réponse à donner',
  '{more#} answers are wanted': 'il reste {more#} réponses à donner',
  'feeds and waters {who} for {long}': 'nourrit {who} pendant {long}, eau comprise',
  'feeds and waters {who}': 'nourrit {who}, eau comprise',
  'feeds {who} for {long}': 'nourrit {who} pendant {long}',
  'feeds {who}': 'nourrit {who}',
  'nothing here falls short for {who}': 'rien d’insuffisant ici pour {who}',
  'too little is known to judge': 'on en sait trop peu pour juger',
  two: 'deux personnes',
  three: 'trois personnes',
  four: 'quatre personnes',
  five: 'cinq personnes',
  six: 'six personnes',
  seven: 'sept personnes',
  eight: 'huit personnes',
  nine: 'neuf personnes',
  'one day': 'un jour',
  'two days': 'deux jours',
  'three days': 'trois jours',
  'four days': 'quatre jours',
  'five days': 'cinq jours',
  'six days': 'six jours',
  'seven days': 'sept jours',
  'eight days': 'huit jours',
  'nine days': 'neuf jours',

  // The report
  '{used#} {used:line|lines} used, {off#} not cook kit, {unknown#} not understood':
    '{used#} {used:ligne utilisée|lignes utilisées}, {off#} hors cuisine, {unknown#} non {unknown:comprise|comprises}',
  'Nothing here to judge yet.': 'Rien à juger pour l’instant.',
  '{people#} people': '{people#} personnes',
  '{days#} days': '{days#} jours',
  'A day with this kit': 'Un jour avec ce matériel',
  Assumed: 'Supposé',
  'Caution: {words}': 'Attention : {words}',
  'Published: {sources}.': 'Publié : {sources}.',
  'A second opinion. Local fire rules, land managers and licensed instruction come first.':
    'Un second avis. Règles locales sur le feu, gestionnaires du terrain et encadrement diplômé passent avant.',
  to: 'à',
  'This check failed on this kit; the others went on.':
    'Ce contrôle a échoué sur ce matériel ; les autres ont continué.',
  'no answer': 'pas de réponse',

  // Notes on publications
  'The figures were seen in a unit library that cites the act, not in the act itself.':
    'Chiffres vus dans une bibliothèque d’unités qui cite la loi, non dans la loi même.',
  'Household measures of food labels only: the cup there is 240 mL.':
    'Mesures ménagères des étiquettes alimentaires seulement : la tasse y fait 240 mL.',
  'Metric cup of 250 mL in Australian, New Zealand and Canadian kitchens':
    'Tasse métrique de 250 mL des cuisines d’Australie, de Nouvelle-Zélande et du Canada',
  'From memory.': 'De mémoire.',
  'Values at 101.325 kPa, worked out with an open implementation of the formulation.':
    'Valeurs à 101,325 kPa, calculées avec une mise en œuvre ouverte de la formulation.',
  'Days differ from the standard: the boiling point holds to about 0.5 to 1 °C.':
    'Un jour donné s’écarte de la norme : le point d’ébullition vaut à 0,5 à 1 °C près.',
  'Rows seen in the tests of an open library.': 'Lignes vues dans les tests d’une bibliothèque ouverte.',
  'The same as ISO 2533 up to 32 km. Rows seen in the tests of an open library.':
    'Identique à ISO 2533 jusqu’à 32 km. Lignes vues dans les tests d’une bibliothèque ouverte.',
  'Seen in copies; rounded to the degree or tenth of a degree Fahrenheit.':
    'Vu dans des copies ; arrondi au degré ou au dixième de degré Fahrenheit.',
  'Read from the data files of an open chemistry library.':
    'Lu dans les fichiers de données d’une bibliothèque de chimie ouverte.',
  'Constants read from the data files of an open chemistry library; title and journal are from memory.':
    'Constantes lues dans les fichiers de données d’une bibliothèque de chimie ouverte ; titre et revue de mémoire.',
  'Seen in the reprint.': 'Vu dans la réimpression.',
  'Wood 15.6 MJ/kg seen in a copy; the kerosene row is from memory.':
    'Bois 15,6 MJ/kg vu dans une copie ; la ligne du kérosène est de mémoire.',
  'Seen in a copy.': 'Vu dans une copie.',
  'The same formula and table in three handbooks, seen in copies.':
    'La même formule et le même tableau dans trois manuels, vus dans des copies.',
  'The enthalpy of formation, +125.5 kJ/mol, is from memory; the 30 MJ/kg in common use is the higher value.':
    'L’enthalpie de formation, +125,5 kJ/mol, est de mémoire ; les 30 MJ/kg courants sont le pouvoir supérieur.',
  'Calls its own values rough estimates.': 'Qualifie ses propres valeurs d’estimations grossières.',
  'Seen as quoted by others, with the page number; the title is a description.':
    'Vu cité par d’autres, avec le numéro de page ; le titre est une description.',
  'The range of 29 to 62 % was seen in the abstract; the figures of each vessel as quoted by others. The title is a description.':
    'Intervalle de 29 à 62 % vu dans le résumé ; chiffres de chaque récipient cités par d’autres. Le titre est une description.',
  'Only the abstract was seen: best of five pots 53.2 %, worst 29.6 %. The title is a description.':
    'Seul le résumé a été vu : meilleure de cinq popotes 53,2 %, pire 29,6 %. Le titre est une description.',
  'Works with 49.14 MJ/kg, the higher heating value.': 'Calcule avec 49,14 MJ/kg, le pouvoir calorifique supérieur.',
  'Seen in a copy; the title is a description.': 'Vu dans une copie ; le titre est une description.',
  'Only the abstract was seen; the title is a description.': 'Seul le résumé a été vu ; le titre est une description.',
  'Only the abstract was seen.': 'Seul le résumé a été vu.',
  'Whether the 60 % stands on the lower or the higher heating value is not said: an upper bound.':
    'Si les 60 % reposent sur le pouvoir calorifique inférieur ou supérieur n’est pas dit : une borne haute.',
  'Seen in a summary; the title is a description.': 'Vu dans un compte rendu ; le titre est une description.',
  'Seen in copies.': 'Vu dans des copies.',
  'The title is a description.': 'Le titre est une description.',
  'Seen as quoted by others; a home measurement by a metrologist. The title is a description.':
    'Vu cité par d’autres ; mesure faite chez lui par un métrologue. Le titre est une description.',
  'Counts evaporated water as useful heat. The formula is from memory and agrees with the table.':
    'Compte l’eau évaporée comme chaleur utile. La formule est de mémoire et concorde avec le tableau.',
  'Measured: 6 quarts of water boiled in 10 and 14 minutes, of melted snow in 22 and 30. The title is a description.':
    'Mesuré : 6 quarts d’eau ont bouilli en 10 et 14 minutes, de neige fondue en 22 et 30. Le titre est une description.',
  'Seen as quoted in two places.': 'Vu cité en deux endroits.',
  'The 17 : 1 rule for loose snow is from memory.': 'La règle 17 : 1 pour la neige légère est de mémoire.',
  'Seen on a course page; the title is a description.': 'Vu sur la page d’un cours ; le titre est une description.',
  'Three people. The title is a description.': 'Trois personnes. Le titre est une description.',
  'The restricted ration of 1100 to 1500 kcal for up to ten days (2-2d) is from memory.':
    'La ration restreinte de 1100 à 1500 kcal jusqu’à dix jours (2-2d) est de mémoire.',
  'One packet of some 1500 kcal a day, for no more than ten days.':
    'Un paquet d’environ 1500 kcal par jour, dix jours au plus.',
  'The title is from memory.': 'Le titre est de mémoire.',
  'The times as tabulated in later copies; the paper itself was not seen.':
    'Durées d’après les tableaux de copies ultérieures ; l’article même n’a pas été vu.',
  'Seen in a copy. Says 6 s at 60 °C where others say 5 s.':
    'Vu dans une copie. Dit 6 s à 60 °C là où d’autres disent 5 s.',
  'Abstract seen; authors and journal from memory.': 'Résumé vu ; auteurs et revue de mémoire.',
  'Reaching a rolling boil is enough, at altitude too.': 'Atteindre les gros bouillons suffit, en altitude aussi.',
  'Read in a test laboratory’s summary.': 'Lu dans le compte rendu d’un laboratoire d’essais.',
  'How full the test vessel is on the slope is not stated. The title is a description.':
    'Le remplissage du récipient d’essai sur la pente n’est pas indiqué. Le titre est une description.',
  'Only the scope was seen.': 'Seul le domaine d’application a été vu.',
  'The author is from memory.': 'L’auteur est de mémoire.',
  'Derived here and checked by numerical integration; no table is copied.':
    'Établi ici et vérifié par intégration numérique ; aucun tableau n’est recopié.',
  'Yield worked out from the water contents, dry matter kept.':
    'Rendement calculé des teneurs en eau, à matière sèche égale.',
  'The journal is from memory.': 'La revue est de mémoire.',

  // Common practice
  'A hot meal is 473 mL (16 US fl oz) at least and 591 mL (20 US fl oz) for a full portion':
    'Un repas chaud fait 473 mL (16 US fl oz) au moins, 591 mL (20 US fl oz) pour une pleine portion',
  'Practitioners give 400–750 mL a person boil-only, 650–2000 mL cooked in the pot.':
    'Les praticiens donnent 400–750 mL par personne à l’eau seule, 650–2000 mL cuits dans la popote.',
  'A hot drink is 240 mL': 'Une boisson chaude fait 240 mL',
  'A pot is filled to 0.90 for water alone, 0.80 for soup or a drink, two thirds for what foams':
    'Une popote se remplit à 0,90 pour l’eau seule, 0,80 pour une soupe ou une boisson, aux deux tiers pour ce qui mousse',
  'Practitioners give 0.67–0.90. The Water Boiling Test fills its pots to about two thirds.':
    'Les praticiens donnent 0,67–0,90. Le Water Boiling Test remplit aux deux tiers environ.',
  'A stated capacity is −2 to +7 % off what the pot holds; worked out from outside sizes, within ±20 %':
    'Une contenance annoncée s’écarte de −2 à +7 % de la vraie ; calculée des cotes extérieures, à ±20 % près',
  '700–1000 mL suits one person; about 1 L is best in summer':
    '700–1000 mL conviennent à une personne ; environ 1 L est le mieux en été',
  'Practitioners give 450 mL to 2 L for one, by what they cook.':
    'Les praticiens donnent 450 mL à 2 L pour une personne, selon la cuisine.',
  'A pot to melt snow in holds about 2 L for one, 3 L for two, half a litre more a head up to 5 L':
    'Une popote à neige contient environ 2 L pour une personne, 3 L pour deux, un demi-litre de plus par tête jusqu’à 5 L',
  'Practitioners give 1.3–5 L; hard parties of three have chosen 1.7 L.':
    'Les praticiens donnent 1,3–5 L ; des cordées aguerries de trois ont choisi 1,7 L.',
  'Two to three loads of hand-packed snow make one filling of water: packed snow is 350–500 kg/m³':
    'Deux à trois charges de neige pressée à la main font une popote d’eau : la neige pressée fait 350–500 kg/m³',
  'Start with water over the base of the pot, feed snow so that it stays slush, lid on':
    'Commencer avec de l’eau sur le fond, ajouter la neige de sorte qu’elle reste en bouillie, couvercle mis',
  'Practitioners start with a cup, with an inch, or with the base covered; summaries of mountaineering handbooks say the same.':
    'Les praticiens commencent avec une tasse, deux centimètres et demi, ou le fond couvert ; les comptes rendus de manuels d’alpinisme disent de même.',
  'On snow a person drinks and cooks with 3–5 L a day':
    'Sur la neige, il faut 3–5 L par personne et par jour pour boire et cuisiner',
  'Practitioners give 2.5–6 L.': 'Les praticiens donnent 2,5–6 L.',
  'A pot that hangs from a bail is best two thirds as wide as tall':
    'Sous une anse, le mieux est une popote deux tiers aussi large que haute',
  'On a stove a pot wider than tall catches more of the flame and stands better':
    'Sur un réchaud, une popote plus large que haute capte plus de flamme et tient mieux',
  'Some find no difference on a narrow gas flame.':
    'Certains ne trouvent pas de différence sur une flamme de gaz étroite.',
  'An open flame is at least a third narrower than the pot, at best half as wide':
    'Une flamme ouverte est au moins un tiers plus étroite que la popote, au mieux moitié moins large',
  'A pot’s base is 15 mm wider than the gap between the arms at least, and 1.6 times their span at most':
    'Le fond dépasse d’au moins 15 mm l’écart entre les bras, et fait au plus 1,6 fois leur envergure',
  'Practitioners give 1.5–1.7.': 'Les praticiens donnent 1,5–1,7.',
  'A gas flame spreads to 10 mm inside the base all round':
    'Une flamme de gaz s’étale jusqu’à 10 mm en deçà du bord du fond',
  'On an upright canister stove a base over 200 mm, a griddle or a windscreen sends heat back to the canister':
    'Sur un réchaud vissé à la cartouche, un fond de plus de 200 mm, une plancha ou un pare-vent lui renvoie la chaleur',
  'Rare, and severe.': 'Rare, et grave.',
  'No windscreen is closed round an upright canister':
    'Aucun pare-vent ne se ferme autour d’une cartouche sous le brûleur',
  'Practitioners disagree whether one that is open on the lee side may stand near it; the instructions of the stove’s maker come first.':
    'Les pratiquants ne s’accordent pas sur un pare-vent ouvert sous le vent et proche ; la notice du fabricant passe d’abord.',
  'Upright canisters with isobutane mixes fade at about −7 °C':
    'Sous le brûleur, les cartouches à l’isobutane faiblissent vers −7 °C',
  'Practitioners give −7 to −8 °C; plain butane fades at some 10 °C; liquid feed gains about 11 °C.':
    'Les praticiens donnent −7 à −8 °C ; le butane pur faiblit vers 10 °C ; la prise en phase liquide gagne environ 11 °C.',
  'A canister in use is some 5 °C colder than the air, more as it empties':
    'Une cartouche en marche est environ 5 °C plus froide que l’air, plus encore en se vidant',
  'A litre boiled on gas takes 12–24 g, from calm to breeze':
    'Un litre bouilli au gaz demande 12–24 g, du calme à la brise',
  'Practitioners give 10–53 g: 12 with a heat exchanger, 16 as a rule, 24 in a breeze, some 50 in wind.':
    'Les praticiens donnent 10–53 g : 12 avec échangeur, 16 en règle générale, 24 par brise, environ 50 dans le vent.',
  'Half a litre boiled on alcohol takes 15–30 mL of it': 'Un demi-litre bouilli à l’alcool en demande 15–30 mL',
  'What the words for canister gas hold, by mass: isobutane mix 80 % isobutane and 20 % propane, and the like':
    'Ce que recouvrent les noms du gaz en cartouche, en masse : mélange à l’isobutane 80 % isobutane et 20 % propane, et ainsi de suite',
  'Mixes differ by canister; the label gives the shares.':
    'Les mélanges varient selon la cartouche ; l’étiquette donne les parts.',
  'Canisters of 100–110, 220–230 and 450 g net weigh 175–215, 360–375 and 650–670 g full':
    'Les cartouches de 100–110, 220–230 et 450 g nets pèsent 175–215, 360–375 et 650–670 g pleines',
  'An unscreened burner takes 1.2–1.7 times the fuel in a breeze, 2–3 times in wind':
    'Un brûleur non abrité prend 1,2–1,7 fois le combustible par brise, 2–3 fois dans le vent',
  'No published curve is trusted. Practitioners give twice without a screen, three times at a steady 8 km/h, a fifth more behind a good one.':
    'Aucune courbe publiée n’est retenue. Les praticiens donnent le double sans pare-vent, le triple à 8 km/h constants, un cinquième de plus derrière un bon.',
  'Burners give 2–3 kW on gas and liquid fuel, 0.4–1.4 kW on alcohol, 0.3–0.6 kW on tablets, 1.5–4 kW on wood':
    'Les brûleurs donnent 2–3 kW au gaz et au combustible liquide, 0,4–1,4 kW à l’alcool, 0,3–0,6 kW aux tablettes, 1,5–4 kW au bois',
  'The alcohol figures are measured (Boiling Point no. 12).':
    'Les chiffres de l’alcool sont mesurés (Boiling Point no. 12).',
  'Tablet stoves are taken to put as much of their heat into the pot as small alcohol burners':
    'Les réchauds à tablettes sont supposés céder à la popote la même part de chaleur que les petits brûleurs à alcool',
  'No published measurement was found: 0.45–0.5 L to a tablet of 14 g is the practitioners’ figure.':
    'Aucune mesure publiée trouvée : 0,45–0,5 L par tablette de 14 g est le chiffre des praticiens.',
  'A pot locked to its burner with a heat exchanger boils a litre with about 12 g of gas':
    'Une popote à échangeur verrouillée au brûleur fait bouillir un litre avec environ 12 g de gaz',
  'Fins alone gained 8 % in a published test.': 'Les ailettes seules ont gagné 8 % lors d’un essai publié.',
  'A quarter more fuel than the likely need is carried':
    'Il s’emporte un quart de combustible de plus que le besoin probable',
  'Some 1500 kcal a day is a short ration, for up to ten days and only with one hot meal of 473–591 mL':
    'Environ 1500 kcal par jour font une ration courte, dix jours au plus et seulement avec un repas chaud de 473–591 mL',
  'Bare thin titanium has hot spots: simmered food and dry snow scorch':
    'Le titane nu et mince a des points chauds : plats mijotés et neige sèche y brûlent',
  'An empty aluminium pot over an open fire can melt through':
    'Sur un feu ouvert, une popote vide en aluminium peut fondre et percer',
  'Plastic melts and wood chars over a flame: such vessels are eaten from, not cooked in':
    'Sur la flamme, le plastique fond et le bois se carbonise : on y mange, on n’y cuit pas',
  'Pots made of drink cans dent and split': 'Les popotes faites de canettes se bossellent et se fendent',
  'At a fire a pot is hung by its bail, or hooked off by it':
    'Au feu de bois, la popote est suspendue par l’anse, ou décrochée par elle',
  'A lid of any kind, foil too, and a wider pan covers a smaller pot':
    'N’importe quel couvercle, papier alu aussi ; une poêle plus large couvre une popote plus petite',
  'A full pot is lifted by a handle, a bail or a gripper':
    'Une popote pleine se soulève par une poignée, une anse ou avec une pince',
  'A hung pot that spills at under 6° slops when touched; from 12° it can be handled':
    'Suspendue, une popote qui déborde à moins de 6° se renverse au moindre contact ; dès 12°, elle se manie',
  'A pot on a stove stands to 15° or more before it tips':
    'Sur un réchaud, une popote tient jusqu’à 15° ou plus avant de basculer',
  'A 10° slope is the test of a published stove standard.':
    'Une pente de 10° est l’essai d’une norme de réchauds publiée.',
  'A board, a lid or a shovel under the stove on snow, or it melts in and tips':
    'Sur la neige, une planchette, un couvercle ou une pelle sous le réchaud, sinon il s’enfonce et bascule',
  'Alcohol melts snow slowly and with much fuel; it is not impossible':
    'L’alcool fait fondre la neige lentement et à grands frais ; ce n’est pas impossible',
  'Practitioners disagree: not for snow, or half a litre in 15 min at −8 °C.':
    'Les praticiens divergent : pas pour la neige, ou un demi-litre en 15 min à −8 °C.',
  'A spirit burner is cold before it is filled, from a small bottle away from the flame':
    'Un brûleur à alcool est froid avant d’être rempli, d’un petit flacon et loin de la flamme',
  'Something to light the stove with, and a second means apart from it':
    'De quoi allumer le réchaud, et un second moyen rangé à part',
  'A bowl, a mug or a pot to eat from for each person; one of several may eat from the pot':
    'Un bol, une tasse ou une popote où manger pour chacun ; à plusieurs, l’un peut manger dans la popote',
  'A person carries room for 2–3 L of water for a day and a night':
    'Chacun porte de quoi tenir 2–3 L d’eau pour un jour et une nuit',
  'A burn is cooled with running water, wet clothing taken off, then covered':
    'Une brûlure se refroidit à l’eau courante, vêtements mouillés ôtés, puis se couvre',

  // What is assumed
  'the season': 'la saison',
  'where the water comes from': 'd’où vient l’eau',
  'the lowest temperature': 'la température minimale',
  'the altitude': 'l’altitude',
  'the gas mix': 'le mélange de gaz',
  'the number of people': 'le nombre de personnes',
  'how they cook': 'la façon de cuisiner',
  'the wind': 'le vent',
  'what the pot holds': 'ce que contient la popote',
  'the snow': 'la neige',
  'how much alcohol the bottle holds': 'la quantité d’alcool dans le flacon',
  pot: 'popote',
  'the stove': 'le réchaud',

  // What cannot be used
  '{0} is less than {1}.': '{0} : moins que {1}.',
  '{0} is less than {1}; {2}?': '{0} : moins que {1} ; {2} ?',
  '{0} is more than {1}.': '{0} : plus que {1}.',
  '{0} is more than {1}; {2}?': '{0} : plus que {1} ; {2} ?',
  'any pot': 'n’importe quelle popote',
  'any burner': 'n’importe quel brûleur',
  'any stove': 'n’importe quel réchaud',
  'anyone carries in one piece': 'ce qui se porte d’un bloc',
  'any stove has': 'ce qu’un réchaud peut avoir',
  'a kit has': 'ce qu’un matériel peut compter',
  'any camp stove gives': 'ce que donne un réchaud de camp',
  '“{0}” is not a {1} known here; leave it out.': '« {0} » n’est pas connu ici ({1}) ; à omettre.',
  '“{0}” is not understood; write a figure and its unit, such as {1}\u00a0{2}.':
    '« {0} » n’est pas compris ; écrire un chiffre et son unité, comme {1}\u00a0{2}.',
  '“{0}” is not a number; write it in figures.': '« {0} » n’est pas un nombre ; l’écrire en chiffres.',
  'a kit can be judged for': 'ce qui peut se juger ici',
  'a trip can be planned for': 'ce qui peut se prévoir',
  'anyone cooks out in': 'toute température où l’on cuisine dehors',
  'anyone cooks at': 'toute altitude où l’on cuisine',
  'anyone cooks in a day': 'ce qui se cuisine en un jour',
  'People come whole: {0}?': 'Les personnes vont par nombres entiers : {0} ?',
  '“{0}” is not one of {1}.': '« {0} » n’est pas parmi : {1}.',

  // Where a value comes from
  'a canister of {0} g full': 'une cartouche de {0} g, pleine',
  '{0} mL': '{0} mL',
  'a bottle of {0} mL is filled to about three quarters': 'un flacon de {0} mL est rempli aux trois quarts environ',
  'write how much fuel is in it': 'écrire combien de combustible il contient',
  'one pot was typed': 'une seule popote a été saisie',
  'give the number of pots': 'donner le nombre de popotes',
  'a month is taken for 30 days': 'un mois est compté pour 30 jours',
  '{0} groups of {1}': '{0} groupes de {1}',
  "the line's mass for {0}": 'le poids de la ligne pour {0}',
  '“{0}” on line {1}': '« {0} » à la ligne {1}',
  'what the stove burns': 'ce que brûle le réchaud',
  '{0} × {1} × {2} mm outside': '{0} × {1} × {2} mm à l’extérieur',
  'Ø {0} × {1} mm outside': 'Ø {0} × {1} mm à l’extérieur',
  'Ø {0} to {1} × {2} mm outside': 'Ø {0} à {1} × {2} mm à l’extérieur',

  // What is assumed of a trip
  'nothing says how many people': 'rien ne dit combien de personnes',
  'set the number of people': 'donner le nombre de personnes',
  'nothing says how long': 'rien ne dit la durée',
  'set the number of days': 'donner le nombre de jours',
  'nothing says how they cook, and most people cook in the pot at times':
    'rien ne dit la façon de cuisiner, et la plupart cuisent parfois dans la popote',
  'choose boil-only, simmer or scratch': 'choisir eau seule, mijoté ou vraie cuisine',
  'hot drinks come from the same pot unless it is said otherwise':
    'les boissons chaudes viennent de la même popote, sauf mention contraire',
  'say that drinks are made elsewhere': 'dire que les boissons se font ailleurs',
  'snow is pressed into the pot by hand': 'la neige se presse à la main dans la popote',
  'choose the snow': 'choisir la neige',
  'no altitude is given': 'aucune altitude n’est donnée',
  'set the altitude': 'donner l’altitude',
  'it is seldom calm outdoors': 'dehors, l’air est rarement calme',
  'choose the wind': 'choisir le vent',
  'one hot meal a day is usual': 'un repas chaud par jour est l’usage',
  'set the hot meals a day': 'donner les repas chauds par jour',
  'no temperature is given for spring': 'aucune température n’est donnée pour le printemps',
  'no temperature is given for summer': 'aucune température n’est donnée pour l’été',
  'no temperature is given for autumn': 'aucune température n’est donnée pour l’automne',
  'no temperature is given for winter': 'aucune température n’est donnée pour l’hiver',
  'it is your default': 'c’est le réglage par défaut',
  'set it for this trip': 'le donner pour cette sortie',
  'say where the water comes from: liquid, snow or either': 'dire d’où vient l’eau : liquide, neige ou les deux',
  'in winter snow may be the only water': 'en hiver, la neige est peut-être la seule eau',
  'in such cold snow may be the only water': 'par un tel froid, la neige est peut-être la seule eau',
  'nothing speaks of snow': 'rien ne parle de neige',
  'neither temperature nor season is given': 'ni température ni saison ne sont données',
  'set the lowest temperature': 'donner la température minimale',
  'there is a stove, or fuel for one': 'il y a un réchaud, ou du combustible pour un réchaud',
  'say that they cook at a fire': 'dire que la cuisson se fait au feu de bois',
  'no stove is named': 'aucun réchaud n’est nommé',
  'add the stove': 'ajouter le réchaud',

  // What is assumed of the day
  'a gas stove': 'un réchaud à gaz',
  'the list does not say what the stove burns': 'la liste ne dit pas ce que brûle le réchaud',
  'name the kind of stove': 'nommer le genre de réchaud',
  'the power of the flame': 'la puissance de la flamme',
  'no power is given: the range of its kind is taken': 'aucune puissance donnée, la fourchette de son type est prise',
  'give the watts': 'donner les watts',
  'water of {0} °C to start with': 'eau de {0} °C au départ',
  'nothing says how cold the water is, and a cold stream has about that':
    'rien ne dit la température de l’eau, et un ruisseau froid est à peu près à cela',
  'count about 1 % less fuel for each degree it is warmer':
    'compter environ 1 % de combustible en moins par degré de plus',
  'a simmer of {0}–{1} min': '{0}–{1} min à petit feu',
  'nothing says how long the food simmers': 'rien ne dit combien de temps le plat mijote',
  'choose boil-only where the food only takes up hot water':
    'choisir « eau seule » là où le plat ne fait que prendre l’eau chaude',
  'a pot as wide as it is tall': 'une popote aussi large que haute',
  'its width is not given': 'sa largeur n’est pas donnée',
  'give its diameter and height': 'donner son diamètre et sa hauteur',

  // Corrections that cannot be used
  'The line it belongs to is not in the text any more.': 'La ligne concernée n’est plus dans le texte.',
  '"{0}" is nothing that can be corrected.': '« {0} » ne peut pas se corriger.',
  'The line holds no such item; give its kind first.': 'La ligne ne contient rien de tel ; donner d’abord le genre.',
  'The line holds no such item.': 'La ligne ne contient rien de tel.',
  'Yes or no.': 'Oui ou non.',
  'the person says so': 'indiqué ainsi',
  'The set has no such vessel.': 'Le lot n’a pas un tel récipient.',
  'A whole number from 0 to 1000.': 'Un nombre entier de 0 à 1000.',
  'No figure with a unit, such as {0}.': 'Pas de chiffre avec une unité, comme {0}.',
  'More than nothing.': 'Plus que rien.',
  'One of: {0}.': 'L’un de : {0}.',

  // How a line was read
  'the unit is taken from the size before it': 'l’unité vient de la taille qui précède',
  'write the unit': 'écrire l’unité',
  'it is said to stay behind': 'dit rester à la maison',
  'it is wished for, not owned': 'souhaité, non possédé',
  'it is said to be replaced or gone': 'dit remplacé ou disparu',
  'it is said to be forbidden': 'dit interdit',
  'it is said not to be needed': 'dit inutile',
  'it is only compared with': 'cité en comparaison seulement',
  'struck through': 'barré',
  'its count is nought': 'le nombre est zéro',
  'the line says there is none': 'la ligne dit qu’il n’y en a pas',
  'figures run together by copying: the first digit is taken as the count':
    'chiffres collés par la copie : le premier est pris pour le nombre',
  'write the count and the mass apart': 'écrire le nombre et le poids séparément',
  'the text itself puts a question mark to it': 'le texte y met lui-même un point d’interrogation',
  'write it without "?"': 'l’écrire sans « ? »',
  'a pint is 473 ml in the US and 568 ml in Britain; the text does not say which':
    'une pinte fait 473 mL aux États-Unis et 568 mL en Grande-Bretagne ; le texte ne dit pas laquelle',
  'write the millilitres': 'écrire les millilitres',
  'a coffee maker’s cup may be 150 ml; it is taken as a measuring cup':
    'une tasse de cafetière fait peut-être 150 mL ; elle est prise pour une tasse à mesurer',
  'smaller than any cook pot: a cup, or a slip of the unit':
    'plus petite que toute popote à cuire : une tasse, ou une erreur d’unité',
  'taken without the lid, whose mass stands beside it': 'pris sans le couvercle, dont le poids est à côté',
  'write the mass of the pot alone': 'écrire le poids de la popote seule',
  'ounces of an unnamed fuel are taken by mass': 'les onces d’un combustible non nommé sont prises en poids',
  'write the grams, or the millilitres': 'écrire les grammes, ou les millilitres',
  'more than one can weighs; taken as several full cans together':
    'plus que ne pèse une cartouche ; pris pour plusieurs pleines ensemble',
  'write the grams of gas in each can and how many': 'écrire les grammes de gaz par cartouche et leur nombre',
  'a pan of so many litres is taken for a pot': 'une « pan » de tant de litres est prise pour une casserole',
  'the heading names it': 'le titre le nomme',
  'tablets that do not say of what are taken for fuel':
    'des tablettes sans autre précision sont prises pour du combustible',
  'a bare number that a can of gas is said to weigh is taken as grams':
    'un nombre seul que pèse une cartouche de gaz est pris pour des grammes',
  'the column shows no unit; figures this large are taken as grams':
    'la colonne n’indique pas d’unité ; des nombres aussi grands sont pris pour des grammes',
  'a bare number beside a gas can is taken as grams of gas':
    'un nombre seul près d’une cartouche est pris pour des grammes de gaz',
  'write the unit: {0} g': 'écrire l’unité : {0} g',
  'a set of {0} parts; how many of them are pots is not said':
    'un lot de {0} pièces ; combien sont des popotes n’est pas dit',
  'write the pots of the set one by one': 'écrire les popotes du lot une à une',
  'of these some are said to stay behind': 'une partie, dit-on, reste sur place',
  'one for each size': 'une par taille',
  'write how many': 'écrire combien',
  'one line is taken as one piece': 'une ligne compte pour une pièce',
  'no number is given': 'aucun nombre n’est donné',
  'a small number without a unit is taken as centimetres': 'un petit nombre sans unité est pris pour des centimètres',
  'a number without a unit is taken as millimetres': 'un nombre sans unité est pris pour des millimètres',
  'write which of the two is the diameter': 'écrire lequel des deux est le diamètre',
  'the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first':
    'le texte ne dit pas lequel est le diamètre ; l’ordre le plus proche de la contenance annoncée, ou Ø d’abord',
  'the heading says so': 'le titre le dit',
  'write what it burns': 'écrire ce qu’il brûle',
  'write what burns': 'écrire ce qui brûle',
  'cans and canisters hold gas': 'bonbonnes et cartouches contiennent du gaz',
  'write what is in it': 'écrire ce qu’il y a dedans',
  'a billy hangs by a bail': 'une gamelle de feu pend à une anse',
  'write "no bail" if it has none': 'écrire « sans anse » si elle n’en a pas',
  'a thing with a hose, or that screws onto a can, is taken for a stove':
    'une chose à tuyau, ou qui se visse sur une cartouche, est prise pour un réchaud',
  'butane with propane boils about as an isobutane mix does':
    'le butane avec du propane bout à peu près comme un mélange d’isobutane',
  'write the shares of the gases': 'écrire les parts des gaz',
  'half of the can is taken to be left': 'la moitié de la cartouche est censée rester',
  'write the grams that are left': 'écrire les grammes qui restent',
  'a set of these sizes is taken for pots': 'un lot de ces tailles est pris pour des popotes',
  'a metal thing of this size is taken for a pot': 'une chose en métal de cette taille est prise pour une popote',
  'a thing of this size with a lid is taken for a pot':
    'une chose de cette taille à couvercle est prise pour une popote',
  'a gas can is sold by grams; the millilitres are taken as grams':
    'une cartouche se vend en grammes ; les millilitres sont pris pour des grammes',
  'write the grams: 230 g': 'écrire les grammes : 230 g',
  'a bare number beside a vessel is taken as millilitres':
    'un nombre seul près d’un récipient est pris pour des millilitres',
  'write the unit: {0} ml': 'écrire l’unité : {0} mL',
  'a bare number beside a vessel is taken as litres': 'un nombre seul près d’un récipient est pris pour des litres',
  'write the unit: {0} l': 'écrire l’unité : {0} L',
  'a sentence names it, and does not say whether it goes along': 'une phrase le nomme sans dire s’il est du voyage',
  'it stands among the cook kit, and no word of it is known':
    'c’est parmi le matériel de cuisine, et aucun mot n’en est connu',
  'cook kit is named in passing': 'du matériel de cuisine y est nommé en passant',
  'The line names no such thing in passing.': 'La ligne ne nomme rien de tel en passant.',
  'The list came as one line; its things were told apart by their figures.':
    'La liste est venue en une ligne ; les choses ont été séparées d’après leurs chiffres.',
  'A line is longer than any list; only its beginning was read.':
    'Une ligne est plus longue que toute liste ; seul son début a été lu.',
  'its column of sorts says so': 'la colonne des catégories le dit',
  'only its first {0} characters were read': 'seuls ses {0} premiers caractères ont été lus',
  'nothing here names cook kit': 'rien ici ne nomme du matériel de cuisine',
  'one day more than nights': 'un jour de plus que de nuits',
  'write the days': 'écrire les jours',
  'of a range the upper end is taken': 'd’une fourchette, la borne supérieure est retenue',
  'from the first date to the last': 'de la première date à la dernière',
  'from the first day to the last': 'du premier jour au dernier',
  'write one number': 'écrire un seul nombre',
  'who writes goes along, and is one more': 'la personne qui écrit en est, et compte en plus',
  'names are taken for people': 'les noms sont pris pour des personnes',
  'write how many they are': 'écrire combien ils sont',
  'degrees without a scale are taken as Fahrenheit here': 'des degrés sans échelle sont pris ici pour des Fahrenheit',
  'write the unit: {0} °F': 'écrire l’unité : {0} °F',
  'degrees without a scale are taken as Celsius here': 'des degrés sans échelle sont pris ici pour des Celsius',
  'write the unit: {0} °C': 'écrire l’unité : {0} °C',
  'the month, north of the equator': 'le mois, au nord de l’équateur',
  'set the season': 'donner la saison',
  'a heading': 'un titre',
  'a total': 'un total',
  'the heads of columns': 'les en-têtes de colonnes',
  'it gives a size, but names nothing that is known as cook kit':
    'une taille est donnée, mais rien de connu comme matériel de cuisine',
  'it does not say what the can holds': 'ce que contient la cartouche n’est pas dit',
  'cook kit is only mentioned': 'du matériel de cuisine est seulement évoqué',
};

const fuelTypes: Words['fuelTypes'] = {
  gas: 'gaz',
  alcohol: 'alcool',
  wood: 'bois',
  'liquid-fuel': 'combustible liquide',
  'solid-fuel': 'combustible solide',
};

/** As elsewhere in French, nought and one and a half are singular. */
const several = (n: number, one: string, many = `${one}s`) => `${n} ${n < 2 ? one : many}`;

/** Only its place gives a French word its capital; names of two capitals and more keep theirs. */
const inside = (sentence: string) => sentence.replace(/^\p{Lu}(?!\p{Lu})/u, (first) => first.toLowerCase());

/** No line of text begins with a mark that belongs to the word before it, nor ends with an opening quote. */
function unbroken(text: string): string {
  return text.replace(/(?<=«) | (?=[:;?!»%])/g, '\u00a0');
}

/** The same words with every text unbroken, those that are made of figures too. */
function typeset<T>(words: T): T {
  if (typeof words === 'string') return unbroken(words) as T;
  if (typeof words === 'function')
    return ((...given: unknown[]) => typeset((words as (...given: unknown[]) => unknown)(...given))) as T;
  if (Array.isArray(words)) return words.map((word: unknown) => typeset(word)) as T;
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, word]: [string, unknown]) => [key, typeset(word)])) as T;
}

export const french: Words = typeset<Words>({
  locale: 'fr',
  language: {
    grades: {
      'can-hurt': 'Peut blesser',
      'falls-short': 'Ne suffit pas',
      'costs-you': 'A un prix',
      'cant-tell': 'À préciser',
      'holds-up': 'Convient',
    },
    sentences,
    units: { 'mL/person': 'mL/pers.', in: 'po', ft: 'pi', '%': ' %' },
    inside,
    colon: ' : ',
    semicolon: ' ; ',
  },
  joints: ['sur', 'à'],

  name: 'Brimwise',
  region: 'Brimwise, un second avis sur le matériel de cuisine',
  entrances: { legend: 'Ce qui est à juger', list: 'Une liste', pot: 'Une popote' },

  trip: 'Sortie',
  tripFrom: (numbers) => `${numbers.length === 1 ? 'de la ligne' : 'des lignes'} ${list.format(numbers.map(String))}`,
  tripBack: 'Rétablir',
  tripBackLabel: 'Rétablir la sortie telle que la liste la dit',
  more: 'Vent, neige, saison',
  change: 'Changer',
  tripChange: 'Changer la sortie',
  tripSaid: {
    people: (n) => (n === 1 ? '1 personne' : `${n} personnes`),
    days: (n) => (n === 1 ? '1 jour' : `${n} jours`),
    waterFrom: { liquid: 'pas de neige', either: 'neige possible', snow: 'toute l’eau de la neige' },
  },
  tripFields: {
    people: 'Personnes',
    days: 'Jours',
    mealStyle: 'Repas',
    waterFrom: 'Neige',
    lowC: 'Minimum',
    altitudeM: 'Altitude',
    cookAt: 'Cuisson',
    wind: 'Vent',
    snow: 'Neige dans la popote',
    season: 'Saison',
    hotMealsPerDay: 'Repas chauds par jour',
    drinkFromPot: 'Boissons chaudes de la popote',
  },
  assumed: 'supposé',
  setByPage: 'Fixé par cette page :',

  list: 'Liste',
  clear: 'Vider',
  clearLabel: 'Vider la liste',
  placeholder:
    'Coller une liste, ou la saisir : une chose par ligne.\npopote 1,3 L, couvercle\nréchaud à gaz, cartouche 230 g',
  noList: 'Pas de liste sous la main ?',
  example: 'Un exemple',
  exampleList:
    'À deux, 3 jours, début novembre\nbivouac à 900 m, −6 °C la nuit\npopote Humblefern 1,3 L, 140 x 90 mm, aluminium, avec couvercle\nréchaud Zorvik, se visse sur la cartouche\ncartouche de gaz 230 g, butane\npince\n2 tasses 450 mL, 2 cuillères\nbriquet et allumettes\n2 gourdes 1 L\nriz et lentilles, cuits dans la popote',
  lineToCopy: 'popote 1,3 L, couvercle',
  useLine: 'Mettre cette ligne',
  allLines: (n) => `Les ${n} lignes`,
  otherLines: (n) => `Montrer les ${n} autres lignes`,

  noKit: 'Rien ici ne se lit comme du matériel de cuisine.',
  noKitRead: (n) =>
    `${several(n, 'ligne lue', 'lignes lues')} ; aucune ne nomme popote, réchaud, combustible ni vaisselle. Une chose par ligne, avec sa taille :`,

  reading: 'Lecture',
  readingFold: (counts) => `Lecture : ${counts}`,
  grounds: { stated: 'indiqué', 'worked-out': 'calculé', assumed: 'supposé', missing: 'manquant' },
  was: 'avant',
  yours: 'corrigé',
  pressToChange: 'Toucher une valeur pour la modifier.',
  valueLabel: (field, kind, value, grounds, line) =>
    `${kind}, ${field} : ${value}, ${grounds}, ligne ${line}. Modifier`,
  kindLabel: (kind, line) => `${kind}, ligne ${line}. Modifier ce que c’est`,
  slotLabel: (field, kind, line) => `${kind}, ${field} : manquant, ligne ${line}. Ajouter`,
  editLabel: (field, kind) => `${kind}, ${field}. Entrée garde, Échap rétablit`,
  notThere: 'absent du matériel',
  notCarried: (because) => `ne compte pas : ${because}`,
  itCounts: 'Compter',
  alsoNamed: 'Également nommé',
  alsoNamedWhy: 'En passant ; non compté. Est-ce du voyage ?',
  countIt: (thing, line) => `Compter : ${thing}, ligne ${line}`,
  countAll: (n) => `Compter les ${n}`,
  notCookKit: (n) => `${several(n, 'ligne')} hors cuisine`,
  notUnderstood: 'non compris.',
  sayWhat: 'Dire ce que c’est',
  itIs: 'Si, c’en est',
  whatIsIt: (line) => `Ce qu’est la ligne ${line}`,
  choose: 'choisir',
  forget: 'Oublier',
  unused: (value, why) => `Correction « ${value} » : ${why}`,
  yesNo: { yes: 'oui', no: 'non' },
  no: (thing) => `sans ${thing}`,
  fields: {
    kind: 'genre',
    carried: 'emporté',
    quantity: 'nombre',
    capacityMl: 'contenance',
    massG: 'poids',
    diameterMm: 'largeur',
    baseDiameterMm: 'largeur du fond',
    heightMm: 'hauteur',
    sizeMm: 'taille',
    burnerMm: 'largeur du brûleur',
    supportsMm: 'largeur des appuis',
    material: 'matière',
    bail: 'anse',
    lid: 'couvercle',
    handles: 'poignée',
    stoveType: 'ce qu’il brûle',
    stoveForm: 'montage',
    fuelType: 'combustible',
    gasMix: 'gaz',
    fuelMassG: 'combustible net',
    fuelVolumeMl: 'volume de combustible',
  },
  kinds: {
    pot: 'popote',
    mug: 'tasse',
    kettle: 'bouilloire',
    pan: 'poêle',
    lid: 'couvercle',
    stove: 'réchaud',
    fuel: 'combustible',
    windscreen: 'pare-vent',
    bottle: 'gourde',
    bladder: 'poche à eau',
    bowl: 'bol',
    utensil: 'couvert',
    'other-cook': 'autre ustensile',
  },
  roles: {
    gripper: 'pince',
    lighter: 'briquet',
    matches: 'allumettes',
    board: 'planchette',
    tripod: 'trépied',
    foil: 'papier alu',
  },
  materials: {
    titanium: 'titane',
    aluminium: 'aluminium',
    steel: 'acier',
    iron: 'fer',
    enamel: 'émail',
    plastic: 'plastique',
    wood: 'bois',
    metal: 'métal',
  },
  stoveTypes: { ...fuelTypes, integrated: 'gaz, popote intégrée' },
  stoveForms: { upright: 'sur la cartouche', remote: 'à tuyau' },
  fuelTypes,
  gasMixes: { butane: 'butane', isobutane: 'isobutane', winter: 'isobutane et propane', propane: 'propane' },
  mealStyles: { 'boil-only': 'eau seule', simmer: 'mijoté', scratch: 'vraie cuisine' },
  waterFrom: { liquid: 'aucune', either: 'possible', snow: 'toute l’eau' },
  winds: { calm: 'calme', breeze: 'brise', windy: 'vent fort' },
  snows: { new: 'fraîche', settled: 'tassée', 'wind-packed': 'soufflée', packed: 'pressée' },
  seasons: { spring: 'printemps', summer: 'été', autumn: 'automne', winter: 'hiver' },
  cookAt: { stove: 'réchaud', fire: 'feu de bois' },

  checks: (n) => several(n, 'contrôle'),
  tally: {
    'can-hurt': (n) => several(n, 'peut blesser', 'peuvent blesser'),
    'falls-short': (n) => several(n, 'ne suffit pas', 'ne suffisent pas'),
    'costs-you': (n) => several(n, 'a un prix', 'ont un prix'),
    'cant-tell': (n) => `${n} à préciser`,
    'holds-up': (n) => several(n, 'convient', 'conviennent'),
  },
  tallyLabel: 'Constats par degré',
  caution: 'Attention',
  line: (n) => `Ligne ${n}`,
  typed: 'Saisi :',
  lookedFor: 'Cherché :',
  why: 'Pourquoi',
  howWorkedOut: (title) => `Le calcul : ${title}`,
  published: 'publié',
  commonPractice: 'usage courant',
  Published: 'Publié :',
  CommonPractice: 'Usage courant :',
  assumedHere: 'Supposé :',
  assumption: (what, because, replaceWith) => `${what} (${because} ; ${replaceWith}).`,
  settle: (answers, open) =>
    `${answers === 1 ? 'Une réponse réglerait' : `${answers} réponses régleraient`} ${open === 1 ? 'un contrôle' : `${open} contrôles`}.`,
  untold: (open) => (open === 1 ? 'Un contrôle est ici sans réponse.' : `${open} contrôles sont ici sans réponse.`),
  settles: (titles) => `Règle : ${list.format(titles.map(inside))}.`,
  addLine: (kind) => `Ajouter « ${kind} » à la liste`,

  day: 'Un jour avec ce matériel',
  boilsAt: (temperature) => `L’eau y bout à ${temperature}.`,
  sources: 'Sources',
  assumptions: 'Supposé',
  problems: 'Laissé de côté',

  potForm: {
    pot: 'Popote',
    outside: 'cotes extérieures',
    diameter: 'Largeur',
    baseDiameter: 'Fond, si conique',
    height: 'Hauteur',
    capacity: 'Contenance',
    mass: 'Poids',
    material: 'Matière',
    has: 'La popote a',
    bail: 'anse',
    handles: 'poignées',
    lid: 'couvercle',
    more: 'Plus sur la casserole et le réchaud',
    stove: 'Réchaud',
    type: 'Brûle',
    form: 'Gaz placé',
    burnerDiameter: 'Brûleur, largeur',
    standsAt: 'Fond posé à',
    armCount: 'Bras',
    armInner: 'Écart des bras',
    armSpan: 'Bras hors tout',
    footDiameter: 'Pieds ou cartouche',
  },

  drawing: {
    unit: { metric: 'mm', us: 'po', imperial: 'po' },
    brim: (volume) => `bord ${volume}`,
    meal: (volume) => `repas ${volume}`,
    fill: (volume) => `niveau ${volume}`,
    free: (length) => `${length} libres`,
    on: (base, burner) => `fond ${base}, brûleur ${burner}`,
    fits: (lengths) => `convient ${lengths}`,
    tips: (angle) => `bascule ${angle}`,
    spills: (angle) => `déborde ${angle}`,
    caption: 'Popote, hauteur d’appui, pieds et largeur du brûleur à l’échelle. Vu du côté faible.',
    captionAlone: 'À l’échelle.',
    shape: (rim, height, base) =>
      `La popote en coupe, à l’échelle : large de ${rim}${base === null ? '' : `, de ${base} au fond,`} et haute de ${height}.`,
    burner: (width) => `Le brûleur est large de ${width}.`,
    stands: (height) => `Le fond est à ${height} au-dessus du sol.`,
    holds: (brim, meal) => `À ras bord, elle contient ${brim} ; un repas demande ${meal}.`,
    filled: (height, volume, free) => `Remplie jusqu’à ${height} avec ${volume}, ${free} sous le bord.`,
    leans: (tip, spill) => `Elle bascule à ${tip} et déborde à ${spill}.`,
    suits: (lengths) => `Au brûleur conviennent des fonds larges de ${lengths}.`,
  },

  verdict: {
    region: 'Brimwise, un verdict sur une popote',
    unnamed: 'Cette popote',
    lid: 'avec couvercle',
    bail: 'avec anse',
    stove: (type) => `réchaud à ${type}`,
    terms: (people, style, fromSnow, shown, answered, open) => {
      const one = people === 1;
      const doing = {
        'boil-only': one ? 'ne fait que bouillir de l’eau' : 'ne font que bouillir de l’eau',
        simmer: one ? 'fait mijoter' : 'font mijoter',
        scratch: one ? 'cuisine vraiment' : 'cuisinent vraiment',
      }[style];
      const who = `${one ? 'une personne' : `${people} personnes`} qui ${doing}`;
      const left =
        open === 0 ? '' : ` ${open} de plus ${open === 1 ? 'reste' : 'restent'} sans réponse d’après ces chiffres.`;
      return `Jugé pour ${who}${fromSnow ? ', avec l’eau de la neige' : ''}. ${several(shown, 'contrôle montré', 'contrôles montrés')} sur ${answered}, les pires d’abord.${left}`;
    },
    sums: 'Les calculs',
    sketch: (rim, height, fill) =>
      `La popote en coupe, à l’échelle : large de ${rim} et haute de ${height}${fill === null ? '' : `, remplie jusqu’à ${fill}`}.`,
  },

  unjudged: 'La partie qui lit et juge n’a pas été chargée. Copier ce qui est saisi, puis recharger la page.',

  writeLetter: 'Une réponse à envoyer',
  copy: 'Copier en texte',
  copyMarkdown: 'Copier en Markdown',
  copied: 'Copié.',
  copyRefused: 'Le navigateur a refusé de copier. Voici le texte, à copier à la main.',
  copyText: 'Les constats en texte',
  print: 'Imprimer',
  unitsLegend: 'Unités',
  units: { 'as-written': 'comme écrit', metric: 'métriques', us: 'US', imperial: 'impériales' },
  foot: 'Un second avis. Règles locales sur le feu, gestionnaires du terrain et encadrement diplômé passent avant. Calculé sur cette page ; rien n’est envoyé.',
});
