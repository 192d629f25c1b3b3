import type { Words } from './en.js';

const list = new Intl.ListFormat('es', { type: 'conjunction' });

/** What the core says. A pot is an «olla», so what is said of one is feminine; what its reader does is told in the infinitive. */
const sentences: Readonly<Record<string, string>> = {
  // Room for the meal
  'Room for the meal': 'Sitio para la comida',
  'One meal for {people} fits in one round.': 'Una comida para {people} sale en una tanda.',
  'The least portion fits in one round; a full one takes two.':
    'La ración mínima sale en una tanda; una completa lleva dos.',
  'One meal for {people} fits in {pots#} pots side by side.':
    'Una comida para {people} cabe en {pots#} ollas a la vez.',
  'Each has a pot of their own: the last eats {wait} after the first.':
    'Cada cual tiene su olla: la última persona come {wait} después de la primera.',
  'Each has a pot of their own, and the flames are used {rounds#} times one after another.':
    'Cada cual tiene su olla, y las llamas se usan {rounds#} veces, una tras otra.',
  'A pot of {beside} beside what is there, on a flame of its own.':
    'Una olla de {beside} junto a lo que hay, en una llama propia.',
  'Flames for {flames#} pots at once.': 'Llamas para {flames#} ollas a la vez.',
  'and beside it': 'y junto a ella',
  'The {pots#} pots, {have} in all, melt the water of {people}: {loads#} {loads:load|loads} of each a day.':
    'Las {pots#} ollas, {have} en total, derriten el agua de {people}: {loads#} {loads:carga|cargas} de cada una al día.',
  'If snow is the water, the {pots#} pots, {have} in all, melt that of {people}: {loads#} {loads:load|loads} of each a day.':
    'Si el agua sale de la nieve, las {pots#} ollas, {have} en total, derriten la de {people}: {loads#} {loads:carga|cargas} de cada una al día.',
  '{turns#} {turns:turn|turns} of {each}': '{turns#} {turns:turno|turnos} de {each}',
  '{turns#} {turns:load|loads}, {litres} of water': '{turns#} {turns:carga|cargas}, {litres} de agua',
  'Open fire': 'Fuego abierto',
  'No flame known': 'Ninguna llama conocida',
  '{alike#} × {name}': '{alike#} × {name}',
  '{capacity} {name}': '{name} de {capacity}',
  gas: 'gas',
  '{grams} of {fuel}': '{grams} de {fuel}',
  'One person eats {eaten} after lighting; all is done after {done}.':
    'Una persona come {eaten} después de encender; todo termina a los {done}.',
  'One person eats {eaten} after lighting.': 'Una persona come {eaten} después de encender.',
  'All {people#} eat {eaten} after lighting; all is done after {done}.':
    'Las {people#} personas comen {eaten} después de encender; todo termina a los {done}.',
  'All {people#} eat {eaten} after lighting.': 'Las {people#} personas comen {eaten} después de encender.',
  'All is done {done} after lighting.': 'Todo termina {done} después de encender.',
  '{wind} the open pot stops at {stalls}: with a lid it boils, and a day takes {grams} of fuel.':
    '{wind} la olla abierta se queda en {stalls}: con tapa hierve, y un día gasta {grams} de combustible.',
  '{wind} the pot stops at {stalls}: out of the wind it boils, and a day takes {grams} of fuel.':
    '{wind} la olla se queda en {stalls}: al abrigo del viento hierve, y un día gasta {grams} de combustible.',
  '{wind} the pot stops at {stalls}: with a lid and out of the wind it boils, for {grams} of fuel a day.':
    '{wind} la olla se queda en {stalls}: con tapa y al abrigo del viento hierve, con {grams} de combustible al día.',
  '{wind} the pot stops at {stalls}, with a lid and out of the wind too: there is no day to work out.':
    '{wind} la olla se queda en {stalls}, y con tapa y al abrigo del viento tampoco hierve: no hay día que calcular.',
  '{stalls} of {boil}': '{stalls} de {boil}',
  'A place out of the wind, or the screen that the stove’s maker allows.':
    'Un sitio al abrigo del viento, o el paravientos que permita el fabricante del hornillo.',
  'A lid, and a place out of the wind.': 'Una tapa y un sitio al abrigo del viento.',
  'A stronger stove, or a smaller pot with a lid.': 'Un hornillo más potente, o una olla más pequeña con tapa.',
  'In still air': 'Con el aire en calma',
  'In a breeze': 'Con brisa',
  'In wind': 'Con viento',
  'Strength of the flame': 'Fuerza de la llama',
  'One meal takes {rounds#} rounds.': 'Una comida lleva {rounds#} tandas.',
  'Without its size, nobody can tell whether it holds a meal.': 'Sin su tamaño no se sabe si cabe una comida.',
  'There is a stove and nothing on the list to cook in.': 'Hay hornillo, pero en la lista nada en que cocinar.',
  '{room#} of {need}': '{room#} de {need}',
  'size not given': 'tamaño sin indicar',
  'no pot': 'sin olla',
  'A pot of {brim} or more.': 'Una olla de {brim} o más.',
  'A pot of {brim} or more. Or boil-only in this one: {boilRoom} of room.':
    'Una olla de {brim} o más. O en esta solo hervir agua: {boilRoom} útiles.',
  'Add a pot of {brim} or more.': 'Añadir una olla de {brim} o más.',
  '“{name}”: how much does it hold?': '«{name}»: ¿cuánto cabe?',
  'to the brim': 'hasta el borde',
  'the share that is filled, {style}': 'hasta dónde se llena, {style}',
  'room in one round': 'lo que cabe en una tanda',
  'one meal for {people}, 473–591 mL a head': 'una comida para {people}, 473–591 ml por cabeza',
  'water alone': 'con agua sola',
  'when it simmers': 'al guisar',
  'when it is cooked in': 'al cocinar de verdad',
  'one person': 'una persona',
  '{count#} people': '{count#} personas',

  // Shape
  Shape: 'Forma',
  'Close to 2 : 3, the best compromise on a bail.': 'Cerca de 2 : 3, el mejor término medio para colgarla.',
  'Narrower than a pot on a bail is at its best: slow to take heat.':
    'Más estrecha de lo mejor para colgar: tarda en tomar el calor.',
  'Wider than 2 : 3 on a bail: it takes heat well and slops sooner.':
    'Más ancha que 2 : 3, colgada: toma bien el calor y salpica antes.',
  'Tall and narrow: much of the heat goes past it into the air.':
    'Alta y estrecha: mucho calor pasa de largo y se pierde.',
  'Wide enough for its flame and not so wide that it cools.': 'Bastante ancha para su llama, y no tanto que se enfríe.',
  'Narrow, and right for a narrow burner with the lid on.':
    'Estrecha, y así va bien con un quemador estrecho y la tapa puesta.',
  'Narrow over a flame that spreads: heat goes up the wall.':
    'Estrecha sobre una llama ancha: el calor sube por la pared.',
  'Narrow and open: it heats slowly and loses heat from the top.':
    'Estrecha y sin tapar: calienta despacio y pierde calor por arriba.',
  'Pan-shaped: it slops when moved and cools quickly.': 'Con forma de sartén: salpica al moverla y se enfría pronto.',
  'Without width and height, its shape cannot be judged.': 'Sin ancho ni alto no se puede juzgar la forma.',
  'Narrow; whether that costs heat hangs on the stove.': 'Estrecha; si eso cuesta calor, depende del hornillo.',
  '{ratio} as wide as tall': '{ratio} de ancho por 1 de alto',
  'At this height a pot {width} across.': 'Con esta altura, una olla de {width} de ancho.',
  'At this width a pot {lower} tall or more.': 'Con este ancho, una olla de {lower} de alto o más.',
  '“{name}”: how wide and how tall is it, outside?': '«{name}»: ¿cuánto mide de ancho y de alto, por fuera?',
  'What does the stove burn?': '¿Qué quema el hornillo?',
  'width at the rim': 'ancho en el borde',
  height: 'alto',
  'as wide as tall': 'de ancho por 1 de alto',
  'wall for each base area, 4 × height ÷ width: the share of the pot that only hot air touches':
    'pared por superficie de fondo, 4 × alto ÷ ancho: la parte de la olla que solo toca el aire caliente',

  // Fit on the stove
  'Fit on the stove': 'Ajuste al hornillo',
  'The base suits the burner.': 'El fondo va bien con el quemador.',
  'Flame goes up the wall: heat is lost and the handles get hot.':
    'La llama sube por la pared: se pierde calor y las asas queman.',
  'The flame is nearly as wide as the pot: most of it goes past.':
    'La llama es casi tan ancha como la olla: la mayor parte pasa de largo.',
  'The pot is wider than this burner heats evenly.': 'La olla es más ancha de lo que este quemador calienta por igual.',
  'The base barely spans the gap between the arms: it can drop or slide.':
    'El fondo apenas cubre el hueco entre los brazos: puede caerse o resbalar.',
  'The base reaches far over the arms: it stands loosely.': 'El fondo sobresale mucho de los brazos: queda floja.',
  'A base this wide sends heat down onto an upright canister, which can burst.':
    'Un fondo tan ancho manda calor al cartucho de debajo, que puede reventar.',
  'No burner width is given: this pot suits a burner of {burners}.':
    'Falta el ancho del quemador: a esta olla le va uno de {burners}.',
  'Without its width, nobody can tell whether the pot suits the burner.':
    'Sin su ancho no se sabe si la olla va bien con el quemador.',
  '{ratio#} of {band} burners': '{ratio#} de {band} quemadores',
  '{base#} of {band}': '{base#} de {band}',
  'width not given': 'ancho sin indicar',
  'A pot of {pots} across, or a burner of {burners}.': 'Una olla de {pots} de ancho, o un quemador de {burners}.',
  'A pot {atLeast} across or more, or a burner of {gasBurner} or less.':
    'Una olla de {atLeast} de ancho o más, o un quemador de {gasBurner} o menos.',
  'A pot {atLeast} across or more, or a grate over the arms.':
    'Una olla de {atLeast} de ancho o más, o una rejilla sobre los brazos.',
  'A pot {atMost} across or less, or a stove with wider arms.':
    'Una olla de {atMost} de ancho o menos, o un hornillo de brazos más anchos.',
  'A pot {atMost} across or less, or a stove on a hose.':
    'Una olla de {atMost} de ancho o menos, o un hornillo con manguera.',
  'If the canister feels warm, turn the stove off and let it cool.':
    'Si el cartucho se nota caliente, apagar el hornillo y dejarlo enfriar.',
  'Boiling water burns in a second. Keep feet and hands clear of a pot that stands badly.':
    'El agua hirviendo quema en un segundo. Apartar pies y manos de una olla mal asentada.',
  'How wide is the burner or its fire-pot?': '¿Cuánto mide de ancho el quemador o su cámara de fuego?',
  '“{name}”: how wide is it at the base?': '«{name}»: ¿cuánto mide de ancho en el fondo?',
  'base of the pot': 'fondo de la olla',
  burner: 'quemador',
  'burners wide': 'quemadores de ancho',
  'burner and 10 mm a side': 'quemador y 10 mm por lado',
  'gap between the arms and 15 mm': 'hueco entre los brazos y 15 mm',
  '1.6 times the span of the arms': '1,6 veces el ancho de los brazos',

  // Stated capacity
  'Stated capacity': 'Capacidad indicada',
  'Stated capacity and dimensions agree.': 'La capacidad indicada y las medidas concuerdan.',
  'Stated capacity and dimensions agree loosely; a rounded or lipped pot may be so.':
    'La capacidad indicada y las medidas concuerdan a medias; en una olla redondeada o con reborde puede ser.',
  '{outside} outside is much for a pot that states {stated}. Which is right?':
    '{outside} por fuera es mucho para una olla que indica {stated}. ¿Cuál vale?',
  '{stated} cannot fit in {size}. Which is right?': '{stated} no caben en {size}. ¿Cuál vale?',
  '{stated} stated, {outside} outside': '{stated} indicados, {outside} por fuera',
  '“{name}”: how much does it hold, filled to the brim?': '«{name}»: ¿cuánto cabe, llena hasta el borde?',
  'outside volume, {size}': 'volumen exterior, {size}',
  stated: 'indicado',
  'outside to stated': 'exterior frente a indicado',

  // Sturdiness
  Sturdiness: 'Solidez',
  'A drink can for a pot dents and splits.': 'Una lata de bebida como olla se abolla y se raja.',
  '{width#} × {height} at {mass} is a drink can: it dents and splits.':
    '{width#} × {height} con {mass} es una lata de bebida: se abolla y se raja.',
  '{mass} for {capacity} is as thin as a drink can: it dents and splits.':
    '{mass} para {capacity} es fina como una lata de bebida: se abolla y se raja.',
  'a drink can': 'una lata de bebida',
  '{ratio#} of {least}': '{ratio#} de {least}',
  'A pot made for cooking.': 'Una olla hecha para cocinar.',
  'A pot of this size that weighs {heavier} or more.': 'Una olla de este tamaño que pese {heavier} o más.',
  mass: 'peso',
  'mass for what it holds': 'peso por lo que cabe',

  // Material
  Material: 'Material',
  'A pot of {material} over a flame melts or burns.': 'Una olla de {material} sobre la llama se funde o se quema.',
  'Bare titanium has hot spots: what simmers or fries in it scorches.':
    'El titanio desnudo tiene puntos calientes: lo que se guisa o se fríe en él se pega y se quema.',
  'Bare titanium has hot spots: dry snow in it scorches and tastes of it.':
    'El titanio desnudo tiene puntos calientes: la nieve seca se requema y sabe a ello.',
  'Aluminium over a fire: empty, it can melt through.': 'Aluminio sobre una hoguera: vacía, puede fundirse.',
  'The pot of {material} takes this cooking.': 'La olla de {material} aguanta esta cocina.',
  'What the pot is made of is not said: bare titanium scorches, other metals seldom.':
    'No se dice de qué es la olla: el titanio desnudo requema, otros metales rara vez.',
  '{material}': '{material}',
  '{material}, to {use}': '{material}, para {use}',
  '{material}, at a fire': '{material}, en la hoguera',
  'material not given': 'material sin indicar',
  'A pot of steel, enamel or aluminium.': 'Una olla de acero, esmalte o aluminio.',
  'A pot of steel, enamel or aluminium. Or boil-only in this one.':
    'Una olla de acero, esmalte o aluminio. O en esta solo hervir agua.',
  'A pot of steel or enamel.': 'Una olla de acero o esmalte.',
  'A pot of dry snow scorches on any stove. Start with water in it, feed the snow, stir.':
    'La nieve seca se requema en cualquier hornillo. Empezar con agua, ir echando nieve, remover.',
  'An empty pot over a fire heats in moments. Fill it first, then hang it.':
    'Una olla vacía sobre la hoguera se calienta en un instante. Primero llenarla, luego colgarla.',
  'What is it made of?': '¿De qué es?',
  simmer: 'guisar',
  'cook from scratch': 'cocinar de verdad',
  'melt snow': 'derretir nieve',
  titanium: 'titanio',
  aluminium: 'aluminio',
  steel: 'acero',
  iron: 'hierro',
  enamel: 'esmalte',
  plastic: 'plástico',
  wood: 'madera',

  // Hanging
  Hanging: 'Olla colgada',
  'It may lean {spill} on its bail before it spills.': 'Colgada del asa, puede inclinarse {spill} antes de rebosar.',
  'It spills at {spill} on its bail: it slops when touched.':
    'Colgada del asa rebosa a {spill}: salpica con solo tocarla.',
  'It spills at {spill} on its bail: nobody carries that without slopping.':
    'Colgada del asa rebosa a {spill}: nadie la lleva sin derramar.',
  'Its weight hangs above the ears of the bail: it turns over.':
    'Su peso queda por encima de las orejetas del asa: se da la vuelta.',
  '{spill} to the spill': '{spill} hasta rebosar',
  '{metacentric} below the ears': '{metacentric} bajo las orejetas',
  'Fill it to {lessFill} at most: {costsUnder} to the spill.':
    'Llenarla hasta {lessFill} como mucho: {costsUnder} hasta rebosar.',
  'Ears nearer the rim, or less water in it.': 'Orejetas más cerca del borde, o menos agua dentro.',
  'Boiling water burns in a second. Lift it off with a stick through the bail, low, and away from legs.':
    'El agua hirviendo quema en un segundo. Retirarla con un palo por el asa, baja y lejos de las piernas.',
  'from the fill line to the rim': 'de la línea de llenado al borde',
  'half the width': 'la mitad del ancho',
  'leans before it spills, the arc of that slope': 'se inclina antes de rebosar: el ángulo de esa pendiente',
  'ears above the middle of the water': 'orejetas sobre el centro del agua',
  'the free surface, r² ÷ 4h': 'la superficie libre, r² ÷ 4h',
  'weight acts below the ears': 'a esto bajo las orejetas actúa el peso',

  // Standing
  Standing: 'Estabilidad',
  'It goes over at {tip}, before it spills.': 'Vuelca a {tip}, antes de rebosar.',
  'It spills at {spill} and goes over at {tip}.': 'Rebosa a {spill} y vuelca a {tip}.',
  'It leans {tip} before it goes over.': 'Se inclina {tip} antes de volcar.',
  '{tip} of {least}, before it tips': '{tip} de {least} antes de volcar',
  'Feet {feet} across, or fill it less.': 'Patas de {feet} de ancho, o llenarla menos.',
  'A stove with arms {feet} across, or fill it less.': 'Un hornillo con brazos de {feet} de ancho, o llenarla menos.',
  'Boiling water burns in a second. Cook on the ground, sit to one side of the pot, keep feet clear.':
    'El agua hirviendo quema en un segundo. Cocinar en el suelo, sentarse a un lado de la olla, apartar los pies.',
  'from the middle to the edge it goes over': 'del centro al canto por el que vuelca',
  'height of the filled pot’s weight, about': 'altura del peso de la olla llena, más o menos',
  'leans before it tips, its water running to the low side':
    'se inclina antes de volcar, con el agua corriendo al lado bajo',
  'leans before it spills': 'se inclina antes de rebosar',

  // Lifting
  Lifting: 'Agarre',
  'It is lifted by {grips}.': 'Se levanta con: {grips}.',
  'Nothing on it or beside it lifts the full pot.': 'Nada en ella ni junto a ella levanta la olla llena.',
  'Full it is {filled}, too much for {grips}.': 'Lleno pesa {filled}, demasiado para: {grips}.',
  'Full it is {filled} on a bail: two people lift it, on a stick.':
    'Lleno pesa {filled} de un asa de alambre: lo levantan dos personas, con un palo.',
  'Full it is {filled}: too heavy for anyone to lift while it boils.':
    'Lleno pesa {filled}: demasiado para levantarlo hirviendo.',
  'Nothing says how it is lifted when full.': 'Nada dice cómo se levanta llena.',
  '{filled#} of {limit}, lifted full': '{filled#} de {limit}, levantado lleno',
  '{holds#} of {limitL}, lifted full': '{holds#} de {limitL}, levantado lleno',
  'no grip': 'sin agarre',
  'no handle named': 'ningún asa nombrada',
  'A gripper, or a pot with a bail or handles.': 'Una pinza, o una olla con asa de alambre o asas.',
  'A pot with a handle on either side. Or fill it to {least} at most.':
    'Una olla con un asa a cada lado. O llenarla hasta {least} como máximo.',
  'A pot with a handle on either side.': 'Una olla con un asa a cada lado.',
  'Ladle it out where it stands. Or fill it to {least} at most.':
    'Vaciarla con un cazo donde está. O llenarla hasta {least} como máximo.',
  'Ladle it out where it stands.': 'Vaciarla con un cazo donde está.',
  '“{name}”: has it a handle, a bail or a gripper?': '«{name}»: ¿tiene mango, asa de alambre o pinza?',
  'Boiling water burns in a second. Set cups on the ground to pour, and keep feet clear.':
    'El agua hirviendo quema en un segundo. Para servir, dejar las tazas en el suelo y apartar los pies.',
  'a bail': 'un asa de alambre',
  'two handles': 'dos asas',
  'one handle': 'un asa',
  'a gripper': 'una pinza',
  'water to the brim, and the pot': 'el agua hasta el borde, y la olla',
  'the most that {grips} may lift': 'lo máximo que levanta: {grips}',
  'the most that {grips} may hold': 'lo máximo que sostiene: {grips}',

  // At the fire
  'At the fire': 'En la hoguera',
  'The bail hangs it over the fire and hooks it off.':
    'El asa de alambre la cuelga sobre la hoguera y la saca con un gancho.',
  'No bail: nothing to hang it by or to hook it off the fire.':
    'Sin asa de alambre: nada de que colgarla ni con que sacarla de la hoguera.',
  'No bail: the pot comes off by hand each time the stove is fed.':
    'Sin asa de alambre: hay que quitar la olla a mano cada vez que se echa leña.',
  'Nothing says whether it has a bail.': 'Nada dice si tiene asa de alambre.',
  'Fires are said to be forbidden where this kit cooks on one.':
    'Según la lista, el fuego está prohibido, y este equipo cocina con él.',
  bail: 'asa de alambre',
  'no bail': 'sin asa de alambre',
  'bail not named': 'asa de alambre sin nombrar',
  'no fires': 'sin hogueras',
  'A pot with a bail, or a wire through two holes under the rim.':
    'Una olla con asa de alambre, o un alambre por dos agujeros bajo el borde.',
  'A gas or spirit stove, where local rules allow it.':
    'Un hornillo de gas o de alcohol, donde las normas locales lo permitan.',
  '“{name}”: has it a bail, a handle that swings over the top?':
    '«{name}»: ¿tiene asa de alambre, de las que pasan por encima de la boca?',

  // Lid
  Lid: 'Tapa',
  'It has a lid.': 'Tiene tapa.',
  'No lid: an open pot gives away heat and spills at once.':
    'Sin tapa: una olla abierta pierde calor y derrama enseguida.',
  'No lid: near the boil the open top gives away {watts}, {grams} of fuel an hour.':
    'Sin tapa: cerca del hervor se van por arriba {watts}, {grams} de combustible por hora.',
  'No lid to melt snow under: the heat goes into the cold.': 'Sin tapa para derretir nieve: el calor se va al frío.',
  'Nothing says whether it has a lid.': 'Nada dice si tiene tapa.',
  lid: 'tapa',
  'no lid': 'sin tapa',
  'A lid of any kind: foil or a plate will do.': 'Una tapa cualquiera: basta papel de aluminio o un plato.',
  '“{name}”: has it a lid?': '«{name}»: ¿tiene tapa?',
  'lost by open water at 95 °C in still air': 'lo que pierde el agua destapada a 95 °C en aire quieto',
  'open top': 'boca abierta',
  'given away': 'se pierde',
  'saved by a lid: 6 % over a whole pasta cook, 30 % on hobs; the loss above is used':
    'lo que ahorra una tapa: 6 % al cocer pasta, en total; 30 % en placas; se usa la pérdida de arriba',

  // Melting snow
  'Melting snow': 'Derretir nieve',
  'If snow is the water, a {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Si el agua es nieve, una olla de {have} derrite la de {people}: {loads#} {loads:carga|cargas} al día.',
  'A {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Una olla de {have} derrite el agua de {people}: {loads#} {loads:carga|cargas} al día.',
  'A {have} pot means {loads#} {loads:load|loads} of snow a day.':
    'Una olla de {have} supone {loads#} {loads:carga|cargas} de nieve al día.',
  'If snow is the water, a {have} pot means {loads#} {loads:load|loads} a day.':
    'Si el agua es nieve, una olla de {have} supone {loads#} {loads:carga|cargas} al día.',
  'A {have} pot is small to melt the water of {people}.':
    'Una olla de {have} es pequeña para derretir el agua de {people}.',
  'A {have} pot is large enough to melt the water of {people}.':
    'Una olla de {have} basta para derretir el agua de {people}.',
  'If snow is the water, a {have} pot is small to melt the water of {people}.':
    'Si el agua es nieve, una olla de {have} es pequeña para derretir la de {people}.',
  'If snow is the water, a {have} pot is large enough for {people}.':
    'Si el agua es nieve, una olla de {have} basta para {people}.',
  'No pot to melt snow in: none of metal.': 'No hay olla en que derretir nieve: ninguna es de metal.',
  'If snow is the water, there is no pot to melt it in: none of metal.':
    'Si el agua es nieve, no hay olla en que derretirla: ninguna es de metal.',
  'Without its size, nobody can tell whether it melts enough snow.':
    'Sin su tamaño no se sabe si derrite bastante nieve.',
  'If snow is the water, nobody can tell without its size whether the pot melts enough.':
    'Si el agua es nieve, sin su tamaño no se sabe si la olla derrite bastante.',
  '{have} of {need}': '{have} de {need}',
  '{have} of {wanted}': '{have} de {wanted}',
  'no melt pot': 'sin olla para nieve',
  'A lidded metal pot of {better} or more: {betterLoads#} {betterLoads:load|loads}.':
    'Una olla de metal con tapa de {better} o más: {betterLoads#} {betterLoads:carga|cargas}.',
  'Add a lidded metal pot of {wanted}.': 'Añadir una olla de metal con tapa de {wanted}.',
  'A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.':
    'La nieve seca se requema. Empezar con agua, echar nieve poco a poco para que siga aguada, con la tapa puesta.',
  'no metal pot': 'sin olla de metal',
  'a day, {each} for {people}': 'al día, {each} para {people}',
  'the pot, to the brim': 'la olla, hasta el borde',
  'water in {snow} snow, by volume': 'agua en la nieve {snow}, en volumen',
  'loads a day': 'cargas al día',
  'over the stove a day': 'en el hornillo al día',
  'fuel a day': 'combustible al día',
  'hand-packed': 'apretada a mano',
  settled: 'asentada',
  'wind-packed': 'venteada',
  new: 'nueva',

  // Stove and fuel
  'Stove and fuel': 'Hornillo y combustible',
  'The stove burns what is carried: {burns}.': 'El hornillo quema lo que se lleva: {burns}.',
  'The stove burns {burns}; the list carries {carried}.': 'El hornillo quema {burns}; la lista lleva {carried}.',
  'There is a stove, and nothing on the list for it to burn.': 'Hay hornillo, y en la lista nada que queme.',
  'Fuel is carried ({carried}), and no stove on the list burns it.':
    'Se lleva combustible ({carried}) y ningún hornillo de la lista lo quema.',
  'Nothing on the list burns in the stove on {burns}.': 'Nada de la lista arde en este hornillo ({burns}).',
  'No stove on the list burns the {carried}.': 'Ningún hornillo de la lista quema esto ({carried}).',
  'no stove': 'sin hornillo',
  'A stove for {carried}. Or add the line of the stove, if it is carried.':
    'Un hornillo para {carried}. O añadir la línea del hornillo, si se lleva.',
  'Carry {burns} for it, or leave it at home.': 'Llevar {burns} para él, o dejarlo en casa.',
  'A stove for it, or leave it at home.': 'Un hornillo para ello, o dejarlo en casa.',
  '{burns}': '{burns}',
  '{carried} for a stove on {burns}': '{carried} para un hornillo de {burns}',
  'no fuel named': 'ningún combustible nombrado',
  'Carry {burns} for this stove, or the stove for this fuel.':
    'Llevar {burns} para este hornillo, o el hornillo de este combustible.',
  'What does the stove burn, and how much of it is carried?': '¿Qué quema el hornillo, y cuánto se lleva?',
  'no fuel': 'sin combustible',
  'canister gas': 'gas de cartucho',
  alcohol: 'alcohol',
  'liquid fuel': 'combustible líquido',
  'solid fuel': 'combustible sólido',

  // Fuel carried
  'Fuel carried': 'Combustible que se lleva',
  'The fuel lasts {days#} {days:day|days} with a quarter to spare.':
    'El combustible dura {days#} {days:día|días} y sobra un cuarto.',
  'The fuel covers the likely need for {days#} {days:day|days} and leaves little over.':
    'El combustible cubre lo probable para {days#} {days:día|días} y deja poco de sobra.',
  'The fuel runs short of {days#} {days:day|days}.': 'El combustible no llega a {days#} {days:día|días}.',
  'It covers {days#} {days:day|days} from streams and not from snow.':
    'Cubre {days#} {days:día|días} con agua de arroyos, no de nieve.',
  'It lasts {lasts#} {lasts:day|days}; nothing says how long the trip is.':
    'Dura {lasts#} {lasts:día|días}; nada dice cuánto dura la salida.',
  'Nothing says how much fuel is carried; {days#} {days:day takes|days take} about {need}.':
    'Nada dice cuánto combustible se lleva; {days#} {days:día pide|días piden} cerca de {need}.',
  '{carried} of {need}': '{carried} de {need}',
  'amount not given': 'cantidad sin indicar',
  'Carry {more} more, about {wanted} in all.': 'Llevar {more} más, cerca de {wanted} en total.',
  'How many days is the trip?': '¿Cuántos días dura la salida?',
  '“{name}”: how much fuel is in it?': '«{name}»: ¿cuánto combustible tiene?',
  'Will the water come from streams, or from snow?': '¿El agua saldrá de arroyos o de la nieve?',
  'fuel a day, {low} to {high}': 'combustible al día, de {low} a {high}',
  days: 'días',
  'likely need': 'gasto probable',
  'a quarter to spare': 'un cuarto de reserva',
  wanted: 'hace falta',
  'carried, net': 'se lleva, neto',

  // Gas in the cold
  'Gas in the cold': 'Gas con frío',
  'At {low} the gas leaves the canister until it is nearly empty.':
    'A {low} el gas sale del cartucho hasta que está casi vacío.',
  'At {low} the canister gives liquid gas, turned over as the list says.':
    'A {low} el cartucho da gas líquido, boca abajo como dice la lista.',
  'At {low} the gas leaves the canister at first; it fades when {used} is used.':
    'A {low} el gas sale al principio del cartucho; flojea cuando se ha gastado el {used}.',
  'At {low} one canister still gives gas and another, {gas}, gives none or fades sooner.':
    'A {low} un cartucho aún da gas; otro ({gas}) no da o flojea antes.',
  'At {low} the gas barely leaves the canister.': 'A {low} el gas apenas sale del cartucho.',
  '{gas} stays liquid below {liquid} at {altitude}; at {canister} none comes out.':
    '{gas} no se evapora por debajo de {liquid} a {altitude}; a {canister} no sale nada.',
  'At {low} no canister gas vaporises.': 'A {low} no se evapora ningún gas de cartucho.',
  'At {low} the canister has to be turned upside down, on a stove made for that.':
    'A {low} hay que poner el cartucho boca abajo, en un hornillo hecho para ello.',
  'At {low} it depends on the mix: butane stays liquid, a winter mix burns.':
    'A {low} depende de la mezcla: el butano queda líquido, una mezcla de invierno arde.',
  '{pressure#} of {wanted}, from nearly empty to full': '{pressure#} de {wanted}, de casi vacío a lleno',
  'A canister of isobutane and propane: {better} at {low}. Or keep it warm.':
    'Un cartucho de isobutano y propano: {better} a {low}. O mantenerlo templado.',
  'A stove on a hose that takes liquid gas, or a petrol stove.':
    'Un hornillo con manguera que tome gas líquido, o uno de gasolina.',
  'A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.':
    'Un cartucho calentado a la llama puede reventar. Templarlo en la chaqueta, o en agua que la mano aguante.',
  'Plain butane': 'El butano puro',
  'An isobutane mix': 'Una mezcla de isobutano',
  'A winter mix': 'Una mezcla de invierno',
  Propane: 'El propano',
  'What does the canister hold: butane, isobutane mix, winter mix?':
    '¿Qué contiene el cartucho: butano, mezcla de isobutano, mezcla de invierno?',
  'pressure in the canister at {canister}, from nearly empty to full; in use it is colder than the air':
    'presión en el cartucho a {canister}, de casi vacío a lleno; en uso está más frío que el aire',
  'the air at this altitude': 'el aire a esta altitud',
  'over the air, to run well': 'por encima del aire, para ir bien',
  'This mix': 'Esta mezcla',
  'what the pot weighs': 'lo que pesa la olla',
  'its mass is not given, and pots like it weigh about so much': 'no se da su peso, y ollas así pesan más o menos eso',
  'give its mass': 'dar su peso',
  'Guideline 9.1.3 of ANZCOR says 20 minutes at least.': 'La guía 9.1.3 de ANZCOR dice 20 minutos como mínimo.',
  'A gripper lifts about 2 L or 2.5 kg; more takes a handle on either side, or two people and a stick through the bail; what weighs 10 kg full is ladled out where it stands':
    'Una pinza levanta unos 2 L o 2,5 kg; para más hace falta un asa a cada lado, o dos personas y un palo por el asa de alambre; lo que lleno pesa 10 kg se vacía con un cazo donde está',
  'Pots weigh 0.12–0.18 g for each mL in titanium, 0.15–0.3 in aluminium, 0.25–0.6 in steel, 1 g and more in iron':
    'Las ollas pesan por ml 0,12–0,18 g en titanio, 0,15–0,3 en aluminio, 0,25–0,6 en acero, 1 g o más en hierro',
  'The law as textbooks of distillation give it; the paper itself was not seen.':
    'La ley tal como la dan los manuales de destilación; el artículo mismo no se ha visto.',
  'The abstract was read, not the paper.': 'Se ha leído el resumen, no el artículo.',

  // Alcohol in the cold
  'Alcohol in the cold': 'Alcohol con frío',
  'An alcohol stove at {low} lights slowly and heats slowly.':
    'Un hornillo de alcohol a {low} prende despacio y calienta despacio.',
  'Melting snow on alcohol is slow and takes much fuel; it is not impossible.':
    'Derretir nieve con alcohol es lento y gasta mucho; imposible no es.',
  'If snow is the water, alcohol melts it slowly and with much fuel; it is not impossible.':
    'Si el agua es nieve, el alcohol la derrite despacio y gastando mucho; imposible no es.',
  'If snow is the water, alcohol melts it in {minutes} and {grams} a day: slow, not impossible.':
    'Si el agua es nieve, el alcohol la derrite en {minutes} y {grams} al día: lento, no imposible.',
  'Melting snow on alcohol takes {minutes} and {grams} a day; it is slow, not impossible.':
    'Derretir nieve con alcohol lleva {minutes} y {grams} al día; es lento, no imposible.',
  '{low}, alcohol': '{low}, alcohol',
  'snow on alcohol': 'nieve con alcohol',
  'Carry the bottle warm and screen the burner. Or a gas or petrol stove made for the cold.':
    'Llevar la botella al calor y resguardar el quemador. O un hornillo de gas o gasolina hecho para el frío.',

  // Something to light it
  'Something to light it': 'Con qué encenderlo',
  'Something to light the stove with: {what}.': 'Hay con qué encender el hornillo: {what}.',
  'Nothing on the list lights the flame.': 'Nada en la lista enciende la llama.',
  'One thing to light the stove with, {what}: in the snow a second means, kept apart from it, is usual.':
    'Una sola cosa para encender, {what}: en la nieve es costumbre llevar otra, guardada aparte.',
  '{have#} on the list': '{have#} en la lista',
  'none on the list': 'nada en la lista',
  'Add a lighter, and matches kept dry apart from it.': 'Añadir un mechero, y cerillas secas guardadas aparte.',
  'no lighter, no matches': 'sin mechero, sin cerillas',
  'a lighter': 'un mechero',
  matches: 'cerillas',
  'a lighter and matches': 'un mechero y cerillas',

  // Water carried
  'Water carried': 'Agua que se lleva',
  'Room for {have} of water.': 'Sitio para {have} de agua.',
  'Room for {have} of water, filled again on the way.': 'Sitio para {have} de agua, rellenando por el camino.',
  'Room for {have} of water: water has to be near.': 'Sitio para {have} de agua: tiene que haber agua cerca.',
  'Nothing on the list carries water.': 'Nada en la lista sirve para llevar agua.',
  'Nothing says how much water the {count} {count:piece holds|pieces hold}.':
    'Nada dice cuánta agua cabe en {count} {count:recipiente|recipientes}.',
  'no bottle': 'sin botella',
  'Room for {more} more.': 'Sitio para {more} más.',
  'Add bottles or a bladder for {need}.': 'Añadir botellas o una bolsa de agua para {need}.',
  'no bottle, no bladder': 'sin botella ni bolsa de agua',
  'carried in all': 'en total',
  people: 'personas',
  'a day and a night, each': 'por día y noche, cada una',
  'room wanted': 'sitio que hace falta',

  // Boiling drinking water
  'Boiling drinking water': 'Hervir el agua de beber',
  'Water boils at {boil} here. Keep it at a rolling boil for {minutes} before anyone drinks it.':
    'El agua hierve aquí a {boil}. Mantenerla a borbotones {minutes} antes de beberla.',
  '{minutes} at a rolling boil': '{minutes} a borbotones',
  'Of three published rules the longest is used: {high} above {above}. Others say {high} above {elsewhere}, or that reaching a rolling boil is enough at any altitude.':
    'De tres reglas publicadas se sigue la más larga: {high} por encima de {above}. Otras dicen {high} por encima de {elsewhere}, o que basta con que hierva a borbotones a cualquier altitud.',
  'Boiling kills germs. It takes out no poison, fuel or salt: leave water that may hold those.':
    'Hervir mata los gérmenes. No quita venenos, combustible ni sal: dejar el agua que pueda contenerlos.',
  'where they cook': 'donde se cocina',
  'boiling point there': 'punto de ebullición allí',

  // A hot meal a day
  'A hot meal a day': 'Una comida caliente al día',
  'A hot meal of {portion} a person each day.': 'Cada día, una comida caliente de {portion} por persona.',
  'Less than one hot meal a day: some {kcal} a day is bearable for {days#} days at most, and only with one.':
    'Menos de una comida caliente al día: unas {kcal} al día se aguantan {days#} días como mucho, y solo con una.',
  'Nothing to heat a meal in: some {kcal} a day is bearable for {days#} days at most, and only with a hot meal.':
    'Nada en que calentar una comida: unas {kcal} al día se aguantan {days#} días como mucho, y solo con una comida caliente.',
  '{meals#} of {least#} hot meals a day': '{meals#} de {least#} comidas calientes al día',
  'hot meals a day: {meals#}': 'comidas calientes al día: {meals#}',
  'One hot meal of {portion} a person a day.': 'Una comida caliente de {portion} por persona y día.',
  'A pot and a stove, for one hot meal of {portion} a person a day.':
    'Una olla y un hornillo, para una comida caliente de {portion} por persona y día.',
  'hot meals a day': 'comidas calientes al día',
  'one meal, from the least to a full portion': 'una comida, de la ración mínima a la completa',
  'hot food a person a day': 'comida caliente por persona y día',

  // Something to eat from
  'Something to eat from': 'En qué comer',
  'Something to eat from for {people#} {people:person|people}.':
    'Hay en qué comer para {people#} {people:persona|personas}.',
  'Something to eat from for {have#} of {people#}: the rest wait their turn.':
    'Hay en qué comer para {have#} de {people#}: los demás esperan turno.',
  'How many pieces “{name}” are is not said: {have#} of {people#} are sure to have something to eat from.':
    'No se dice cuántas piezas son «{name}»: {have#} de {people#} tienen en qué comer en todo caso.',
  '{have#} of {people#}': '{have#} de {people#}',
  '{more#} more {more:bowl or mug|bowls or mugs}.': '{more#} {more:cuenco o taza|cuencos o tazas} más.',
  'How many {name} are there?': '¿Cuántas piezas hay de {name}?',
  'bowls and mugs': 'cuencos y tazas',
  'eat from the pot': 'comen de la olla',
  'pots of their own': 'ollas propias',
  'have something to eat from': 'tienen en qué comer',

  // Boiling water
  'Boiling water': 'Agua hirviendo',
  'Young people around {water} of boiling water: it burns in {fast} or less, and cooled to {cooled} still in {slow}.':
    'Jóvenes alrededor de {water} de agua hirviendo: quema en {fast} o menos, y enfriada a {cooled} aún en {slow}.',
  '{water} at {boil}': '{water} a {boil}',
  'A ladle and a pot that stays put. Or fills under {limit}.':
    'Un cucharón y una olla que no se mueve. O llenar menos de {limit}.',
  'Cups stand on the ground to be filled. Feet stay clear, and one person alone handles the pot.':
    'Las tazas se llenan en el suelo. Los pies, apartados, y una sola persona maneja la olla.',
  'A burn: cool running water, wet clothing off, cover it; blisters on face, hands or feet need a doctor.':
    'En una quemadura: agua corriente fresca, fuera la ropa mojada, cubrirla; ampollas en cara, manos o pies, al médico.',
  'the share that is filled': 'hasta dónde se llena',
  'of boiling water': 'de agua hirviendo',

  // Air to cook in
  'Air to cook in': 'Aire al cocinar',
  'Cook outside: a stove in a tent, a porch, a hut or a van fills it with carbon monoxide.':
    'Cocinar fuera: un hornillo en una tienda, un ábside, un refugio o una furgoneta los llena de monóxido de carbono.',
  'The list speaks of cooking inside: a stove fills a tent, a porch, a hut or a van with carbon monoxide.':
    'La lista habla de cocinar dentro: un hornillo llena de monóxido de carbono una tienda, un ábside, un refugio o una furgoneta.',
  'A pan {base} wide makes a stove give off more carbon monoxide: in a test {wide} gave more than {narrow}.':
    'Bajo una sartén de {base} un hornillo suelta más monóxido de carbono: en un ensayo {wide} dieron más que {narrow}.',
  '{inside#} of {guideline}, carbon monoxide': '{inside#} de {guideline} de monóxido de carbono',
  '{base#} of {wide}': '{base#} de {wide}',
  'A pot or pan less than {wide} across the base.': 'Una olla o sartén de menos de {wide} de fondo.',
  'Cook outside, under a tarp that is open on all sides where it rains.':
    'Cocinar fuera; si llueve, bajo un toldo abierto por todos los lados.',
  'Stoves in tents and snow caves gave {inside} of carbon monoxide in tests; a guideline for {minutes} is {guideline}. It has no smell, and a flap or a door that is open does not rule it out.':
    'En ensayos, hornillos en tiendas y cuevas de nieve dieron {inside} de monóxido de carbono; un valor guía para {minutes} es {guideline}. No huele, y una solapa o una puerta abierta no lo descarta.',
  'If anyone has a headache or feels dull or sick: everybody out into the air at once, stove off, and get help.':
    'Si alguien tiene dolor de cabeza o se siente aturdido o mareado: todos fuera al aire enseguida, apagar el hornillo y pedir ayuda.',

  // Filling the burner
  'Filling the burner': 'Llenar el quemador',
  'Young people fill a burner from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'Jóvenes llenan un quemador de una botella con {bottle} de alcohol: si cae en una llama que no se ve, el fuego salta a la botella.',
  'The burner is filled from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'El quemador se llena de una botella con {bottle} de alcohol: si cae en una llama que no se ve, el fuego salta a la botella.',
  'Young people fill an alcohol burner: poured into an unseen flame it flashes back.':
    'Jóvenes llenan un quemador de alcohol: si cae en una llama que no se ve, el fuego salta a la botella.',
  '{bottle} in one bottle': '{bottle} en una botella',
  'alcohol, young people': 'alcohol, jóvenes',
  'A bottle of {small} or less to fill from.': 'Una botella de {small} o menos para llenar.',
  'A burner for gas. Or a leader fills it, cold, from {small} or less.':
    'Un quemador de gas. O lo llena un monitor, frío, con {small} o menos.',
  'The flame is not seen by day. Feel that the burner is cold, then fill it from a small bottle, well away from any flame.':
    'La llama no se ve de día. Comprobar con la mano que el quemador está frío y llenarlo con una botella pequeña, lejos de toda llama.',
  'A burn: cool running water, wet clothing off, cover it.':
    'En una quemadura: agua corriente fresca, fuera la ropa mojada, cubrirla.',

  // Heat on the canister
  'Heat on the canister': 'Calor en el cartucho',
  'If the windscreen closes round the canister, it traps heat and the canister can burst.':
    'Si el paraviento se cierra alrededor del cartucho, encierra el calor y el cartucho puede reventar.',
  'A griddle or pan this wide sends heat down onto an upright canister, which can burst.':
    'Una plancha o sartén tan ancha manda calor al cartucho de debajo, que puede reventar.',
  'A windscreen that closes round a canister under the burner traps heat.':
    'Un paraviento cerrado alrededor de un cartucho bajo el quemador encierra el calor.',
  '× {ratio#} pressure, {cool#} to {warm}': '× {ratio#} presión, de {cool#} a {warm}',
  'A stove on a hose, with the screen between burner and canister. On this one no screen, unless its maker’s instructions allow it.':
    'Un hornillo con manguera, el paraviento entre quemador y cartucho. En este ninguno, salvo que lo permita el manual del fabricante.',
  'A pan of {wide} or less. Or a stove on a hose.': 'Una sartén de {wide} o menos. O un hornillo con manguera.',
  'If the canister feels warm, turn the stove off and let it cool. Canisters are made for the pressure at {warm}, and for no more.':
    'Si el cartucho se nota caliente, apagar el hornillo y dejarlo enfriar. Los cartuchos están hechos para la presión a {warm}, y no más.',
  'Does the stove screw onto the canister, or stand beside it on a hose?':
    '¿El hornillo se enrosca en el cartucho, o está al lado con una manguera?',
  'pressure of the gas carried at {warm}': 'presión del gas que se lleva a {warm}',
  'the same at {cool}': 'la misma a {cool}',
  'times the pressure': 'veces la presión',

  // Under the stove
  'Under the stove': 'Bajo el hornillo',
  'Nothing on the list goes under the stove: on snow it melts in and tips.':
    'Nada en la lista va bajo el hornillo: sobre nieve se hunde y vuelca.',
  'The stove has something to stand on, on snow.': 'El hornillo tiene en qué apoyarse sobre la nieve.',
  'no board': 'sin tabla',
  'a board': 'una tabla',
  'A board under the stove. Or a spare lid or a shovel blade.':
    'Una tabla bajo el hornillo. O una tapa de sobra, o la hoja de una pala.',
  'A stove that tips spills boiling water. Tread the snow hard and level before it is lit.':
    'Un hornillo que vuelca derrama agua hirviendo. Pisar la nieve hasta dejarla firme y llana antes de encenderlo.',

  // The day
  'What to look for': 'Qué buscar',
  'For {who}, {style}: {least} or more to the brim; {full} for full portions.':
    'Para {who}, {style}: {least} o más hasta el borde; {full} para raciones completas.',
  'On a bail or at a fire 2 : 3 is best, and {ratio#} as wide as tall holds up.':
    'Colgada o al fuego, lo mejor es 2 : 3; sirve de {ratio#} de ancho por 1 de alto.',
  'On a stove, {ratio#} as wide as tall holds up.': 'En un hornillo sirve de {ratio#} de ancho por 1 de alto.',
  'This stove suits {widths} across.': 'A este hornillo le van {widths} de ancho.',
  'This stove wants {leastWidth} across or more.': 'Este hornillo pide {leastWidth} de ancho o más.',
  'This stove carries {mostWidth} across or less.': 'Este hornillo lleva {mostWidth} de ancho o menos.',
  'With the width of the burner, the widths that suit it are marked too.':
    'Con el ancho del quemador se marcan también los anchos que le van.',
  'No pot is all of that on this stove. Another stove, or two pots.':
    'Ninguna olla es todo eso en este hornillo. Otro hornillo, o dos ollas.',
  'This pot is one of them.': 'Esta olla es una de ellas.',
  '{width} across and {height} tall would do: {brim}.': 'Serviría una de {width} de ancho y {height} de alto: {brim}.',
  'width across, {unit}': 'ancho, {unit}',
  'height, {unit}': 'alto, {unit}',
  'this pot; the dotted corner is its outline': 'esta olla; la esquina punteada es su contorno',
  'the nearest pot that suits': 'la olla más cercana que sirve',
  'suits shape and least portions; closer lines, full ones':
    'sirve por forma y para raciones mínimas; líneas más juntas, las completas',
  'suits stove, shape and least portions; closer lines, full ones':
    'sirve por hornillo, forma y para raciones mínimas; líneas más juntas, las completas',
  '{least}: least portions': '{least}: raciones mínimas',
  '{full}: full portions': '{full}: raciones completas',
  '{boil}: least portions, water alone': '{boil}: raciones mínimas, agua sola',
  '{ratio#} as wide as tall': '{ratio#} de ancho por 1 de alto',
  '{widths}: suits the stove': '{widths}: le va al hornillo',
  'Snow to water': 'Nieve a agua',
  'Hot meal': 'Comida caliente',
  'Hot drinks': 'Bebidas calientes',
  'Water boiled to drink': 'Agua hervida para beber',
  'water a person a day, from snow': 'agua por persona y día, de nieve',
  'a meal, least to full portion': 'una comida, de ración mínima a completa',
  'a hot drink': 'una bebida caliente',
  'water a day': 'agua al día',
  'heat into the pot': 'calor que entra en la olla',
  'heat of a gram of fuel that reaches the pot': 'calor de un gramo de combustible que llega a la olla',
  round: 'tanda',
  rounds: 'tandas',
  loads: 'cargas',
  'A day heats {litres} of water, with {minutes} at the flame and {grams} of fuel.':
    'Un día calienta {litres} de agua, con {minutes} a la llama y {grams} de combustible.',
  'A day heats {litres} of water, with {minutes} at the fire and {kg} of dry wood, gathered.':
    'Un día calienta {litres} de agua, con {minutes} al fuego y {kg} de leña seca, recogida.',
  '{days#} {days:day takes|days take} {grams} of fuel.': '{days#} {days:día pide|días piden} {grams} de combustible.',
  '{days#} {days:day takes|days take} {kg} of dry wood.': '{days#} {days:día pide|días piden} {kg} de leña seca.',
  '{days#} {days:day takes|days take} {grams} of fuel; {carried} are carried.':
    '{days#} {days:día pide|días piden} {grams} de combustible; se llevan {carried}.',

  // A letter
  'An answer to send': 'Una respuesta para enviar',
  'Before you go': 'Antes de salir',
  'A small gain': 'Una pequeña mejora',
  'One question': 'Una pregunta',
  Questions: 'Preguntas',
  'Write back with the answer, and I will look again.': 'Escríbeme la respuesta y lo miro de nuevo.',
  'Write back with the answers, and I will look again.': 'Escríbeme las respuestas y lo miro de nuevo.',
  'Nothing I read here falls short.': 'Nada de lo que leo aquí se queda corto.',
  Sources: 'Fuentes',
  'Before they go': 'Antes de que salgan',
  'To ask': 'Por preguntar',
  'The letter': 'La carta',
  'First line': 'Primera línea',
  caution: 'precaución',
  'settles {checks}': 'resuelve {checks}',
  'Cautions, at the thick line, stay while their finding is ticked. What you wrote stays until the list changes.':
    'Las precauciones, en la línea gruesa, quedan mientras su hallazgo esté marcado. Lo que has escrito queda hasta que cambie la lista.',
  'Copy as': 'Copiar como',
  letter: 'carta',
  'plain text': 'texto sin formato',
  Markdown: 'Markdown',
  'Sources at the end': 'Fuentes al final',
  'Copy the letter': 'Copiar la carta',
  Copied: 'Copiado',
  'The browser refused to copy. Copy the text here by hand.':
    'El navegador no dejó copiar. Copiar el texto aquí a mano.',
  '{n#} {n:sentence|sentences}. Nothing is sent from here.': '{n#} {n:frase|frases}. Nada se envía desde aquí.',
  'Back to the findings': 'Volver a los hallazgos',

  // The headline
  'the pan can overheat the canister': 'la sartén puede sobrecalentar el cartucho',
  'the windscreen can overheat the canister': 'el paravientos puede sobrecalentar el cartucho',
  'the pot can overheat the canister': 'la olla puede sobrecalentar el cartucho',
  'the pot can slip off the stove': 'la olla puede resbalar del hornillo',
  'the pot turns over on its bail': 'la olla se vuelca en su asa de arco',
  'the full pot spills on its bail': 'la olla llena se derrama en su asa de arco',
  'the pot can tip over': 'la olla puede volcar',
  'the full pot is too heavy for its grip': 'la olla llena pesa demasiado para su agarre',
  'the full pot is too heavy to lift': 'la olla llena pesa demasiado para levantarla',
  'no stove burns the fuel carried': 'ningún hornillo quema el combustible que se lleva',
  'a stove or a fuel is carried for nothing': 'se lleva un hornillo o un combustible para nada',
  'nothing lifts the full pot': 'nada levanta la olla llena',
  'the alcohol can flash back': 'el alcohol puede inflamarse de golpe',
  'the pot can burn or melt': 'la olla puede arder o fundirse',
  'young people are close to boiling water': 'hay jóvenes cerca de agua hirviendo',
  'the stove fills the air with carbon monoxide': 'el hornillo llena el aire de monóxido de carbono',
  'there is no pot to cook in': 'falta una olla para cocinar',
  'a meal takes more than one round': 'una comida lleva más de una tanda',
  'the stove does not burn the fuel carried': 'el hornillo no quema lo que se lleva',
  'the fuel': 'el combustible',
  'the gas': 'el gas',
  'the pot': 'la olla',
  'the water carried': 'el agua que se lleva',
  'not everybody can eat at once': 'no todos pueden comer a la vez',
  'there is no lid to melt snow under': 'falta una tapa para fundir nieve',
  'fires are forbidden there': 'allí están prohibidos los fuegos',
  'nothing hangs the pot over the fire': 'nada cuelga la olla sobre el fuego',
  'the pot melts or burns over a flame': 'la olla se funde o arde sobre la llama',
  'the pot is too narrow for its height': 'la olla es demasiado estrecha para su altura',
  'the flame goes past the pot': 'la llama pasa de largo de la olla',
  'the water never boils': 'el agua nunca hierve',
  'the flame is too weak for the pot as it stands': 'la llama es demasiado débil para la olla tal como está',
  'there is no hot meal': 'falta una comida caliente',
  'a full meal takes two rounds': 'una comida completa lleva dos tandas',
  'the pan slops and cools quickly': 'la sartén salpica y se enfría pronto',
  'the pot slops easily on its bail': 'la olla salpica pronto en su asa de arco',
  'the pot is slow to take heat': 'la olla toma el calor despacio',
  'the pot is too wide for the burner': 'la olla es demasiado ancha para el quemador',
  'the pot stands loosely on the stove': 'la olla se apoya mal en el hornillo',
  'the flame goes up the wall': 'la llama sube por la pared',
  'the pot dents and splits': 'la olla se abolla y se raja',
  'left empty, the pot can melt': 'vacía, la olla puede fundirse',
  'food scorches in the pot': 'la comida se quema en la olla',
  'the pot slops on its bail': 'la olla salpica en su asa de arco',
  'the pot tips easily': 'la olla vuelca con facilidad',
  'the pot comes off the fire by hand': 'la olla se retira del fuego a mano',
  'no lid is named': 'no se nombra ninguna tapa',
  'the full pot is hard to lift': 'la olla llena cuesta de levantar',
  'melting snow takes many loads': 'fundir nieve lleva muchas cargas',
  'the fuel leaves little to spare': 'el combustible deja poco margen',
  'the gas is weak in the cold': 'el gas flojea con el frío',
  'alcohol is slow in the cold': 'el alcohol es lento con el frío',
  'nothing named lights the stove': 'nada de lo nombrado enciende el hornillo',
  'nothing named carries water': 'nada de lo nombrado lleva agua',
  'little water is carried': 'se lleva poca agua',
  'there is less than one hot meal a day': 'hay menos de una comida caliente al día',
  'a wide pot makes more carbon monoxide': 'una olla ancha hace más monóxido de carbono',
  'alcohol poured into a flame flashes back': 'el alcohol vertido en una llama se inflama de golpe',
  'on snow the stove melts in': 'en la nieve el hornillo se hunde',
  'the size of the bottles': 'la capacidad de las botellas',
  'the number of bowls': 'el número de cuencos',
  'the size of the pot': 'la capacidad de la olla',
  'the width of the pot': 'el ancho de la olla',
  'the height of the pot': 'la altura de la olla',
  'the material of the pot': 'el material de la olla',
  'a word on the lid': 'un dato de la tapa',
  'a word on the bail': 'un dato del asa de arco',
  'a word on the handles': 'un dato de los mangos',
  'the width of the burner': 'el ancho del quemador',
  'the width of the stand': 'el ancho del soporte',
  'the kind of stove': 'el tipo de hornillo',
  'the place of the canister': 'el lugar del cartucho',
  'the kind of fuel': 'el tipo de combustible',
  'the kind of gas': 'el tipo de gas',
  'the amount of fuel': 'la cantidad de combustible',
  'the number of days': 'el número de días',
  'the place of the water': 'el origen del agua',
  '{a} falls short': '{a} se queda corto',
  '{a} and {b} fall short': '{a} y {b} se quedan cortos',
  '{a}, {b} and {c} fall short': '{a}, {b} y {c} se quedan cortos',
  'if it snows, {a} falls short': 'si nieva, no alcanza {a}',
  'if it snows, {a} and {b} fall short': 'si nieva, no alcanzan {a} y {b}',
  'if it snows, so does {a}': 'si nieva, tampoco alcanza {a}',
  'if it snows, so do {a} and {b}': 'si nieva, tampoco alcanzan {a} y {b}',
  '{a} is wanted': 'falta saber: {a}',
  '{a} and {b} are wanted': 'falta saber: {a} y {b}',
  '{a}, {b} and {more#} more are wanted': 'falta saber: {a}, {b} y {more#} más',
  'one answer is wanted': 'falta una respuesta',
  '{more#} answers are wanted': 'faltan {more#} respuestas',
  'feeds and waters {who} for {long}': 'alimenta a {who} durante {long}, agua incluida',
  'feeds and waters {who}': 'alimenta a {who}, agua incluida',
  'feeds {who} for {long}': 'alimenta a {who} durante {long}',
  'feeds {who}': 'alimenta a {who}',
  'nothing here falls short for {who}': 'nada aquí se queda corto para {who}',
  'too little is known to judge': 'se sabe demasiado poco para juzgar',
  two: 'dos personas',
  three: 'tres personas',
  four: 'cuatro personas',
  five: 'cinco personas',
  six: 'seis personas',
  seven: 'siete personas',
  eight: 'ocho personas',
  nine: 'nueve personas',
  'one day': 'un día',
  'two days': 'dos días',
  'three days': 'tres días',
  'four days': 'cuatro días',
  'five days': 'cinco días',
  'six days': 'seis días',
  'seven days': 'siete días',
  'eight days': 'ocho días',
  'nine days': 'nueve días',

  // The report
  '{used#} {used:line|lines} used, {off#} not cook kit, {unknown#} not understood':
    '{used#} {used:línea usada|líneas usadas}, {off#} {off:ajena|ajenas} a la cocina, {unknown#} sin entender',
  'Nothing here to judge yet.': 'Aún no hay nada que juzgar.',
  '{people#} people': '{people#} personas',
  '{days#} days': '{days#} días',
  'A day with this kit': 'Un día con este equipo',
  Assumed: 'Supuesto',
  'Caution: {words}': 'Cuidado: {words}',
  'Published: {sources}.': 'Publicado: {sources}.',
  'A second opinion. Local fire rules, land managers and licensed instruction come first.':
    'Una segunda opinión. Las normas locales sobre el fuego, los gestores del terreno y la enseñanza titulada van primero.',
  to: 'a',
  'This check failed on this kit; the others went on.':
    'Esta comprobación ha fallado con este equipo; las demás han seguido.',
  'no answer': 'sin respuesta',

  // Notes on publications
  'The figures were seen in a unit library that cites the act, not in the act itself.':
    'Las cifras se han visto en una biblioteca de unidades que cita la ley, no en la ley misma.',
  'Household measures of food labels only: the cup there is 240 mL.':
    'Solo medidas caseras de etiquetas de alimentos: la taza es allí de 240 ml.',
  'Metric cup of 250 mL in Australian, New Zealand and Canadian kitchens':
    'Taza métrica de 250 ml en cocinas de Australia, Nueva Zelanda y Canadá',
  'From memory.': 'De memoria.',
  'Values at 101.325 kPa, worked out with an open implementation of the formulation.':
    'Valores a 101,325 kPa, calculados con una implementación abierta de la formulación.',
  'Days differ from the standard: the boiling point holds to about 0.5 to 1 °C.':
    'Un día difiere de la norma: el punto de ebullición vale con unos 0,5 a 1 °C de margen.',
  'Rows seen in the tests of an open library.': 'Filas vistas en las pruebas de una biblioteca abierta.',
  'The same as ISO 2533 up to 32 km. Rows seen in the tests of an open library.':
    'Igual que ISO 2533 hasta 32 km. Filas vistas en las pruebas de una biblioteca abierta.',
  'Seen in copies; rounded to the degree or tenth of a degree Fahrenheit.':
    'Visto en copias; redondeado al grado o décima de grado Fahrenheit.',
  'Read from the data files of an open chemistry library.':
    'Leído en los ficheros de datos de una biblioteca abierta de química.',
  'Constants read from the data files of an open chemistry library; title and journal are from memory.':
    'Constantes leídas en los ficheros de datos de una biblioteca abierta de química; título y revista, de memoria.',
  'Seen in the reprint.': 'Visto en la reimpresión.',
  'Wood 15.6 MJ/kg seen in a copy; the kerosene row is from memory.':
    'Madera, 15,6 MJ/kg, visto en una copia; la fila del queroseno, de memoria.',
  'Seen in a copy.': 'Visto en una copia.',
  'The same formula and table in three handbooks, seen in copies.':
    'La misma fórmula y tabla en tres manuales, vistos en copias.',
  'The enthalpy of formation, +125.5 kJ/mol, is from memory; the 30 MJ/kg in common use is the higher value.':
    'La entalpía de formación, +125,5 kJ/mol, de memoria; los 30 MJ/kg de uso corriente son el valor superior.',
  'Calls its own values rough estimates.': 'Llama a sus propios valores estimaciones aproximadas.',
  'Seen as quoted by others, with the page number; the title is a description.':
    'Visto citado por otros, con número de página; el título es una descripción.',
  'The range of 29 to 62 % was seen in the abstract; the figures of each vessel as quoted by others. The title is a description.':
    'El intervalo de 29 a 62 % se ha visto en el resumen; las cifras de cada recipiente, citadas por otros. El título es una descripción.',
  'Only the abstract was seen: best of five pots 53.2 %, worst 29.6 %. The title is a description.':
    'Solo se ha visto el resumen: la mejor de cinco ollas, 53,2 %; la peor, 29,6 %. El título es una descripción.',
  'Works with 49.14 MJ/kg, the higher heating value.': 'Calcula con 49,14 MJ/kg, el poder calorífico superior.',
  'Seen in a copy; the title is a description.': 'Visto en una copia; el título es una descripción.',
  'Only the abstract was seen; the title is a description.':
    'Solo se ha visto el resumen; el título es una descripción.',
  'Only the abstract was seen.': 'Solo se ha visto el resumen.',
  'Whether the 60 % stands on the lower or the higher heating value is not said: an upper bound.':
    'No se dice si el 60 % se basa en el poder calorífico inferior o superior: una cota superior.',
  'Seen in a summary; the title is a description.': 'Visto en una reseña; el título es una descripción.',
  'Seen in copies.': 'Visto en copias.',
  'The title is a description.': 'El título es una descripción.',
  'Seen as quoted by others; a home measurement by a metrologist. The title is a description.':
    'Visto citado por otros; medición casera de un metrólogo. El título es una descripción.',
  'Counts evaporated water as useful heat. The formula is from memory and agrees with the table.':
    'Cuenta el agua evaporada como calor útil. La fórmula, de memoria; concuerda con la tabla.',
  'Measured: 6 quarts of water boiled in 10 and 14 minutes, of melted snow in 22 and 30. The title is a description.':
    'Medido: 6 cuartos de galón de agua hirvieron en 10 y 14 minutos; de nieve derretida, en 22 y 30. El título es una descripción.',
  'Seen as quoted in two places.': 'Visto citado en dos sitios.',
  'The 17 : 1 rule for loose snow is from memory.': 'La regla 17 : 1 para nieve suelta, de memoria.',
  'Seen on a course page; the title is a description.': 'Visto en la página de un curso; el título es una descripción.',
  'Three people. The title is a description.': 'Tres personas. El título es una descripción.',
  'The restricted ration of 1100 to 1500 kcal for up to ten days (2-2d) is from memory.':
    'La ración restringida de 1100 a 1500 kcal durante diez días como mucho (2-2d), de memoria.',
  'One packet of some 1500 kcal a day, for no more than ten days.':
    'Un paquete de unas 1500 kcal al día, durante diez días como mucho.',
  'The title is from memory.': 'El título, de memoria.',
  'The times as tabulated in later copies; the paper itself was not seen.':
    'Los tiempos, según tablas de copias posteriores; el artículo mismo no se ha visto.',
  'Seen in a copy. Says 6 s at 60 °C where others say 5 s.': 'Visto en una copia. Dice 6 s a 60 °C; otros dicen 5 s.',
  'Abstract seen; authors and journal from memory.': 'Visto el resumen; autores y revista, de memoria.',
  'Reaching a rolling boil is enough, at altitude too.': 'Basta con que hierva a borbotones, también en altitud.',
  'Read in a test laboratory’s summary.': 'Leído en la reseña de un laboratorio de ensayos.',
  'How full the test vessel is on the slope is not stated. The title is a description.':
    'No se indica lo lleno que está el recipiente de ensayo en la pendiente. El título es una descripción.',
  'Only the scope was seen.': 'Solo se ha visto el ámbito de aplicación.',
  'The author is from memory.': 'El autor, de memoria.',
  'Derived here and checked by numerical integration; no table is copied.':
    'Deducido aquí y comprobado por integración numérica; no se copia ninguna tabla.',
  'Yield worked out from the water contents, dry matter kept.':
    'Rendimiento calculado con los contenidos de agua, a igual materia seca.',
  'The journal is from memory.': 'La revista, de memoria.',

  // Common practice
  'A hot meal is 473 mL (16 US fl oz) at least and 591 mL (20 US fl oz) for a full portion':
    'Una comida caliente son 473 ml (16 US fl oz) como mínimo y 591 ml (20 US fl oz) en ración completa',
  'Practitioners give 400–750 mL a person boil-only, 650–2000 mL cooked in the pot.':
    'En la práctica se dan 400–750 ml por persona si solo se hierve agua, 650–2000 ml cocinando en la olla.',
  'A hot drink is 240 mL': 'Una bebida caliente son 240 ml',
  'A pot is filled to 0.90 for water alone, 0.80 for soup or a drink, two thirds for what foams':
    'Una olla se llena hasta 0,90 con agua sola, 0,80 con sopa o bebida, dos tercios con lo que hace espuma',
  'Practitioners give 0.67–0.90. The Water Boiling Test fills its pots to about two thirds.':
    'En la práctica se dan 0,67–0,90. El Water Boiling Test llena sus ollas hasta unos dos tercios.',
  'A stated capacity is −2 to +7 % off what the pot holds; worked out from outside sizes, within ±20 %':
    'Una capacidad indicada se aparta de −2 a +7 % de lo que cabe; calculada con medidas exteriores, hasta ±20 %',
  '700–1000 mL suits one person; about 1 L is best in summer':
    '700–1000 ml van bien para una persona; en verano, lo mejor es cerca de 1 l',
  'Practitioners give 450 mL to 2 L for one, by what they cook.':
    'En la práctica se dan de 450 ml a 2 l para una persona, según lo que cocine.',
  'A pot to melt snow in holds about 2 L for one, 3 L for two, half a litre more a head up to 5 L':
    'Una olla para derretir nieve es de unos 2 l para una persona, 3 l para dos, medio litro más por cabeza hasta 5 l',
  'Practitioners give 1.3–5 L; hard parties of three have chosen 1.7 L.':
    'En la práctica se dan 1,3–5 l; grupos curtidos de tres han elegido 1,7 l.',
  'Two to three loads of hand-packed snow make one filling of water: packed snow is 350–500 kg/m³':
    'De dos a tres cargas de nieve apretada a mano dan una olla de agua: la nieve apretada tiene 350–500 kg/m³',
  'Start with water over the base of the pot, feed snow so that it stays slush, lid on':
    'Empezar con agua que cubra el fondo, echar nieve poco a poco para que siga aguada, con la tapa puesta',
  'Practitioners start with a cup, with an inch, or with the base covered; summaries of mountaineering handbooks say the same.':
    'En la práctica se empieza con una taza, con dos dedos o con el fondo cubierto; las reseñas de manuales de montaña dicen lo mismo.',
  'On snow a person drinks and cooks with 3–5 L a day': 'En la nieve una persona bebe y cocina con 3–5 l al día',
  'Practitioners give 2.5–6 L.': 'En la práctica se dan 2,5–6 l.',
  'A pot that hangs from a bail is best two thirds as wide as tall':
    'Una olla que cuelga del asa va mejor con un ancho de dos tercios de su alto',
  'On a stove a pot wider than tall catches more of the flame and stands better':
    'En el hornillo, una olla más ancha que alta recoge más llama y asienta mejor',
  'Some find no difference on a narrow gas flame.': 'Hay quien no nota diferencia con una llama de gas estrecha.',
  'An open flame is at least a third narrower than the pot, at best half as wide':
    'Una llama abierta es al menos un tercio más estrecha que la olla; lo mejor, la mitad de ancha',
  'A pot’s base is 15 mm wider than the gap between the arms at least, and 1.6 times their span at most':
    'El fondo de la olla es al menos 15 mm más ancho que el hueco entre los brazos, y como mucho 1,6 veces su ancho',
  'Practitioners give 1.5–1.7.': 'En la práctica se dan 1,5–1,7.',
  'A gas flame spreads to 10 mm inside the base all round':
    'Una llama de gas se extiende hasta 10 mm del borde del fondo, todo alrededor',
  'On an upright canister stove a base over 200 mm, a griddle or a windscreen sends heat back to the canister':
    'En un hornillo sobre el cartucho, un fondo de más de 200 mm, una plancha o un paraviento le devuelve calor al cartucho',
  'Rare, and severe.': 'Raro, y grave.',
  'No windscreen is closed round an upright canister':
    'Ningún paraviento se cierra alrededor de un cartucho bajo el quemador',
  'Practitioners disagree whether one that is open on the lee side may stand near it; the instructions of the stove’s maker come first.':
    'Los practicantes no coinciden en si uno abierto a sotavento puede estar cerca; el manual del fabricante va primero.',
  'Upright canisters with isobutane mixes fade at about −7 °C':
    'Los cartuchos bajo el quemador con mezcla de isobutano flaquean a unos −7 °C',
  'Practitioners give −7 to −8 °C; plain butane fades at some 10 °C; liquid feed gains about 11 °C.':
    'En la práctica se dan de −7 a −8 °C; el butano puro flaquea a unos 10 °C; la toma líquida gana unos 11 °C.',
  'A canister in use is some 5 °C colder than the air, more as it empties':
    'Un cartucho en uso está unos 5 °C más frío que el aire, y más según se vacía',
  'A litre boiled on gas takes 12–24 g, from calm to breeze': 'Hervir un litro con gas gasta 12–24 g, de calma a brisa',
  'Practitioners give 10–53 g: 12 with a heat exchanger, 16 as a rule, 24 in a breeze, some 50 in wind.':
    'En la práctica se dan 10–53 g: 12 con intercambiador de calor, 16 por norma, 24 con brisa, unos 50 con viento.',
  'Half a litre boiled on alcohol takes 15–30 mL of it': 'Hervir medio litro con alcohol gasta 15–30 ml',
  'What the words for canister gas hold, by mass: isobutane mix 80 % isobutane and 20 % propane, and the like':
    'Qué contienen los nombres del gas de cartucho, en masa: mezcla de isobutano, 80 % de isobutano y 20 % de propano, y así los demás',
  'Mixes differ by canister; the label gives the shares.':
    'Las mezclas cambian según el cartucho; la etiqueta da las partes.',
  'Canisters of 100–110, 220–230 and 450 g net weigh 175–215, 360–375 and 650–670 g full':
    'Los cartuchos de 100–110, 220–230 y 450 g netos pesan llenos 175–215, 360–375 y 650–670 g',
  'An unscreened burner takes 1.2–1.7 times the fuel in a breeze, 2–3 times in wind':
    'Un quemador sin resguardo gasta con brisa de 1,2 a 1,7 veces el combustible, con viento de 2 a 3 veces',
  'No published curve is trusted. Practitioners give twice without a screen, three times at a steady 8 km/h, a fifth more behind a good one.':
    'Ninguna curva publicada merece confianza. En la práctica se da el doble sin paraviento, el triple con 8 km/h constantes, un quinto más tras uno bueno.',
  'Burners give 2–3 kW on gas and liquid fuel, 0.4–1.4 kW on alcohol, 0.3–0.6 kW on tablets, 1.5–4 kW on wood':
    'Los quemadores dan 2–3 kW con gas y combustible líquido, 0,4–1,4 kW con alcohol, 0,3–0,6 kW con pastillas, 1,5–4 kW con leña',
  'The alcohol figures are measured (Boiling Point no. 12).':
    'Las cifras del alcohol están medidas (Boiling Point no. 12).',
  'Tablet stoves are taken to put as much of their heat into the pot as small alcohol burners':
    'Se supone que los hornillos de pastillas llevan a la olla tanto de su calor como los quemadores pequeños de alcohol',
  'No published measurement was found: 0.45–0.5 L to a tablet of 14 g is the practitioners’ figure.':
    'No se ha hallado medición publicada: 0,45–0,5 l por pastilla de 14 g es la cifra de la práctica.',
  'A pot locked to its burner with a heat exchanger boils a litre with about 12 g of gas':
    'Una olla fija a su quemador, con intercambiador de calor, hierve un litro con unos 12 g de gas',
  'Fins alone gained 8 % in a published test.': 'Las aletas por sí solas ganaron un 8 % en un ensayo publicado.',
  'A quarter more fuel than the likely need is carried': 'Se lleva un cuarto más de combustible que el gasto probable',
  'Some 1500 kcal a day is a short ration, for up to ten days and only with one hot meal of 473–591 mL':
    'Unas 1500 kcal al día son una ración corta, para diez días como mucho y solo con una comida caliente de 473–591 ml',
  'Bare thin titanium has hot spots: simmered food and dry snow scorch':
    'El titanio fino y desnudo tiene puntos calientes: lo guisado y la nieve seca se requeman',
  'An empty aluminium pot over an open fire can melt through':
    'Una olla de aluminio vacía sobre una hoguera puede fundirse',
  'Plastic melts and wood chars over a flame: such vessels are eaten from, not cooked in':
    'Sobre la llama el plástico se funde y la madera se carboniza: en tales recipientes se come, no se cocina',
  'Pots made of drink cans dent and split': 'Las ollas hechas de latas de bebida se abollan y se rajan',
  'At a fire a pot is hung by its bail, or hooked off by it':
    'En la hoguera una olla se cuelga del asa, o se saca por ella con un gancho',
  'A lid of any kind, foil too, and a wider pan covers a smaller pot':
    'Una tapa cualquiera, también papel de aluminio; y una sartén más ancha tapa una olla menor',
  'A full pot is lifted by a handle, a bail or a gripper':
    'Una olla llena se levanta por un mango, un asa o con una pinza',
  'A hung pot that spills at under 6° slops when touched; from 12° it can be handled':
    'Una olla colgada que rebosa a menos de 6° salpica al tocarla; desde 12° se deja manejar',
  'A pot on a stove stands to 15° or more before it tips': 'Una olla en el hornillo aguanta 15° o más antes de volcar',
  'A 10° slope is the test of a published stove standard.':
    'Una pendiente de 10° es el ensayo de una norma publicada para hornillos.',
  'A board, a lid or a shovel under the stove on snow, or it melts in and tips':
    'Sobre nieve, una tabla, una tapa o una pala bajo el hornillo, o se hunde y vuelca',
  'Alcohol melts snow slowly and with much fuel; it is not impossible':
    'El alcohol derrite nieve despacio y gastando mucho; imposible no es',
  'Practitioners disagree: not for snow, or half a litre in 15 min at −8 °C.':
    'En la práctica no hay acuerdo: para nieve no, o medio litro en 15 min a −8 °C.',
  'A spirit burner is cold before it is filled, from a small bottle away from the flame':
    'Un quemador de alcohol se llena frío, con una botella pequeña y lejos de la llama',
  'Something to light the stove with, and a second means apart from it':
    'Algo con que encender el hornillo, y una segunda cosa guardada aparte',
  'A bowl, a mug or a pot to eat from for each person; one of several may eat from the pot':
    'Un cuenco, una taza o una olla en que comer por persona; de varias, una puede comer de la olla',
  'A person carries room for 2–3 L of water for a day and a night':
    'Una persona lleva sitio para 2–3 l de agua por día y noche',
  'A burn is cooled with running water, wet clothing taken off, then covered':
    'Una quemadura se enfría con agua corriente, se quita la ropa mojada y luego se cubre',

  // What is assumed
  'the season': 'la estación',
  'where the water comes from': 'de dónde sale el agua',
  'the lowest temperature': 'la temperatura más baja',
  'the altitude': 'la altitud',
  'the gas mix': 'la mezcla de gas',
  'the number of people': 'el número de personas',
  'how they cook': 'cómo se cocina',
  'the wind': 'el viento',
  'what the pot holds': 'lo que cabe en la olla',
  'the snow': 'la nieve',
  'how much alcohol the bottle holds': 'cuánto alcohol hay en la botella',
  pot: 'olla',
  'the stove': 'el hornillo',

  // What cannot be used
  '{0} is less than {1}.': '{0}: menos de lo que {1}.',
  '{0} is less than {1}; {2}?': '{0}: menos de lo que {1}; ¿{2}?',
  '{0} is more than {1}.': '{0}: más de lo que {1}.',
  '{0} is more than {1}; {2}?': '{0}: más de lo que {1}; ¿{2}?',
  'any pot': 'tiene cualquier olla',
  'any burner': 'tiene cualquier quemador',
  'any stove': 'tiene cualquier hornillo',
  'anyone carries in one piece': 'nadie lleva en una pieza',
  'any stove has': 'tiene cualquier hornillo',
  'a kit has': 'entra en un equipo',
  'any camp stove gives': 'da cualquier hornillo de acampada',
  '“{0}” is not a {1} known here; leave it out.': '«{0}» no se conoce aquí ({1}); omitir.',
  '“{0}” is not understood; write a figure and its unit, such as {1}\u00a0{2}.':
    '«{0}» no se entiende; escribir una cifra y su unidad, como {1}\u00a0{2}.',
  '“{0}” is not a number; write it in figures.': '«{0}» no es un número; escribirlo en cifras.',
  'a kit can be judged for': 'se puede juzgar para un equipo',
  'a trip can be planned for': 'se puede planear para una salida',
  'anyone cooks out in': 'nadie aguanta cocinando fuera',
  'anyone cooks at': 'nadie sube ni baja a cocinar',
  'anyone cooks in a day': 'nadie cocina en un día',
  'People come whole: {0}?': 'Las personas van enteras: ¿{0}?',
  '“{0}” is not one of {1}.': '«{0}» no es ninguno de: {1}.',

  // Where a value comes from
  'a canister of {0} g full': 'un cartucho de {0} g, lleno',
  '{0} mL': '{0} ml',
  'a bottle of {0} mL is filled to about three quarters': 'una botella de {0} ml se llena hasta unos tres cuartos',
  'write how much fuel is in it': 'escribir cuánto combustible tiene',
  'one pot was typed': 'se ha escrito una olla',
  'give the number of pots': 'indicar el número de ollas',
  'a month is taken for 30 days': 'un mes se toma como 30 días',
  '{0} groups of {1}': '{0} grupos de {1}',
  "the line's mass for {0}": 'el peso de la línea para {0}',
  '“{0}” on line {1}': '«{0}» en la línea {1}',
  'what the stove burns': 'lo que quema el hornillo',
  '{0} × {1} × {2} mm outside': '{0} × {1} × {2} mm por fuera',
  'Ø {0} × {1} mm outside': 'Ø {0} × {1} mm por fuera',
  'Ø {0} to {1} × {2} mm outside': 'Ø {0} a {1} × {2} mm por fuera',

  // What is assumed of a trip
  'nothing says how many people': 'nada dice cuántas personas',
  'set the number of people': 'indicar el número de personas',
  'nothing says how long': 'nada dice cuánto tiempo',
  'set the number of days': 'indicar el número de días',
  'nothing says how they cook, and most people cook in the pot at times':
    'nada dice cómo se cocina, y casi todo el mundo cocina a veces en la olla',
  'choose boil-only, simmer or scratch': 'elegir solo agua, guisar o cocinar',
  'hot drinks come from the same pot unless it is said otherwise':
    'las bebidas calientes salen de la misma olla si no se dice otra cosa',
  'say that drinks are made elsewhere': 'decir que las bebidas se hacen aparte',
  'snow is pressed into the pot by hand': 'la nieve se aprieta en la olla con la mano',
  'choose the snow': 'elegir la nieve',
  'no altitude is given': 'no se da la altitud',
  'set the altitude': 'indicar la altitud',
  'it is seldom calm outdoors': 'al aire libre rara vez hay calma',
  'choose the wind': 'elegir el viento',
  'one hot meal a day is usual': 'lo corriente es una comida caliente al día',
  'set the hot meals a day': 'indicar las comidas calientes al día',
  'no temperature is given for spring': 'no se da temperatura para la primavera',
  'no temperature is given for summer': 'no se da temperatura para el verano',
  'no temperature is given for autumn': 'no se da temperatura para el otoño',
  'no temperature is given for winter': 'no se da temperatura para el invierno',
  'it is your default': 'es el valor propio por defecto',
  'set it for this trip': 'indicarlo para esta salida',
  'say where the water comes from: liquid, snow or either':
    'decir de dónde sale el agua: líquida, de nieve o de una de las dos',
  'in winter snow may be the only water': 'en invierno la nieve puede ser la única agua',
  'in such cold snow may be the only water': 'con tanto frío la nieve puede ser la única agua',
  'nothing speaks of snow': 'nada habla de nieve',
  'neither temperature nor season is given': 'no se da ni temperatura ni estación',
  'set the lowest temperature': 'indicar la temperatura más baja',
  'there is a stove, or fuel for one': 'hay hornillo, o combustible para uno',
  'say that they cook at a fire': 'decir que se cocina en la hoguera',
  'no stove is named': 'no se nombra hornillo',
  'add the stove': 'añadir el hornillo',

  // What is assumed of the day
  'a gas stove': 'un hornillo de gas',
  'the list does not say what the stove burns': 'la lista no dice qué quema el hornillo',
  'name the kind of stove': 'nombrar el tipo de hornillo',
  'the power of the flame': 'la potencia de la llama',
  'no power is given: the range of its kind is taken': 'no se da la potencia: se toma el intervalo de su tipo',
  'give the watts': 'dar los vatios',
  'water of {0} °C to start with': 'agua a {0} °C al empezar',
  'nothing says how cold the water is, and a cold stream has about that':
    'nada dice lo fría que está el agua, y un arroyo frío ronda eso',
  'count about 1 % less fuel for each degree it is warmer':
    'contar cerca de un 1 % menos de combustible por cada grado más',
  'a simmer of {0}–{1} min': '{0}–{1} min de guiso',
  'nothing says how long the food simmers': 'nada dice cuánto se guisa la comida',
  'choose boil-only where the food only takes up hot water': 'elegir solo agua si la comida solo absorbe agua caliente',
  'a pot as wide as it is tall': 'una olla tan ancha como alta',
  'its width is not given': 'no se da su ancho',
  'give its diameter and height': 'dar su diámetro y su altura',

  // Corrections that cannot be used
  'The line it belongs to is not in the text any more.': 'Su línea ya no está en el texto.',
  '"{0}" is nothing that can be corrected.': '«{0}» no se puede corregir.',
  'The line holds no such item; give its kind first.': 'La línea no tiene tal cosa; dar primero qué es.',
  'The line holds no such item.': 'La línea no tiene tal cosa.',
  'Yes or no.': 'Sí o no.',
  'the person says so': 'así se ha indicado',
  'The set has no such vessel.': 'El juego no tiene tal recipiente.',
  'A whole number from 0 to 1000.': 'Un número entero de 0 a 1000.',
  'No figure with a unit, such as {0}.': 'No es una cifra con unidad, como {0}.',
  'More than nothing.': 'Más que nada.',
  'One of: {0}.': 'Uno de: {0}.',

  // How a line was read
  'the unit is taken from the size before it': 'la unidad se toma del tamaño anterior',
  'write the unit': 'escribir la unidad',
  'it is said to stay behind': 'según la lista, se queda en casa',
  'it is wished for, not owned': 'es un deseo, no se tiene',
  'it is said to be replaced or gone': 'según la lista, está sustituido o ya no está',
  'it is said to be forbidden': 'según la lista, está prohibido',
  'it is said not to be needed': 'según la lista, no hace falta',
  'it is only compared with': 'solo sirve de comparación',
  'struck through': 'tachado',
  'its count is nought': 'su cantidad es cero',
  'the line says there is none': 'la línea dice que no hay',
  'figures run together by copying: the first digit is taken as the count':
    'cifras juntadas al copiar: la primera se toma como cantidad',
  'write the count and the mass apart': 'escribir cantidad y peso por separado',
  'the text itself puts a question mark to it': 'el propio texto le pone un interrogante',
  'write it without "?"': 'escribirlo sin «?»',
  'a pint is 473 ml in the US and 568 ml in Britain; the text does not say which':
    'una pinta son 473 ml en EE. UU. y 568 ml en Gran Bretaña; el texto no dice cuál',
  'write the millilitres': 'escribir los mililitros',
  'a coffee maker’s cup may be 150 ml; it is taken as a measuring cup':
    'la taza de una cafetera puede ser de 150 ml; se toma como taza de medir',
  'smaller than any cook pot: a cup, or a slip of the unit':
    'más pequeña que cualquier olla: una taza, o un desliz en la unidad',
  'taken without the lid, whose mass stands beside it': 'tomado sin la tapa, cuyo peso está al lado',
  'write the mass of the pot alone': 'escribir el peso de la olla sola',
  'ounces of an unnamed fuel are taken by mass': 'las onzas de un combustible sin nombrar se toman como peso',
  'write the grams, or the millilitres': 'escribir los gramos o los mililitros',
  'more than one can weighs; taken as several full cans together':
    'más de lo que pesa un cartucho; se toma como varios llenos juntos',
  'write the grams of gas in each can and how many': 'escribir los gramos de gas de cada cartucho y cuántos',
  'a pan of so many litres is taken for a pot': 'una «pan» de tantos litros se toma por olla',
  'the heading names it': 'lo nombra el encabezado',
  'tablets that do not say of what are taken for fuel': 'unas pastillas que no dicen de qué se toman por combustible',
  'a bare number that a can of gas is said to weigh is taken as grams':
    'un número suelto que pesa un cartucho de gas se toma por gramos',
  'the column shows no unit; figures this large are taken as grams':
    'la columna no indica unidad; números tan grandes se toman por gramos',
  'a bare number beside a gas can is taken as grams of gas':
    'un número solo junto a un cartucho se toma como gramos de gas',
  'write the unit: {0} g': 'escribir la unidad: {0} g',
  'a set of {0} parts; how many of them are pots is not said': 'un juego de {0} piezas; no se dice cuántas son ollas',
  'write the pots of the set one by one': 'escribir las ollas del juego una a una',
  'of these some are said to stay behind': 'de estas, algunas se quedan, según el texto',
  'one for each size': 'una por tamaño',
  'write how many': 'escribir cuántas',
  'one line is taken as one piece': 'una línea se toma como una pieza',
  'no number is given': 'no se da número',
  'a small number without a unit is taken as centimetres': 'un número pequeño sin unidad se toma como centímetros',
  'a number without a unit is taken as millimetres': 'un número sin unidad se toma como milímetros',
  'write which of the two is the diameter': 'escribir cuál de los dos es el diámetro',
  'the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first':
    'el texto no dice cuál es el diámetro; vale el orden más cercano a la capacidad indicada, o Ø primero',
  'the heading says so': 'lo dice el encabezado',
  'write what it burns': 'escribir qué quema',
  'write what burns': 'escribir qué arde',
  'cans and canisters hold gas': 'las bombonas y los cartuchos llevan gas',
  'write what is in it': 'escribir qué contiene',
  'a billy hangs by a bail': 'una marmita cuelga de un asa de alambre',
  'write "no bail" if it has none': 'escribir «sin asa de alambre» si no tiene',
  'a thing with a hose, or that screws onto a can, is taken for a stove':
    'lo que lleva manguera o se enrosca en un cartucho se toma por hornillo',
  'butane with propane boils about as an isobutane mix does':
    'el butano con propano hierve más o menos como una mezcla de isobutano',
  'write the shares of the gases': 'escribir las proporciones de los gases',
  'half of the can is taken to be left': 'se toma que queda la mitad del cartucho',
  'write the grams that are left': 'escribir los gramos que quedan',
  'a set of these sizes is taken for pots': 'un juego de estos tamaños se toma por ollas',
  'a metal thing of this size is taken for a pot': 'algo de metal de este tamaño se toma por olla',
  'a thing of this size with a lid is taken for a pot': 'algo de este tamaño con tapa se toma por olla',
  'a gas can is sold by grams; the millilitres are taken as grams':
    'los cartuchos de gas se venden por gramos; los mililitros se toman como gramos',
  'write the grams: 230 g': 'escribir los gramos: 230 g',
  'a bare number beside a vessel is taken as millilitres':
    'un número solo junto a un recipiente se toma como mililitros',
  'write the unit: {0} ml': 'escribir la unidad: {0} ml',
  'a bare number beside a vessel is taken as litres': 'un número solo junto a un recipiente se toma como litros',
  'write the unit: {0} l': 'escribir la unidad: {0} l',
  'a sentence names it, and does not say whether it goes along': 'una frase lo nombra y no dice si va en el viaje',
  'it stands among the cook kit, and no word of it is known':
    'está entre el material de cocina y ninguna de sus palabras se conoce',
  'cook kit is named in passing': 'se nombra de paso material de cocina',
  'The line names no such thing in passing.': 'La línea no nombra de paso nada así.',
  'The list came as one line; its things were told apart by their figures.':
    'La lista ha llegado en una sola línea; las cosas se han separado por sus cifras.',
  'A line is longer than any list; only its beginning was read.':
    'Una línea es más larga que cualquier lista; solo se ha leído su comienzo.',
  'its column of sorts says so': 'lo dice su columna de tipos',
  'only its first {0} characters were read': 'solo se han leído sus primeros {0} caracteres',
  'nothing here names cook kit': 'nada aquí nombra equipo de cocina',
  'one day more than nights': 'un día más que noches',
  'write the days': 'escribir los días',
  'of a range the upper end is taken': 'de un intervalo se toma el extremo superior',
  'from the first date to the last': 'de la primera fecha a la última',
  'from the first day to the last': 'del primer día al último',
  'write one number': 'escribir un solo número',
  'who writes goes along, and is one more': 'quien escribe va también y cuenta como uno más',
  'names are taken for people': 'los nombres se toman por personas',
  'write how many they are': 'escribir cuántos son',
  'degrees without a scale are taken as Fahrenheit here': 'los grados sin escala se toman aquí como Fahrenheit',
  'write the unit: {0} °F': 'escribir la unidad: {0} °F',
  'degrees without a scale are taken as Celsius here': 'los grados sin escala se toman aquí como Celsius',
  'write the unit: {0} °C': 'escribir la unidad: {0} °C',
  'the month, north of the equator': 'el mes, al norte del ecuador',
  'set the season': 'indicar la estación',
  'a heading': 'un encabezado',
  'a total': 'un total',
  'the heads of columns': 'los títulos de las columnas',
  'it gives a size, but names nothing that is known as cook kit':
    'da un tamaño, pero no nombra nada conocido como equipo de cocina',
  'it does not say what the can holds': 'no dice qué contiene la lata',
  'cook kit is only mentioned': 'el equipo de cocina solo se menciona',
};

const fuelTypes: Words['fuelTypes'] = {
  gas: 'gas',
  alcohol: 'alcohol',
  wood: 'leña',
  'liquid-fuel': 'combustible líquido',
  'solid-fuel': 'combustible sólido',
};

const lines = (n: number) => `${n} ${n === 1 ? 'línea' : 'líneas'}`;
const checks = (n: number) => `${n} ${n === 1 ? 'comprobación' : 'comprobaciones'}`;

/** What begins with a capital for its place alone; an abbreviation keeps it. */
const inside = (sentence: string) =>
  /^\p{Lu}(?:\p{Ll}| )/u.test(sentence) ? sentence.charAt(0).toLowerCase() + sentence.slice(1) : sentence;

export const spanish: Words = {
  locale: 'es',
  language: {
    grades: {
      'can-hurt': 'Puede herir',
      'falls-short': 'No alcanza',
      'costs-you': 'Tiene su precio',
      'cant-tell': 'Por aclarar',
      'holds-up': 'Cumple',
    },
    sentences,
    units: { mL: 'ml', L: 'l', 'mL/person': 'ml/persona', 'g/mL': 'g/ml', 'g/L': 'g/l', '%': '\u00a0%' },
    colon: ': ',
    semicolon: '; ',
    inside,
  },
  joints: ['de', 'a'],

  name: 'Brimwise',
  region: 'Brimwise, una segunda opinión sobre un equipo de cocina',
  entrances: { legend: 'Qué se juzga', list: 'Lista', pot: 'Una olla' },

  trip: 'Salida',
  tripFrom: (numbers) => `de ${numbers.length === 1 ? 'la línea' : 'las líneas'} ${list.format(numbers.map(String))}`,
  tripBack: 'Restablecer',
  tripBackLabel: 'Restablecer la salida tal como la dice la lista',
  more: 'Viento, nieve, estación',
  change: 'Cambiar',
  tripChange: 'Cambiar la salida',
  tripSaid: {
    people: (n) => (n === 1 ? '1 persona' : `${n} personas`),
    days: (n) => (n === 1 ? '1 día' : `${n} días`),
    waterFrom: { liquid: 'sin nieve', either: 'nieve posible', snow: 'toda el agua de nieve' },
  },
  tripFields: {
    people: 'Gente',
    days: 'Días',
    mealStyle: 'Comidas',
    waterFrom: 'Nieve',
    lowC: 'Mínima',
    altitudeM: 'Altitud',
    cookAt: 'Se cocina en',
    wind: 'Viento',
    snow: 'Nieve en la olla',
    season: 'Estación',
    hotMealsPerDay: 'Comidas calientes al día',
    drinkFromPot: 'Bebidas calientes de la olla',
  },
  assumed: 'supuesto',
  setByPage: 'Fijado por esta página:',

  list: 'Lista de equipo',
  clear: 'Vaciar',
  clearLabel: 'Vaciar la lista',
  placeholder:
    'Pegar una lista de equipo, o escribirla: cada cosa en una línea.\nolla 1,3 l, tapa\nhornillo de gas, cartucho 230 g',
  noList: '¿Ninguna lista a mano?',
  example: 'Un ejemplo',
  exampleList:
    'Somos dos, 3 días, principios de noviembre\ncampamento a 900 m, −6 °C de noche\nolla Humblefern 1,3 l, 140 x 90 mm, aluminio, con tapa\nhornillo Zorvik, de rosca sobre el cartucho\ncartucho de gas 230 g, butano\npinza para la olla\n2 tazas 450 ml, 2 cucharas\nmechero y cerillas\n2 botellas 1 l\narroz y lentejas, cocidos en la olla',
  lineToCopy: 'olla 1,3 l, tapa',
  useLine: 'Poner esta línea',
  allLines: (n) => `Las ${n} líneas`,
  otherLines: (n) => `Mostrar las otras ${n} líneas`,

  noKit: 'Nada aquí se lee como equipo de cocina.',
  noKitRead: (n) =>
    `${lines(n)} ${n === 1 ? 'leída' : 'leídas'}; ninguna nombra olla, hornillo, combustible ni en qué comer. Cada cosa en una línea, con su tamaño:`,

  reading: 'Lectura',
  readingFold: (counts) => `Lectura: ${counts}`,
  grounds: { stated: 'indicado', 'worked-out': 'calculado', assumed: 'supuesto', missing: 'falta' },
  was: 'antes',
  yours: 'corregido',
  pressToChange: 'Pulsar un valor para cambiarlo.',
  valueLabel: (field, kind, value, grounds, line) => `${kind}, ${field}: ${value}, ${grounds}, línea ${line}. Cambiar`,
  kindLabel: (kind, line) => `${kind}, línea ${line}. Cambiar qué es`,
  slotLabel: (field, kind, line) => `${kind}, ${field}: falta, línea ${line}. Añadir`,
  editLabel: (field, kind) => `${kind}, ${field}. Intro lo guarda, Escape lo devuelve`,
  notThere: 'no está en el equipo',
  notCarried: (because) => `no cuenta: ${because}`,
  itCounts: 'Sí cuenta',
  alsoNamed: 'También se nombra',
  alsoNamedWhy: 'De paso; no se cuenta. ¿Va en el viaje?',
  countIt: (thing, line) => `Sí cuenta: ${thing}, línea ${line}`,
  countAll: (n) => `Contar los ${n}`,
  notCookKit: (n) => `${lines(n)} ${n === 1 ? 'ajena' : 'ajenas'} a la cocina`,
  notUnderstood: 'sin entender.',
  sayWhat: 'Decir qué es',
  itIs: 'Es',
  whatIsIt: (line) => `Qué es la línea ${line}`,
  choose: 'elegir',
  forget: 'Olvidarlo',
  unused: (value, why) => `Valor propio «${value}»: ${why}`,
  yesNo: { yes: 'sí', no: 'no' },
  no: (thing) => `sin ${thing}`,
  fields: {
    kind: 'tipo',
    carried: 'se lleva',
    quantity: 'cantidad',
    capacityMl: 'capacidad',
    massG: 'peso',
    diameterMm: 'ancho',
    baseDiameterMm: 'ancho del fondo',
    heightMm: 'alto',
    sizeMm: 'tamaño',
    burnerMm: 'ancho del quemador',
    supportsMm: 'ancho de los apoyos',
    material: 'material',
    bail: 'asa de alambre',
    lid: 'tapa',
    handles: 'asa',
    stoveType: 'quema',
    stoveForm: 'forma',
    fuelType: 'combustible',
    gasMix: 'gas',
    fuelMassG: 'combustible neto',
    fuelVolumeMl: 'volumen de combustible',
  },
  kinds: {
    pot: 'olla',
    mug: 'taza',
    kettle: 'tetera',
    pan: 'sartén',
    lid: 'tapa',
    stove: 'hornillo',
    fuel: 'combustible',
    windscreen: 'paraviento',
    bottle: 'botella',
    bladder: 'bolsa de agua',
    bowl: 'cuenco',
    utensil: 'cubierto',
    'other-cook': 'otro menaje',
  },
  roles: {
    gripper: 'pinza',
    lighter: 'mechero',
    matches: 'cerillas',
    board: 'tabla',
    tripod: 'trípode',
    foil: 'papel de aluminio',
  },
  materials: {
    titanium: 'titanio',
    aluminium: 'aluminio',
    steel: 'acero',
    iron: 'hierro',
    enamel: 'esmalte',
    plastic: 'plástico',
    wood: 'madera',
    metal: 'metal',
  },
  stoveTypes: { ...fuelTypes, integrated: 'gas, con su propia olla' },
  stoveForms: { upright: 'sobre el cartucho', remote: 'con manguera' },
  fuelTypes,
  gasMixes: { butane: 'butano', isobutane: 'isobutano', winter: 'isobutano y propano', propane: 'propano' },
  mealStyles: { 'boil-only': 'solo agua', simmer: 'guisar', scratch: 'cocinar' },
  waterFrom: { liquid: 'ninguna', either: 'posible', snow: 'toda el agua' },
  winds: { calm: 'calma', breeze: 'brisa', windy: 'viento' },
  snows: { new: 'nueva', settled: 'asentada', 'wind-packed': 'venteada', packed: 'apretada a mano' },
  seasons: { spring: 'primavera', summer: 'verano', autumn: 'otoño', winter: 'invierno' },
  cookAt: { stove: 'hornillo', fire: 'hoguera' },

  checks,
  tally: {
    'can-hurt': (n) => `${n} ${n === 1 ? 'puede' : 'pueden'} herir`,
    'falls-short': (n) => `${n} no ${n === 1 ? 'alcanza' : 'alcanzan'}`,
    'costs-you': (n) => `${n} ${n === 1 ? 'tiene' : 'tienen'} su precio`,
    'cant-tell': (n) => `${n} por aclarar`,
    'holds-up': (n) => `${n} ${n === 1 ? 'cumple' : 'cumplen'}`,
  },
  tallyLabel: 'Resultados por grado',
  caution: 'Cuidado',
  line: (n) => `Línea ${n}`,
  typed: 'Escrito:',
  lookedFor: 'Buscado:',
  why: 'Por qué',
  howWorkedOut: (title) => `Cálculo: ${title}`,
  published: 'publicado',
  commonPractice: 'práctica común',
  Published: 'Publicado:',
  CommonPractice: 'Práctica común:',
  assumedHere: 'Supuesto:',
  assumption: (what, because, replaceWith) => `${what}: ${because}; ${replaceWith}.`,
  settle: (answers, open) =>
    `${answers === 1 ? 'Una respuesta resolvería' : `${answers} respuestas resolverían`} ${open === 1 ? 'una comprobación' : checks(open)}.`,
  untold: (open) =>
    open === 1 ? 'Una comprobación no tiene respuesta aquí.' : `${checks(open)} no tienen respuesta aquí.`,
  settles: (titles) => `Resuelve: ${list.format(titles.map(inside))}.`,
  addLine: (kind) => `Añadir «${kind}» a la lista`,

  day: 'Un día con este equipo',
  boilsAt: (temperature) => `Allí el agua hierve a ${temperature}.`,
  sources: 'Fuentes',
  assumptions: 'Supuesto',
  problems: 'Omitido',

  potForm: {
    pot: 'Olla',
    outside: 'medidas exteriores',
    diameter: 'Ancho',
    baseDiameter: 'Fondo, si es cónica',
    height: 'Alto',
    capacity: 'Capacidad',
    mass: 'Peso',
    material: 'Material',
    has: 'La olla tiene',
    bail: 'asa de alambre',
    handles: 'asas laterales',
    lid: 'tapa',
    more: 'Más de la olla y el hornillo',
    stove: 'Hornillo',
    type: 'Quema',
    form: 'El gas va',
    burnerDiameter: 'Ø del quemador',
    standsAt: 'Fondo de la olla a',
    armCount: 'Brazos',
    armInner: 'Hueco de brazos',
    armSpan: 'Ancho de brazos',
    footDiameter: 'Patas o cartucho',
  },

  drawing: {
    unit: { metric: 'mm', us: 'in', imperial: 'in' },
    brim: (volume) => `borde ${volume}`,
    meal: (volume) => `comida ${volume}`,
    fill: (volume) => `llenado ${volume}`,
    free: (length) => `${length} libres`,
    on: (base, burner) => `olla ${base} sobre quemador ${burner}`,
    fits: (lengths) => `admite ${lengths}`,
    tips: (angle) => `vuelca ${angle}`,
    spills: (angle) => `rebosa ${angle}`,
    caption: 'Olla, altura de apoyo, patas y ancho del quemador a escala. Visto por el lado débil del apoyo.',
    captionAlone: 'A escala.',
    shape: (rim, height, base) =>
      `La olla en sección, a escala: ${rim} de ancho${base === null ? '' : `, ${base} en el fondo,`} y ${height} de alto.`,
    burner: (width) => `El quemador mide ${width} de ancho.`,
    stands: (height) => `Su fondo queda a ${height} del suelo.`,
    holds: (brim, meal) => `Hasta el borde caben ${brim}; una comida pide ${meal}.`,
    filled: (height, volume, free) => `Llena hasta ${height} con ${volume}, ${free} por debajo del borde.`,
    leans: (tip, spill) => `Vuelca a ${tip} y rebosa a ${spill}.`,
    suits: (lengths) => `Al quemador le van fondos de ${lengths} de ancho.`,
  },

  verdict: {
    region: 'Brimwise, un veredicto sobre una olla',
    unnamed: 'Esta olla',
    lid: 'con tapa',
    bail: 'con asa de alambre',
    stove: (type) => `con ${type}`,
    terms: (people, style, fromSnow, shown, answered, open) => {
      const one = people === 1;
      const doing = {
        'boil-only': one ? 'solo hierve agua' : 'solo hierven agua',
        simmer: one ? 'guisa' : 'guisan',
        scratch: one ? 'cocina de verdad' : 'cocinan de verdad',
      }[style];
      const who = `${one ? 'una persona' : `${people} personas`} que ${doing}`;
      const left =
        open === 0 ? '' : ` ${open === 1 ? 'Otra no tiene' : `Otras ${open} no tienen`} respuesta con estas cifras.`;
      return `Juzgada para ${who}${fromSnow ? ', con agua de nieve' : ''}. Se ${shown === 1 ? 'muestra' : 'muestran'} ${shown} de ${checks(answered)}, primero lo peor.${left}`;
    },
    sums: 'Los cálculos',
    sketch: (rim, height, fill) =>
      `La olla en sección, a escala: ${rim} de ancho y ${height} de alto${fill === null ? '' : `, llena hasta ${fill}`}.`,
  },

  unjudged: 'La parte que lee y juzga no se ha cargado. Copiar lo escrito y volver a cargar la página.',

  writeLetter: 'Una respuesta para enviar',
  copy: 'Copiar como texto',
  copyMarkdown: 'Copiar como Markdown',
  copied: 'Copiado.',
  copyRefused: 'El navegador no ha dejado copiar. Aquí está el texto, para copiarlo a mano.',
  copyText: 'Los resultados como texto',
  print: 'Imprimir',
  unitsLegend: 'Unidades',
  units: { 'as-written': 'como está escrito', metric: 'métrico', us: 'EE. UU.', imperial: 'imperial' },
  foot: 'Una segunda opinión. Las normas locales sobre el fuego, los gestores del terreno y la enseñanza titulada van primero. Calculado en esta página; no se envía nada.',
};
