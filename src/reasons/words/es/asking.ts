import type { AskingWords } from '../words.ts';

/** "Y" turns into "e" before the sound of an i. */
const and = (next: string) => (/^[“(]?h?[ií](?![aeo])/i.test(next) ? 'e' : 'y');
const list = (items: readonly string[]) =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${and(items.at(-1)!)} ${items.at(-1)}`;

export const asking: AskingWords = {
  language: 'es',
  direction: 'ltr',
  decimalMark: '.',
  list,
  units: {
    yd: { one: 'yarda', other: 'yardas' }, ft: { one: 'pie', other: 'pies' }, in: { one: 'pulgada', other: 'pulgadas' }, mi: { one: 'milla', other: 'millas' },
    acre: { one: 'acre', other: 'acres' }, 'acre/h': 'acres por hora', 'ha/h': 'ha por hora', h: { one: 'hora', other: 'horas' }, hours: { one: 'hora', other: 'horas' }, deg: '°', 'per-year': { one: 'hora al año', other: 'horas al año' }, years: { one: 'año', other: 'años' },
    'm2/s': 'm²/s', m2: 'm²', m3: 'm³', ft2: 'ft²', ft3: 'ft³', yd3: 'yd³', 'lb/ft3': 'lb por ft³', 'lb/yd3': 'lb por yd³', 'kg/m3': 'kg/m³', 'hp/ft': 'hp por pie', 'hp/in': 'hp por pulgada', 'lbf/ft': 'lbf por pie',
    percent: '%', months: { one: 'mes', other: 'meses' }, count: '', 'm/s2': 'm/s²', gpm: 'gal/min', 'gal/h': 'gal por hora', 'L/h': 'L por hora', times: { one: 'vez', other: 'veces' },
  },
  tasks: {
    'mow-lawn': 'cortar el césped', 'cut-rough': 'cortar pasto alto o maleza', 'lift-bales': 'levantar pacas redondas', 'lift-pallets': 'levantar tarimas',
    'move-loose': 'mover grava, tierra o mantillo', dig: 'excavar con retroexcavadora', 'till-garden': 'labrar un huerto', 'grade-drive': 'nivelar un camino de entrada',
    'clear-snow': 'quitar nieve', 'handle-logs': 'mover troncos', 'bore-holes': 'perforar hoyos para postes', 'chip-brush': 'triturar ramas',
    'carry-implement': 'llevar un implemento pesado en el enganche', 'tow-wagon': 'tirar de un remolque agrícola', 'spread-spray': 'esparcir o rociar',
    'make-hay': 'hacer heno', 'drag-arena': 'emparejar una pista de equitación', 'level-field': 'nivelar un campo',
  },
  wishes: {
    cab: 'Cabina', drive: 'La transmisión que usted eligió', smoothSeat: 'Asiento con suspensión', tiltWheel: 'Volante inclinable', cruise: 'Control de crucero',
    loaderOff: 'Cargador frontal que se quita sin herramientas', levelLift: 'Cargador frontal que mantiene nivelada la carga',
    mowerLiftAlone: 'Segadora que se levanta con su propia palanca', exhaust: 'Motor sin filtro de partículas',
    thirdFunction: 'Tercera función en el cargador frontal',
  },
  criteria: {
    price: 'Precio bajo', time: 'Menos tiempo cortando el césped', headroom: 'Fuerza de sobra', fit: 'Adecuado para mi terreno',
    comfort: 'Comodidad', resale: 'Que conserve su valor',
  },
  questions: {
    tasks: {
      ask: '¿Qué quiere hacer con el tractor?',
      why: 'Cada trabajo le exige algo al tractor: fuerza de levante, ancho, potencia o algún equipo especial. Solo haremos más preguntas sobre los trabajos que usted marque.',
      hint: 'Marque todos los que correspondan.',
      fields: { tasks: {
        label: 'Trabajos',
        options: {
          'mow-lawn': 'Cortar el césped', 'cut-rough': 'Cortar potreros, hierbas o maleza', 'lift-bales': 'Mover o apilar pacas redondas', 'lift-pallets': 'Levantar tarimas',
          'move-loose': 'Mover grava, tierra o mantillo', 'handle-logs': 'Mover troncos', 'clear-snow': 'Quitar nieve', 'grade-drive': 'Nivelar un camino de grava',
          'till-garden': 'Labrar un huerto', dig: 'Excavar con retroexcavadora', 'bore-holes': 'Perforar hoyos para postes', 'chip-brush': 'Triturar ramas', 'tow-wagon': 'Tirar de un remolque agrícola',
          'spread-spray': 'Esparcir o rociar', 'drag-arena': 'Emparejar una pista de equitación', 'level-field': 'Pasar la rastra o nivelar un campo', 'make-hay': 'Hacer heno',
          'carry-implement': 'Llevar atrás otro implemento pesado',
        },
        hints: { dig: 'Zanjas, cimientos, tocones', 'make-hay': 'Segar y hacer pacas cuadradas pequeñas' },
      } },
    },
    musts: {
      ask: '¿Cuáles de estos trabajos son indispensables?',
      why: 'Un trabajo indispensable descarta todos los tractores que no puedan hacerlo. Los demás solo cuentan para la clasificación.',
      hint: 'Deje lo demás sin marcar.',
      fields: { 'tasks.must': { label: 'Trabajos indispensables' } },
    },
    lawn: {
      ask: '¿Cuánto césped corta?',
      why: 'La superficie, los obstáculos y el tiempo que usted tiene nos dicen qué ancho de segadora necesita.',
      fields: {
        'land.mown': { label: 'Césped', hint: 'Por ejemplo, 2 acres o 0.8 ha' },
        'land.obstacles': {
          label: 'Árboles, jardineras y rincones', options: { open: 'Casi todo despejado', some: 'Algunos', many: 'Muchos' },
        },
        'tasks.mow-lawn.hours': { label: 'Lo más que quiere tardar en cada corte', hint: 'Por ejemplo, 2 horas o 1 h 30' },
        'tasks.mow-lawn.perYear': { label: 'Cortes al año', hint: 'Por ejemplo, 25' },
      },
    },
    deck: {
      ask: '¿Dónde prefiere la segadora?',
      why: 'Una segadora ventral necesita una toma de fuerza (TDF) media, y algunos tamaños de tractor no pueden tenerla. Una segadora trasera trabaja con cualquier tractor que tenga la potencia necesaria.',
      fields: { 'tasks.mow-lawn.deck': {
        label: 'Segadora',
        options: { belly: 'Debajo del tractor (ventral)', rear: 'Detrás del tractor', either: 'Cualquiera de las dos' },
        hints: { belly: 'Gira cerca de los árboles', rear: 'Se quita rápido' },
      } },
    },
    rough: {
      ask: '¿Qué crece en el terreno sin cuidar?',
      why: 'Por cada pie de ancho, la maleza leñosa pide más potencia en la TDF que el pasto.',
      fields: {
        'tasks.cut-rough.growth': { label: 'Vegetación', options: { grass: 'Pasto y hierbas', brush: 'Matorral y arbolitos' } },
        'land.rough': { label: 'Cuánto terreno es', hint: 'Por ejemplo, 5 acres o 2 ha' },
      },
    },
    bales: {
      ask: '¿Cuánto pesan sus pacas y a qué altura las levanta?',
      why: 'La paca queda muy por delante de los pernos del cargador; por eso un cargador frontal levanta menos de lo que dice su folleto. La altura descarta los cargadores bajos.',
      fields: {
        'tasks.lift-bales.weight': { label: 'Paca más pesada', hint: 'Una paca redonda de 4 × 4 pies (1.2 m) suele pesar de 400 a 800 lb (180 a 360 kg); una de 5 × 5 pies (1.5 m), de 800 a 1,500 lb (360 a 680 kg)' },
        'tasks.lift-bales.diameter': { label: 'O su tamaño: el diámetro', hint: 'Si no sabe el peso. Por ejemplo, 5 pies o 1.5 m' },
        'tasks.lift-bales.width': { label: 'Y su ancho', hint: 'Por ejemplo, 4 pies o 1.2 m' },
        'tasks.lift-bales.hay': { label: 'Heno', options: { dry: 'Seco', wrapped: 'Envuelto y húmedo' } },
        'tasks.lift-bales.height': { label: 'A qué altura la levanta', hint: 'Por ejemplo, 6 pies o 1.8 m, sobre un remolque. Déjelo vacío si solo las mueve' },
        'tasks.lift-bales.perYear': { label: 'Pacas al año', hint: 'Por ejemplo, 60' },
      },
    },
    loose: {
      ask: '¿Qué mueve y cuánto?',
      why: 'Un cucharón de grava mojada pesa varias veces más que uno de mantillo. El tamaño del cucharón dice cuántos viajes hacen falta.',
      fields: {
        'tasks.move-loose.material': { label: 'Material', options: {
          gravel: 'Grava o piedra', sand: 'Arena', topsoil: 'Tierra vegetal', clay: 'Arcilla', mulch: 'Mantillo de corteza', 'wood-chips': 'Astillas de madera',
          compost: 'Composta', manure: 'Estiércol', firewood: 'Leña',
        } },
        'tasks.move-loose.volume': { label: 'Cuánto cada vez', hint: 'Por ejemplo, 20 yd³ o 15 m³, un camión de volteo' },
        'tasks.move-loose.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 4' },
      },
    },
    logs: {
      ask: '¿Qué tan grandes son sus troncos?',
      why: 'La madera verde pesa mucho: un tronco de roble rojo de 16 pulgadas (41 cm) de grueso y 8 pies (2.4 m) de largo pesa cerca de 700 lb (320 kg). Usamos el peso de la madera verde de cada especie.',
      fields: {
        'tasks.handle-logs.weight': { label: 'La pieza más pesada, si lo sabe', hint: 'O indique abajo la especie y el tamaño' },
        'tasks.handle-logs.species': { label: 'Especie de madera', options: {
          'american-elm': 'Olmo americano', apple: 'Manzano', ash: 'Fresno', beech: 'Haya', birch: 'Abedul', 'black-cherry': 'Cerezo negro', 'black-oak': 'Roble negro',
          'black-walnut': 'Nogal negro', cottonwood: 'Álamo', hemlock: 'Tsuga del Canadá', hickory: 'Nogal americano (hickory)', honeylocust: 'Acacia de tres espinas',
          'live-oak': 'Roble de Virginia (encino)', 'red-maple': 'Arce rojo', 'red-oak': 'Roble rojo', 'red-spruce': 'Pícea roja', tamarack: 'Alerce americano',
          'white-oak': 'Roble blanco', 'yellow-poplar': 'Tulípero',
        } },
        'tasks.handle-logs.diameter': { label: 'Diámetro del tronco más grueso', hint: 'Por ejemplo, 16 pulgadas o 40 cm' },
        'tasks.handle-logs.length': { label: 'La pieza más larga', hint: 'Por ejemplo, 8 pies o 2.4 m' },
        'tasks.handle-logs.height': { label: 'A qué altura la levanta', hint: 'Por ejemplo, 4 pies o 1.2 m, sobre un remolque' },
        'tasks.handle-logs.perYear': { label: 'Días al año', hint: 'Por ejemplo, 5' },
      },
    },
    pallets: {
      ask: '¿Cuánto pesan sus tarimas y a qué altura las levanta?',
      why: 'El centro de una tarima queda 24 pulgadas (61 cm) por delante del respaldo de las horquillas, y las horquillas también pesan.',
      fields: {
        'tasks.lift-pallets.weight': { label: 'Tarima más pesada', hint: 'Cuarenta sacos de alimento de 50 lb son 2,000 lb (910 kg)' },
        'tasks.lift-pallets.height': { label: 'A qué altura la levanta', hint: 'Por ejemplo, 4 pies o 1.2 m, sobre una camioneta' },
        'tasks.lift-pallets.perYear': { label: 'Tarimas al año', hint: 'Por ejemplo, 10' },
      },
    },
    digging: {
      ask: '¿Qué profundidad necesita excavar?',
      why: 'No todos los tamaños de tractor admiten una retroexcavadora; en algunas series, solo desde cierto año. Y cada una llega a su propia profundidad.',
      fields: {
        'tasks.dig.depth': { label: 'Profundidad', hint: 'Por ejemplo, 6 pies o 1.8 m. Antes de excavar, pregunte por las líneas enterradas' },
        'tasks.dig.perYear': { label: 'Días al año', hint: 'Por ejemplo, 3' },
      },
    },
    'drive-snow': {
      ask: '¿Cuánta nieve quita?',
      why: 'Una cuchilla empuja una nevada ligera. La nieve profunda pide una sopladora, y esta pide potencia en la TDF por cada pie de ancho.',
      fields: {
        'tasks.clear-snow.length': { label: 'Largo del camino de entrada', hint: 'Por ejemplo, 400 pies o 120 m' },
        'tasks.clear-snow.depth': { label: 'La nevada más profunda que quita de una vez', hint: 'Por ejemplo, 8 pulgadas o 20 cm' },
        'tasks.clear-snow.how': { label: 'Con qué', options: { blade: 'Una cuchilla', blower: 'Una sopladora', either: 'Cualquiera de las dos' } },
        'tasks.clear-snow.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 12' },
      },
    },
    'drive-grading': {
      ask: '¿Qué largo tiene su camino de entrada?',
      why: 'Una caja niveladora llena de grava opone mucha resistencia. Que las ruedas agarren depende más del peso sobre las ruedas motrices que de la potencia.',
      fields: {
        'tasks.grade-drive.length': { label: 'Largo del camino de entrada', hint: 'Por ejemplo, 600 pies o 180 m' },
        'tasks.grade-drive.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 2' },
      },
    },
    garden: {
      ask: '¿Qué tan grande es el huerto?',
      why: 'Un rotocultivador pide potencia en la TDF por cada pie de ancho, y debe cubrir las huellas de las llantas.',
      fields: {
        'tasks.till-garden.area': { label: 'Huerto', hint: 'Por ejemplo, 2,000 ft² o 200 m²' },
        'tasks.till-garden.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 2' },
      },
    },
    holes: {
      ask: '¿Cada cuánto perfora hoyos para postes?',
      why: 'Para unos pocos hoyos al año, un ahoyador alquilado puede costar menos que uno propio.',
      fields: { 'tasks.bore-holes.perYear': { label: 'Días al año', hint: 'Por ejemplo, 3' } },
    },
    chipping: {
      ask: '¿Qué tan gruesas son las ramas que tritura?',
      why: 'Cuanto más gruesa es la rama para la que está hecha una trituradora, más potencia pide en la TDF.',
      fields: {
        'tasks.chip-brush.diameter': { label: 'Rama más gruesa', hint: 'Por ejemplo, 4 pulgadas o 10 cm' },
        'tasks.chip-brush.perYear': { label: 'Días al año', hint: 'Por ejemplo, 3' },
      },
    },
    wagon: {
      ask: '¿Cuánto pesa el remolque agrícola cargado?',
      why: 'El tractor debe sujetar y frenar lo que remolca, y subirlo por su terreno más empinado. Se remolca siempre desde la barra de tiro, nunca desde más arriba.',
      fields: {
        'tasks.tow-wagon.weight': { label: 'Remolque con su carga', hint: 'Por ejemplo, 3,000 lb o 1,400 kg' },
        'tasks.tow-wagon.brakes': { label: 'Frenos del remolque', options: { none: 'Sin frenos', inertia: 'Frenos de inercia', hydraulic: 'Frenos hidráulicos', air: 'Frenos de aire' } },
        'tasks.tow-wagon.perYear': { label: 'Días al año', hint: 'Por ejemplo, 20' },
      },
    },
    spreading: {
      ask: '¿En cuánto terreno esparce o rocía?',
      why: 'Una tolva o un tanque lleno cuelga del enganche, y su peso descarga las ruedas delanteras.',
      fields: {
        'tasks.spread-spray.area': { label: 'Terreno', hint: 'Por ejemplo, 5 acres o 2 ha' },
        'tasks.spread-spray.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 3' },
      },
    },
    arena: {
      ask: '¿Qué tan grande es la pista de equitación?',
      why: 'Una rastra de arrastre opone poca resistencia; su ancho decide cuánto se tarda.',
      fields: {
        'tasks.drag-arena.area': { label: 'Pista', hint: 'Por ejemplo, 20,000 ft² o 1,900 m²' },
        'tasks.drag-arena.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 100' },
      },
    },
    levelling: {
      ask: '¿Cuánto campo es y qué suelo tiene?',
      why: 'Una rastra de discos opone más resistencia en arcilla que en arena. Deciden el peso sobre las ruedas motrices y la potencia en la barra de tiro.',
      fields: {
        'tasks.level-field.area': { label: 'Campo', hint: 'Por ejemplo, 3 acres o 1.2 ha' },
        'land.soil': { label: 'Suelo', options: { clay: 'Arcilla', loam: 'Franco', sand: 'Arena' } },
        'tasks.level-field.perYear': { label: 'Veces al año', hint: 'Por ejemplo, 1' },
      },
    },
    hay: {
      ask: '¿Cuánto heno hace?',
      why: 'Una segadora de discos y una empacadora piden más potencia en la TDF de la que tiene la mayoría de los tractores compactos, y una empacadora además necesita un tractor más pesado.',
      fields: {
        'tasks.make-hay.area': { label: 'Terreno para heno', hint: 'Por ejemplo, 8 acres o 3 ha' },
        'tasks.make-hay.perYear': { label: 'Cortes al año', hint: 'Por ejemplo, 2' },
      },
    },
    carrying: {
      ask: '¿Cuánto pesa el implemento?',
      why: 'Cuanto más atrás está el peso, menos levanta el enganche; y las ruedas delanteras deben conservar carga suficiente para dirigir el tractor.',
      fields: {
        'tasks.carry-implement.weight': { label: 'Peso', hint: 'Por ejemplo, 700 lb o 320 kg' },
        'tasks.carry-implement.distance': { label: 'Distancia de su centro detrás de las rótulas del enganche', hint: 'Déjelo vacío si no lo sabe: usamos 24 pulgadas (61 cm)' },
      },
    },
    slope: {
      ask: '¿Qué tan empinado es el terreno más empinado por el que va a conducir?',
      why: 'Los tractores vuelcan de lado más que de ninguna otra forma. Comparamos qué tan estables son los tractores; nunca decimos que una pendiente es segura.',
      fields: { 'land.slope': {
        label: 'Pendiente',
        hint: 'Por ejemplo, 12°. Subir 2 pies en 10 pies (2 m en 10 m) son cerca de 11°',
        options: { flat: 'Plano', rolling: 'Ondulado', steep: 'Empinado' },
        hints: { flat: 'Sube menos de 10 pulgadas en 10 pies', rolling: 'Sube hasta cerca de 21 pulgadas', steep: 'Más que eso' },
      } },
    },
    ground: {
      ask: '¿Qué tan firme es su suelo?',
      why: 'En suelo blando las llantas patinan y dejan huellas; y a gran altitud el motor tiene menos potencia.',
      fields: {
        'land.ground': { label: 'Suelo', options: { firm: 'Firme', soft: 'Blando o labrado', wet: 'Mojado con frecuencia' } },
        'land.altitude': { label: 'Altitud sobre el nivel del mar', hint: 'Solo si vive en un lugar alto. Por ejemplo, 6,000 pies o 1,800 m' },
      },
    },
    overhead: {
      ask: '¿Hay algo bajo por encima de donde va a trabajar?',
      why: 'La barra antivuelco debe estar levantada mientras se trabaja. Una viga o una rama baja obligaría a plegarla, y es entonces cuando hay heridos.',
      fields: { 'land.overhead': {
        label: 'Por encima', hint: 'Altura de lo más bajo; por ejemplo, 8 pies o 2.4 m',
        options: { open: 'No, está despejado', low: 'Sí: una viga, un techo o ramas' },
      } },
    },
    drivers: {
      ask: '¿Quién lo va a conducir?',
      why: 'Quien es joven o no tiene experiencia necesita más margen para equivocarse, y la ley tiene reglas para los jóvenes.',
      fields: {
        'drivers.least': {
          label: 'La persona con menos experiencia',
          options: { new: 'Nunca ha usado un tractor', some: 'Ha conducido algo', experienced: 'Tiene experiencia' },
        },
        'drivers.under18': { label: '¿Lo va a conducir algún menor de 18 años?' },
        'drivers.limits': { label: '¿Hay algo que le cueste trabajo a quien conduce?', options: {
          none: 'No', legs: 'Los pedales y el embrague', reach: 'Alcanzar las palancas y subir', both: 'Ambas cosas',
        } },
      },
    },
    storage: {
      ask: '¿Dónde lo va a guardar?',
      why: 'Una puerta demasiado baja o estrecha descarta un tractor, por bueno que sea en lo demás.',
      fields: { 'storage.kind': {
        label: 'Lugar', options: { garage: 'En un garaje', shed: 'En un cobertizo o granero', outdoors: 'Al aire libre' },
      } },
    },
    door: {
      ask: '¿Qué medidas tiene la puerta y qué fondo tiene el espacio?',
      why: 'Revisamos el ancho sobre las llantas, la altura con la barra antivuelco plegada para entrar y el largo con el cargador frontal puesto.',
      hint: 'Mida el hueco libre.',
      fields: {
        'storage.doorWidth': { label: 'Ancho de la puerta', hint: 'Por ejemplo, 8 pies o 2.4 m' },
        'storage.doorHeight': { label: 'Altura de la puerta', hint: 'Por ejemplo, 6 pies 6, 7 pies o 2.1 m' },
        'storage.depth': { label: 'Fondo interior', hint: 'Por ejemplo, 20 pies o 6 m' },
      },
    },
    gate: {
      ask: '¿Qué ancho tiene el portón más estrecho?',
      why: 'El tractor debe pasar con la segadora puesta y algo de espacio a cada lado.',
      fields: { 'land.gate': { label: 'Portón o paso más estrecho', hint: 'Por ejemplo, 6 pies o 1.8 m. Déjelo vacío si no hay ninguno' } },
    },
    more: {
      ask: '¿Hay algo más que debamos mirar?',
      why: 'Cada casilla trae una o dos preguntas más. Lo que deje fuera no cuenta a favor ni en contra de una máquina.',
      hint: 'Marque lo que le importa.',
      fields: { more: { label: 'Otros puntos', options: {
        haul: 'Llevarlo en un remolque', paying: 'Un pago al mes, o servicio con el vendedor', use: 'Lo que cuesta con los años', cab: 'Una cabina', drive: 'Pedal o marchas', extras: 'Comodidad para el conductor',
      } } },
    },
    haul: {
      ask: '¿Lo va a transportar en un remolque?',
      why: 'El tractor, el cargador y la segadora juntos no deben pasar de lo que el remolque y la camioneta pueden llevar.',
      fields: { 'haul.how': {
        label: 'Transporte', options: { never: 'No', 'own-trailer': 'Sí, en mi propio remolque', hire: 'Sí, alguien me lo transporta' },
      } },
    },
    trailer: {
      ask: '¿Cuánto pueden llevar su remolque y su camioneta?',
      why: 'Las placas del remolque y de la camioneta fijan el límite. Sumamos todo lo que viaja junto.',
      hint: 'Deje vacío lo que no sepa.',
      fields: {
        'haul.trailer.gross': { label: 'Remolque, peso bruto máximo (GVWR)', hint: 'En su placa; por ejemplo, 7,000 lb o 3,200 kg' },
        'haul.trailer.empty': { label: 'Remolque vacío', hint: 'Por ejemplo, 1,800 lb o 800 kg' },
        'haul.tongueRating': { label: 'Lo más que puede cargar la bola de enganche de la camioneta', hint: 'En su manual; por ejemplo, 750 lb o 340 kg' },
        'haul.trailer.brakes': { label: 'Frenos del remolque', options: { none: 'Sin frenos', inertia: 'Frenos de inercia', hydraulic: 'Frenos eléctricos o hidráulicos', air: 'Frenos de aire' } },
        'haul.towRating': { label: 'Capacidad de remolque de la camioneta', hint: 'En su manual; por ejemplo, 7,500 lb o 3,400 kg' },
        'haul.trailer.deckWidth': { label: 'Ancho de la plataforma entre los guardabarros', hint: 'Por ejemplo, 80 pulgadas o 200 cm' },
        'haul.trailer.deckLength': { label: 'Largo de la plataforma', hint: 'Por ejemplo, 18 pies o 5.5 m' },
      },
    },
    budget: {
      ask: '¿Cuánto quiere gastar?',
      why: 'Sumamos el tractor, lo que necesita para sus trabajos y su instalación. Los precios de los usados se traslapan: uno pequeño con todo cuesta lo mismo que uno más grande y sencillo.',
      fields: {
        'budget.limit': { label: 'Límite', hint: 'Por ejemplo, 18,000' },
        'budget.firm': { label: '¿Es un límite firme?' },
      },
    },
    paying: {
      ask: '¿Cómo va a pagar y quién le dará servicio?',
      why: 'Calculamos un préstamo con las condiciones del propio distribuidor, si las dio. Si el distribuidor va a darle servicio, conviene que sea una marca que él atienda.',
      fields: {
        'budget.pay': { label: 'Pago', options: { cash: 'De contado', loan: 'Con un préstamo' } },
        'budget.monthly': { label: 'Lo más que pagaría al mes', hint: 'Solo para un préstamo. Por ejemplo, 350' },
        'budget.service': { label: 'Servicio', options: { self: 'Lo hago yo', dealer: 'Lo llevo al distribuidor', pickup: 'El distribuidor lo recoge' } },
      },
    },
    use: {
      ask: '¿Cuánto lo va a usar y por cuánto tiempo piensa conservarlo?',
      why: 'Las horas y los años nos dicen cuánto de su precio es probable que conserve cada tractor.',
      fields: {
        'budget.hoursPerYear': { label: 'Horas al año', hint: 'En propiedades pequeñas, lo común es de 50 a 150' },
        'budget.keepYears': { label: 'Años que lo va a conservar', hint: 'Por ejemplo, 7' },
      },
    },
    cab: {
      ask: '¿Quiere cabina?',
      why: 'Una cabina de fábrica con aire acondicionado existe solo a partir de ciertas versiones. Para otros tamaños puede haber una cabina de otra marca con calefacción.',
      fields: { 'comfort.cab': {
        label: 'Cabina', options: { none: 'Sin cabina', heat: 'Con calefacción', 'heat-and-air': 'Con calefacción y aire acondicionado' },
      } },
    },
    drive: {
      ask: '¿Cómo quiere conducirlo?',
      why: 'Un pedal es lo más fácil para trabajar con el cargador y cortar el césped. Un inversor de marcha pierde menos potencia en trabajos largos y constantes.',
      fields: { 'comfort.drive': {
        label: 'Transmisión',
        options: { pedal: 'Con pedal', shuttle: 'Con cambios y palanca', any: 'Cualquiera de las dos' },
        hints: { pedal: 'Hidrostática', shuttle: 'Inversor de marcha (power reverser)' },
      } },
    },
    extras: {
      ask: '¿Cuáles de estas cosas le gustarían?',
      why: 'Vienen en las versiones mejor equipadas, y algunas no se pueden añadir después.',
      hint: 'Marque las que le interesen.',
      fields: { 'comfort.extras': {
        label: 'Extras',
        options: {
          smoothSeat: 'Asiento con suspensión', tiltWheel: 'Volante inclinable', cruise: 'Control de crucero', loaderOff: 'Cargador frontal que se quita sin herramientas',
          levelLift: 'Cargador frontal que mantiene nivelada la carga', mowerLiftAlone: 'Segadora que se levanta con su propia palanca', exhaust: 'Motor sin filtro de partículas',
        },
      } },
    },
    'comfort-musts': {
      ask: '¿Cuáles de ellas son indispensables?',
      why: 'Lo indispensable descarta todos los tractores que no lo tienen. Lo demás solo cuenta para la clasificación.',
      fields: { 'comfort.must': { label: 'Comodidades indispensables' } },
    },
    priorities: {
      ask: '¿Qué es lo más importante para usted?',
      why: 'En este orden valoramos los tractores que pueden hacer el trabajo, y le mostramos cuánto cuenta cada cosa.',
      fields: { priorities: { label: 'Orden' } },
    },
  },
  faults: {
    empty: ({ label }) => `${label}: escriba un número o elija “No sé”.`,
    'not-a-number': ({ label, example }) => `${label}: no pudimos leer eso como un número. Por ejemplo: ${example}.`,
    'unknown-unit': ({ label, word, units }) => `${label}: aquí no conocemos la unidad “${word}”. Puede usar ${units}.`,
    ambiguous: ({ label, one, other }) => `${label}: ¿quiso decir ${one} o ${other}? Elija abajo.`,
    'too-small': ({ label, from, example }) => `${label}: parece demasiado poco. Debe ser al menos ${from}. Por ejemplo: ${example}.`,
    'too-big': ({ label, to, example }) => `${label}: parece demasiado. Puede ser como máximo ${to}. Por ejemplo: ${example}.`,
    'amount-wanted': ({ label, example }) => `${label}: escriba la altura, por ejemplo ${example}, o elija “No sé”.`,
  },
  wizard: {
    step: (now, atMost) => `Paso ${now} de ${atMost} como máximo`,
    stepOnly: (now) => `Paso ${now}`,
    standing: (count, of) => (count === 1 ? `1 de ${of} tractores sigue en la lista` : `${count} de ${of} tractores siguen en la lista`),
    why: 'Por qué lo preguntamos',
    notSure: 'No sé',
    next: 'Continuar',
    back: 'Atrás',
    seeResult: 'Ver el resultado hasta ahora',
    backToQuestions: 'Seguir con las preguntas',
    thereIsAProblem: 'Hay un problema',
    chooseOne: 'Elija una opción o “No sé”.',
    understood: (amount) => `Leído como ${amount}`,
    yes: 'Sí',
    no: 'No',
    place: (rank) => ['Lo más importante', 'En segundo lugar', 'En tercer lugar'][rank - 1] ?? `En el lugar ${rank}`,
    nothingChosen: 'Nada más',
    choose: 'Elija…',
    unitsUs: 'pies y libras',
    unitsMetric: 'metros y kilogramos',
    unitsLabel: 'Unidades',
    languageLabel: 'Idioma',
    moneyHint: (currency) => `en ${currency}`,
    startAgain: 'Empezar de nuevo',
    undoStartAgain: 'Recuperar mis respuestas',
    loading: 'Cargando el catálogo…',
    skipped: {
      'one-left': (machines) => `No se preguntó: solo ${machines} puede servir todavía, así que no hay nada que ordenar.`,
      'same-order': () => 'No se preguntó: ponga lo que ponga primero, las mismas máquinas quedan primero y en el mismo orden.',
      'met-anyway': () => 'No se preguntó: todas las máquinas de aquí tienen lo que usted desea o lo admiten, así que exigirlo no cambia nada.',
    },
    catalogueMissing: 'El catálogo no se puede cargar en este momento. Llame o escriba al distribuidor, o inténtelo más tarde.',
    catalogueFaulty: 'El catálogo tiene un error, así que no podemos calcular con él. Llame o escriba al distribuidor.',
    catalogueEmpty: 'El distribuidor no ofrece ningún tractor en este momento. Llámelo o escríbale.',
    tryAgain: 'Intentarlo de nuevo',
  },
};
