import type { Words } from './words.js';

export const de: Words = {
  language: 'de',
  name: 'Deutsch',
  decimal: ',',
  tellTale:
    'und, mit, der, die, das, ein, eine, für, ohne, ist, nicht, oder, auf, wir, im, zum, zu, dem, den, von, je, aus, bei, pro, stück, m.',

  kinds: {
    pot: '~topf, ~töpfchen, ~kochgeschirr, ~geschirrset, kochset, topfset, kochtopfset, ~pott, kasserolle, ~kasserole, ~feldgeschirr, alu geschirr, geschirr bw, essgeschirr, ~dreibeintopf, ~bräter, ~kochkessel, ~hängekessel, gulaschkessel, hordenkessel, ~feldflaschenbecher, kochbecher, ~sturmkocherset, kochsystemtopf, ~töpfli, kochgeschirrset, dutch oven, ~reindl, ~topfsatz, campinggeschirr, feldkochgeschirr, chessi, gamelle | ~töpfe, ~töpfen, kochsets, topfsets, gulaschkessel, dutch ovens, gamellen',
    mug: '~becher, ~tasse, kaffeebecher, thermobecher, haferl, trinkbecher, kuksa, faltbecher, ~häferl, ~humpen, ~becherl | ~tassen, ~bechern, gläser, trinkgläser, ~becher',
    kettle: '~kessel, ~teekanne, ~kaffeekanne, ~wasserkocher',
    pan: '~pfanne, ~pfännchen, pfanne/deckel, pfannendeckel, deckelpfanne | ~pfannen',
    lid: '~deckel',
    stove:
      '~gasrechaud, ~rechaud, ~kocher, ~brenner, ~hobo, ~kochsystem, holzvergaser, hobokocher, kochstelle, ~feuerstelle tragbar, ~gasherd, hobo ofen, holzöfchen, ~raketenofen, campingherd, ~gaskocherl, 2 flammherd, ~kochplatte, benziner | ~kochern, ~brennern, ~kochplatten, ~gasherde',
    fuel: '~propanflasche, ~butanflasche, ~kartusche, ~gaskartusche, ~schraubkartusche, ~stechkartusche, ~ventilkartusche, ~gasflasche, gas, ~brennstoff, ~brennstoffflasche, ~spiritusflasche, ~benzinflasche, ~petroleumflasche, ~tankflasche, ~gasdose, brennstoffvorrat, ~kraftstoffflasche, ~holzkohle, ~grillkohle, brennmaterial, ~gasbüchse, ~gasfläschchen, ~gaspatrone | ~kartuschen, ~gaskartuschen, ~gasflaschen, ~brennstoffflaschen, ~benzinflaschen, ~spiritusflaschen, ~gasdosen, ~gasbüchsen, ~gaspatronen, ~brennstoffvorräte',
    windscreen: '~windschutz, ~windschirm, ~windschild, ~windfang, ~windabweiser, ~windschott',
    bottle:
      '~flasche, ~trinkflasche, ~feldflasche, ~wasserflasche, ~thermosflasche, ~thermoskanne, ~isolierkanne, ~isolierflasche, thermos, ~weithalsflasche, ~wasserkanister, ~petflasche, pet flasche, ~isokanne, ~trinkkanister, ~kanister, ~isokannen, ~wasserkanne | ~flaschen, ~trinkflaschen, ~feldflaschen, ~wasserflaschen, ~thermoskannen, ~thermosflaschen, ~wasserkannen',
    bladder:
      '~wassersack, ~wasserbeutel, ~trinkblase, ~trinksystem, ~faltkanister, ~faltflasche, ~wasserblase, ~trinkbeutel, ~falteimer, ~weichflasche, ~softflasche, ~wassertank | ~wassersäcke, ~wasserbeutel, ~trinkblasen, ~faltflaschen, ~softflaschen',
    bowl: '~müslitopf, ~müslischale, ~schüssel, ~schale, ~napf, teller tief, tiefer teller, suppenteller, müslischale | ~schüsseln, ~schalen, ~näpfe, tiefe teller, teller (tief)',
    utensil:
      '~löffel, ~göffel, ~gabel, ~besteck, ~kelle, ~pfannenwender, ~schneebesen, essstäbchen, ~grillzange, spork, ~schöpfer, ~küchenzange, ~schwingbesen | ~löffeln, ~gabeln, ~löffel',
    'other-cook':
      '~zahnputzbecher, ~zahnbecher, ~topfzange, ~topfgreifer, ~topfgriff, ~topfheber, ~greifzange, ~pfannengriff, ~topfhalter, griffzange, zange, ~hebezange, ~kocherbrett, ~kocherunterlage, ~bodenplatte, ~kartuschenständer, ~kartuschenfuß, ~dreibein, ~dreifuß, ~teller, ~espressokanne, ~espressokocher, ~kaffeefilter, ~kaffeepresse, ~messbecher, ~topfständer, ~topfauflage, ~kocherständer, ~rost, ~grill, ~topfhülle, ~isolierhülle, ~kochhaken, ~hängevorrichtung, ~sieb, ~feuerzeug, ~streichhölzer, ~zündhölzer, ~feuerstahl, feuerstarter, ~alufolie, ~wärmetauscher, ~feuerschale, unterlage für kocher, unterlage für den kocher, unterlage für die kocher, brett für den kocher, brett für kocher, ~sperrholzbrett, ~sperrholzplatte, ~kocherplatte, ~espressokännchen, mokkakanne, ~streichholz, ~zündholz, ~zündhölzli, ~kochunterlage, ~mokkakocher, frenchpress, french press | ~feuerzeuge, ~topfgreifern, ~grillroste, ~teller',
  },
  containers: {
    rigid: '~flasche, ~fläschchen, ~kanister, ~behälter, ~gefäß | ~flaschen, ~kanistern, ~behältern',
    soft: '~sack, ~beutel, ~blase | ~säcke, ~säcken, ~beuteln',
    can: '~kartusche, ~dose, ~büchse | ~kartuschen, ~dosen, ~büchsen',
  },
  notKit:
    'töpfchen für, ~feuerschale, ~nachttopf, ~nachttöpfchen, ~blumentopf, ~farbtopf, ~senftopf, ~krapfen, ~eintopf, ~fleischtopf, ~geldtopf, ~knopf, ~würfelbecher, ~joghurtbecher, ~eisbecher, ~strandtasse, ~untertasse, ~wärmflasche, ~sprühflasche, ~bierflasche, ~weinflasche, ~pinkelflasche, ~urinflasche, ~luftflasche, ~sauerstoffflasche, ~babyflasche, ~pulverflasche, ~spülschüssel, ~waschschüssel, ~kloschüssel, ~waschschale, ~waschbecken, ~seifenschale, ~schneeschale, ~hutschale, ~apfelschale, ~hundenapf, ~fressnapf, ~hundeschüssel, ~benzinkanister fürs auto, ~reservekanister, ~ersatzkanister, ~ölkanister, ~kaffeekocher, ~eierkocher, ~reiskocher, ~dvdbrenner, ~lötbrenner, ~unkrautbrenner, ~kleiderschrank, ~schlafsack, ~packsack, ~rucksack, ~stausack, ~müllsack, ~müllbeutel, ~seesack, ~biwaksack, ~kulturbeutel, ~waschbeutel, ~zipbeutel, ~teebeutel, ~essensbeutel, ~gefrierbeutel, ~geldbeutel, ~brotdose, ~blechdose, ~brotbüchse, ~konservendose, ~getränkedose, ~pillendose, ~filmdose, ~döschen, ~seifendose, ~steckdose, ~proviantdose, ~radieschen, ~filterkartusche, ~druckerkartusche, ~tintenkartusche, ~kartuschenlampe, ~gaslampe, ~gaslaterne, ~petroleumlampe, ~lampenöl, ~topflappen, ~topfkratzer, ~topfreiniger, ~topfpflanze, topfit, ~topfdeckelskischlitten, ~tankdeckel, ~gullydeckel, ~klodeckel, ~buchdeckel, ~augendeckel, ~kopftuch, ~stopfen, ~zeckenzange, kombizange, wasserpumpenzange, nagelzange, ~stricknadel, ~heugabel, ~federgabel, ~stimmgabel, ~astgabel, ~bergkessel, ~talkessel, ~kochkurs, ~dosenöffner, ~flaschenöffner, ~büchsenöffner, ~flaschenhalter, ~flaschenbürste, ~reparaturset, ~ersatzpumpe, ~wasserpumpe, ~skischuhschale, ~regenschale, ~schmerztabletten, ~wassertabletten, ~entkeimungstabletten, ~tabletten gegen, ~scheibenwischwasser, ~windschutzscheibe, ~sonnenschirm, ~schutzdeckel, ~objektivdeckel, ~kameradeckel, ~linsendeckel, ~dachträger, topf voll, ein topf voll, topf suppe, topf mit honig, tasse kaffee, tasse tee, tassen kaffee, tassen tee, tasse wasser, becher wasser, becher kaffee, schüssel suppe, flasche wein, flasche bier, flaschen wein, dose bier, gasgeben, gas geben, ~abgas, vollgas, ~spaßbrenner, ~geschirrtuch, ~geschirrspülmittel, ~hüftschale, ~schalenkoffer, ~dachschale, ~sitzschale, ~klettergeschirr, ~hundegeschirr, ~zuggeschirr, ~pfannkuchen, ~pfannkuchenmix, ~kniepfanne, ~zündpfanne, ~wundbenzin, ~tankstelle, ~nagellack, ~taschenlampe, ~taschentücher, ~bechern, ~teller der bremse, ~bremsteller, ~stöcketeller, ~stockteller, ~skiteller, ~stockspitze, ~trekkingstock, ~kapodaster, gläser wein, gläser bier, gläser mit, ~messer, ~zelt, tarp, ~axt, beil, ~säge, ~filter, ~schwamm, ~handtuch, seil, ~hängematte, ~stirnlampe, ~schneidebrett, ~brettchen, ~kühlbox, isomatte, ~plane',
  tails:
    'reiniger, bürste, tasche, hülle, beutel, halter, öffner, schwamm, reparaturset, ersatzteile, wartungsset, dichtung, pumpe, spiel, edition',
  heads: 'tasche für, beutel für, hülle für, reparaturset für, ersatzteile für, reinigung für, haken für',
  asides:
    'für, fürs, in, im, auf, aufs, an, am, von, vom, unter, aus, um, über, neben, hinter, passt, als, wie, bei, beim, zum, zur, durch, gegen, ins, deckt, falls, wenn, weil',
  fits: 'für, passend für, passt auf, passt in',
  otherUse:
    'lampe, ~lampe, ~laterne, auto, tanken, ~spray, seife, shampoo, öl, speiseöl, wein, bier, schnaps, hund, pipi, pinkeln, nadel, faden, tape, ~creme, honig, marmelade, kleidung, müll, ~feuerzeugbenzin, heizung, ~heizlüfter, salbe, gewürze, ~gewürz, kosmetik',
  food: 'nudeln, suppe, honig, marmelade, tee, kaffee, kakao, reis, haferflocken, bohnen, milch, eintopf, soße, fisch, thunfisch, fleisch, sahne, salbe, gewürz, gewürze, salz, zucker, butter, sirup, couscous, linsen, brot, käse, nüsse, schokolade, mehl, eier, obst, mahlzeit, essen, kartoffeln, gulasch, müsli, senf, bier, wein',
  water: 'wasser, trinken, trink~',

  materials: {
    titanium: 'titan, titan~, ti',
    aluminium:
      'aluminium, alu, alu~, aluminium~, hartanodisiert, eloxiert, alu eloxiert, hart anodisiert, leichtmetall',
    steel: 'stahl, edelstahl, edelstahl~, stahl~, rostfrei, inox, blech, blech~',
    iron: 'eisen, eisen~, gusseisen, gusseisen~, gusseisern, guss',
    enamel: 'emaille, emaille~, email, emailliert, emailliertes, emaillierte, emaillierter',
    plastic: 'kunststoff, plastik, plastik~, kunststoff~, silikon, silikon~, pet, hdpe, nylon',
    wood: 'holz, birke, sperrholz, buche, bambus, holz~',
    metal: 'metall, metall~',
  },
  stoveTypes: {
    gas: 'gas, gas~, kartusche, kartuschen, kartuschen~, ~kartusche, propan, butan, schraubkartusche',
    alcohol: 'spiritus, spiritus~, alkohol, alkohol~, brennspiritus, ethanol, sturm~, brennsprit',
    wood: 'holz, holz~, hobo, hobo~, holzvergaser, ~hobo, reisig, zweige, raketen~',
    'liquid-fuel':
      'benzin, benzin~, petroleum, petroleum~, multifuel, multifuel~, mehrstoff~, mehrstoff, flüssigbrennstoff, diesel, reinbenzin, ~benzin, petrol, benziner',
    'solid-fuel': 'trockenbrennstoff, trockenspiritus, festbrennstoff, tabletten, tabletten~, hexamin',
    integrated: 'kochsystem, gaskochsystem, integriert, komplettsystem',
  },
  stoveForms: {
    upright:
      'aufschraubkocher, direkt auf die kartusche, aufgeschraubt, auf die kartusche geschraubt, aufsatz, schraubkocher, aufsatzkocher',
    remote: 'schlauchkocher, mit schlauch, schlauch, bodenkocher, fernkocher, mit leitung',
  },
  fuelTypes: {
    gas: 'gas, propanflasche, butanflasche, propan, butan, isobutan, campinggas, flüssiggas, schraubgas',
    alcohol: 'spiritus, brennspiritus, alkohol, bioethanol, ethanol, brennsprit',
    wood: 'brennholz, holzkohle, grillkohle, briketts, pellets',
    'liquid-fuel':
      'benzin, reinbenzin, waschbenzin, petroleum, kerosin, diesel, brennstoff flüssig, katalytbenzin, kocherbenzin, weißbenzin, testbenzin, petrol',
    'solid-fuel':
      'trockenbrennstoff, trockenspiritus, brennstofftabletten, brenntabletten, trockenbrennstofftabletten, festbrennstoff, brennpaste, hexamin, hexamintabletten, brennwürfel, brennstoffwürfel, trockenspiritustabletten, festbrennstofftabletten',
  },
  tablets: 'tabletten',
  gasMixes: {
    butane: 'butan, butanflasche',
    isobutane: 'isobutan, iso butan',
    winter: 'wintergas, wintermischung, winter gas, winterkartusche, vierjahreszeitengas',
    propane: 'propan, propanflasche',
  },
  roles: {
    gripper:
      '~topfzange, ~topfgreifer, ~topfgriff, ~topfheber, ~greifzange, ~pfannengriff, ~topfhalter, griffzange, zange, ~hebezange',
    lighter: '~feuerzeug, ~feuerzeuge, ~feuerstahl, feuerstarter',
    matches: '~streichhölzer, ~zündhölzer, ~streichholz, ~zündholz, ~zündhölzli',
    board:
      '~kocherbrett, ~kocherunterlage, ~bodenplatte, unterlage für kocher, unterlage für den kocher, unterlage für die kocher, brett für den kocher, brett für kocher, ~sperrholzbrett, ~sperrholzplatte, ~kocherplatte',
    tripod: '~dreibein, ~kochhaken, ~hängevorrichtung',
    foil: '~alufolie',
  },
  bail: 'bügel, henkel, drahtbügel, tragbügel, bügelgriff, ~drahthenkel, hängebügel, aufhängebügel, kettenbügel',
  hung: 'hängekessel, hordenkessel, gulaschkessel, hordentopf',
  handles: 'griff, griffe, klappgriff, klappgriffe, stielgriff, stiel, seitengriffe, handgriff, ~griffen',
  lidded: 'gedeckelt',

  numbers: [
    [0, 'null'],
    [1, 'eins, einen, einer, einem, eines'],
    [2, 'zwei, beide, beiden'],
    [3, 'drei'],
    [4, 'vier'],
    [5, 'fünf'],
    [6, 'sechs'],
    [7, 'sieben'],
    [8, 'acht'],
    [9, 'neun'],
    [10, 'zehn'],
    [11, 'elf'],
    [12, 'zwölf'],
    [14, 'vierzehn'],
    [15, 'fünfzehn'],
    [20, 'zwanzig'],
    [0.5, 'halb, halbe, halber, halben, halbes, ein halber, einen halben, ein halbes'],
    [1.5, 'anderthalb, eineinhalb'],
    [0.25, 'viertel'],
    [0.75, 'dreiviertel'],
  ],
  article: 'ein, eine',
  determiners:
    'der, die, das, dem, den, einem, einer, einen, meinem, meiner, diesem, dieser, mein, meine, meinen, unser, unsere, unseren, unserem, unserer',
  pieces: 'stück, stk, stk., st., st, mal, x, exemplare, satz',
  parts: 'teilig, teilige, teiliges, teiliger',
  flames: 'flammig, flammiger, flammige, flammigen, flammiges, flammen, flamme',
  countLabels: 'anzahl, menge, stückzahl',
  pair: 'paar, doppelt',
  packOf: 'packung, packungen, pack, schachtel, schachteln, päckchen, set mit, satz',
  set: 'set, ~set, satz, ineinander, teilig, kochset, kochgeschirr',
  each: 'je, je stück, pro stück, à, á, jeweils, das stück, einzeln, stück',
  together: 'zusammen, zus, gesamt, insgesamt, alle, beide zusammen, komplett, alles, für beide',
  perPerson:
    'pro pers, je person, pro person, pro kopf, p.p., jede/r, jeder, jede, je eine, je einen, je ein, pro nase, für jeden, jeder bringt, jeder braucht, alle bringen, eigene, pro teilnehmer, einer pro person, für alle, p. p., pp, /person, /pers, /p, /kopf, pro mann, pro kind, pro schüler, pro schülerin, pro tn, jede person, jeder teilnehmer, jede teilnehmerin, jedes kind, jeder pfadi, jeder schüler, jeder von uns, jede:r, alle:, persönliche ausrüstung, persönliches material, persönliche sachen, eigene ausrüstung, individuelle ausrüstung, persönlich:, jeder hat, alle haben, jeder nimmt, jeder mit eigenem, jeder mit eigener, jede mit eigenem, jeder hat',
  shared:
    'gemeinsam, geteilt, gruppe, gruppenmaterial, gruppenausrüstung, gruppen~, gemeinschaftlich, gemeinschaftsmaterial',
  perGroup: 'pro, je, für je',

  no: 'kein, keine, keinen, keiner, ohne, nicht, nein, nie, o.',
  yes: 'ja, inkl, inklusive',
  missing: 'fehlt, fehlen, verloren, weg, kaputt gegangen',
  with: 'mit, inkl, inkl., inklusive, samt, plus, +, m.',
  and: 'und, u, plus, &, +, sowie',
  or: 'oder, bzw., beziehungsweise',
  to: 'bis',
  if: 'falls, wenn, nur wenn',
  about: 'ca, ca., etwa, ungefähr, rund, knapp, gut, circa, zirka',
  away: {
    left: 'zu hause, zuhause, daheim, bleibt daheim, bleibt zu hause, bleibt zuhause, daheim lassen, zu hause lassen, bleibt im auto, nicht dabei, nicht mitnehmen, bleibt da, bleiben daheim, kommt nicht mit, lasse ich',
    wished: 'wunschliste, wunsch, wünsche, kaufen wir, einkaufsliste, möchte ich, hätte ich gern, irgendwann',
    replaced:
      'ersetzt, ersetzt durch, verkauft, kaputt, früher, vorher, alter kram, ausgemustert, zurückgeschickt, statt, anstatt, anstelle, verschenkt, defekt, nicht mehr',
    forbidden: 'verboten, bitte nicht mitbringen, nicht mitbringen, nicht erlaubt, untersagt',
    unneeded:
      'unnötig, überflüssig, brauche ich nicht, brauchen wir nicht, verworfen, diskutiert und verworfen, nicht nötig gewesen, weggelassen, sparen wir uns, nein, verzichte, wird nicht benutzt, nicht benutzt, wird nicht verwendet, nicht verwendet, wird nicht gebraucht, nicht gebraucht, benutze ich nicht, nutze ich nicht, nie benutzt, nie gebraucht',
    compared: 'im vergleich, verglichen mit, zum vergleich, alternative, alternativ, wäre',
  },
  carries:
    'nehme, nehmen, nimmt, nahm, nahmen, trage, tragen, hatte, hatten, habe, haben, hat, brauche, brauchst, braucht, brauchen, benötigt, benutze, benutzen, verwende, verwenden, packe, packen, bringe, bringt, besteht aus, bestehen aus, gehören',
  halfFull: 'halb voll, halbvoll, halbvolle, halb leer, halbleer, halbleere',
  both: 'beide, alle mit, jeweils mit',
  optional:
    'optional, vielleicht, evtl, evtl., eventuell, nicht nötig, brauch ich den, brauch ich das, brauche ich den, wenn platz ist, ggf., ggf, reserve',

  gross: 'voll, volle, voller, brutto, neu, gefüllt, bruttogewicht, vollgewicht',
  net: 'netto, füllung, inhalt, füllmenge, nettogewicht',
  empty: 'leer, leere, leergewicht',
  holds: 'fasst, inhalt, volumen, fassungsvermögen, bis zum rand, randvoll',
  weighs: 'wiegt, gewichte, gewichten, gewicht, schwer, wiegen',
  dimensions: {
    diameter: 'durchmesser, ø, weit, breit, breite, dm, oben, randdurchmesser, durchm.',
    height: 'höhe, hoch, h, tief, tiefe',
    base: 'boden, unten, bodendurchmesser, am boden',
    burner: 'brenner, brennerkopf, brennkammer, flamme, flammenring, brennerdurchmesser, feuerraum, brennraum',
    supports: 'auflage, topfauflage, arme, träger, topfträger, auflagefläche, spannweite, auflagering',
    ignore: 'klinge, schlauch, kabel, leine, kette, dick, lang, länge, brett, stiel, wand, wandstärke, schnur',
  },
  rate: 'am tag, pro tag, pro person und tag, täglich, pro woche, in der woche, pro mahlzeit, pro liter, am morgen, am abend, zum kochen, kochen, gekocht, minuten, pro nacht, wasser kochen, halben liter, halber liter',

  columns: {
    item: 'gegenstand, artikel, was, ausrüstung, bezeichnung, name, teil, material, ausrüstungsgegenstand, objekt',
    quantity: 'anzahl, stück, stk, stk., menge, anz., anz, st., zahl',
    each: 'einzelgewicht, einzel, gramm je stück, g/stück, g je stück, gewicht/stück, gewicht je stück, stückgewicht, einzelgewicht (g), g/stk, gewicht pro stück',
    total:
      'gesamtgewicht, gesamt, gramm zusammen, zusammen, kg gesamt, g gesamt, gesamtgewicht [g], gewicht gesamt, summe',
    mass: 'gewicht, gramm, g, kg, gewicht (g), gewicht [g], masse, gewicht in g, gewicht in gramm',
    capacity: 'volumen, inhalt, liter, l, ml, fassungsvermögen, größe (l)',
    size: 'größe, maße, abmessung, abmessungen, durchmesser, höhe, masse in cm',
    unit: 'einheit',
    category: 'kategorie, art, gruppe, bereich, typ',
    material: 'werkstoff, aus',
    owner: 'wer, trägt, träger, besitzer, von, person, bringt mit',
    notes: 'bemerkung, bemerkungen, anmerkung, anmerkungen, notiz, notizen, kommentar, hinweis, modell, details',
    ignore: 'preis, kosten, link, marke, hersteller, gepackt, ok, foto, bild, erledigt, €, eur',
  },
  sections: {
    cook: 'küche, kochen, kochausrüstung, kocher, kochzeug, kochgeschirr, töpfe, essen und kochen, kochen und essen, kochutensilien, feuer, kocher und co, küchenkram, geschirr, campingküche, kochset, küche und essen',
    water: 'wasser, trinken, getränke, wasserversorgung, trinksystem',
    fuel: 'brennstoff',
    food: 'essen, verpflegung, proviant, lebensmittel, nahrung, einkauf, frühstück, abendessen',
    clothes: 'kleidung, bekleidung, am körper, anziehen, klamotten, wäsche, schuhe, wechselkleidung, am mann',
    sleep: 'schlafen, zelt, schlafsystem, nachtlager, unterkunft, schlafen und zelt, biwak',
    wash: 'waschzeug, hygiene, körperpflege, waschen, bad, kulturbeutel, toilette, pflege',
    medicine: 'apotheke, erste hilfe, medizin, gesundheit, reiseapotheke, verbandszeug',
    car: 'auto, fahrzeug, fahrrad, rad, boot, reparatur',
    play: 'spaß, spiele, unterhaltung, freizeit, musik',
    other:
      'kram, technik, elektronik, sonstiges, werkzeug, licht, licht & feuer, licht und feuer, navigation, papiere, dokumente, verschiedenes, extras, foto, krimskrams, orientierung, zubehör',
  },
  totals:
    'summe, gesamt, gesamtgewicht, insgesamt, zusammen, total, zwischensumme, basisgewicht, alles zusammen, endsumme',

  units: {
    millilitre: 'milliliter',
    centilitre: 'zentiliter',
    decilitre: 'deziliter',
    litre: 'liter, litern, ltr',
    cup: 'cup, cups',
    gram: 'gramm, gr',
    decagram: 'deka',
    'half-kilo': 'pfund, pfd',
    kilogram: 'kilo, kilogramm',
    ounce: 'unze, unzen',
    millimetre: 'millimeter',
    centimetre: 'zentimeter',
    metre: 'meter, metern',
    inch: 'zoll',
    foot: 'fuß',
    'degree-c': 'grad, grad celsius, celsius',
    'degree-f': 'grad fahrenheit, fahrenheit',
  },
  us: 'us',
  imperial: 'imperial, britisch',
  imperialSigns: '',

  trip: {
    people:
      'kind, teamer, begleiter, betreuerinnen, erwachsener, personen, person, mann, teilnehmer, teilnehmende, jugendliche, pfadfinder, freunde, mann hoch, wanderer, leuten, erwachsene, köpfe, kumpels, freundinnen, freunden, kindern, kollegen, jungs, mädels, pfadis, rover, wölflinge, erwachsenen, kids, studenten, studierende, gäste, hungrige, tn, leitende, leitenden, leiterin, pax, seelen, hungrigen, paddler, paddlerinnen, teilnehmerinnen, schülerinnen, wanderinnen, radler, helfer, jugendleiter, mitfahrer, ~leute, ~leiter, ~leiterinnen, ~betreuer, ~kinder, ~schüler, erw',
    anyone: 'personen, person, leute, teilnehmer, teilnehmende, köpfe, mann, tn, pax',
    peopleBefore: 'gruppe von, für, zu, wir sind, wir waren, gruppengröße, teilnehmerzahl, personenzahl',
    party: [
      [1, 'solo, allein, alleine, für mich allein, einer person'],
      [2, 'zu zweit, zweit, für zwei, wir zwei, wir beide, uns beide'],
      [3, 'zu dritt, für drei, wir drei'],
      [4, 'zu viert, für vier, wir vier'],
      [5, 'zu fünft, für fünf, wir fünf'],
      [6, 'zu sechst, für sechs'],
      [7, 'zu siebt'],
      [8, 'zu acht'],
    ],
    outing:
      'tour, touren, ~tour, wanderung, wandern, wandertour, ~wanderung, trekking, expedition, fahrt, ~fahrt, ausflug, reise, urlaub, laufen, unterwegs, trip, lager, zeltlager, ~lager, route, etappe, etappen, runde, kurs, wochenende, durchquerung, überschreitung, skitour, paddeln, radtour, hike, in den bergen, zelten',
    past: 'letztes wochenende, letzte woche, letzten monat, letztes jahr, letzten sommer, letzten winter, letztes mal, voriges jahr, gestern, früher, damals',
    climb: 'höhenmeter, hm, aufstieg, abstieg, anstieg, höhenunterschied, steigung, unter, unterhalb, weniger als',
    cookGroup: [
      [
        0,
        'kochgruppe, kochgruppen, kochteam, kochteams, zeltgruppe, zeltgruppen, kleingruppe, kleingruppen, seilschaft, seilschaften, sippen, essgruppe, essgruppen',
      ],
      [
        2,
        'zweiergruppe, zweiergruppen, zweierteam, zweierteams, zweierseilschaft, zweierseilschaften, paar, paare, paaren',
      ],
    ],
    eachGroup: [
      [
        0,
        'pro kochgruppe, je kochgruppe, jede kochgruppe, für jede kochgruppe, pro gruppe, je gruppe, jede gruppe, für jede gruppe, pro zeltgruppe, pro kleingruppe, je kleingruppe, jede kleingruppe, pro seilschaft, je seilschaft, jede seilschaft, pro zelt, je zelt, jedes zelt, pro sippe, je sippe, jede sippe, pro team, je team, jedes team, pro boot, je boot, pro kanu',
      ],
      [
        2,
        'pro paar, je paar, jedes paar, zu zweit je, pro zweiergruppe, je zweiergruppe, jede zweiergruppe, pro zweierteam, je zweierteam, jedes zweierteam, in zweiergruppen, in zweierteams, paarweise, pro zweierseilschaft',
      ],
    ],
    self: 'ich, mir, mich',
    companion:
      'frau, mann, partner, partnerin, freund, freundin, vater, papa, mutter, mama, sohn, tochter, bruder, schwester, kumpel, kollege, kollegin, cousin, cousine, onkel, tante, opa, oma, kind, enkel | freunde, freunden, freundinnen, söhne, söhnen, töchter, töchtern, brüder, brüdern, schwestern, kumpels, kumpeln, kollegen, kinder, kindern, jungs, enkeln',
    day: 'tag, tage, tagen, tägige, tägiger, tägigen, tages',
    night: 'nacht, nächte, nächten, übernachtung, übernachtungen',
    week: 'woche, wochen',
    monthLong: 'monat, monate, monaten, monatige',
    notDays:
      'alle, laden, pro, je, am, essen für, reicht, hält, vorher, später, nach, jeden, vorrat, proviant, nachschub, wasser für, bis',
    span: [
      [1, 'tagestour, tageswanderung'],
      [2, 'overnighter'],
    ],
    seasons: {
      spring: 'frühling, frühjahr',
      summer: 'sommer, hochsommer, sommer~',
      autumn: 'herbst, spätherbst, herbst~',
      winter: 'winter, wintertour, winter~',
    },
    months: [
      'januar, jänner, jan',
      'februar, feber, feb',
      'märz',
      'april, apr',
      'mai',
      'juni',
      'juli',
      'august, aug',
      'september, sept',
      'oktober, okt',
      'november, nov',
      'dezember, dez',
    ],
    weekday: [
      'montag, mo',
      'dienstag, di',
      'mittwoch, mi',
      'donnerstag, do',
      'freitag, fr',
      'samstag, sonnabend, sa',
      'sonntag, so',
    ],
    meltsSnow:
      'schnee schmelzen, schneeschmelzen, schnee geschmolzen, schmelzwasser, schmelzen, schneeschmelztopf, schnee zu schmelzen, schmelzen schnee, schmelzen den schnee, geschmolzener schnee, geschmolzenem schnee, aus schnee, schneewasser',
    snow: {
      new: 'neuschnee, pulverschnee',
      settled: 'altschnee, firn, gesetzter schnee',
      'wind-packed': 'windgepresster schnee, windharsch, harsch',
      packed: 'gepresster schnee',
    },
    noSnow: 'kein schnee, ohne schnee',
    minus: 'minus, unter null',
    lows: 'tiefstwert, tiefstwerte, tiefstwerten, ~tiefsttemperatur, ~tiefsttemperaturen, nachttemperatur, nachttemperaturen, mindesttemperatur, minimaltemperatur, tiefste temperatur, kälteste nacht',
    cold: 'nachts, kälte, kalt, tiefstwert, erwartet, in der nacht, nächte, temperatur, temperaturen, bis zu, prognose, min, frost, am morgen, ~temperatur, ~temperaturen, nächtens, kälter, temp, frostig',
    rated:
      'zelt, zelte, komfort, limit, schlafsack, komfortbereich, grenzbereich, quilt, matte, isomatte, waschen, inlett',
    altitude:
      'höhe, pass, pässe, gipfel, lager, hütte, meereshöhe, ü. m., ü.m., üm, hochlager, m ü. m., auf, biwak, joch, grat, ~hütte, ~pass, m.ü.m, übernachtung auf, höchster punkt, hochplateau, zeltplatz',
    fireAllowed: 'feuer erlaubt, lagerfeuer erlaubt, feuer machen erlaubt',
    fireForbidden:
      'feuerverbot, kein feuer, feuer verboten, lagerfeuer verboten, kein offenes feuer, waldbrandgefahr, offenes feuer verboten',
    cookOnFire: 'auf dem feuer, über dem feuer, am lagerfeuer, auf offenem feuer, überm feuer',
    cookInside:
      'im zelt kochen, im zelt gekocht, kochen im zelt, kochen im vorzelt, im vorzelt kochen, in der apsis kochen, kochen in der apsis, kochen in der hütte, in der hütte kochen, im bus kochen, kocher im zelt, kocher im vorzelt, hängeset, hängekit, hängevorrichtung, hängekocher',
    turnedOver:
      'kartusche kopfüber, kopfüber, kartusche auf dem kopf, kartusche umgedreht, flüssigentnahme, flüssiggasbetrieb',
    wind: {
      calm: 'windstill, kein wind, windgeschützt, ohne wind, wenig wind',
      breeze: 'leichter wind, brise, leichte brise, mäßiger wind, etwas wind',
      windy: 'windig, starker wind, sturm, stürmisch, ausgesetzt',
    },
    youth:
      'pfadfinder, schüler, klasse, kinder, jugendliche, jugendgruppe, sippe, meute, stamm, wölflinge, schulklasse, kindern',
    scratch: 'frisch gekocht, braten, backen, richtig kochen',
    simmer: 'köcheln, nudeln, reis, eintopf',
    boilOnly: 'trockennahrung, gefriergetrocknet, nur wasser kochen, tütennahrung, trekkingnahrung',
  },
};
