import type { AskingWords } from '../words.ts';

const list = (items: readonly string[]) =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} und ${items.at(-1)}`;

export const asking: AskingWords = {
  language: 'de',
  direction: 'ltr',
  decimalMark: ',',
  list,
  units: {
    yd: 'Yard', acre: { one: 'Acre', other: 'Acres' }, 'acre/h': 'Acres je Stunde', 'ha/h': 'ha je Stunde', h: { one: 'Stunde', other: 'Stunden' }, hours: { one: 'Stunde', other: 'Stunden' }, deg: '°', 'per-year': { one: 'Stunde im Jahr', other: 'Stunden im Jahr' }, years: { one: 'Jahr', other: 'Jahre' },
    ft: 'ft', in: 'Zoll', 'm2/s': 'm²/s', m2: 'm²', m3: 'm³', ft2: 'ft²', ft3: 'ft³', yd3: 'yd³', 'lb/ft3': 'lb/ft³', 'lb/yd3': 'lb/yd³', 'kg/m3': 'kg/m³',
    'L/min': 'l/min', rpm: 'U/min', percent: '%', months: { one: 'Monat', other: 'Monate' }, count: '', 'm/s2': 'm/s²', 'lbf/ft': 'lbf/ft', 'gal/h': 'Gallonen je Stunde', 'L/h': 'Liter je Stunde', 'L/kWh': 'l/kWh', times: 'Mal',
  },
  tasks: {
    'mow-lawn': 'Rasen mähen', 'cut-rough': 'Gestrüpp oder hohes Gras mulchen', 'lift-bales': 'Rundballen heben', 'lift-pallets': 'Paletten heben',
    'move-loose': 'Kies, Erde oder Mulch bewegen', dig: 'Graben mit dem Anbaubagger', 'till-garden': 'Gartenland fräsen', 'grade-drive': 'Zufahrt planieren',
    'clear-snow': 'Schnee räumen', 'handle-logs': 'Baumstämme bewegen', 'bore-holes': 'Pfahllöcher bohren', 'chip-brush': 'Astholz häckseln',
    'carry-implement': 'Tragen eines schweren Geräts am Heck', 'tow-wagon': 'Anhänger ziehen', 'spread-spray': 'Streuen oder Spritzen',
    'make-hay': 'Heu machen', 'drag-arena': 'Reitplatz abziehen', 'level-field': 'Gelände einebnen',
  },
  wishes: {
    cab: 'Eine Kabine', drive: 'Das gewünschte Getriebe', smoothSeat: 'Ein gefederter Sitz', tiltWheel: 'Ein verstellbares Lenkrad', cruise: 'Ein Tempomat',
    loaderOff: 'Ein Frontlader, der sich ohne Werkzeug abbauen lässt', levelLift: 'Ein Frontlader, der die Last waagerecht hält (Parallelführung)',
    mowerLiftAlone: 'Ein Mähwerk, das sich mit eigenem Hebel ausheben lässt', exhaust: 'Ein Motor ohne Partikelfilter',
    thirdFunction: 'Ein dritter Steuerkreis am Frontlader',
  },
  criteria: {
    price: 'Niedriger Preis', time: 'Weniger Zeit beim Mähen', headroom: 'Kraftreserve', fit: 'Gut passend für mein Gelände',
    comfort: 'Komfort', resale: 'Werterhalt',
  },
  questions: {
    tasks: {
      ask: 'Was möchten Sie mit dem Traktor machen?',
      why: 'Jede Arbeit verlangt etwas vom Traktor: Hubkraft, Breite, Leistung oder eine besondere Ausrüstung. Wir fragen nur zu den Arbeiten weiter, die Sie ankreuzen.',
      hint: 'Kreuzen Sie alles Zutreffende an.',
      fields: { tasks: {
        label: 'Arbeiten',
        options: {
          'mow-lawn': 'Rasen mähen', 'cut-rough': 'Weide, Unkraut oder Gestrüpp mulchen', 'lift-bales': 'Rundballen bewegen oder stapeln', 'lift-pallets': 'Paletten heben',
          'move-loose': 'Kies, Erde oder Mulch bewegen', 'handle-logs': 'Baumstämme bewegen', 'clear-snow': 'Schnee räumen', 'grade-drive': 'Eine Schotterzufahrt planieren',
          'till-garden': 'Gartenland fräsen', dig: 'Mit dem Anbaubagger graben', 'bore-holes': 'Pfahllöcher bohren', 'chip-brush': 'Astholz häckseln', 'tow-wagon': 'Anhänger ziehen',
          'spread-spray': 'Streuen oder spritzen', 'drag-arena': 'Einen Reitplatz abziehen', 'level-field': 'Ein Feld eggen oder einebnen', 'make-hay': 'Heu machen',
          'carry-implement': 'Ein anderes schweres Gerät tragen',
        },
        hints: { dig: 'Gräben, Fundamente, Wurzelstöcke', 'make-hay': 'Mähen und kleine Quaderballen pressen' },
      } },
    },
    musts: {
      ask: 'Was davon muss er können?',
      why: 'Eine Arbeit, die ein Muss ist, schließt jeden Traktor aus, der sie nicht schafft. Die anderen zählen nur in der Wertung.',
      hint: 'Lassen Sie den Rest frei.',
      fields: { 'tasks.must': { label: 'Arbeiten, die ein Muss sind' } },
    },
    lawn: {
      ask: 'Wie viel Rasen mähen Sie?',
      why: 'Fläche, Hindernisse und Ihre Zeit sagen uns, wie breit das Mähwerk sein muss.',
      fields: {
        'land.mown': { label: 'Rasenfläche', hint: 'Zum Beispiel 0,8 ha oder 2 Acres' },
        'land.obstacles': {
          label: 'Bäume, Beete und Ecken', options: { open: 'Überwiegend frei', some: 'Einige', many: 'Viele' },
        },
        'tasks.mow-lawn.hours': { label: 'So lange darf einmal Mähen höchstens dauern', hint: 'Zum Beispiel 2 h oder 1 h 30' },
        'tasks.mow-lawn.perYear': { label: 'Wie oft im Jahr Sie mähen', hint: 'Zum Beispiel 25' },
      },
    },
    deck: {
      ask: 'Wo soll das Mähwerk sitzen?',
      why: 'Ein Zwischenachsmähwerk braucht eine Zwischenachszapfwelle, und manche Baugrößen gibt es nicht damit. Ein Heckmähwerk läuft an jedem Traktor, der genug Leistung hat.',
      fields: { 'tasks.mow-lawn.deck': {
        label: 'Mähwerk',
        options: { belly: 'Zwischen den Achsen', rear: 'Hinter dem Traktor', either: 'Beides ist recht' },
        hints: { belly: 'Dreht nah an Bäumen', rear: 'Schnell abgehängt' },
      } },
    },
    rough: {
      ask: 'Was wächst auf der ungepflegten Fläche?',
      why: 'Gestrüpp braucht bei gleicher Breite mehr Zapfwellenleistung als Gras.',
      fields: {
        'tasks.cut-rough.growth': { label: 'Bewuchs', options: { grass: 'Gras und Unkraut', brush: 'Gestrüpp und junge Bäume' } },
        'land.rough': { label: 'Wie viel davon', hint: 'Zum Beispiel 2 ha oder 5 Acres' },
      },
    },
    bales: {
      ask: 'Was wiegen Ihre Ballen, und wie hoch sollen sie?',
      why: 'Ein Ballen liegt weit vor dem Gerätedrehpunkt. Darum hebt ein Frontlader weniger davon, als im Prospekt steht. Die Höhe schließt zu niedrige Frontlader aus.',
      fields: {
        'tasks.lift-bales.weight': { label: 'Schwerster Ballen', hint: 'Ein Rundballen von 1,2 × 1,2 m (4 × 4 ft) wiegt oft 180 bis 360 kg (400 bis 800 lb), einer von 1,5 × 1,5 m (5 × 5 ft) 360 bis 680 kg (800 bis 1.500 lb)' },
        'tasks.lift-bales.diameter': { label: 'Oder seine Größe: wie hoch er steht', hint: 'Wenn Sie das Gewicht nicht wissen. Zum Beispiel 1,5 m oder 5 ft' },
        'tasks.lift-bales.width': { label: 'Und wie breit er ist', hint: 'Zum Beispiel 1,2 m oder 4 ft' },
        'tasks.lift-bales.hay': { label: 'Heu', options: { dry: 'Trocken', wrapped: 'Gewickelt und feucht' } },
        'tasks.lift-bales.height': { label: 'So hoch heben Sie ihn', hint: 'Zum Beispiel 1,8 m oder 6 ft, auf einen Wagen. Leer lassen, wenn Sie ihn nur bewegen' },
        'tasks.lift-bales.perYear': { label: 'Ballen im Jahr', hint: 'Zum Beispiel 60' },
      },
    },
    loose: {
      ask: 'Was bewegen Sie, und wie viel?',
      why: 'Eine Schaufel nasser Kies wiegt ein Mehrfaches einer Schaufel Mulch. Von der Größe der Schaufel hängt ab, wie oft Sie fahren.',
      fields: {
        'tasks.move-loose.material': { label: 'Material', options: {
          gravel: 'Kies oder Schotter', sand: 'Sand', topsoil: 'Mutterboden', clay: 'Lehm oder Ton', mulch: 'Rindenmulch', 'wood-chips': 'Hackschnitzel',
          compost: 'Kompost', manure: 'Mist', firewood: 'Brennholz',
        } },
        'tasks.move-loose.volume': { label: 'Wie viel auf einmal', hint: 'Zum Beispiel 15 m³ oder 20 yd³, eine Lkw-Ladung' },
        'tasks.move-loose.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 4' },
      },
    },
    logs: {
      ask: 'Wie groß sind Ihre Stämme?',
      why: 'Frisches Holz ist schwer: Ein Stamm Roteiche, 40 cm dick und 2,4 m lang, wiegt etwa 300 kg (660 lb). Wir rechnen mit dem Gewicht des frischen Holzes der jeweiligen Art.',
      fields: {
        'tasks.handle-logs.weight': { label: 'Schwerstes Stück, falls Sie es wissen', hint: 'Oder nennen Sie unten Art und Größe' },
        'tasks.handle-logs.species': { label: 'Holzart', options: {
          'american-elm': 'Amerikanische Ulme', apple: 'Apfelbaum', ash: 'Esche', beech: 'Buche', birch: 'Birke', 'black-cherry': 'Spätblühende Traubenkirsche', 'black-oak': 'Färbereiche',
          'black-walnut': 'Schwarznuss', cottonwood: 'Kanadische Schwarzpappel', hemlock: 'Kanadische Hemlocktanne', hickory: 'Hickory', honeylocust: 'Gleditschie',
          'live-oak': 'Virginia-Eiche', 'red-maple': 'Rotahorn', 'red-oak': 'Roteiche', 'red-spruce': 'Amerikanische Rotfichte', tamarack: 'Amerikanische Lärche',
          'white-oak': 'Amerikanische Weißeiche', 'yellow-poplar': 'Tulpenbaum',
        } },
        'tasks.handle-logs.diameter': { label: 'Dickster Stamm, Durchmesser', hint: 'Zum Beispiel 40 cm oder 16 Zoll' },
        'tasks.handle-logs.length': { label: 'Längstes Stück', hint: 'Zum Beispiel 2,4 m oder 8 ft' },
        'tasks.handle-logs.height': { label: 'So hoch heben Sie es', hint: 'Zum Beispiel 1,2 m oder 4 ft, auf einen Anhänger' },
        'tasks.handle-logs.perYear': { label: 'Tage im Jahr', hint: 'Zum Beispiel 5' },
      },
    },
    pallets: {
      ask: 'Was wiegen Ihre Paletten, und wie hoch sollen sie?',
      why: 'Die Mitte einer Palette liegt 61 cm (24 Zoll) vor dem Gabelrücken, und die Gabel hat ihr eigenes Gewicht.',
      fields: {
        'tasks.lift-pallets.weight': { label: 'Schwerste Palette', hint: 'Vierzig Sack Futter zu 25 kg sind 1.000 kg, vierzig zu 50 lb sind 2.000 lb' },
        'tasks.lift-pallets.height': { label: 'So hoch heben Sie sie', hint: 'Zum Beispiel 1,2 m oder 4 ft, auf eine Ladefläche' },
        'tasks.lift-pallets.perYear': { label: 'Paletten im Jahr', hint: 'Zum Beispiel 10' },
      },
    },
    digging: {
      ask: 'Wie tief müssen Sie graben?',
      why: 'Nicht jede Baugröße nimmt einen Anbaubagger auf, manche Baureihe erst ab einem bestimmten Jahr, und jeder gräbt verschieden tief.',
      fields: {
        'tasks.dig.depth': { label: 'Tiefe', hint: 'Zum Beispiel 1,8 m oder 6 ft. Vor dem Graben Auskunft über Leitungen im Boden einholen' },
        'tasks.dig.perYear': { label: 'Tage im Jahr', hint: 'Zum Beispiel 3' },
      },
    },
    'drive-snow': {
      ask: 'Wie viel Schnee räumen Sie?',
      why: 'Ein Heckschild schiebt wenig Schnee weg. Hoher Schnee verlangt eine Schneefräse, und die braucht umso mehr Zapfwellenleistung, je breiter sie ist.',
      fields: {
        'tasks.clear-snow.length': { label: 'Länge der Zufahrt', hint: 'Zum Beispiel 120 m oder 400 ft' },
        'tasks.clear-snow.depth': { label: 'Höchster Schnee, den Sie auf einmal räumen', hint: 'Zum Beispiel 20 cm oder 8 Zoll' },
        'tasks.clear-snow.how': { label: 'Womit', options: { blade: 'Mit einem Heckschild', blower: 'Mit einer Schneefräse', either: 'Beides ist recht' } },
        'tasks.clear-snow.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 12' },
      },
    },
    'drive-grading': {
      ask: 'Wie lang ist Ihre Zufahrt?',
      why: 'Ein Planierkasten voll Kies zieht sich schwer. Ob die Räder greifen, hängt vom Gewicht auf den angetriebenen Rädern ab, mehr als von der Leistung.',
      fields: {
        'tasks.grade-drive.length': { label: 'Länge der Zufahrt', hint: 'Zum Beispiel 180 m oder 600 ft' },
        'tasks.grade-drive.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 2' },
      },
    },
    garden: {
      ask: 'Wie groß ist das Gartenland?',
      why: 'Eine Bodenfräse braucht umso mehr Zapfwellenleistung, je breiter sie ist, und sie soll die Spuren der Reifen abdecken.',
      fields: {
        'tasks.till-garden.area': { label: 'Gartenland', hint: 'Zum Beispiel 200 m² oder 2.000 ft²' },
        'tasks.till-garden.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 2' },
      },
    },
    holes: {
      ask: 'Wie oft bohren Sie Pfahllöcher?',
      why: 'Für wenige Löcher im Jahr kann ein gemieteter Erdbohrer weniger kosten als ein eigener.',
      fields: { 'tasks.bore-holes.perYear': { label: 'Tage im Jahr', hint: 'Zum Beispiel 3' } },
    },
    chipping: {
      ask: 'Wie dick sind die Äste, die Sie häckseln?',
      why: 'Ein Holzhäcksler braucht umso mehr Zapfwellenleistung, je dickere Äste er schafft.',
      fields: {
        'tasks.chip-brush.diameter': { label: 'Dickster Ast', hint: 'Zum Beispiel 10 cm oder 4 Zoll' },
        'tasks.chip-brush.perYear': { label: 'Tage im Jahr', hint: 'Zum Beispiel 3' },
      },
    },
    wagon: {
      ask: 'Wie schwer ist der beladene Anhänger?',
      why: 'Der Traktor muss halten und bremsen, was er zieht, und es Ihre steilste Stelle hinaufziehen. Gezogen wird immer am Zugpendel, nie höher.',
      fields: {
        'tasks.tow-wagon.weight': { label: 'Anhänger mit Ladung', hint: 'Zum Beispiel 1.500 kg oder 3.000 lb' },
        'tasks.tow-wagon.brakes': { label: 'Bremsen am Anhänger', options: { none: 'Keine', inertia: 'Auflaufbremse', hydraulic: 'Hydraulische Bremse', air: 'Druckluftbremse' } },
        'tasks.tow-wagon.perYear': { label: 'Tage im Jahr', hint: 'Zum Beispiel 20' },
      },
    },
    spreading: {
      ask: 'Auf wie viel Fläche streuen oder spritzen Sie?',
      why: 'Ein voller Streuer oder Tank hängt am Dreipunkt, und sein Gewicht entlastet die Vorderräder.',
      fields: {
        'tasks.spread-spray.area': { label: 'Fläche', hint: 'Zum Beispiel 2 ha oder 5 Acres' },
        'tasks.spread-spray.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 3' },
      },
    },
    arena: {
      ask: 'Wie groß ist der Reitplatz?',
      why: 'Eine Wiesenschleppe zieht sich leicht; von ihrer Breite hängt ab, wie lange es dauert.',
      fields: {
        'tasks.drag-arena.area': { label: 'Reitplatz', hint: 'Zum Beispiel 1.800 m² oder 20.000 ft²' },
        'tasks.drag-arena.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 100' },
      },
    },
    levelling: {
      ask: 'Wie viel Feld, und welcher Boden?',
      why: 'Eine Scheibenegge zieht sich in Ton schwerer als in Sand. Es kommt auf das Gewicht auf den angetriebenen Rädern und die Zugleistung an.',
      fields: {
        'tasks.level-field.area': { label: 'Feld', hint: 'Zum Beispiel 1,2 ha oder 3 Acres' },
        'land.soil': { label: 'Boden', options: { clay: 'Ton', loam: 'Lehm', sand: 'Sand' } },
        'tasks.level-field.perYear': { label: 'Wie oft im Jahr', hint: 'Zum Beispiel 1' },
      },
    },
    hay: {
      ask: 'Wie viel Heu machen Sie?',
      why: 'Scheibenmähwerk und Ballenpresse brauchen mehr Zapfwellenleistung, als die meisten Kompakttraktoren haben, und eine Ballenpresse braucht auch einen schwereren Traktor.',
      fields: {
        'tasks.make-hay.area': { label: 'Heuwiese', hint: 'Zum Beispiel 3 ha oder 8 Acres' },
        'tasks.make-hay.perYear': { label: 'Schnitte im Jahr', hint: 'Zum Beispiel 2' },
      },
    },
    carrying: {
      ask: 'Wie schwer ist das Gerät?',
      why: 'Je weiter hinten das Gewicht sitzt, desto weniger hebt die Heckhydraulik. Und die Vorderräder brauchen genug Last zum Lenken.',
      fields: {
        'tasks.carry-implement.weight': { label: 'Gewicht', hint: 'Zum Beispiel 300 kg oder 700 lb' },
        'tasks.carry-implement.distance': { label: 'Abstand seiner Mitte hinter den Koppelpunkten der Unterlenker', hint: 'Leer lassen, wenn Sie es nicht wissen: Wir nehmen 61 cm (24 Zoll)' },
      },
    },
    slope: {
      ask: 'Wie steil ist das steilste Stück, das Sie befahren?',
      why: 'Traktoren kippen am häufigsten seitlich um. Wir vergleichen, wie sicher die Traktoren stehen; wir sagen nie, dass ein Hang sicher ist.',
      fields: { 'land.slope': {
        label: 'Hangneigung',
        hint: 'Zum Beispiel 12°. 2 m Anstieg auf 10 m sind etwa 11°',
        options: { flat: 'Eben', rolling: 'Hügelig', steep: 'Steil' },
        hints: { flat: 'Weniger als 90 cm Anstieg auf 10 m', rolling: 'Bis etwa 1,75 m', steep: 'Mehr als das' },
      } },
    },
    ground: {
      ask: 'Wie fest ist Ihr Boden?',
      why: 'Auf weichem Boden rutschen die Reifen und hinterlassen Spuren, und in großer Höhe hat ein Motor weniger Leistung.',
      fields: {
        'land.ground': { label: 'Boden', options: { firm: 'Fest', soft: 'Weich oder bearbeitet', wet: 'Oft nass' } },
        'land.altitude': { label: 'Höhe über dem Meer', hint: 'Nur wenn Sie hoch liegen. Zum Beispiel 1800 m oder 6000 ft' },
      },
    },
    overhead: {
      ask: 'Hängt dort, wo Sie arbeiten, etwas tief?',
      why: 'Der Überrollbügel muss bei der Arbeit aufgestellt sein. Unter einem niedrigen Balken oder Ast müsste man ihn umklappen, und genau dann geschehen die Unfälle.',
      fields: { 'land.overhead': {
        label: 'Höhe über dem Boden', hint: 'Höhe der niedrigsten Stelle, zum Beispiel 2,4 m oder 8 ft',
        options: { open: 'Nein, es ist frei', low: 'Ja: ein Balken, ein Dach oder Äste' },
      } },
    },
    drivers: {
      ask: 'Wer fährt den Traktor?',
      why: 'Wer neu oder jung ist, braucht mehr Spielraum für Fehler, und für junge Leute hat das Gesetz eigene Regeln.',
      fields: {
        'drivers.least': {
          label: 'Wer am wenigsten Erfahrung hat, ist',
          options: { new: 'Neu auf dem Traktor', some: 'Schon etwas gefahren', experienced: 'Erfahren' },
        },
        'drivers.under18': { label: 'Fährt jemand unter 18?' },
        'drivers.limits': { label: 'Fällt jemandem, der fährt, etwas schwer?', options: {
          none: 'Nein', legs: 'Pedale und Kupplung', reach: 'An Hebel heranreichen und aufsteigen', both: 'Beides',
        } },
      },
    },
    storage: {
      ask: 'Wo wird er abgestellt?',
      why: 'Ein zu niedriges oder zu schmales Tor schließt einen Traktor aus, was immer er sonst kann.',
      fields: { 'storage.kind': {
        label: 'Stellplatz', options: { garage: 'In einer Garage', shed: 'In Schuppen oder Scheune', outdoors: 'Im Freien' },
      } },
    },
    door: {
      ask: 'Wie groß ist das Tor, und wie tief ist der Raum?',
      why: 'Wir prüfen die Breite über die Reifen, die Höhe mit zum Einfahren umgeklapptem Überrollbügel und die Länge mit angebautem Frontlader.',
      hint: 'Messen Sie die lichte Öffnung.',
      fields: {
        'storage.doorWidth': { label: 'Torbreite', hint: 'Zum Beispiel 2,4 m oder 8 ft' },
        'storage.doorHeight': { label: 'Torhöhe', hint: 'Zum Beispiel 2 m 10 oder 6 ft 6' },
        'storage.depth': { label: 'Tiefe innen', hint: 'Zum Beispiel 6 m oder 20 ft' },
      },
    },
    gate: {
      ask: 'Wie breit ist die engste Durchfahrt?',
      why: 'Der Traktor muss mit Mähwerk und etwas Platz auf beiden Seiten hindurch.',
      fields: { 'land.gate': { label: 'Engstes Tor oder engste Durchfahrt', hint: 'Zum Beispiel 1,8 m oder 6 ft. Leer lassen, wenn es keine gibt' } },
    },
    more: {
      ask: 'Sollen wir noch auf mehr achten?',
      why: 'Jedes Häkchen bringt ein bis zwei Fragen mehr. Was Sie weglassen, zählt weder für noch gegen eine Maschine.',
      hint: 'Haken Sie an, was Ihnen wichtig ist.',
      fields: { more: { label: 'Weitere Punkte', options: {
        haul: 'Mitnehmen auf dem Anhänger', paying: 'Eine Rate im Monat oder Wartung beim Händler', use: 'Was er über die Jahre kostet', cab: 'Eine Kabine', drive: 'Pedal oder Gänge', extras: 'Komfort für den Fahrer',
      } } },
    },
    haul: {
      ask: 'Soll er auf einem Anhänger transportiert werden?',
      why: 'Traktor, Frontlader und Mähwerk zusammen dürfen nicht mehr wiegen, als Anhänger und Zugfahrzeug erlauben.',
      fields: { 'haul.how': {
        label: 'Transport', options: { never: 'Nein', 'own-trailer': 'Ja, auf meinem eigenen Anhänger', hire: 'Ja, jemand fährt ihn für mich' },
      } },
    },
    trailer: {
      ask: 'Was dürfen Ihr Anhänger und Ihr Zugfahrzeug?',
      why: 'Die Typenschilder von Anhänger und Zugfahrzeug setzen die Grenze. Wir zählen alles zusammen, was mitfährt.',
      hint: 'Lassen Sie leer, was Sie nicht wissen.',
      fields: {
        'haul.trailer.gross': { label: 'Anhänger, zulässiges Gesamtgewicht', hint: 'Auf dem Typenschild, zum Beispiel 3.000 kg oder 7.000 lb' },
        'haul.trailer.empty': { label: 'Anhänger, leer', hint: 'Zum Beispiel 800 kg oder 1.800 lb' },
        'haul.tongueRating': { label: 'Größte Stützlast auf der Kupplungskugel des Zugfahrzeugs', hint: 'In der Betriebsanleitung, zum Beispiel 350 kg oder 750 lb' },
        'haul.trailer.brakes': { label: 'Bremsen am Anhänger', options: { none: 'Keine', inertia: 'Auflaufbremse', hydraulic: 'Elektrische oder hydraulische Bremse', air: 'Druckluftbremse' } },
        'haul.towRating': { label: 'Anhängelast des Zugfahrzeugs', hint: 'In der Betriebsanleitung, zum Beispiel 3.500 kg oder 7.500 lb' },
        'haul.trailer.deckWidth': { label: 'Breite der Ladefläche zwischen den Kotflügeln', hint: 'Zum Beispiel 200 cm oder 6 ft 8' },
        'haul.trailer.deckLength': { label: 'Länge der Ladefläche', hint: 'Zum Beispiel 5,5 m oder 18 ft' },
      },
    },
    budget: {
      ask: 'Was möchten Sie ausgeben?',
      why: 'Wir zählen den Traktor, was er für Ihre Arbeiten braucht und den Einbau zusammen. Gebrauchtpreise überschneiden sich: Ein kleiner mit allem kostet so viel wie ein schlichter größerer.',
      fields: {
        'budget.limit': { label: 'Grenze', hint: 'Zum Beispiel 18.000' },
        'budget.firm': { label: 'Ist das eine feste Grenze?' },
      },
    },
    paying: {
      ask: 'Wie möchten Sie zahlen, und wer soll ihn warten?',
      why: 'Einen Kredit rechnen wir nach den Bedingungen des Händlers, falls er welche genannt hat. Soll er den Traktor warten, sollte es eine Marke sein, die er wartet.',
      fields: {
        'budget.pay': { label: 'Zahlung', options: { cash: 'Auf einmal', loan: 'Mit einem Kredit' } },
        'budget.monthly': { label: 'Das würden Sie höchstens im Monat zahlen', hint: 'Nur bei einem Kredit. Zum Beispiel 350' },
        'budget.service': { label: 'Wartung', options: { self: 'Ich mache sie selbst', dealer: 'Ich bringe ihn zum Händler', pickup: 'Der Händler holt ihn ab' } },
      },
    },
    use: {
      ask: 'Wie viel werden Sie ihn nutzen, und wie lange behalten?',
      why: 'Stunden und Jahre sagen uns, wie viel von seinem Preis jeder Traktor wohl behält.',
      fields: {
        'budget.hoursPerYear': { label: 'Stunden im Jahr', hint: 'Auf kleinen Anwesen sind es meist 50 bis 150' },
        'budget.keepYears': { label: 'Jahre, die Sie ihn behalten', hint: 'Zum Beispiel 7' },
      },
    },
    cab: {
      ask: 'Möchten Sie eine Kabine?',
      why: 'Eine Werkskabine mit Klimaanlage gibt es erst ab bestimmten Ausstattungen. Für andere Baugrößen gibt es vielleicht eine Nachrüstkabine mit Heizung.',
      fields: { 'comfort.cab': {
        label: 'Kabine', options: { none: 'Keine Kabine', heat: 'Mit Heizung', 'heat-and-air': 'Mit Heizung und Klimaanlage' },
      } },
    },
    drive: {
      ask: 'Wie möchten Sie ihn fahren?',
      why: 'Mit dem Fahrpedal gehen Laderarbeit und Mähen am leichtesten. Ein lastschaltbares Wendegetriebe verliert bei langer, gleichmäßiger Arbeit weniger Leistung.',
      fields: { 'comfort.drive': {
        label: 'Getriebe',
        options: { pedal: 'Mit dem Fahrpedal', shuttle: 'Mit Gängen und Wendehebel', any: 'Beides ist recht' },
        hints: { pedal: 'Hydrostat', shuttle: 'Lastschaltbares Wendegetriebe' },
      } },
    },
    extras: {
      ask: 'Was davon hätten Sie gern?',
      why: 'Das gibt es mit den besseren Ausstattungen, und manches lässt sich später nicht nachrüsten.',
      hint: 'Kreuzen Sie an, was Ihnen wichtig ist.',
      fields: { 'comfort.extras': {
        label: 'Extras',
        options: {
          smoothSeat: 'Ein gefederter Sitz', tiltWheel: 'Ein verstellbares Lenkrad', cruise: 'Ein Tempomat', loaderOff: 'Ein Frontlader, der sich ohne Werkzeug abbauen lässt',
          levelLift: 'Ein Frontlader, der die Last waagerecht hält (Parallelführung)', mowerLiftAlone: 'Ein Mähwerk, das sich mit eigenem Hebel ausheben lässt',
          exhaust: 'Ein Motor ohne Partikelfilter',
        },
      } },
    },
    'comfort-musts': {
      ask: 'Was davon muss er haben?',
      why: 'Ein Muss schließt jeden Traktor aus, der es nicht hat. Das andere zählt nur in der Wertung.',
      fields: { 'comfort.must': { label: 'Komfort, der ein Muss ist' } },
    },
    priorities: {
      ask: 'Was ist Ihnen am wichtigsten?',
      why: 'In dieser Reihenfolge gewichten wir die Traktoren, die die Arbeit schaffen, und zeigen Ihnen die Gewichte.',
      fields: { priorities: { label: 'Reihenfolge' } },
    },
  },
  faults: {
    empty: ({ label }) => `${label}: Geben Sie eine Zahl ein, oder wählen Sie „Nicht sicher“.`,
    'not-a-number': ({ label, example }) => `${label}: Das konnten wir nicht als Zahl lesen. Zum Beispiel: ${example}.`,
    'unknown-unit': ({ label, word, units }) => `${label}: Die Einheit „${word}“ kennen wir hier nicht. Möglich sind ${units}.`,
    ambiguous: ({ label, one, other }) => `${label}: Meinen Sie ${one} oder ${other}? Wählen Sie unten.`,
    'too-small': ({ label, from, example }) => `${label}: Das scheint zu klein. Mindestens ${from}. Zum Beispiel: ${example}.`,
    'too-big': ({ label, to, example }) => `${label}: Das scheint zu groß. Höchstens ${to}. Zum Beispiel: ${example}.`,
    'amount-wanted': ({ label, example }) => `${label}: Geben Sie die Höhe ein, zum Beispiel ${example}, oder wählen Sie „Nicht sicher“.`,
  },
  wizard: {
    step: (now, atMost) => `Schritt ${now} von höchstens ${atMost}`,
    stepOnly: (now) => `Schritt ${now}`,
    standing: (count, of) => `Noch ${count} von ${of} Traktoren in der Auswahl`,
    why: 'Warum wir fragen',
    notSure: 'Nicht sicher',
    next: 'Weiter',
    back: 'Zurück',
    seeResult: 'Bisheriges Ergebnis ansehen',
    backToQuestions: 'Weiter mit den Fragen',
    thereIsAProblem: 'Etwas stimmt noch nicht',
    chooseOne: 'Wählen Sie eine Antwort, oder „Nicht sicher“.',
    understood: (amount) => `Gelesen als ${amount}`,
    yes: 'Ja',
    no: 'Nein',
    place: (rank) => ['Am wichtigsten', 'An zweiter Stelle', 'An dritter Stelle'][rank - 1] ?? `An ${rank}. Stelle`,
    nothingChosen: 'Nichts weiter',
    choose: 'Bitte wählen …',
    unitsUs: 'Fuß und Pfund',
    unitsMetric: 'Meter und Kilogramm',
    unitsLabel: 'Einheiten',
    languageLabel: 'Sprache',
    moneyHint: (currency) => `in ${currency}`,
    startAgain: 'Neu beginnen',
    undoStartAgain: 'Meine Antworten zurückholen',
    loading: 'Die Modellübersicht wird geladen …',
    skipped: {
      'one-left': (machines) => `Nicht gefragt: Nur ${machines} kann noch passen, es gibt also nichts zu ordnen.`,
      'same-order': () => 'Nicht gefragt: Was immer Sie voranstellen, dieselben Maschinen stehen in derselben Reihenfolge vorn.',
      'met-anyway': () => 'Nicht gefragt: Jede Maschine hier hat, was Sie sich wünschen, oder kann es bekommen; ein Muss ändert daran nichts.',
    },
    catalogueMissing: 'Die Modellübersicht lässt sich gerade nicht laden. Bitte rufen Sie den Händler an, schreiben Sie ihm, oder versuchen Sie es später noch einmal.',
    catalogueFaulty: 'Die Modellübersicht hat einen Fehler, darum können wir nicht damit rechnen. Bitte rufen Sie den Händler an, oder schreiben Sie ihm.',
    catalogueEmpty: 'Der Händler führt zurzeit keinen Traktor auf. Bitte rufen Sie ihn an, oder schreiben Sie ihm.',
    tryAgain: 'Noch einmal versuchen',
  },
};
