import type { Words } from './en.js';

const list = new Intl.ListFormat('de', { type: 'conjunction' });

/** Words that begin a sentence and have no capital within one; nouns keep theirs. */
const SMALL_WITHIN =
  /^(?:Abgekochtes|Alles|Angegebenes|Als|Am|An|Auf|Aus|Bei|Das|Der|Die|Diese[rs]?|Draußen|Ein|Eine|Einige|Er|Es|Etwas|Für|Hier|Hoch|Im|In|Ist|Kein|Keine|Kochendes|Mitgeführter|Mitgeführtes|Mit|Nackt|Nackte[rs]?|Nahe|Nicht|Nichts|Nur|Ob|Ohne|Reines|Richtig|Schmal|Schmale|Sein|Seine|So|Um|Unter|Voll|Warme|Vom|Von|Wenn|Weit|Zeile|Zu|Über)(?![\p{L}\d])/u;

/** What the core says. Units stay with their number by themselves; a placeholder that is printed in the English is printed here. */
const sentences: Readonly<Record<string, string>> = {
  // Room for the meal
  'Room for the meal': 'Platz für die Mahlzeit',
  'One meal for {people} fits in one round.': 'Eine Mahlzeit für {people} passt in einen Durchgang.',
  'The least portion fits in one round; a full one takes two.':
    'Die kleinste Portion passt in einen Durchgang; eine volle braucht zwei.',
  'One meal for {people} fits in {pots#} pots side by side.':
    'Eine Mahlzeit für {people} passt in {pots#} Töpfe nebeneinander.',
  'Each has a pot of their own: the last eats {wait} after the first.':
    'Jeder hat einen eigenen Topf: Wer zuletzt isst, isst {wait} nach dem Ersten.',
  'Each has a pot of their own, and the flames are used {rounds#} times one after another.':
    'Jeder hat einen eigenen Topf, und die Flammen werden {rounds#}-mal nacheinander gebraucht.',
  'A pot of {beside} beside what is there, on a flame of its own.':
    'Ein Topf von {beside} neben dem, was da ist, auf einer eigenen Flamme.',
  'Flames for {flames#} pots at once.': 'Flammen für {flames#} Töpfe zugleich.',
  'and beside it': 'und daneben',
  'The {pots#} pots, {have} in all, melt the water of {people}: {loads#} {loads:load|loads} of each a day.':
    'Die {pots#} Töpfe, zusammen {have}, schmelzen das Wasser für {people}: {loads#} {loads:Füllung|Füllungen} von jedem am Tag.',
  'If snow is the water, the {pots#} pots, {have} in all, melt that of {people}: {loads#} {loads:load|loads} of each a day.':
    'Kommt das Wasser aus Schnee, schmelzen die {pots#} Töpfe, zusammen {have}, das für {people}: {loads#} {loads:Füllung|Füllungen} von jedem am Tag.',
  '{turns#} {turns:turn|turns} of {each}': '{turns#} {turns:Durchgang|Durchgänge} zu {each}',
  '{turns#} {turns:load|loads}, {litres} of water': '{turns#} {turns:Füllung|Füllungen}, {litres} Wasser',
  'Open fire': 'Offenes Feuer',
  'No flame known': 'Keine Flamme bekannt',
  '{alike#} × {name}': '{alike#} × {name}',
  '{capacity} {name}': '{capacity} {name}',
  gas: 'Gas',
  '{grams} of {fuel}': '{grams} {fuel}',
  'One person eats {eaten} after lighting; all is done after {done}.':
    'Gegessen wird {eaten} nach dem Anzünden; fertig ist alles nach {done}.',
  'One person eats {eaten} after lighting.': 'Gegessen wird {eaten} nach dem Anzünden.',
  'All {people#} eat {eaten} after lighting; all is done after {done}.':
    'Alle {people#} essen {eaten} nach dem Anzünden; fertig ist alles nach {done}.',
  'All {people#} eat {eaten} after lighting.': 'Alle {people#} essen {eaten} nach dem Anzünden.',
  'All is done {done} after lighting.': 'Alles ist {done} nach dem Anzünden fertig.',
  '{wind} the open pot stops at {stalls}: with a lid it boils, and a day takes {grams} of fuel.':
    '{wind} bleibt der offene Topf bei {stalls} stehen: mit Deckel kocht er, und ein Tag braucht {grams} Brennstoff.',
  '{wind} the pot stops at {stalls}: out of the wind it boils, and a day takes {grams} of fuel.':
    '{wind} bleibt der Topf bei {stalls} stehen: im Windschatten kocht er, und ein Tag braucht {grams} Brennstoff.',
  '{wind} the pot stops at {stalls}: with a lid and out of the wind it boils, for {grams} of fuel a day.':
    '{wind} bleibt der Topf bei {stalls} stehen: mit Deckel und im Windschatten kocht er, mit {grams} Brennstoff am Tag.',
  '{wind} the pot stops at {stalls}, with a lid and out of the wind too: there is no day to work out.':
    '{wind} bleibt der Topf bei {stalls} stehen, auch mit Deckel und im Windschatten kocht er nicht: ein Tag lässt sich nicht ausrechnen.',
  '{stalls} of {boil}': '{stalls} von {boil}',
  'A place out of the wind, or the screen that the stove’s maker allows.':
    'Ein Platz im Windschatten, oder der Windschutz, den der Hersteller des Kochers erlaubt.',
  'A lid, and a place out of the wind.': 'Ein Deckel und ein Platz im Windschatten.',
  'A stronger stove, or a smaller pot with a lid.': 'Ein stärkerer Kocher, oder ein kleinerer Topf mit Deckel.',
  'In still air': 'Bei Windstille',
  'In a breeze': 'Bei leichtem Wind',
  'In wind': 'Bei Wind',
  'Strength of the flame': 'Stärke der Flamme',
  'One meal takes {rounds#} rounds.': 'Eine Mahlzeit braucht {rounds#} Durchgänge.',
  'Without its size, nobody can tell whether it holds a meal.':
    'Ohne Größenangabe bleibt offen, ob eine Mahlzeit hineinpasst.',
  'There is a stove and nothing on the list to cook in.': 'Ein Kocher ist dabei, aber nichts, worin gekocht wird.',
  '{room#} of {need}': '{room#} von {need}',
  'size not given': 'Größe nicht angegeben',
  'no pot': 'kein Topf',
  'A pot of {brim} or more.': 'Ein Topf ab {brim}.',
  'A pot of {brim} or more. Or boil-only in this one: {boilRoom} of room.':
    'Ein Topf ab {brim}. Oder in diesem nur Wasser kochen: {boilRoom} Platz.',
  'Add a pot of {brim} or more.': 'Einen Topf ab {brim} mitnehmen.',
  '“{name}”: how much does it hold?': '„{name}“: Wie viel passt hinein?',
  'to the brim': 'randvoll',
  'the share that is filled, {style}': 'so weit wird gefüllt, {style}',
  'room in one round': 'Platz in einem Durchgang',
  'one meal for {people}, 473–591 mL a head': 'eine Mahlzeit für {people}, 473–591 ml pro Kopf',
  'water alone': 'bei Wasser allein',
  'when it simmers': 'wenn es köchelt',
  'when it is cooked in': 'wenn richtig gekocht wird',
  'one person': 'eine Person',
  '{count#} people': '{count#} Personen',

  // Shape
  Shape: 'Form',
  'Close to 2 : 3, the best compromise on a bail.': 'Nahe an 2 : 3, dem besten Kompromiss am Bügel.',
  'Narrower than a pot on a bail is at its best: slow to take heat.':
    'Schmaler, als es am Bügel gut ist: nimmt die Wärme langsam auf.',
  'Wider than 2 : 3 on a bail: it takes heat well and slops sooner.':
    'Weiter als 2 : 3 am Bügel: nimmt die Wärme gut auf und schwappt eher.',
  'Tall and narrow: much of the heat goes past it into the air.':
    'Hoch und schmal: Viel Wärme geht an ihm vorbei in die Luft.',
  'Wide enough for its flame and not so wide that it cools.':
    'Weit genug für die Flamme und nicht so weit, dass er auskühlt.',
  'Narrow, and right for a narrow burner with the lid on.':
    'Schmal; mit Deckel und auf einem schmalen Brenner ist das richtig.',
  'Narrow over a flame that spreads: heat goes up the wall.':
    'Schmal über einer breiten Flamme: Die Wärme geht an der Wand hoch.',
  'Narrow and open: it heats slowly and loses heat from the top.':
    'Schmal und offen: heizt langsam und verliert Wärme nach oben.',
  'Pan-shaped: it slops when moved and cools quickly.':
    'Flach wie eine Pfanne: schwappt beim Bewegen und kühlt schnell aus.',
  'Without width and height, its shape cannot be judged.': 'Ohne Breite und Höhe lässt sich die Form nicht beurteilen.',
  'Narrow; whether that costs heat hangs on the stove.': 'Schmal; ob das Wärme kostet, hängt vom Kocher ab.',
  '{ratio} as wide as tall': '{ratio}-mal so breit wie hoch',
  'At this height a pot {width} across.': 'Bei dieser Höhe ein Topf von {width} Breite.',
  'At this width a pot {lower} tall or more.': 'Bei dieser Breite ein Topf ab {lower} Höhe.',
  '“{name}”: how wide and how tall is it, outside?': '„{name}“: Wie breit und wie hoch ist er, außen gemessen?',
  'What does the stove burn?': 'Was verbrennt der Kocher?',
  'width at the rim': 'Breite am Rand',
  height: 'Höhe',
  'as wide as tall': 'so breit wie hoch',
  'wall for each base area, 4 × height ÷ width: the share of the pot that only hot air touches':
    'Wand je Bodenfläche, 4 × Höhe ÷ Breite: der Anteil, den nur heiße Luft berührt',

  // Fit on the stove
  'Fit on the stove': 'Sitz auf dem Kocher',
  'The base suits the burner.': 'Der Boden passt zum Brenner.',
  'Flame goes up the wall: heat is lost and the handles get hot.':
    'Die Flamme geht an der Wand hoch: Wärme geht verloren, die Griffe werden heiß.',
  'The flame is nearly as wide as the pot: most of it goes past.':
    'Die Flamme ist fast so breit wie der Topf: Das meiste geht vorbei.',
  'The pot is wider than this burner heats evenly.': 'Der Topf ist breiter, als dieser Brenner gleichmäßig heizt.',
  'The base barely spans the gap between the arms: it can drop or slide.':
    'Der Boden reicht kaum über die Lücke zwischen den Armen: Er kann durchfallen oder rutschen.',
  'The base reaches far over the arms: it stands loosely.': 'Der Boden ragt weit über die Arme: Er steht lose.',
  'A base this wide sends heat down onto an upright canister, which can burst.':
    'Ein so breiter Boden wirft Hitze auf eine Kartusche darunter; sie kann bersten.',
  'No burner width is given: this pot suits a burner of {burners}.':
    'Die Brennerbreite fehlt: Zu diesem Topf passt ein Brenner von {burners}.',
  'Without its width, nobody can tell whether the pot suits the burner.':
    'Ohne Breite bleibt offen, ob der Topf zum Brenner passt.',
  '{ratio#} of {band} burners': '{ratio#} von {band} Brennerbreiten',
  '{base#} of {band}': '{base#} von {band}',
  'width not given': 'Breite nicht angegeben',
  'A pot of {pots} across, or a burner of {burners}.': 'Ein Topf von {pots} Breite oder ein Brenner von {burners}.',
  'A pot {atLeast} across or more, or a burner of {gasBurner} or less.':
    'Ein Topf ab {atLeast} Breite oder ein Brenner bis {gasBurner}.',
  'A pot {atLeast} across or more, or a grate over the arms.':
    'Ein Topf ab {atLeast} Breite oder ein Rost über den Armen.',
  'A pot {atMost} across or less, or a stove with wider arms.':
    'Ein Topf bis {atMost} Breite oder ein Kocher mit weiteren Armen.',
  'A pot {atMost} across or less, or a stove on a hose.': 'Ein Topf bis {atMost} Breite oder ein Kocher mit Schlauch.',
  'If the canister feels warm, turn the stove off and let it cool.':
    'Fühlt sich die Kartusche warm an: Kocher aus und abkühlen lassen.',
  'Boiling water burns in a second. Keep feet and hands clear of a pot that stands badly.':
    'Kochendes Wasser verbrüht in einer Sekunde. Füße und Hände von einem Topf fernhalten, der schlecht steht.',
  'How wide is the burner or its fire-pot?': 'Wie breit ist der Brenner oder sein Feuertopf?',
  '“{name}”: how wide is it at the base?': '„{name}“: Wie breit ist der Boden?',
  'base of the pot': 'Boden des Topfs',
  burner: 'Brenner',
  'burners wide': 'Brennerbreiten',
  'burner and 10 mm a side': 'Brenner und 10 mm je Seite',
  'gap between the arms and 15 mm': 'Lücke zwischen den Armen und 15 mm',
  '1.6 times the span of the arms': '1,6-mal die Spannweite der Arme',

  // Stated capacity
  'Stated capacity': 'Angegebenes Volumen',
  'Stated capacity and dimensions agree.': 'Angegebenes Volumen und Maße stimmen überein.',
  'Stated capacity and dimensions agree loosely; a rounded or lipped pot may be so.':
    'Angegebenes Volumen und Maße stimmen ungefähr überein; ein runder Topf oder einer mit Rand kann so sein.',
  '{outside} outside is much for a pot that states {stated}. Which is right?':
    '{outside} außen sind viel für einen Topf mit angegebenen {stated}. Was stimmt?',
  '{stated} cannot fit in {size}. Which is right?': '{stated} passen nicht in {size}. Was stimmt?',
  '{stated} stated, {outside} outside': '{stated} angegeben, {outside} außen',
  '“{name}”: how much does it hold, filled to the brim?': '„{name}“: Wie viel passt randvoll hinein?',
  'outside volume, {size}': 'Außenvolumen, {size}',
  stated: 'angegeben',
  'outside to stated': 'außen zu angegeben',

  // Sturdiness
  Sturdiness: 'Festigkeit',
  'A drink can for a pot dents and splits.': 'Eine Getränkedose als Topf verbeult und reißt.',
  '{width#} × {height} at {mass} is a drink can: it dents and splits.':
    '{width#} × {height} bei {mass} ist eine Getränkedose: Sie verbeult und reißt.',
  '{mass} for {capacity} is as thin as a drink can: it dents and splits.':
    '{mass} für {capacity} ist so dünn wie eine Getränkedose: Das verbeult und reißt.',
  'a drink can': 'eine Getränkedose',
  '{ratio#} of {least}': '{ratio#} von {least}',
  'A pot made for cooking.': 'Ein Topf, der zum Kochen gemacht ist.',
  'A pot of this size that weighs {heavier} or more.': 'Ein Topf dieser Größe ab {heavier}.',
  mass: 'Gewicht',
  'mass for what it holds': 'Gewicht zu Inhalt',

  // Material
  Material: 'Material',
  'A pot of {material} over a flame melts or burns.': 'Ein Gefäß aus {material} schmilzt oder brennt über der Flamme.',
  'Bare titanium has hot spots: what simmers or fries in it scorches.':
    'Blankes Titan hat heiße Stellen: Was darin köchelt oder brät, brennt an.',
  'Bare titanium has hot spots: dry snow in it scorches and tastes of it.':
    'Blankes Titan hat heiße Stellen: Trockener Schnee brennt an und schmeckt danach.',
  'Aluminium over a fire: empty, it can melt through.': 'Aluminium über dem Feuer: Leer kann es durchschmelzen.',
  'The pot of {material} takes this cooking.': 'Ein Topf aus {material} verträgt diese Kochweise.',
  'What the pot is made of is not said: bare titanium scorches, other metals seldom.':
    'Woraus der Topf ist, steht nirgends: Blankes Titan brennt an, andere Metalle selten.',
  '{material}': '{material}',
  '{material}, to {use}': '{material}, zum {use}',
  '{material}, at a fire': '{material}, am Feuer',
  'material not given': 'Material nicht angegeben',
  'A pot of steel, enamel or aluminium.': 'Ein Topf aus Stahl, Emaille oder Aluminium.',
  'A pot of steel, enamel or aluminium. Or boil-only in this one.':
    'Ein Topf aus Stahl, Emaille oder Aluminium. Oder in diesem nur Wasser kochen.',
  'A pot of steel or enamel.': 'Ein Topf aus Stahl oder Emaille.',
  'A pot of dry snow scorches on any stove. Start with water in it, feed the snow, stir.':
    'Trockener Schnee brennt auf jedem Kocher an. Mit etwas Wasser beginnen, Schnee nachlegen, rühren.',
  'An empty pot over a fire heats in moments. Fill it first, then hang it.':
    'Ein leerer Topf über dem Feuer ist in Augenblicken heiß. Erst füllen, dann hängen.',
  'What is it made of?': 'Woraus ist er?',
  simmer: 'Köcheln',
  'cook from scratch': 'richtigen Kochen',
  'melt snow': 'Schneeschmelzen',
  titanium: 'Titan',
  aluminium: 'Aluminium',
  steel: 'Stahl',
  iron: 'Eisen',
  enamel: 'Emaille',
  plastic: 'Kunststoff',
  wood: 'Holz',

  // Hanging
  Hanging: 'Hängen',
  'It may lean {spill} on its bail before it spills.': 'Am Bügel darf er {spill} schräg hängen, bevor etwas überläuft.',
  'It spills at {spill} on its bail: it slops when touched.':
    'Am Bügel läuft er bei {spill} über: Er schwappt, wenn man ihn berührt.',
  'It spills at {spill} on its bail: nobody carries that without slopping.':
    'Am Bügel läuft er bei {spill} über: Das trägt niemand, ohne zu verschütten.',
  'Its weight hangs above the ears of the bail: it turns over.': 'Sein Gewicht hängt über den Bügelösen: Er kippt um.',
  '{spill} to the spill': '{spill} bis zum Überlaufen',
  '{metacentric} below the ears': '{metacentric} unter den Ösen',
  'Fill it to {lessFill} at most: {costsUnder} to the spill.':
    'Höchstens {lessFill} einfüllen: {costsUnder} bis zum Überlaufen.',
  'Ears nearer the rim, or less water in it.': 'Ösen näher am Rand oder weniger Wasser darin.',
  'Boiling water burns in a second. Lift it off with a stick through the bail, low, and away from legs.':
    'Kochendes Wasser verbrüht in einer Sekunde. Mit einem Stock durch den Bügel abnehmen, niedrig und weg von den Beinen.',
  'from the fill line to the rim': 'vom Füllstand bis zum Rand',
  'half the width': 'halbe Breite',
  'leans before it spills, the arc of that slope': 'Neigung, bis es überläuft: der Winkel dieser Steigung',
  'ears above the middle of the water': 'Ösen über der Mitte des Wassers',
  'the free surface, r² ÷ 4h': 'die freie Oberfläche, r² ÷ 4h',
  'weight acts below the ears': 'so weit unter den Ösen wirkt das Gewicht',

  // Standing
  Standing: 'Stand',
  'It goes over at {tip}, before it spills.': 'Er kippt bei {tip} um, noch bevor etwas überläuft.',
  'It spills at {spill} and goes over at {tip}.': 'Er läuft bei {spill} über und kippt bei {tip} um.',
  'It leans {tip} before it goes over.': 'Er neigt sich {tip}, bevor er umkippt.',
  '{tip} of {least}, before it tips': '{tip} von {least} bis zum Kippen',
  'Feet {feet} across, or fill it less.': 'Füße von {feet} Weite, oder weniger einfüllen.',
  'A stove with arms {feet} across, or fill it less.': 'Ein Kocher mit Armen von {feet} Weite, oder weniger einfüllen.',
  'Boiling water burns in a second. Cook on the ground, sit to one side of the pot, keep feet clear.':
    'Kochendes Wasser verbrüht in einer Sekunde. Am Boden kochen, seitlich vom Topf sitzen, Füße fernhalten.',
  'from the middle to the edge it goes over': 'von der Mitte bis zur Kante, über die er kippt',
  'height of the filled pot’s weight, about': 'Höhe des Schwerpunkts, gefüllt, ungefähr',
  'leans before it tips, its water running to the low side': 'Neigung, bis er kippt; das Wasser läuft zur tiefen Seite',
  'leans before it spills': 'Neigung, bis es überläuft',

  // Lifting
  Lifting: 'Anheben',
  'It is lifted by {grips}.': 'Angehoben wird er mit: {grips}.',
  'Nothing on it or beside it lifts the full pot.': 'Nichts am Topf und nichts daneben hebt ihn voll an.',
  'Full it is {filled}, too much for {grips}.': 'Voll sind es {filled}, zu viel für: {grips}.',
  'Full it is {filled} on a bail: two people lift it, on a stick.':
    'Voll sind es {filled} an einem Bügel: Zwei heben ihn, mit einem Stock darunter.',
  'Full it is {filled}: too heavy for anyone to lift while it boils.':
    'Voll sind es {filled}: kochend zu schwer zum Heben.',
  'Nothing says how it is lifted when full.': 'Nirgends steht, womit er voll angehoben wird.',
  '{filled#} of {limit}, lifted full': '{filled#} von {limit}, voll gehoben',
  '{holds#} of {limitL}, lifted full': '{holds#} von {limitL}, voll gehoben',
  'no grip': 'kein Griff',
  'no handle named': 'kein Griff genannt',
  'A gripper, or a pot with a bail or handles.': 'Eine Topfzange, oder ein Topf mit Bügel oder Griffen.',
  'A pot with a handle on either side. Or fill it to {least} at most.':
    'Ein Topf mit einem Griff an jeder Seite. Oder höchstens {least} einfüllen.',
  'A pot with a handle on either side.': 'Ein Topf mit einem Griff an jeder Seite.',
  'Ladle it out where it stands. Or fill it to {least} at most.':
    'Dort ausschöpfen, wo er steht. Oder höchstens {least} einfüllen.',
  'Ladle it out where it stands.': 'Dort ausschöpfen, wo er steht.',
  '“{name}”: has it a handle, a bail or a gripper?': '„{name}“: Gibt es einen Griff, einen Bügel oder eine Topfzange?',
  'Boiling water burns in a second. Set cups on the ground to pour, and keep feet clear.':
    'Kochendes Wasser verbrüht in einer Sekunde. Becher zum Eingießen auf den Boden stellen, Füße fernhalten.',
  'a bail': 'ein Bügel',
  'two handles': 'zwei Griffe',
  'one handle': 'ein Griff',
  'a gripper': 'eine Topfzange',
  'water to the brim, and the pot': 'Wasser, randvoll, und der Topf',
  'the most that {grips} may lift': 'so viel hebt höchstens: {grips}',
  'the most that {grips} may hold': 'so viel fasst höchstens: {grips}',

  // At the fire
  'At the fire': 'Am Feuer',
  'The bail hangs it over the fire and hooks it off.':
    'Am Bügel hängt er über dem Feuer und kommt mit dem Haken herunter.',
  'No bail: nothing to hang it by or to hook it off the fire.':
    'Kein Bügel: nichts, woran er hängt oder vom Feuer kommt.',
  'No bail: the pot comes off by hand each time the stove is fed.':
    'Kein Bügel: Bei jedem Nachlegen muss der Topf von Hand herunter.',
  'Nothing says whether it has a bail.': 'Nirgends steht, ob er einen Bügel hat.',
  'Fires are said to be forbidden where this kit cooks on one.':
    'Feuer sind dort laut Liste verboten, und diese Ausrüstung kocht auf einem.',
  bail: 'Bügel',
  'no bail': 'kein Bügel',
  'bail not named': 'Bügel nicht genannt',
  'no fires': 'keine Feuer',
  'A pot with a bail, or a wire through two holes under the rim.':
    'Ein Topf mit Bügel oder ein Draht durch zwei Löcher unter dem Rand.',
  'A gas or spirit stove, where local rules allow it.':
    'Ein Gas- oder Spirituskocher, wo es die Regeln am Ort erlauben.',
  '“{name}”: has it a bail, a handle that swings over the top?':
    '„{name}“: Gibt es einen Bügel, der über den Topf schwenkt?',

  // Lid
  Lid: 'Deckel',
  'It has a lid.': 'Ein Deckel ist da.',
  'No lid: an open pot gives away heat and spills at once.':
    'Kein Deckel: Ein offener Topf verliert Wärme und verschüttet sofort.',
  'No lid: near the boil the open top gives away {watts}, {grams} of fuel an hour.':
    'Kein Deckel: Kurz vor dem Kochen gehen oben {watts} verloren, {grams} Brennstoff pro Stunde.',
  'No lid to melt snow under: the heat goes into the cold.':
    'Kein Deckel zum Schneeschmelzen: Die Wärme geht in die Kälte.',
  'Nothing says whether it has a lid.': 'Nirgends steht, ob er einen Deckel hat.',
  lid: 'Deckel',
  'no lid': 'kein Deckel',
  'A lid of any kind: foil or a plate will do.': 'Irgendein Deckel: Folie oder ein Teller genügt.',
  '“{name}”: has it a lid?': '„{name}“: Gibt es einen Deckel?',
  'lost by open water at 95 °C in still air': 'Verlust über offenem Wasser bei 95 °C in stiller Luft',
  'open top': 'offene Fläche',
  'given away': 'geht verloren',
  'saved by a lid: 6 % over a whole pasta cook, 30 % on hobs; the loss above is used':
    'spart ein Deckel: 6 % beim Nudelkochen im Ganzen, 30 % auf Herdplatten; gerechnet wird mit dem Verlust oben',

  // Melting snow
  'Melting snow': 'Schnee schmelzen',
  'If snow is the water, a {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Wenn Wasser nur aus Schnee kommt, schmilzt ein Topf von {have} das Wasser für {people}: {loads#} {loads:Ladung|Ladungen} am Tag.',
  'A {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.':
    'Ein Topf von {have} schmilzt das Wasser für {people}: {loads#} {loads:Ladung|Ladungen} am Tag.',
  'A {have} pot means {loads#} {loads:load|loads} of snow a day.':
    'Ein Topf von {have} heißt {loads#} {loads:Ladung|Ladungen} Schnee am Tag.',
  'If snow is the water, a {have} pot means {loads#} {loads:load|loads} a day.':
    'Wenn Wasser nur aus Schnee kommt, heißt ein Topf von {have} {loads#} {loads:Ladung|Ladungen} am Tag.',
  'A {have} pot is small to melt the water of {people}.':
    'Ein Topf von {have} ist klein, um das Wasser für {people} zu schmelzen.',
  'A {have} pot is large enough to melt the water of {people}.':
    'Ein Topf von {have} ist groß genug, um das Wasser für {people} zu schmelzen.',
  'If snow is the water, a {have} pot is small to melt the water of {people}.':
    'Wenn Wasser nur aus Schnee kommt, ist ein Topf von {have} klein für {people}.',
  'If snow is the water, a {have} pot is large enough for {people}.':
    'Wenn Wasser nur aus Schnee kommt, ist ein Topf von {have} groß genug für {people}.',
  'No pot to melt snow in: none of metal.': 'Kein Topf zum Schneeschmelzen: keiner aus Metall.',
  'If snow is the water, there is no pot to melt it in: none of metal.':
    'Wenn Wasser nur aus Schnee kommt, fehlt ein Topf dafür: keiner ist aus Metall.',
  'Without its size, nobody can tell whether it melts enough snow.':
    'Ohne Größenangabe bleibt offen, ob er genug Schnee schmilzt.',
  'If snow is the water, nobody can tell without its size whether the pot melts enough.':
    'Wenn Wasser nur aus Schnee kommt, bleibt ohne Größenangabe offen, ob der Topf genug schmilzt.',
  '{have} of {need}': '{have} von {need}',
  '{have} of {wanted}': '{have} von {wanted}',
  'no melt pot': 'kein Schmelztopf',
  'A lidded metal pot of {better} or more: {betterLoads#} {betterLoads:load|loads}.':
    'Ein Metalltopf mit Deckel ab {better}: {betterLoads#} {betterLoads:Ladung|Ladungen}.',
  'Add a lidded metal pot of {wanted}.': 'Einen Metalltopf mit Deckel von {wanted} mitnehmen.',
  'A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.':
    'Trockener Schnee brennt an. Mit etwas Wasser beginnen, so nachlegen, dass es Matsch bleibt, Deckel drauf.',
  'no metal pot': 'kein Metalltopf',
  'a day, {each} for {people}': 'am Tag, je {each} für {people}',
  'the pot, to the brim': 'der Topf, randvoll',
  'water in {snow} snow, by volume': 'Wasser im Schnee ({snow}), nach Volumen',
  'loads a day': 'Ladungen am Tag',
  'over the stove a day': 'am Kocher pro Tag',
  'fuel a day': 'Brennstoff am Tag',
  'hand-packed': 'handgepresst',
  settled: 'gesetzt',
  'wind-packed': 'windgepresst',
  new: 'neu',

  // Stove and fuel
  'Stove and fuel': 'Kocher und Brennstoff',
  'The stove burns what is carried: {burns}.': 'Der Kocher verbrennt, was dabei ist: {burns}.',
  'The stove burns {burns}; the list carries {carried}.':
    'Der Kocher verbrennt {burns}; auf der Liste steht {carried}.',
  'There is a stove, and nothing on the list for it to burn.': 'Ein Kocher ist dabei, aber nichts, was er verbrennt.',
  'Fuel is carried ({carried}), and no stove on the list burns it.':
    'Brennstoff ist dabei ({carried}), und kein Kocher der Liste verbrennt ihn.',
  'Nothing on the list burns in the stove on {burns}.': 'Nichts auf der Liste brennt in diesem Kocher ({burns}).',
  'No stove on the list burns the {carried}.': 'Kein Kocher der Liste verbrennt das ({carried}).',
  'no stove': 'kein Kocher',
  'A stove for {carried}. Or add the line of the stove, if it is carried.':
    'Ein Kocher für {carried}. Oder die Zeile des Kochers ergänzen, wenn er dabei ist.',
  'Carry {burns} for it, or leave it at home.': '{burns} dafür mitnehmen, oder ihn daheim lassen.',
  'A stove for it, or leave it at home.': 'Ein Kocher dafür, oder daheim lassen.',
  '{burns}': '{burns}',
  '{carried} for a stove on {burns}': '{carried} für einen Kocher mit {burns}',
  'no fuel named': 'kein Brennstoff genannt',
  'Carry {burns} for this stove, or the stove for this fuel.':
    '{burns} für diesen Kocher mitnehmen oder den Kocher zu diesem Brennstoff.',
  'What does the stove burn, and how much of it is carried?': 'Was verbrennt der Kocher, und wie viel davon ist dabei?',
  'no fuel': 'kein Brennstoff',
  'canister gas': 'Kartuschengas',
  alcohol: 'Spiritus',
  'liquid fuel': 'Flüssigbrennstoff',
  'solid fuel': 'Trockenbrennstoff',

  // Fuel carried
  'Fuel carried': 'Mitgeführter Brennstoff',
  'The fuel lasts {days#} {days:day|days} with a quarter to spare.':
    'Der Brennstoff reicht {days#} {days:Tag|Tage} und ein Viertel darüber.',
  'The fuel covers the likely need for {days#} {days:day|days} and leaves little over.':
    'Der Brennstoff deckt den wahrscheinlichen Bedarf für {days#} {days:Tag|Tage} und lässt wenig übrig.',
  'The fuel runs short of {days#} {days:day|days}.': 'Der Brennstoff reicht nicht für {days#} {days:Tag|Tage}.',
  'It covers {days#} {days:day|days} from streams and not from snow.':
    'Er reicht für {days#} {days:Tag|Tage} mit Wasser aus Bächen, nicht mit Schnee.',
  'It lasts {lasts#} {lasts:day|days}; nothing says how long the trip is.':
    'Er reicht {lasts#} {lasts:Tag|Tage}; wie lang die Tour ist, steht nirgends.',
  'Nothing says how much fuel is carried; {days#} {days:day takes|days take} about {need}.':
    'Nirgends steht, wie viel Brennstoff dabei ist; {days#} {days:Tag braucht|Tage brauchen} etwa {need}.',
  '{carried} of {need}': '{carried} von {need}',
  'amount not given': 'Menge nicht angegeben',
  'Carry {more} more, about {wanted} in all.': '{more} mehr mitnehmen, etwa {wanted} im Ganzen.',
  'How many days is the trip?': 'Wie viele Tage dauert die Tour?',
  '“{name}”: how much fuel is in it?': '„{name}“: Wie viel Brennstoff ist darin?',
  'Will the water come from streams, or from snow?': 'Kommt das Wasser aus Bächen oder aus Schnee?',
  'fuel a day, {low} to {high}': 'Brennstoff am Tag, {low} bis {high}',
  days: 'Tage',
  'likely need': 'wahrscheinlicher Bedarf',
  'a quarter to spare': 'ein Viertel Reserve',
  wanted: 'gebraucht',
  'carried, net': 'dabei, netto',

  // Gas in the cold
  'Gas in the cold': 'Gas in der Kälte',
  'At {low} the gas leaves the canister until it is nearly empty.':
    'Bei {low} kommt Gas aus der Kartusche, bis sie fast leer ist.',
  'At {low} the canister gives liquid gas, turned over as the list says.':
    'Bei {low} gibt die Kartusche flüssiges Gas, umgedreht, wie die Liste sagt.',
  'At {low} the gas leaves the canister at first; it fades when {used} is used.':
    'Bei {low} kommt zuerst Gas aus der Kartusche; es lässt nach, wenn {used} verbraucht sind.',
  'At {low} one canister still gives gas and another, {gas}, gives none or fades sooner.':
    'Bei {low} gibt eine Kartusche noch Gas; eine andere ({gas}) gibt keines oder lässt eher nach.',
  'At {low} the gas barely leaves the canister.': 'Bei {low} kommt kaum Gas aus der Kartusche.',
  '{gas} stays liquid below {liquid} at {altitude}; at {canister} none comes out.':
    '{gas} bleibt unter {liquid} auf {altitude} flüssig; bei {canister} kommt nichts heraus.',
  'At {low} no canister gas vaporises.': 'Bei {low} verdampft kein Kartuschengas.',
  'At {low} the canister has to be turned upside down, on a stove made for that.':
    'Bei {low} muss die Kartusche auf den Kopf gestellt werden, an einem Kocher, der dafür gemacht ist.',
  'At {low} it depends on the mix: butane stays liquid, a winter mix burns.':
    'Bei {low} kommt es auf die Mischung an: Butan bleibt flüssig, eine Wintermischung brennt.',
  '{pressure#} of {wanted}, from nearly empty to full': '{pressure#} von {wanted}, von fast leer bis voll',
  'A canister of isobutane and propane: {better} at {low}. Or keep it warm.':
    'Eine Kartusche mit Isobutan und Propan: {better} bei {low}. Oder warm halten.',
  'A stove on a hose that takes liquid gas, or a petrol stove.':
    'Ein Kocher mit Schlauch für flüssiges Gas oder ein Benzinkocher.',
  'A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.':
    'Eine über der Flamme gewärmte Kartusche kann bersten. In der Jacke wärmen oder in handwarmem Wasser.',
  'Plain butane': 'Reines Butan',
  'An isobutane mix': 'Ein Isobutangemisch',
  'A winter mix': 'Ein Wintergemisch',
  Propane: 'Propan',
  'What does the canister hold: butane, isobutane mix, winter mix?':
    'Was ist in der Kartusche: Butan, Isobutangemisch, Wintergemisch?',
  'pressure in the canister at {canister}, from nearly empty to full; in use it is colder than the air':
    'Druck in der Kartusche bei {canister}, von fast leer bis voll; im Betrieb ist sie kälter als die Luft',
  'the air at this altitude': 'die Luft in dieser Höhe',
  'over the air, to run well': 'über der Luft, um gut zu brennen',
  'This mix': 'Diese Mischung',
  'what the pot weighs': 'was der Topf wiegt',
  'its mass is not given, and pots like it weigh about so much':
    'sein Gewicht fehlt, und solche Töpfe wiegen etwa so viel',
  'give its mass': 'das Gewicht angeben',
  'Guideline 9.1.3 of ANZCOR says 20 minutes at least.': 'Die Leitlinie 9.1.3 von ANZCOR nennt mindestens 20 Minuten.',
  'A gripper lifts about 2 L or 2.5 kg; more takes a handle on either side, or two people and a stick through the bail; what weighs 10 kg full is ladled out where it stands':
    'Eine Topfzange hebt etwa 2 L oder 2,5 kg; mehr braucht einen Griff an jeder Seite, oder zwei Leute und einen Stock im Bügel; was voll 10 kg wiegt, wird ausgeschöpft, wo es steht',
  'Pots weigh 0.12–0.18 g for each mL in titanium, 0.15–0.3 in aluminium, 0.25–0.6 in steel, 1 g and more in iron':
    'Töpfe wiegen je ml 0,12–0,18 g in Titan, 0,15–0,3 in Aluminium, 0,25–0,6 in Stahl, 1 g und mehr in Eisen',
  'The law as textbooks of distillation give it; the paper itself was not seen.':
    'Das Gesetz, wie Lehrbücher der Destillation es angeben; die Arbeit selbst wurde nicht gesehen.',
  'The abstract was read, not the paper.': 'Gelesen wurde die Zusammenfassung, nicht die Arbeit.',

  // Alcohol in the cold
  'Alcohol in the cold': 'Spiritus in der Kälte',
  'An alcohol stove at {low} lights slowly and heats slowly.':
    'Ein Spirituskocher zündet bei {low} langsam und heizt langsam.',
  'Melting snow on alcohol is slow and takes much fuel; it is not impossible.':
    'Schnee mit Spiritus zu schmelzen dauert lang und braucht viel; unmöglich ist es nicht.',
  'If snow is the water, alcohol melts it slowly and with much fuel; it is not impossible.':
    'Wenn Wasser nur aus Schnee kommt, schmilzt Spiritus ihn langsam und mit viel Brennstoff; unmöglich ist es nicht.',
  'If snow is the water, alcohol melts it in {minutes} and {grams} a day: slow, not impossible.':
    'Wenn Wasser nur aus Schnee kommt, schmilzt Spiritus ihn in {minutes} mit {grams} am Tag: langsam, nicht unmöglich.',
  'Melting snow on alcohol takes {minutes} and {grams} a day; it is slow, not impossible.':
    'Schnee mit Spiritus zu schmelzen braucht {minutes} und {grams} am Tag: langsam, nicht unmöglich.',
  '{low}, alcohol': '{low}, Spiritus',
  'snow on alcohol': 'Schnee mit Spiritus',
  'Carry the bottle warm and screen the burner. Or a gas or petrol stove made for the cold.':
    'Die Flasche warm tragen und den Brenner abschirmen. Oder ein Gas- oder Benzinkocher für die Kälte.',

  // Something to light it
  'Something to light it': 'Etwas zum Anzünden',
  'Something to light the stove with: {what}.': 'Etwas zum Anzünden ist da: {what}.',
  'Nothing on the list lights the flame.': 'Nichts auf der Liste zündet die Flamme.',
  'One thing to light the stove with, {what}: in the snow a second means, kept apart from it, is usual.':
    'Nur eines zum Anzünden, {what}: Im Schnee ist ein zweites üblich, getrennt verpackt.',
  '{have#} on the list': '{have#} auf der Liste',
  'none on the list': 'nichts auf der Liste',
  'Add a lighter, and matches kept dry apart from it.':
    'Ein Feuerzeug mitnehmen, dazu trocken und getrennt verpackte Streichhölzer.',
  'no lighter, no matches': 'kein Feuerzeug, keine Streichhölzer',
  'a lighter': 'ein Feuerzeug',
  matches: 'Streichhölzer',
  'a lighter and matches': 'ein Feuerzeug und Streichhölzer',

  // Water carried
  'Water carried': 'Mitgeführtes Wasser',
  'Room for {have} of water.': 'Platz für {have} Wasser.',
  'Room for {have} of water, filled again on the way.': 'Platz für {have} Wasser, unterwegs nachgefüllt.',
  'Room for {have} of water: water has to be near.': 'Platz für {have} Wasser: Wasser muss in der Nähe sein.',
  'Nothing on the list carries water.': 'Nichts auf der Liste fasst Wasser zum Tragen.',
  'Nothing says how much water the {count} {count:piece holds|pieces hold}.':
    'Nirgends steht, wie viel Wasser in {count} {count:Behälter|Behälter} passt.',
  'no bottle': 'keine Flasche',
  'Room for {more} more.': 'Platz für {more} mehr.',
  'Add bottles or a bladder for {need}.': 'Flaschen oder einen Wassersack für {need} mitnehmen.',
  'no bottle, no bladder': 'keine Flasche, kein Wassersack',
  'carried in all': 'im Ganzen getragen',
  people: 'Personen',
  'a day and a night, each': 'je Tag und Nacht, pro Person',
  'room wanted': 'gebrauchter Platz',

  // Boiling drinking water
  'Boiling drinking water': 'Trinkwasser abkochen',
  'Water boils at {boil} here. Keep it at a rolling boil for {minutes} before anyone drinks it.':
    'Wasser kocht hier bei {boil}. Erst {minutes} sprudelnd kochen lassen, dann trinken.',
  '{minutes} at a rolling boil': '{minutes} sprudelnd kochend',
  'Of three published rules the longest is used: {high} above {above}. Others say {high} above {elsewhere}, or that reaching a rolling boil is enough at any altitude.':
    'Von drei veröffentlichten Regeln gilt hier die längste: {high} über {above}. Andere sagen {high} über {elsewhere}, oder dass sprudelndes Kochen in jeder Höhe genügt.',
  'Boiling kills germs. It takes out no poison, fuel or salt: leave water that may hold those.':
    'Kochen tötet Keime. Gift, Brennstoff und Salz nimmt es nicht heraus: Wasser, das so etwas enthalten kann, stehen lassen.',
  'where they cook': 'wo gekocht wird',
  'boiling point there': 'Siedepunkt dort',

  // A hot meal a day
  'A hot meal a day': 'Eine warme Mahlzeit am Tag',
  'A hot meal of {portion} a person each day.': 'Jeden Tag eine warme Mahlzeit von {portion} pro Person.',
  'Less than one hot meal a day: some {kcal} a day is bearable for {days#} days at most, and only with one.':
    'Weniger als eine warme Mahlzeit am Tag: Etwa {kcal} am Tag sind höchstens {days#} Tage erträglich, und nur mit einer.',
  'Nothing to heat a meal in: some {kcal} a day is bearable for {days#} days at most, and only with a hot meal.':
    'Nichts, um eine Mahlzeit zu wärmen: Etwa {kcal} am Tag sind höchstens {days#} Tage erträglich, und nur mit einer warmen Mahlzeit.',
  '{meals#} of {least#} hot meals a day': '{meals#} von {least#} warmen Mahlzeiten am Tag',
  'hot meals a day: {meals#}': 'warme Mahlzeiten am Tag: {meals#}',
  'One hot meal of {portion} a person a day.': 'Eine warme Mahlzeit von {portion} pro Person und Tag.',
  'A pot and a stove, for one hot meal of {portion} a person a day.':
    'Ein Topf und ein Kocher, für eine warme Mahlzeit von {portion} pro Person und Tag.',
  'hot meals a day': 'warme Mahlzeiten am Tag',
  'one meal, from the least to a full portion': 'eine Mahlzeit, von der kleinsten bis zur vollen Portion',
  'hot food a person a day': 'warmes Essen pro Person und Tag',

  // Something to eat from
  'Something to eat from': 'Etwas, woraus gegessen wird',
  'Something to eat from for {people#} {people:person|people}.': 'Essgeschirr für {people#} {people:Person|Personen}.',
  'Something to eat from for {have#} of {people#}: the rest wait their turn.':
    'Essgeschirr für {have#} von {people#}: Die anderen warten, bis sie dran sind.',
  'How many pieces “{name}” are is not said: {have#} of {people#} are sure to have something to eat from.':
    'Wie viele Stück „{name}“ sind, steht nirgends: {have#} von {people#} haben jedenfalls etwas, woraus sie essen.',
  '{have#} of {people#}': '{have#} von {people#}',
  '{more#} more {more:bowl or mug|bowls or mugs}.': '{more#} {more:Schüssel oder Becher|Schüsseln oder Becher} mehr.',
  'How many {name} are there?': 'Wie viele sind es: {name}?',
  'bowls and mugs': 'Schüsseln und Becher',
  'eat from the pot': 'essen aus dem Topf',
  'pots of their own': 'eigene Töpfe',
  'have something to eat from': 'haben etwas, woraus sie essen',

  // Boiling water
  'Boiling water': 'Kochendes Wasser',
  'Young people around {water} of boiling water: it burns in {fast} or less, and cooled to {cooled} still in {slow}.':
    'Junge Leute um {water} kochendes Wasser: Es verbrüht in {fast} oder weniger, auf {cooled} abgekühlt noch in {slow}.',
  '{water} at {boil}': '{water} bei {boil}',
  'A ladle and a pot that stays put. Or fills under {limit}.':
    'Eine Kelle und ein Topf, der stehen bleibt. Oder Füllungen unter {limit}.',
  'Cups stand on the ground to be filled. Feet stay clear, and one person alone handles the pot.':
    'Becher stehen zum Füllen auf dem Boden. Füße bleiben weg, und nur eine Person hantiert mit dem Topf.',
  'A burn: cool running water, wet clothing off, cover it; blisters on face, hands or feet need a doctor.':
    'Bei einer Verbrühung: kühles fließendes Wasser, nasse Kleidung weg, abdecken; Blasen an Gesicht, Händen oder Füßen gehören zum Arzt.',
  'the share that is filled': 'so weit wird gefüllt',
  'of boiling water': 'kochendes Wasser',

  // Air to cook in
  'Air to cook in': 'Luft beim Kochen',
  'Cook outside: a stove in a tent, a porch, a hut or a van fills it with carbon monoxide.':
    'Draußen kochen: Ein Kocher in Zelt, Vorzelt, Hütte oder Bus füllt sie mit Kohlenmonoxid.',
  'The list speaks of cooking inside: a stove fills a tent, a porch, a hut or a van with carbon monoxide.':
    'Die Liste spricht vom Kochen drinnen: Ein Kocher füllt Zelt, Vorzelt, Hütte oder Bus mit Kohlenmonoxid.',
  'A pan {base} wide makes a stove give off more carbon monoxide: in a test {wide} gave more than {narrow}.':
    'Unter einer Pfanne von {base} gibt ein Kocher mehr Kohlenmonoxid ab: In einem Versuch gaben {wide} mehr als {narrow}.',
  '{inside#} of {guideline}, carbon monoxide': '{inside#} von {guideline} Kohlenmonoxid',
  '{base#} of {wide}': '{base#} von {wide}',
  'A pot or pan less than {wide} across the base.': 'Ein Topf oder eine Pfanne mit weniger als {wide} Bodenbreite.',
  'Cook outside, under a tarp that is open on all sides where it rains.':
    'Draußen kochen; bei Regen unter einem Tarp, das nach allen Seiten offen ist.',
  'Stoves in tents and snow caves gave {inside} of carbon monoxide in tests; a guideline for {minutes} is {guideline}. It has no smell, and a flap or a door that is open does not rule it out.':
    'Kocher in Zelten und Schneehöhlen gaben in Versuchen {inside} Kohlenmonoxid; ein Richtwert für {minutes} ist {guideline}. Es riecht nicht, und eine offene Klappe oder Tür schließt es nicht aus.',
  'If anyone has a headache or feels dull or sick: everybody out into the air at once, stove off, and get help.':
    'Hat jemand Kopfschmerz oder ist benommen oder übel: alle sofort an die Luft, Kocher aus, und Hilfe holen.',

  // Filling the burner
  'Filling the burner': 'Brenner füllen',
  'Young people fill a burner from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'Junge Leute füllen einen Brenner aus {bottle} Spiritus: In eine unsichtbare Flamme gegossen, schlägt er zurück.',
  'The burner is filled from {bottle} of alcohol: poured into an unseen flame it flashes back.':
    'Der Brenner wird aus {bottle} Spiritus gefüllt: In eine unsichtbare Flamme gegossen, schlägt er zurück.',
  'Young people fill an alcohol burner: poured into an unseen flame it flashes back.':
    'Junge Leute füllen einen Spiritusbrenner: In eine unsichtbare Flamme gegossen, schlägt er zurück.',
  '{bottle} in one bottle': '{bottle} in einer Flasche',
  'alcohol, young people': 'Spiritus, junge Leute',
  'A bottle of {small} or less to fill from.': 'Eine Flasche bis {small} zum Nachfüllen.',
  'A burner for gas. Or a leader fills it, cold, from {small} or less.':
    'Ein Gasbrenner. Oder eine Leitungsperson füllt ihn, kalt, aus höchstens {small}.',
  'The flame is not seen by day. Feel that the burner is cold, then fill it from a small bottle, well away from any flame.':
    'Die Flamme ist bei Tag nicht zu sehen. Erst fühlen, ob der Brenner kalt ist, dann aus einer kleinen Flasche füllen, weit weg von jeder Flamme.',
  'A burn: cool running water, wet clothing off, cover it.':
    'Bei einer Verbrennung: kühles fließendes Wasser, nasse Kleidung weg, abdecken.',

  // Heat on the canister
  'Heat on the canister': 'Hitze an der Kartusche',
  'If the windscreen closes round the canister, it traps heat and the canister can burst.':
    'Schließt der Windschutz die Kartusche ein, staut er Hitze, und die Kartusche kann bersten.',
  'A griddle or pan this wide sends heat down onto an upright canister, which can burst.':
    'Eine so breite Platte oder Pfanne wirft Hitze auf eine Kartusche darunter; sie kann bersten.',
  'A windscreen that closes round a canister under the burner traps heat.':
    'Ein Windschutz, der eine Kartusche unter dem Brenner einschließt, staut Hitze.',
  '× {ratio#} pressure, {cool#} to {warm}': '× {ratio#} Druck, {cool#} bis {warm}',
  'A stove on a hose, with the screen between burner and canister. On this one no screen, unless its maker’s instructions allow it.':
    'Ein Kocher am Schlauch, der Windschutz zwischen Brenner und Kartusche. An diesem keiner, außer die Anleitung des Herstellers erlaubt ihn.',
  'A pan of {wide} or less. Or a stove on a hose.': 'Eine Pfanne bis {wide}. Oder ein Kocher mit Schlauch.',
  'If the canister feels warm, turn the stove off and let it cool. Canisters are made for the pressure at {warm}, and for no more.':
    'Fühlt sich die Kartusche warm an: Kocher aus und abkühlen lassen. Kartuschen sind für den Druck bei {warm} gemacht, und für keinen höheren.',
  'Does the stove screw onto the canister, or stand beside it on a hose?':
    'Wird der Kocher auf die Kartusche geschraubt, oder steht er daneben an einem Schlauch?',
  'pressure of the gas carried at {warm}': 'Druck des mitgeführten Gases bei {warm}',
  'the same at {cool}': 'derselbe bei {cool}',
  'times the pressure': 'so viel mal der Druck',

  // Under the stove
  'Under the stove': 'Unter dem Kocher',
  'Nothing on the list goes under the stove: on snow it melts in and tips.':
    'Nichts auf der Liste kommt unter den Kocher: Auf Schnee schmilzt er ein und kippt.',
  'The stove has something to stand on, on snow.': 'Der Kocher hat auf Schnee etwas, worauf er steht.',
  'no board': 'kein Brett',
  'a board': 'ein Brett',
  'A board under the stove. Or a spare lid or a shovel blade.':
    'Ein Brett unter den Kocher. Oder ein übriger Deckel oder ein Schaufelblatt.',
  'A stove that tips spills boiling water. Tread the snow hard and level before it is lit.':
    'Ein kippender Kocher verschüttet kochendes Wasser. Den Schnee vor dem Anzünden fest und eben treten.',

  // The day
  'What to look for': 'Worauf zu achten ist',
  'For {who}, {style}: {least} or more to the brim; {full} for full portions.':
    'Für {who}, {style}: randvoll ab {least}; für volle Portionen {full}.',
  'On a bail or at a fire 2 : 3 is best, and {ratio#} as wide as tall holds up.':
    'Am Bügel oder am Feuer ist 2 : 3 am besten; {ratio#}-mal so breit wie hoch besteht.',
  'On a stove, {ratio#} as wide as tall holds up.': 'Auf einem Kocher besteht {ratio#}-mal so breit wie hoch.',
  'This stove suits {widths} across.': 'Zu diesem Kocher passen {widths} Breite.',
  'This stove wants {leastWidth} across or more.': 'Dieser Kocher braucht ab {leastWidth} Breite.',
  'This stove carries {mostWidth} across or less.': 'Dieser Kocher trägt bis {mostWidth} Breite.',
  'With the width of the burner, the widths that suit it are marked too.':
    'Mit der Breite des Brenners sind auch die Breiten markiert, die zu ihm passen.',
  'No pot is all of that on this stove. Another stove, or two pots.':
    'Kein Topf ist all das auf diesem Kocher. Ein anderer Kocher, oder zwei Töpfe.',
  'This pot is one of them.': 'Dieser Topf ist einer davon.',
  '{width} across and {height} tall would do: {brim}.': '{width} breit und {height} hoch ginge: {brim}.',
  'width across, {unit}': 'Breite, {unit}',
  'height, {unit}': 'Höhe, {unit}',
  'this pot; the dotted corner is its outline': 'dieser Topf; die gepunktete Ecke ist sein Umriss',
  'the nearest pot that suits': 'der nächste Topf, der passt',
  'suits shape and least portions; closer lines, full ones':
    'passt in der Form und für kleinste Portionen; engere Linien: für volle',
  'suits stove, shape and least portions; closer lines, full ones':
    'passt zum Kocher, in der Form und für kleinste Portionen; engere Linien: für volle',
  '{least}: least portions': '{least}: kleinste Portionen',
  '{full}: full portions': '{full}: volle Portionen',
  '{boil}: least portions, water alone': '{boil}: kleinste Portionen, Wasser allein',
  '{ratio#} as wide as tall': '{ratio#}-mal so breit wie hoch',
  '{widths}: suits the stove': '{widths}: passt zum Kocher',
  'Snow to water': 'Schnee zu Wasser',
  'Hot meal': 'Warme Mahlzeit',
  'Hot drinks': 'Heiße Getränke',
  'Water boiled to drink': 'Abgekochtes Trinkwasser',
  'water a person a day, from snow': 'Wasser pro Person und Tag, aus Schnee',
  'a meal, least to full portion': 'eine Mahlzeit, kleinste bis volle Portion',
  'a hot drink': 'ein heißes Getränk',
  'water a day': 'Wasser am Tag',
  'heat into the pot': 'Wärme in den Topf',
  'heat of a gram of fuel that reaches the pot': 'Wärme eines Gramms Brennstoff, die im Topf ankommt',
  round: 'Durchgang',
  rounds: 'Durchgänge',
  loads: 'Ladungen',
  'A day heats {litres} of water, with {minutes} at the flame and {grams} of fuel.':
    'Ein Tag erhitzt {litres} Wasser, mit {minutes} an der Flamme und {grams} Brennstoff.',
  'A day heats {litres} of water, with {minutes} at the fire and {kg} of dry wood, gathered.':
    'Ein Tag erhitzt {litres} Wasser, mit {minutes} am Feuer und {kg} trockenem, gesammeltem Holz.',
  '{days#} {days:day takes|days take} {grams} of fuel.': '{days#} {days:Tag braucht|Tage brauchen} {grams} Brennstoff.',
  '{days#} {days:day takes|days take} {kg} of dry wood.':
    '{days#} {days:Tag braucht|Tage brauchen} {kg} trockenes Holz.',
  '{days#} {days:day takes|days take} {grams} of fuel; {carried} are carried.':
    '{days#} {days:Tag braucht|Tage brauchen} {grams} Brennstoff; {carried} sind dabei.',

  // A letter
  'An answer to send': 'Eine Antwort zum Senden',
  'Before you go': 'Vor dem Aufbruch',
  'A small gain': 'Ein kleiner Gewinn',
  'One question': 'Eine Frage',
  Questions: 'Fragen',
  'Write back with the answer, and I will look again.': 'Schreib mir die Antwort, dann sehe ich noch einmal nach.',
  'Write back with the answers, and I will look again.': 'Schreib mir die Antworten, dann sehe ich noch einmal nach.',
  'Nothing I read here falls short.': 'Nichts von dem, was ich hier lese, ist zu knapp.',
  Sources: 'Quellen',
  'Before they go': 'Vor ihrem Aufbruch',
  'To ask': 'Zu fragen',
  'The letter': 'Der Brief',
  'First line': 'Erste Zeile',
  caution: 'Vorsicht',
  'settles {checks}': 'klärt {checks}',
  'Cautions, at the thick line, stay while their finding is ticked. What you wrote stays until the list changes.':
    'Warnungen, an der dicken Linie, bleiben, solange ihr Befund angekreuzt ist. Was du geschrieben hast, bleibt, bis sich die Liste ändert.',
  'Copy as': 'Kopieren als',
  letter: 'Brief',
  'plain text': 'reiner Text',
  Markdown: 'Markdown',
  'Sources at the end': 'Quellen am Ende',
  'Copy the letter': 'Brief kopieren',
  Copied: 'Kopiert',
  'The browser refused to copy. Copy the text here by hand.':
    'Der Browser hat das Kopieren verweigert. Den Text hier von Hand kopieren.',
  '{n#} {n:sentence|sentences}. Nothing is sent from here.': '{n#} {n:Satz|Sätze}. Von hier wird nichts gesendet.',
  'Back to the findings': 'Zurück zu den Befunden',

  // The headline
  'the pan can overheat the canister': 'die Pfanne kann die Kartusche überhitzen',
  'the windscreen can overheat the canister': 'der Windschutz kann die Kartusche überhitzen',
  'the pot can overheat the canister': 'der Topf kann die Kartusche überhitzen',
  'the pot can slip off the stove': 'der Topf kann vom Kocher rutschen',
  'the pot turns over on its bail': 'der Topf kippt am Bügel um',
  'the full pot spills on its bail': 'der volle Topf läuft am Bügel über',
  'the pot can tip over': 'der Topf kann umkippen',
  'the full pot is too heavy for its grip': 'der volle Topf ist zu schwer für seinen Griff',
  'the full pot is too heavy to lift': 'der volle Topf ist zu schwer zum Heben',
  'no stove burns the fuel carried': 'kein Kocher verbrennt den mitgeführten Brennstoff',
  'a stove or a fuel is carried for nothing': 'ein Kocher oder ein Brennstoff ist umsonst dabei',
  'nothing lifts the full pot': 'nichts hebt den vollen Topf',
  'the alcohol can flash back': 'der Spiritus kann zurückschlagen',
  'the pot can burn or melt': 'der Topf kann brennen oder schmelzen',
  'young people are close to boiling water': 'junge Leute sind nah an kochendem Wasser',
  'the stove fills the air with carbon monoxide': 'der Kocher füllt die Luft mit Kohlenmonoxid',
  'there is no pot to cook in': 'ein Topf zum Kochen fehlt',
  'a meal takes more than one round': 'eine Mahlzeit braucht mehr als einen Durchgang',
  'the stove does not burn the fuel carried': 'der Kocher verbrennt nicht, was dabei ist',
  'the fuel': 'der Brennstoff',
  'the gas': 'das Gas',
  'the pot': 'der Topf',
  'the water carried': 'das getragene Wasser',
  'not everybody can eat at once': 'nicht alle können zugleich essen',
  'there is no lid to melt snow under': 'ein Deckel zum Schneeschmelzen fehlt',
  'fires are forbidden there': 'Feuer ist dort verboten',
  'nothing hangs the pot over the fire': 'nichts hängt den Topf übers Feuer',
  'the pot melts or burns over a flame': 'der Topf schmilzt oder brennt über der Flamme',
  'the pot is too narrow for its height': 'der Topf ist für seine Höhe zu schmal',
  'the flame goes past the pot': 'die Flamme geht am Topf vorbei',
  'the water never boils': 'das Wasser kocht nie',
  'the flame is too weak for the pot as it stands': 'die Flamme ist zu schwach für den Topf, wie er steht',
  'there is no hot meal': 'eine heiße Mahlzeit fehlt',
  'a full meal takes two rounds': 'eine volle Mahlzeit braucht zwei Durchgänge',
  'the pan slops and cools quickly': 'die Pfanne schwappt und kühlt schnell aus',
  'the pot slops easily on its bail': 'der Topf schwappt leicht am Bügel',
  'the pot is slow to take heat': 'der Topf nimmt die Wärme langsam auf',
  'the pot is too wide for the burner': 'der Topf ist zu breit für den Brenner',
  'the pot stands loosely on the stove': 'der Topf steht lose auf dem Kocher',
  'the flame goes up the wall': 'die Flamme geht an der Wand hoch',
  'the pot dents and splits': 'der Topf beult und reißt',
  'left empty, the pot can melt': 'leer kann der Topf schmelzen',
  'food scorches in the pot': 'im Topf brennt Essen an',
  'the pot slops on its bail': 'der Topf schwappt am Bügel',
  'the pot tips easily': 'der Topf kippt leicht',
  'the pot comes off the fire by hand': 'der Topf kommt von Hand vom Feuer',
  'no lid is named': 'ein Deckel ist nicht genannt',
  'the full pot is hard to lift': 'der volle Topf ist schwer zu heben',
  'melting snow takes many loads': 'Schneeschmelzen braucht viele Ladungen',
  'the fuel leaves little to spare': 'der Brennstoff reicht nur knapp',
  'the gas is weak in the cold': 'das Gas ist in der Kälte schwach',
  'alcohol is slow in the cold': 'Spiritus ist in der Kälte langsam',
  'nothing named lights the stove': 'nichts Genanntes zündet den Kocher',
  'nothing named carries water': 'nichts Genanntes fasst Wasser',
  'little water is carried': 'wenig Wasser ist dabei',
  'there is less than one hot meal a day': 'es gibt weniger als eine heiße Mahlzeit am Tag',
  'a wide pot makes more carbon monoxide': 'ein breiter Topf macht mehr Kohlenmonoxid',
  'alcohol poured into a flame flashes back': 'in eine Flamme gegossener Spiritus schlägt zurück',
  'on snow the stove melts in': 'auf Schnee schmilzt der Kocher ein',
  'the size of the bottles': 'die Größe der Flaschen',
  'the number of bowls': 'die Zahl der Schüsseln',
  'the size of the pot': 'die Größe des Topfs',
  'the width of the pot': 'die Breite des Topfs',
  'the height of the pot': 'die Höhe des Topfs',
  'the material of the pot': 'das Material des Topfs',
  'a word on the lid': 'ein Wort zum Deckel',
  'a word on the bail': 'ein Wort zum Bügel',
  'a word on the handles': 'ein Wort zu den Griffen',
  'the width of the burner': 'die Breite des Brenners',
  'the width of the stand': 'die Breite der Auflage',
  'the kind of stove': 'die Art des Kochers',
  'the place of the canister': 'der Platz der Kartusche',
  'the kind of fuel': 'die Art des Brennstoffs',
  'the kind of gas': 'die Art des Gases',
  'the amount of fuel': 'die Menge des Brennstoffs',
  'the number of days': 'die Zahl der Tage',
  'the place of the water': 'die Herkunft des Wassers',
  '{a} falls short': '{a} reicht nicht',
  '{a} and {b} fall short': '{a} und {b} reichen nicht',
  '{a}, {b} and {c} fall short': '{a}, {b} und {c} reichen nicht',
  'if it snows, {a} falls short': 'falls es schneit, reicht {a} nicht',
  'if it snows, {a} and {b} fall short': 'falls es schneit, reichen {a} und {b} nicht',
  'if it snows, so does {a}': 'falls es schneit, auch {a} nicht',
  'if it snows, so do {a} and {b}': 'falls es schneit, auch {a} und {b} nicht',
  '{a} is wanted': '{a} fehlt noch',
  '{a} and {b} are wanted': '{a} und {b} fehlen noch',
  '{a}, {b} and {more#} more are wanted': '{a}, {b} und {more#} mehr fehlen noch',
  'one answer is wanted': 'eine Antwort fehlt noch',
  '{more#} answers are wanted': '{more#} Antworten fehlen noch',
  'feeds and waters {who} for {long}': 'macht {who} {long} lang satt und hat Wasser für sie',
  'feeds and waters {who}': 'macht {who} satt und hat Wasser für sie',
  'feeds {who} for {long}': 'macht {who} {long} lang satt',
  'feeds {who}': 'macht {who} satt',
  'nothing here falls short for {who}': 'für {who} ist hier nichts zu knapp',
  'too little is known to judge': 'zu wenig bekannt, um zu urteilen',
  two: 'zwei Personen',
  three: 'drei Personen',
  four: 'vier Personen',
  five: 'fünf Personen',
  six: 'sechs Personen',
  seven: 'sieben Personen',
  eight: 'acht Personen',
  nine: 'neun Personen',
  'one day': 'einen Tag',
  'two days': 'zwei Tage',
  'three days': 'drei Tage',
  'four days': 'vier Tage',
  'five days': 'fünf Tage',
  'six days': 'sechs Tage',
  'seven days': 'sieben Tage',
  'eight days': 'acht Tage',
  'nine days': 'neun Tage',

  // The report
  '{used#} {used:line|lines} used, {off#} not cook kit, {unknown#} not understood':
    '{used#} {used:Zeile|Zeilen} verwendet, {off#} kein Kochzeug, {unknown#} nicht verstanden',
  'Nothing here to judge yet.': 'Noch nichts zu beurteilen.',
  '{people#} people': '{people#} Personen',
  '{days#} days': '{days#} Tage',
  'A day with this kit': 'Ein Tag mit dieser Ausrüstung',
  Assumed: 'Angenommen',
  'Caution: {words}': 'Vorsicht: {words}',
  'Published: {sources}.': 'Veröffentlicht: {sources}.',
  'A second opinion. Local fire rules, land managers and licensed instruction come first.':
    'Eine zweite Meinung. Feuerregeln am Ort, Grundeigentümer und ausgebildete Fachleute gehen vor.',
  to: 'bis',
  'This check failed on this kit; the others went on.':
    'Diese Prüfung ist an dieser Ausrüstung gescheitert; die anderen liefen weiter.',
  'no answer': 'keine Antwort',

  // Notes on publications
  'The figures were seen in a unit library that cites the act, not in the act itself.':
    'Die Zahlen stammen aus einer Einheiten-Bibliothek, die das Gesetz nennt, nicht aus dem Gesetz selbst.',
  'Household measures of food labels only: the cup there is 240 mL.':
    'Nur Haushaltsmaße auf Lebensmitteletiketten: Die Tasse hat dort 240 ml.',
  'Metric cup of 250 mL in Australian, New Zealand and Canadian kitchens':
    'Metrische Tasse von 250 ml in Küchen Australiens, Neuseelands und Kanadas',
  'From memory.': 'Aus dem Gedächtnis.',
  'Values at 101.325 kPa, worked out with an open implementation of the formulation.':
    'Werte bei 101,325 kPa, mit einer offenen Umsetzung der Formulierung gerechnet.',
  'Days differ from the standard: the boiling point holds to about 0.5 to 1 °C.':
    'Ein Tag weicht von der Norm ab: Der Siedepunkt gilt auf etwa 0,5 bis 1 °C.',
  'Rows seen in the tests of an open library.': 'Zeilen in den Tests einer offenen Bibliothek gesehen.',
  'The same as ISO 2533 up to 32 km. Rows seen in the tests of an open library.':
    'Bis 32 km gleich ISO 2533. Zeilen in den Tests einer offenen Bibliothek gesehen.',
  'Seen in copies; rounded to the degree or tenth of a degree Fahrenheit.':
    'In Abschriften gesehen; auf ein ganzes oder zehntel Grad Fahrenheit gerundet.',
  'Read from the data files of an open chemistry library.':
    'Aus den Datendateien einer offenen Chemie-Bibliothek gelesen.',
  'Constants read from the data files of an open chemistry library; title and journal are from memory.':
    'Konstanten aus den Datendateien einer offenen Chemie-Bibliothek; Titel und Zeitschrift aus dem Gedächtnis.',
  'Seen in the reprint.': 'Im Nachdruck gesehen.',
  'Wood 15.6 MJ/kg seen in a copy; the kerosene row is from memory.':
    'Holz 15,6 MJ/kg in einer Abschrift gesehen; die Zeile zu Petroleum aus dem Gedächtnis.',
  'Seen in a copy.': 'In einer Abschrift gesehen.',
  'The same formula and table in three handbooks, seen in copies.':
    'Dieselbe Formel und Tabelle in drei Handbüchern, in Abschriften gesehen.',
  'The enthalpy of formation, +125.5 kJ/mol, is from memory; the 30 MJ/kg in common use is the higher value.':
    'Die Bildungsenthalpie, +125,5 kJ/mol, aus dem Gedächtnis; die üblichen 30 MJ/kg sind der Brennwert.',
  'Calls its own values rough estimates.': 'Nennt die eigenen Werte grobe Schätzungen.',
  'Seen as quoted by others, with the page number; the title is a description.':
    'Als Zitat bei anderen gesehen, mit Seitenzahl; der Titel ist eine Beschreibung.',
  'The range of 29 to 62 % was seen in the abstract; the figures of each vessel as quoted by others. The title is a description.':
    'Die Spanne 29 bis 62 % in der Zusammenfassung gesehen; die Zahlen je Gefäß als Zitat bei anderen. Der Titel ist eine Beschreibung.',
  'Only the abstract was seen: best of five pots 53.2 %, worst 29.6 %. The title is a description.':
    'Nur die Zusammenfassung gesehen: bester von fünf Töpfen 53,2 %, schlechtester 29,6 %. Der Titel ist eine Beschreibung.',
  'Works with 49.14 MJ/kg, the higher heating value.': 'Rechnet mit 49,14 MJ/kg, dem Brennwert.',
  'Seen in a copy; the title is a description.': 'In einer Abschrift gesehen; der Titel ist eine Beschreibung.',
  'Only the abstract was seen; the title is a description.':
    'Nur die Zusammenfassung gesehen; der Titel ist eine Beschreibung.',
  'Only the abstract was seen.': 'Nur die Zusammenfassung gesehen.',
  'Whether the 60 % stands on the lower or the higher heating value is not said: an upper bound.':
    'Ob die 60 % auf Heizwert oder Brennwert beruhen, ist nicht gesagt: eine Obergrenze.',
  'Seen in a summary; the title is a description.':
    'In einer kurzen Wiedergabe gesehen; der Titel ist eine Beschreibung.',
  'Seen in copies.': 'In Abschriften gesehen.',
  'The title is a description.': 'Der Titel ist eine Beschreibung.',
  'Seen as quoted by others; a home measurement by a metrologist. The title is a description.':
    'Als Zitat bei anderen gesehen; Messung eines Metrologen zu Hause. Der Titel ist eine Beschreibung.',
  'Counts evaporated water as useful heat. The formula is from memory and agrees with the table.':
    'Zählt verdampftes Wasser als Nutzwärme. Die Formel aus dem Gedächtnis; sie stimmt mit der Tabelle überein.',
  'Measured: 6 quarts of water boiled in 10 and 14 minutes, of melted snow in 22 and 30. The title is a description.':
    'Gemessen: 6 Quarts Wasser kochten in 10 und 14 Minuten, aus Schnee in 22 und 30. Der Titel ist eine Beschreibung.',
  'Seen as quoted in two places.': 'Als Zitat an zwei Stellen gesehen.',
  'The 17 : 1 rule for loose snow is from memory.': 'Die Regel 17 : 1 für lockeren Schnee aus dem Gedächtnis.',
  'Seen on a course page; the title is a description.':
    'Auf der Seite eines Kurses gesehen; der Titel ist eine Beschreibung.',
  'Three people. The title is a description.': 'Drei Personen. Der Titel ist eine Beschreibung.',
  'The restricted ration of 1100 to 1500 kcal for up to ten days (2-2d) is from memory.':
    'Die knappe Ration von 1100 bis 1500 kcal für höchstens zehn Tage (2-2d) aus dem Gedächtnis.',
  'One packet of some 1500 kcal a day, for no more than ten days.':
    'Ein Päckchen mit etwa 1500 kcal am Tag, für höchstens zehn Tage.',
  'The title is from memory.': 'Der Titel aus dem Gedächtnis.',
  'The times as tabulated in later copies; the paper itself was not seen.':
    'Die Zeiten aus Tabellen späterer Abschriften; die Arbeit selbst wurde nicht gesehen.',
  'Seen in a copy. Says 6 s at 60 °C where others say 5 s.':
    'In einer Abschrift gesehen. Nennt 6 s bei 60 °C, andere 5 s.',
  'Abstract seen; authors and journal from memory.':
    'Zusammenfassung gesehen; Verfasser und Zeitschrift aus dem Gedächtnis.',
  'Reaching a rolling boil is enough, at altitude too.': 'Sprudelnd kochen genügt, auch in der Höhe.',
  'Read in a test laboratory’s summary.': 'In der Wiedergabe eines Prüflabors gelesen.',
  'How full the test vessel is on the slope is not stated. The title is a description.':
    'Wie voll das Prüfgefäß auf der Schräge ist, ist nicht angegeben. Der Titel ist eine Beschreibung.',
  'Only the scope was seen.': 'Nur der Anwendungsbereich gesehen.',
  'The author is from memory.': 'Der Verfasser aus dem Gedächtnis.',
  'Derived here and checked by numerical integration; no table is copied.':
    'Hier hergeleitet und durch numerische Integration geprüft; keine Tabelle ist übernommen.',
  'Yield worked out from the water contents, dry matter kept.':
    'Ausbeute aus den Wassergehalten gerechnet, Trockenmasse gleich.',
  'The journal is from memory.': 'Die Zeitschrift aus dem Gedächtnis.',

  // Common practice
  'A hot meal is 473 mL (16 US fl oz) at least and 591 mL (20 US fl oz) for a full portion':
    'Eine warme Mahlzeit hat mindestens 473 ml (16 US fl oz), als volle Portion 591 ml (20 US fl oz)',
  'Practitioners give 400–750 mL a person boil-only, 650–2000 mL cooked in the pot.':
    'Praktiker nennen 400–750 ml pro Person, wenn nur Wasser gekocht wird, 650–2000 ml im Topf gekocht.',
  'A hot drink is 240 mL': 'Ein heißes Getränk hat 240 ml',
  'A pot is filled to 0.90 for water alone, 0.80 for soup or a drink, two thirds for what foams':
    'Ein Topf wird zu 0,90 gefüllt bei Wasser allein, zu 0,80 bei Suppe oder Getränk, zu zwei Dritteln bei Schäumendem',
  'Practitioners give 0.67–0.90. The Water Boiling Test fills its pots to about two thirds.':
    'Praktiker nennen 0,67–0,90. Der Water Boiling Test füllt seine Töpfe zu etwa zwei Dritteln.',
  'A stated capacity is −2 to +7 % off what the pot holds; worked out from outside sizes, within ±20 %':
    'Ein angegebenes Volumen weicht −2 bis +7 % vom Inhalt ab; aus Außenmaßen gerechnet bis ±20 %',
  '700–1000 mL suits one person; about 1 L is best in summer':
    '700–1000 ml passen für eine Person; im Sommer ist etwa 1 l am besten',
  'Practitioners give 450 mL to 2 L for one, by what they cook.':
    'Praktiker nennen 450 ml bis 2 l für eine Person, je nach Kochweise.',
  'A pot to melt snow in holds about 2 L for one, 3 L for two, half a litre more a head up to 5 L':
    'Ein Topf zum Schneeschmelzen fasst etwa 2 l für eine Person, 3 l für zwei, je weiterer Person einen halben Liter mehr, bis 5 l',
  'Practitioners give 1.3–5 L; hard parties of three have chosen 1.7 L.':
    'Praktiker nennen 1,3–5 l; harte Dreierteams haben 1,7 l gewählt.',
  'Two to three loads of hand-packed snow make one filling of water: packed snow is 350–500 kg/m³':
    'Zwei bis drei Ladungen handgepresster Schnee geben eine Füllung Wasser: Gepresster Schnee hat 350–500 kg/m³',
  'Start with water over the base of the pot, feed snow so that it stays slush, lid on':
    'Mit Wasser über dem Topfboden beginnen, Schnee so nachlegen, dass es Matsch bleibt, Deckel drauf',
  'Practitioners start with a cup, with an inch, or with the base covered; summaries of mountaineering handbooks say the same.':
    'Praktiker beginnen mit einer Tasse, mit zweieinhalb Zentimetern oder mit bedecktem Boden; Wiedergaben von Bergsteiger-Handbüchern sagen dasselbe.',
  'On snow a person drinks and cooks with 3–5 L a day':
    'Auf Schnee braucht eine Person 3–5 l am Tag zum Trinken und Kochen',
  'Practitioners give 2.5–6 L.': 'Praktiker nennen 2,5–6 l.',
  'A pot that hangs from a bail is best two thirds as wide as tall':
    'Ein Topf am Bügel ist am besten zwei Drittel so breit wie hoch',
  'On a stove a pot wider than tall catches more of the flame and stands better':
    'Auf dem Kocher fängt ein Topf, der breiter als hoch ist, mehr von der Flamme und steht besser',
  'Some find no difference on a narrow gas flame.': 'Manche finden bei schmaler Gasflamme keinen Unterschied.',
  'An open flame is at least a third narrower than the pot, at best half as wide':
    'Eine offene Flamme ist mindestens ein Drittel schmaler als der Topf, am besten halb so breit',
  'A pot’s base is 15 mm wider than the gap between the arms at least, and 1.6 times their span at most':
    'Der Topfboden ist mindestens 15 mm breiter als die Lücke zwischen den Armen und höchstens 1,6-mal ihre Spannweite',
  'Practitioners give 1.5–1.7.': 'Praktiker nennen 1,5–1,7.',
  'A gas flame spreads to 10 mm inside the base all round':
    'Eine Gasflamme reicht rundum bis 10 mm innerhalb des Bodenrands',
  'On an upright canister stove a base over 200 mm, a griddle or a windscreen sends heat back to the canister':
    'Auf einem Kocher über der Kartusche wirft ein Boden über 200 mm, eine Platte oder ein Windschutz Wärme auf die Kartusche zurück',
  'Rare, and severe.': 'Selten und schwer.',
  'No windscreen is closed round an upright canister': 'Kein Windschutz schließt eine Kartusche unter dem Brenner ein',
  'Practitioners disagree whether one that is open on the lee side may stand near it; the instructions of the stove’s maker come first.':
    'Die Praxis ist uneins, ob ein nach Lee offener nahe dabei stehen darf; die Anleitung des Herstellers geht vor.',
  'Upright canisters with isobutane mixes fade at about −7 °C':
    'Kartuschen unter dem Brenner mit Isobutangemisch lassen bei etwa −7 °C nach',
  'Practitioners give −7 to −8 °C; plain butane fades at some 10 °C; liquid feed gains about 11 °C.':
    'Praktiker nennen −7 bis −8 °C; reines Butan lässt bei etwa 10 °C nach; flüssige Entnahme gewinnt etwa 11 °C.',
  'A canister in use is some 5 °C colder than the air, more as it empties':
    'Eine Kartusche im Betrieb ist etwa 5 °C kälter als die Luft, mehr, je leerer sie wird',
  'A litre boiled on gas takes 12–24 g, from calm to breeze':
    'Ein Liter, auf Gas gekocht, braucht 12–24 g, von windstill bis Brise',
  'Practitioners give 10–53 g: 12 with a heat exchanger, 16 as a rule, 24 in a breeze, some 50 in wind.':
    'Praktiker nennen 10–53 g: 12 mit Wärmetauscher, 16 als Regel, 24 bei Brise, etwa 50 im Wind.',
  'Half a litre boiled on alcohol takes 15–30 mL of it':
    'Ein halber Liter, auf Spiritus gekocht, braucht 15–30 ml davon',
  'What the words for canister gas hold, by mass: isobutane mix 80 % isobutane and 20 % propane, and the like':
    'Was die Namen von Kartuschengas enthalten, nach Masse: Isobutangemisch 80 % Isobutan und 20 % Propan, und so weiter',
  'Mixes differ by canister; the label gives the shares.':
    'Gemische unterscheiden sich je Kartusche; die Anteile stehen auf dem Etikett.',
  'Canisters of 100–110, 220–230 and 450 g net weigh 175–215, 360–375 and 650–670 g full':
    'Kartuschen mit 100–110, 220–230 und 450 g netto wiegen voll 175–215, 360–375 und 650–670 g',
  'An unscreened burner takes 1.2–1.7 times the fuel in a breeze, 2–3 times in wind':
    'Ein ungeschützter Brenner braucht bei Brise das 1,2- bis 1,7-Fache, im Wind das 2- bis 3-Fache',
  'No published curve is trusted. Practitioners give twice without a screen, three times at a steady 8 km/h, a fifth more behind a good one.':
    'Keiner veröffentlichten Kurve wird vertraut. Praktiker nennen das Doppelte ohne Windschutz, das Dreifache bei stetigen 8 km/h, ein Fünftel mehr hinter einem guten.',
  'Burners give 2–3 kW on gas and liquid fuel, 0.4–1.4 kW on alcohol, 0.3–0.6 kW on tablets, 1.5–4 kW on wood':
    'Brenner geben 2–3 kW mit Gas und Flüssigbrennstoff, 0,4–1,4 kW mit Spiritus, 0,3–0,6 kW mit Tabletten, 1,5–4 kW mit Holz',
  'The alcohol figures are measured (Boiling Point no. 12).':
    'Die Zahlen zu Spiritus sind gemessen (Boiling Point no. 12).',
  'Tablet stoves are taken to put as much of their heat into the pot as small alcohol burners':
    'Tablettenkocher bringen nach Annahme so viel ihrer Wärme in den Topf wie kleine Spiritusbrenner',
  'No published measurement was found: 0.45–0.5 L to a tablet of 14 g is the practitioners’ figure.':
    'Keine veröffentlichte Messung gefunden: 0,45–0,5 l je Tablette von 14 g ist die Zahl der Praktiker.',
  'A pot locked to its burner with a heat exchanger boils a litre with about 12 g of gas':
    'Ein mit dem Brenner verriegelter Topf mit Wärmetauscher kocht einen Liter mit etwa 12 g Gas',
  'Fins alone gained 8 % in a published test.': 'Lamellen allein brachten in einem veröffentlichten Versuch 8 %.',
  'A quarter more fuel than the likely need is carried':
    'Ein Viertel mehr Brennstoff als der wahrscheinliche Bedarf kommt mit',
  'Some 1500 kcal a day is a short ration, for up to ten days and only with one hot meal of 473–591 mL':
    'Etwa 1500 kcal am Tag sind eine knappe Ration, für höchstens zehn Tage und nur mit einer warmen Mahlzeit von 473–591 ml',
  'Bare thin titanium has hot spots: simmered food and dry snow scorch':
    'Blankes dünnes Titan hat heiße Stellen: Geköcheltes und trockener Schnee brennen an',
  'An empty aluminium pot over an open fire can melt through':
    'Ein leerer Aluminiumtopf über offenem Feuer kann durchschmelzen',
  'Plastic melts and wood chars over a flame: such vessels are eaten from, not cooked in':
    'Kunststoff schmilzt und Holz verkohlt über der Flamme: Aus solchen Gefäßen wird gegessen, nicht darin gekocht',
  'Pots made of drink cans dent and split': 'Töpfe aus Getränkedosen verbeulen und reißen',
  'At a fire a pot is hung by its bail, or hooked off by it':
    'Am Feuer hängt ein Topf am Bügel oder wird daran heruntergehakt',
  'A lid of any kind, foil too, and a wider pan covers a smaller pot':
    'Irgendein Deckel, auch Folie; eine weitere Pfanne deckt einen kleineren Topf',
  'A full pot is lifted by a handle, a bail or a gripper':
    'Ein voller Topf wird an einem Griff, einem Bügel oder mit einer Topfzange gehoben',
  'A hung pot that spills at under 6° slops when touched; from 12° it can be handled':
    'Ein hängender Topf, der unter 6° überläuft, schwappt bei Berührung; ab 12° lässt er sich handhaben',
  'A pot on a stove stands to 15° or more before it tips':
    'Ein Topf auf dem Kocher steht bis 15° oder mehr, bevor er kippt',
  'A 10° slope is the test of a published stove standard.':
    'Eine Schräge von 10° ist die Prüfung einer veröffentlichten Kochernorm.',
  'A board, a lid or a shovel under the stove on snow, or it melts in and tips':
    'Auf Schnee ein Brett, ein Deckel oder eine Schaufel unter den Kocher, sonst schmilzt er ein und kippt',
  'Alcohol melts snow slowly and with much fuel; it is not impossible':
    'Spiritus schmilzt Schnee langsam und mit viel Brennstoff; unmöglich ist es nicht',
  'Practitioners disagree: not for snow, or half a litre in 15 min at −8 °C.':
    'Praktiker sind uneins: nicht für Schnee, oder ein halber Liter in 15 min bei −8 °C.',
  'A spirit burner is cold before it is filled, from a small bottle away from the flame':
    'Ein Spiritusbrenner ist kalt, bevor er gefüllt wird, aus einer kleinen Flasche und weg von der Flamme',
  'Something to light the stove with, and a second means apart from it':
    'Etwas zum Anzünden, und ein zweites getrennt davon',
  'A bowl, a mug or a pot to eat from for each person; one of several may eat from the pot':
    'Eine Schüssel, ein Becher oder ein Topf für jede Person; von mehreren darf eine aus dem Topf essen',
  'A person carries room for 2–3 L of water for a day and a night':
    'Eine Person trägt Platz für 2–3 l Wasser für Tag und Nacht',
  'A burn is cooled with running water, wet clothing taken off, then covered':
    'Eine Verbrennung wird mit fließendem Wasser gekühlt, nasse Kleidung kommt weg, dann wird abgedeckt',

  // What is assumed
  'the season': 'die Jahreszeit',
  'where the water comes from': 'woher das Wasser kommt',
  'the lowest temperature': 'die tiefste Temperatur',
  'the altitude': 'die Höhe',
  'the gas mix': 'das Gasgemisch',
  'the number of people': 'die Zahl der Personen',
  'how they cook': 'wie gekocht wird',
  'the wind': 'der Wind',
  'what the pot holds': 'was der Topf fasst',
  'the snow': 'der Schnee',
  'how much alcohol the bottle holds': 'wie viel Spiritus in der Flasche ist',
  pot: 'Topf',
  'the stove': 'der Kocher',

  // What cannot be used
  '{0} is less than {1}.': '{0}: weniger, als {1}.',
  '{0} is less than {1}; {2}?': '{0}: weniger, als {1}; {2}?',
  '{0} is more than {1}.': '{0}: mehr, als {1}.',
  '{0} is more than {1}; {2}?': '{0}: mehr, als {1}; {2}?',
  'any pot': 'ein Topf je hat',
  'any burner': 'ein Brenner je hat',
  'any stove': 'ein Kocher je hat',
  'anyone carries in one piece': 'jemand in einem Stück trägt',
  'any stove has': 'ein Kocher je hat',
  'a kit has': 'zu einer Ausrüstung gehört',
  'any camp stove gives': 'ein Campingkocher leistet',
  '“{0}” is not a {1} known here; leave it out.': '„{0}“ ist hier nicht bekannt ({1}); weglassen.',
  '“{0}” is not understood; write a figure and its unit, such as {1}\u00a0{2}.':
    '„{0}“ wird nicht verstanden; eine Zahl mit Einheit angeben, etwa {1}\u00a0{2}.',
  '“{0}” is not a number; write it in figures.': '„{0}“ ist keine Zahl; in Ziffern angeben.',
  'a kit can be judged for': 'sich für eine Ausrüstung beurteilen lässt',
  'a trip can be planned for': 'sich für eine Tour planen lässt',
  'anyone cooks out in': 'draußen gekocht wird',
  'anyone cooks at': 'irgendwo gekocht wird',
  'anyone cooks in a day': 'am Tag gekocht wird',
  'People come whole: {0}?': 'Personen sind ganze Zahlen: {0}?',
  '“{0}” is not one of {1}.': '„{0}“ ist keines von: {1}.',

  // Where a value comes from
  'a canister of {0} g full': 'eine Kartusche von {0} g, voll',
  '{0} mL': '{0} ml',
  'a bottle of {0} mL is filled to about three quarters': 'eine Flasche von {0} ml ist zu etwa drei Vierteln gefüllt',
  'write how much fuel is in it': 'angeben, wie viel Brennstoff darin ist',
  'one pot was typed': 'ein Topf wurde eingetippt',
  'give the number of pots': 'die Zahl der Töpfe angeben',
  'a month is taken for 30 days': 'ein Monat gilt als 30 Tage',
  '{0} groups of {1}': '{0} Gruppen zu je {1}',
  "the line's mass for {0}": 'Gewicht der Zeile für {0}',
  '“{0}” on line {1}': '„{0}“ in Zeile {1}',
  'what the stove burns': 'was der Kocher verbrennt',
  '{0} × {1} × {2} mm outside': '{0} × {1} × {2} mm außen',
  'Ø {0} × {1} mm outside': 'Ø {0} × {1} mm außen',
  'Ø {0} to {1} × {2} mm outside': 'Ø {0} bis {1} × {2} mm außen',

  // What is assumed of a trip
  'nothing says how many people': 'nirgends steht, wie viele Personen',
  'set the number of people': 'die Zahl der Personen angeben',
  'nothing says how long': 'nirgends steht, wie lange',
  'set the number of days': 'die Zahl der Tage angeben',
  'nothing says how they cook, and most people cook in the pot at times':
    'nirgends steht, wie gekocht wird, und die meisten kochen zuweilen im Topf',
  'choose boil-only, simmer or scratch': 'wählen: nur Wasser, köcheln oder richtig kochen',
  'hot drinks come from the same pot unless it is said otherwise':
    'heiße Getränke kommen aus demselben Topf, wenn nichts anderes dasteht',
  'say that drinks are made elsewhere': 'angeben, dass Getränke anderswo gemacht werden',
  'snow is pressed into the pot by hand': 'Schnee wird von Hand in den Topf gedrückt',
  'choose the snow': 'den Schnee wählen',
  'no altitude is given': 'keine Höhe ist angegeben',
  'set the altitude': 'die Höhe angeben',
  'it is seldom calm outdoors': 'draußen ist es selten windstill',
  'choose the wind': 'den Wind wählen',
  'one hot meal a day is usual': 'eine warme Mahlzeit am Tag ist üblich',
  'set the hot meals a day': 'die warmen Mahlzeiten am Tag angeben',
  'no temperature is given for spring': 'für den Frühling ist keine Temperatur angegeben',
  'no temperature is given for summer': 'für den Sommer ist keine Temperatur angegeben',
  'no temperature is given for autumn': 'für den Herbst ist keine Temperatur angegeben',
  'no temperature is given for winter': 'für den Winter ist keine Temperatur angegeben',
  'it is your default': 'so ist es voreingestellt',
  'set it for this trip': 'für diese Tour angeben',
  'say where the water comes from: liquid, snow or either':
    'angeben, woher das Wasser kommt: flüssig, Schnee oder beides',
  'in winter snow may be the only water': 'im Winter ist Schnee womöglich das einzige Wasser',
  'in such cold snow may be the only water': 'bei solcher Kälte ist Schnee womöglich das einzige Wasser',
  'nothing speaks of snow': 'von Schnee ist nirgends die Rede',
  'neither temperature nor season is given': 'weder Temperatur noch Jahreszeit ist angegeben',
  'set the lowest temperature': 'die tiefste Temperatur angeben',
  'there is a stove, or fuel for one': 'ein Kocher oder Brennstoff für einen ist dabei',
  'say that they cook at a fire': 'angeben, dass am Feuer gekocht wird',
  'no stove is named': 'kein Kocher ist genannt',
  'add the stove': 'den Kocher ergänzen',

  // What is assumed of the day
  'a gas stove': 'ein Gaskocher',
  'the list does not say what the stove burns': 'die Liste sagt nicht, was der Kocher verbrennt',
  'name the kind of stove': 'die Art des Kochers nennen',
  'the power of the flame': 'die Leistung der Flamme',
  'no power is given: the range of its kind is taken': 'keine Leistung ist angegeben: Es gilt die Spanne seiner Art',
  'give the watts': 'die Watt angeben',
  'water of {0} °C to start with': 'Wasser von {0} °C zu Beginn',
  'nothing says how cold the water is, and a cold stream has about that':
    'nirgends steht, wie kalt das Wasser ist, und ein kalter Bach hat etwa so viel',
  'count about 1 % less fuel for each degree it is warmer': 'je Grad wärmer etwa 1 % weniger Brennstoff rechnen',
  'a simmer of {0}–{1} min': '{0}–{1} min Köcheln',
  'nothing says how long the food simmers': 'nirgends steht, wie lange das Essen köchelt',
  'choose boil-only where the food only takes up hot water':
    '„nur Wasser“ wählen, wo das Essen nur heißes Wasser aufnimmt',
  'a pot as wide as it is tall': 'ein Topf, so breit wie hoch',
  'its width is not given': 'seine Breite ist nicht angegeben',
  'give its diameter and height': 'Durchmesser und Höhe angeben',

  // Corrections that cannot be used
  'The line it belongs to is not in the text any more.': 'Die Zeile dazu steht nicht mehr im Text.',
  '"{0}" is nothing that can be corrected.': '„{0}“ lässt sich nicht berichtigen.',
  'The line holds no such item; give its kind first.': 'Die Zeile enthält das nicht; zuerst die Art angeben.',
  'The line holds no such item.': 'Die Zeile enthält das nicht.',
  'Yes or no.': 'Ja oder nein.',
  'the person says so': 'so angegeben',
  'The set has no such vessel.': 'Der Satz hat kein solches Gefäß.',
  'A whole number from 0 to 1000.': 'Eine ganze Zahl von 0 bis 1000.',
  'No figure with a unit, such as {0}.': 'Keine Zahl mit Einheit, wie {0}.',
  'More than nothing.': 'Mehr als nichts.',
  'One of: {0}.': 'Eines von: {0}.',

  // How a line was read
  'the unit is taken from the size before it': 'die Einheit stammt von der Größe davor',
  'write the unit': 'die Einheit angeben',
  'it is said to stay behind': 'es bleibt laut Liste daheim',
  'it is wished for, not owned': 'es ist gewünscht, nicht vorhanden',
  'it is said to be replaced or gone': 'es ist laut Liste ersetzt oder weg',
  'it is said to be forbidden': 'es ist laut Liste verboten',
  'it is said not to be needed': 'es wird laut Liste nicht gebraucht',
  'it is only compared with': 'es dient nur dem Vergleich',
  'struck through': 'durchgestrichen',
  'its count is nought': 'die Anzahl ist null',
  'the line says there is none': 'die Zeile sagt, dass es fehlt',
  'figures run together by copying: the first digit is taken as the count':
    'beim Kopieren zusammengelaufene Zahlen: Die erste Ziffer gilt als Anzahl',
  'write the count and the mass apart': 'Anzahl und Gewicht getrennt angeben',
  'the text itself puts a question mark to it': 'der Text selbst setzt ein Fragezeichen dazu',
  'write it without "?"': 'ohne „?“ angeben',
  'a pint is 473 ml in the US and 568 ml in Britain; the text does not say which':
    'ein Pint hat in den USA 473 ml und in Großbritannien 568 ml; der Text sagt nicht, welches',
  'write the millilitres': 'die Milliliter angeben',
  'a coffee maker’s cup may be 150 ml; it is taken as a measuring cup':
    'die Tasse einer Kaffeemaschine hat vielleicht 150 ml; sie gilt als Messbecher',
  'smaller than any cook pot: a cup, or a slip of the unit':
    'kleiner als jeder Kochtopf: eine Tasse oder ein Versehen bei der Einheit',
  'taken without the lid, whose mass stands beside it': 'ohne den Deckel gerechnet, dessen Gewicht daneben steht',
  'write the mass of the pot alone': 'das Gewicht des Topfs allein angeben',
  'ounces of an unnamed fuel are taken by mass': 'Unzen eines ungenannten Brennstoffs gelten als Gewicht',
  'write the grams, or the millilitres': 'Gramm oder Milliliter angeben',
  'more than one can weighs; taken as several full cans together':
    'mehr, als eine Kartusche wiegt; gilt als mehrere volle zusammen',
  'write the grams of gas in each can and how many': 'Gramm Gas je Kartusche und die Anzahl angeben',
  'a pan of so many litres is taken for a pot': 'eine „pan“ mit so vielen Litern gilt als Topf',
  'the heading names it': 'die Überschrift nennt es',
  'tablets that do not say of what are taken for fuel': 'Tabletten ohne nähere Angabe gelten als Brennstoff',
  'a bare number that a can of gas is said to weigh is taken as grams':
    'eine bloße Zahl, die eine Gaskartusche wiegen soll, gilt als Gramm',
  'the column shows no unit; figures this large are taken as grams':
    'die Spalte nennt keine Einheit; so große Zahlen gelten als Gramm',
  'a bare number beside a gas can is taken as grams of gas':
    'eine bloße Zahl neben einer Gaskartusche gilt als Gramm Gas',
  'write the unit: {0} g': 'die Einheit angeben: {0} g',
  'a set of {0} parts; how many of them are pots is not said':
    'ein Satz aus {0} Teilen; wie viele davon Töpfe sind, steht nirgends',
  'write the pots of the set one by one': 'die Töpfe des Satzes einzeln angeben',
  'of these some are said to stay behind': 'von diesen bleiben einige zurück',
  'one for each size': 'eines je Größe',
  'write how many': 'angeben, wie viele',
  'one line is taken as one piece': 'eine Zeile gilt als ein Stück',
  'no number is given': 'keine Zahl ist angegeben',
  'a small number without a unit is taken as centimetres': 'eine kleine Zahl ohne Einheit gilt als Zentimeter',
  'a number without a unit is taken as millimetres': 'eine Zahl ohne Einheit gilt als Millimeter',
  'write which of the two is the diameter': 'angeben, welches von beiden der Durchmesser ist',
  'the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first':
    'der Text sagt nicht, welches der Durchmesser ist; es gilt, was näher am angegebenen Volumen liegt, oder Ø zuerst',
  'the heading says so': 'die Überschrift sagt es',
  'write what it burns': 'angeben, was er verbrennt',
  'write what burns': 'angeben, was brennt',
  'cans and canisters hold gas': 'in Dosen und Kartuschen ist Gas',
  'write what is in it': 'angeben, was darin ist',
  'a billy hangs by a bail': 'ein Hordentopf hängt am Bügel',
  'write "no bail" if it has none': '„ohne Bügel“ angeben, wenn keiner da ist',
  'a thing with a hose, or that screws onto a can, is taken for a stove':
    'etwas mit Schlauch oder zum Aufschrauben auf eine Kartusche gilt als Kocher',
  'butane with propane boils about as an isobutane mix does': 'Butan mit Propan siedet etwa wie ein Isobutan-Gemisch',
  'write the shares of the gases': 'die Anteile der Gase angeben',
  'half of the can is taken to be left': 'die Hälfte der Kartusche gilt als noch voll',
  'write the grams that are left': 'die Gramm angeben, die noch da sind',
  'a set of these sizes is taken for pots': 'ein Satz in diesen Größen gilt als Töpfe',
  'a metal thing of this size is taken for a pot': 'etwas aus Metall in dieser Größe gilt als Topf',
  'a thing of this size with a lid is taken for a pot': 'etwas in dieser Größe mit Deckel gilt als Topf',
  'a gas can is sold by grams; the millilitres are taken as grams':
    'Gaskartuschen werden nach Gramm verkauft; die Milliliter gelten als Gramm',
  'write the grams: 230 g': 'die Gramm angeben: 230 g',
  'a bare number beside a vessel is taken as millilitres': 'eine bloße Zahl neben einem Gefäß gilt als Milliliter',
  'write the unit: {0} ml': 'die Einheit angeben: {0} ml',
  'a bare number beside a vessel is taken as litres': 'eine bloße Zahl neben einem Gefäß gilt als Liter',
  'write the unit: {0} l': 'die Einheit angeben: {0} l',
  'a sentence names it, and does not say whether it goes along': 'ein Satz nennt es und sagt nicht, ob es mitkommt',
  'it stands among the cook kit, and no word of it is known': 'es steht beim Kochzeug, und kein Wort davon ist bekannt',
  'cook kit is named in passing': 'Kochsachen werden nebenbei genannt',
  'The line names no such thing in passing.': 'Die Zeile nennt nebenbei nichts dergleichen.',
  'The list came as one line; its things were told apart by their figures.':
    'Die Liste kam als eine Zeile; die Dinge wurden an ihren Zahlen unterschieden.',
  'A line is longer than any list; only its beginning was read.':
    'Eine Zeile ist länger als jede Liste; nur ihr Anfang wurde gelesen.',
  'its column of sorts says so': 'die Spalte der Arten sagt es',
  'only its first {0} characters were read': 'nur die ersten {0} Zeichen wurden gelesen',
  'nothing here names cook kit': 'hier ist kein Kochzeug genannt',
  'one day more than nights': 'ein Tag mehr als Nächte',
  'write the days': 'die Tage angeben',
  'of a range the upper end is taken': 'bei einer Spanne gilt das obere Ende',
  'from the first date to the last': 'vom ersten Datum bis zum letzten',
  'from the first day to the last': 'vom ersten Tag bis zum letzten',
  'write one number': 'eine einzige Zahl angeben',
  'who writes goes along, and is one more': 'wer schreibt, geht mit und zählt dazu',
  'names are taken for people': 'Namen gelten als Personen',
  'write how many they are': 'angeben, wie viele es sind',
  'degrees without a scale are taken as Fahrenheit here': 'Grad ohne Skala gelten hier als Fahrenheit',
  'write the unit: {0} °F': 'die Einheit angeben: {0} °F',
  'degrees without a scale are taken as Celsius here': 'Grad ohne Skala gelten hier als Celsius',
  'write the unit: {0} °C': 'die Einheit angeben: {0} °C',
  'the month, north of the equator': 'der Monat, nördlich des Äquators',
  'set the season': 'die Jahreszeit angeben',
  'a heading': 'eine Überschrift',
  'a total': 'eine Summe',
  'the heads of columns': 'die Köpfe von Spalten',
  'it gives a size, but names nothing that is known as cook kit':
    'eine Größe steht da, aber nichts, was als Kochzeug bekannt ist',
  'it does not say what the can holds': 'was in der Dose ist, steht nicht da',
  'cook kit is only mentioned': 'Kochzeug ist nur erwähnt',
};

const fuelTypes: Words['fuelTypes'] = {
  gas: 'Gas',
  alcohol: 'Spiritus',
  wood: 'Holz',
  'liquid-fuel': 'Flüssigbrennstoff',
  'solid-fuel': 'Trockenbrennstoff',
};

const lines = (n: number) => (n === 1 ? 'Zeile' : 'Zeilen');
const checks = (n: number) => (n === 1 ? 'Prüfung' : 'Prüfungen');

export const german: Words = {
  locale: 'de',
  language: {
    grades: {
      'can-hurt': 'Kann verletzen',
      'falls-short': 'Reicht nicht',
      'costs-you': 'Kostet etwas',
      'cant-tell': 'Bleibt offen',
      'holds-up': 'Passt',
    },
    sentences,
    units: {
      mL: 'ml',
      L: 'l',
      'mL/person': 'ml/Person',
      'g/mL': 'g/ml',
      'g/L': 'g/l',
      in: 'Zoll',
      ft: 'Fuß',
      '%': '\u00a0%',
    },
    inside: (sentence) =>
      SMALL_WITHIN.test(sentence) ? sentence.charAt(0).toLowerCase() + sentence.slice(1) : sentence,
    colon: ': ',
    semicolon: '; ',
  },
  joints: ['von', 'bis'],

  name: 'Brimwise',
  region: 'Brimwise, eine zweite Meinung zur Kochausrüstung',
  entrances: { legend: 'Was beurteilt wird', list: 'Packliste', pot: 'Ein Topf' },

  trip: 'Tour',
  tripFrom: (numbers) => `aus ${lines(numbers.length)} ${list.format(numbers.map(String))}`,
  tripBack: 'Zurücksetzen',
  tripBackLabel: 'Die Tour zurücksetzen auf das, was die Liste sagt',
  more: 'Wind, Schnee, Jahreszeit',
  change: 'Ändern',
  tripChange: 'Die Tour ändern',
  tripSaid: {
    people: (n) => (n === 1 ? '1 Person' : `${n} Personen`),
    days: (n) => (n === 1 ? '1 Tag' : `${n} Tage`),
    waterFrom: { liquid: 'kein Schnee', either: 'Schnee möglich', snow: 'alles Wasser aus Schnee' },
  },
  tripFields: {
    people: 'Leute',
    days: 'Tage',
    mealStyle: 'Kochweise',
    waterFrom: 'Schnee',
    lowC: 'Tiefste',
    altitudeM: 'Höhe',
    cookAt: 'Gekocht am',
    wind: 'Wind',
    snow: 'Schnee im Topf',
    season: 'Jahreszeit',
    hotMealsPerDay: 'Warme Mahlzeiten am Tag',
    drinkFromPot: 'Heiße Getränke aus dem Topf',
  },
  assumed: 'angenommen',
  setByPage: 'Von dieser Seite festgelegt:',

  list: 'Packliste',
  clear: 'Leeren',
  clearLabel: 'Die Liste leeren',
  placeholder:
    'Packliste einfügen oder eintippen: jedes Ding in eine Zeile.\nTopf 1,3 l, Deckel\nGaskocher, Kartusche 230 g',
  noList: 'Keine Liste zur Hand?',
  example: 'Ein Beispiel',
  exampleList:
    'Zu zweit, 3 Tage, Anfang November\nLager auf 900 m, nachts −6 °C\nTopf Humblefern 1,3 l, 140 x 90 mm, Aluminium, mit Deckel\nGaskocher Zorvik, wird auf die Kartusche geschraubt\nGaskartusche 230 g, Butan\nTopfzange\n2 Becher 450 ml, 2 Löffel\nFeuerzeug und Streichhölzer\n2 Flaschen 1 l\nReis und Linsen, im Topf gekocht',
  lineToCopy: 'Topf 1,3 l, Deckel',
  useLine: 'Diese Zeile einsetzen',
  allLines: (n) => `Alle ${n} Zeilen`,
  otherLines: (n) => `Die übrigen ${n} Zeilen zeigen`,

  noKit: 'Nichts hier liest sich als Kochausrüstung.',
  noKitRead: (n) =>
    `${n} ${lines(n)} gelesen; keine nennt Topf, Kocher, Brennstoff oder Essgeschirr. Ein Ding pro Zeile, mit seiner Größe:`,

  reading: 'Gelesen',
  readingFold: (counts) => `Gelesen: ${counts}`,
  grounds: { stated: 'angegeben', 'worked-out': 'errechnet', assumed: 'angenommen', missing: 'fehlt' },
  was: 'vorher',
  yours: 'berichtigt',
  pressToChange: 'Ein Druck auf einen Wert ändert ihn.',
  valueLabel: (field, kind, value, grounds, line) => `${kind}, ${field}: ${value}, ${grounds}, Zeile ${line}. Ändern`,
  kindLabel: (kind, line) => `${kind}, Zeile ${line}. Ändern, was es ist`,
  slotLabel: (field, kind, line) => `${kind}, ${field}: fehlt, Zeile ${line}. Ergänzen`,
  editLabel: (field, kind) => `${kind}, ${field}. Enter übernimmt, Escape stellt wieder her`,
  notThere: 'nicht in der Ausrüstung',
  notCarried: (because) => `zählt nicht: ${because}`,
  itCounts: 'Es zählt',
  alsoNamed: 'Auch genannt',
  alsoNamedWhy: 'Nebenbei; nicht gezählt. Kommt es mit?',
  countIt: (thing, line) => `Es zählt: ${thing}, Zeile ${line}`,
  countAll: (n) => `Alle ${n} zählen`,
  notCookKit: (n) => `${n} ${lines(n)} ohne Kochzeug`,
  notUnderstood: 'nicht verstanden.',
  sayWhat: 'Sagen, was es ist',
  itIs: 'Es ist',
  whatIsIt: (line) => `Was Zeile ${line} ist`,
  choose: 'wählen',
  forget: 'Vergessen',
  unused: (value, why) => `Eigene Angabe „${value}“: ${why}`,
  yesNo: { yes: 'ja', no: 'nein' },
  no: (thing) => `kein ${thing}`,
  fields: {
    kind: 'Art',
    carried: 'dabei',
    quantity: 'Anzahl',
    capacityMl: 'Volumen',
    massG: 'Gewicht',
    diameterMm: 'Breite',
    baseDiameterMm: 'Bodenbreite',
    heightMm: 'Höhe',
    sizeMm: 'Größe',
    burnerMm: 'Brennerbreite',
    supportsMm: 'Weite der Auflage',
    material: 'Material',
    bail: 'Bügel',
    lid: 'Deckel',
    handles: 'Griff',
    stoveType: 'verbrennt',
    stoveForm: 'Bauart',
    fuelType: 'Brennstoff',
    gasMix: 'Gas',
    fuelMassG: 'Brennstoff netto',
    fuelVolumeMl: 'Brennstoffvolumen',
  },
  kinds: {
    pot: 'Topf',
    mug: 'Becher',
    kettle: 'Kessel',
    pan: 'Pfanne',
    lid: 'Deckel',
    stove: 'Kocher',
    fuel: 'Brennstoff',
    windscreen: 'Windschutz',
    bottle: 'Flasche',
    bladder: 'Wassersack',
    bowl: 'Schüssel',
    utensil: 'Besteck',
    'other-cook': 'übriges Kochzeug',
  },
  roles: {
    gripper: 'Topfzange',
    lighter: 'Feuerzeug',
    matches: 'Streichhölzer',
    board: 'Brett',
    tripod: 'Dreibein',
    foil: 'Folie',
  },
  materials: {
    titanium: 'Titan',
    aluminium: 'Aluminium',
    steel: 'Stahl',
    iron: 'Eisen',
    enamel: 'Emaille',
    plastic: 'Kunststoff',
    wood: 'Holz',
    metal: 'Metall',
  },
  stoveTypes: { ...fuelTypes, integrated: 'Gas, mit eigenem Topf' },
  stoveForms: { upright: 'auf der Kartusche', remote: 'am Schlauch' },
  fuelTypes,
  gasMixes: { butane: 'Butan', isobutane: 'Isobutan', winter: 'Isobutan und Propan', propane: 'Propan' },
  mealStyles: { 'boil-only': 'nur Wasser', simmer: 'köcheln', scratch: 'richtig kochen' },
  waterFrom: { liquid: 'keiner', either: 'möglich', snow: 'alles Wasser' },
  winds: { calm: 'windstill', breeze: 'Brise', windy: 'windig' },
  snows: { new: 'neu', settled: 'gesetzt', 'wind-packed': 'windgepresst', packed: 'handgepresst' },
  seasons: { spring: 'Frühling', summer: 'Sommer', autumn: 'Herbst', winter: 'Winter' },
  cookAt: { stove: 'Kocher', fire: 'Feuer' },

  checks: (n) => `${n} ${checks(n)}`,
  tally: {
    'can-hurt': (n) => `${n} ${n === 1 ? 'kann' : 'können'} verletzen`,
    'falls-short': (n) => `${n} ${n === 1 ? 'reicht' : 'reichen'} nicht`,
    'costs-you': (n) => `${n} ${n === 1 ? 'kostet' : 'kosten'} etwas`,
    'cant-tell': (n) => `${n} ${n === 1 ? 'bleibt' : 'bleiben'} offen`,
    'holds-up': (n) => `${n} ${n === 1 ? 'passt' : 'passen'}`,
  },
  tallyLabel: 'Befunde nach Stufe',
  caution: 'Vorsicht',
  line: (n) => `Zeile ${n}`,
  typed: 'Eingetippt:',
  lookedFor: 'Gesucht:',
  why: 'Warum',
  howWorkedOut: (title) => `Rechnung: ${title}`,
  published: 'veröffentlicht',
  commonPractice: 'gängige Praxis',
  Published: 'Veröffentlicht:',
  CommonPractice: 'Gängige Praxis:',
  assumedHere: 'Angenommen:',
  assumption: (what, because, replaceWith) => `${what}: ${because}; ${replaceWith}.`,
  settle: (answers, open) =>
    `${answers === 1 ? 'Eine Antwort würde' : `${answers} Antworten würden`} ${open === 1 ? 'eine Prüfung' : `${open} Prüfungen`} klären.`,
  untold: (open) =>
    open === 1 ? 'Eine Prüfung hat hier keine Antwort.' : `${open} Prüfungen haben hier keine Antwort.`,
  settles: (titles) => `Klärt: ${list.format(titles)}.`,
  addLine: (kind) => `„${kind}“ in die Liste setzen`,

  day: 'Ein Tag mit dieser Ausrüstung',
  boilsAt: (temperature) => `Wasser kocht dort bei ${temperature}.`,
  sources: 'Quellen',
  assumptions: 'Angenommen',
  problems: 'Ausgelassen',

  potForm: {
    pot: 'Topf',
    outside: 'Außenmaße',
    diameter: 'Breite',
    baseDiameter: 'Boden, konisch',
    height: 'Höhe',
    capacity: 'Volumen',
    mass: 'Gewicht',
    material: 'Material',
    has: 'Der Topf hat',
    bail: 'Bügel',
    handles: 'Seitengriffe',
    lid: 'Deckel',
    more: 'Mehr zu Topf und Kocher',
    stove: 'Kocher',
    type: 'Verbrennt',
    form: 'Gas steht',
    burnerDiameter: 'Brennerbreite',
    standsAt: 'Topfboden auf',
    armCount: 'Arme',
    armInner: 'Lücke der Arme',
    armSpan: 'Weite der Arme',
    footDiameter: 'Füße, Kartusche',
  },

  drawing: {
    unit: { metric: 'mm', us: 'Zoll', imperial: 'Zoll' },
    brim: (volume) => `Rand ${volume}`,
    meal: (volume) => `Essen ${volume}`,
    fill: (volume) => `Füllung ${volume}`,
    free: (length) => `${length} frei`,
    on: (base, burner) => `Topf ${base} auf Brenner ${burner}`,
    fits: (lengths) => `passt ${lengths}`,
    tips: (angle) => `kippt ${angle}`,
    spills: (angle) => `läuft über ${angle}`,
    caption: 'Topf, Standhöhe, Füße und Brennerbreite maßstäblich. Von der schwachen Seite gesehen.',
    captionAlone: 'Maßstäblich.',
    shape: (rim, height, base) =>
      `Der Topf im Schnitt, maßstäblich: ${rim} breit${base === null ? '' : `, ${base} am Boden,`} und ${height} hoch.`,
    burner: (width) => `Der Brenner ist ${width} breit.`,
    stands: (height) => `Der Topfboden steht ${height} über dem Grund.`,
    holds: (brim, meal) => `Randvoll fasst er ${brim}; eine Mahlzeit braucht ${meal}.`,
    filled: (height, volume, free) => `Bis ${height} mit ${volume} gefüllt, ${free} unter dem Rand.`,
    leans: (tip, spill) => `Er kippt bei ${tip} und läuft bei ${spill} über.`,
    suits: (lengths) => `Zum Brenner passen Böden von ${lengths} Breite.`,
  },

  verdict: {
    region: 'Brimwise, ein Urteil über einen Topf',
    unnamed: 'Dieser Topf',
    lid: 'mit Deckel',
    bail: 'mit Bügel',
    stove: (type) => `auf ${type}`,
    terms: (people, style, fromSnow, shown, answered, open) => {
      const one = people === 1;
      const doing = {
        'boil-only': one ? 'nur Wasser kocht' : 'nur Wasser kochen',
        simmer: one ? 'köchelt' : 'köcheln',
        scratch: one ? 'richtig kocht' : 'richtig kochen',
      }[style];
      const who = `${one ? 'eine Person' : `${people} Personen`}, die ${doing}`;
      const left =
        open === 0 ? '' : ` ${open} weitere ${open === 1 ? 'hat' : 'haben'} aus diesen Zahlen keine Antwort.`;
      return `Beurteilt für ${who}${fromSnow ? ', mit Wasser aus Schnee' : ''}. ${shown} von ${answered} ${checks(answered)} gezeigt, die schlechteste zuerst.${left}`;
    },
    sums: 'Die Rechnungen',
    sketch: (rim, height, fill) =>
      `Der Topf im Schnitt, maßstäblich: ${rim} breit und ${height} hoch${fill === null ? '' : `, gefüllt bis ${fill}`}.`,
  },

  unjudged: 'Der Teil, der liest und urteilt, kam nicht an. Das Getippte kopieren, dann die Seite neu laden.',

  writeLetter: 'Eine Antwort zum Senden',
  copy: 'Als Text kopieren',
  copyMarkdown: 'Als Markdown kopieren',
  copied: 'Kopiert.',
  copyRefused: 'Der Browser hat das Kopieren verweigert. Hier steht der Text zum Kopieren von Hand.',
  copyText: 'Die Befunde als Text',
  print: 'Drucken',
  unitsLegend: 'Einheiten',
  units: { 'as-written': 'wie geschrieben', metric: 'metrisch', us: 'US', imperial: 'imperial' },
  foot: 'Eine zweite Meinung. Feuerregeln am Ort, Grundeigentümer und ausgebildete Fachleute gehen vor. Auf dieser Seite gerechnet; nichts wird gesendet.',
};
