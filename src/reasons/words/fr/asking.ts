import type { AskingWords } from '../words.ts';

const list = (items: readonly string[]) =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} et ${items.at(-1)}`;

export const asking: AskingWords = {
  language: 'fr',
  direction: 'ltr',
  decimalMark: ',',
  list,
  units: {
    yd: { one: 'verge', other: 'verges' }, ft: { one: 'pied', other: 'pieds' }, in: { one: 'pouce', other: 'pouces' }, mi: { one: 'mille', other: 'milles' },
    acre: { one: 'acre', other: 'acres' }, 'acre/h': { one: 'acre à l’heure', other: 'acres à l’heure' }, 'ha/h': 'ha à l’heure', h: { one: 'heure', other: 'heures' }, hours: { one: 'heure', other: 'heures' }, deg: '°', 'per-year': { one: 'heure par an', other: 'heures par an' }, years: { one: 'an', other: 'ans' },
    'm2/s': 'm²/s', m2: 'm²', m3: 'm³', ft2: 'ft²', ft3: 'ft³', yd3: 'yd³', 'lb/ft3': 'lb/ft³', 'lb/yd3': 'lb/yd³', 'kg/m3': 'kg/m³', 'hp/ft': 'hp par pied', 'hp/in': 'hp par pouce', 'lbf/ft': 'lbf par pied',
    rpm: 'tr/min', percent: '%', months: { one: 'mois', other: 'mois' }, count: '', 'm/s2': 'm/s²', gpm: 'gal/min', 'gal/h': 'gal à l’heure', 'L/h': 'L à l’heure', times: 'fois',
  },
  tasks: {
    'mow-lawn': 'tondre une pelouse', 'cut-rough': 'faucher des herbes hautes ou des broussailles', 'lift-bales': 'lever des balles rondes', 'lift-pallets': 'lever des palettes',
    'move-loose': 'déplacer du gravier, de la terre ou du paillis', dig: 'creuser à la pelle rétro', 'till-garden': 'ameublir la terre d’un potager', 'grade-drive': 'niveler un chemin d’accès',
    'clear-snow': 'déneiger', 'handle-logs': 'déplacer des troncs', 'bore-holes': 'percer des trous de poteaux', 'chip-brush': 'broyer des branches',
    'carry-implement': 'porter un outil lourd à l’attelage', 'tow-wagon': 'tirer une remorque agricole', 'spread-spray': 'épandre ou pulvériser',
    'make-hay': 'faire du foin', 'drag-arena': 'herser une piste équestre', 'level-field': 'niveler un champ',
  },
  wishes: {
    cab: 'Cabine', drive: 'Transmission que vous avez choisie', smoothSeat: 'Siège à suspension', tiltWheel: 'Volant inclinable', cruise: 'Régulateur de vitesse',
    loaderOff: 'Chargeur frontal qui se dépose sans outils', levelLift: 'Chargeur frontal qui garde la charge à niveau',
    mowerLiftAlone: 'Tondeuse qui se relève avec son propre levier', exhaust: 'Moteur sans filtre à particules',
    thirdFunction: 'Troisième fonction hydraulique sur le chargeur',
  },
  criteria: {
    price: 'Prix bas', time: 'Moins de temps à tondre', headroom: 'Réserve de force', fit: 'Bien adapté à mon terrain',
    comfort: 'Confort', resale: 'Valeur qui se maintient',
  },
  questions: {
    tasks: {
      ask: 'Que voulez-vous faire avec le tracteur ?',
      why: 'Chaque travail demande quelque chose au tracteur : force de levage, largeur, puissance ou équipement particulier. Nous ne posons d’autres questions que sur les travaux cochés.',
      hint: 'Cochez tout ce qui convient.',
      fields: { tasks: {
        label: 'Travaux',
        options: {
          'mow-lawn': 'Tondre une pelouse', 'cut-rough': 'Faucher un pré, de mauvaises herbes ou des broussailles', 'lift-bales': 'Déplacer ou empiler des balles rondes', 'lift-pallets': 'Lever des palettes',
          'move-loose': 'Déplacer du gravier, de la terre ou du paillis', 'handle-logs': 'Déplacer des troncs', 'clear-snow': 'Déneiger', 'grade-drive': 'Niveler un chemin de gravier',
          'till-garden': 'Ameublir la terre d’un potager', dig: 'Creuser à la pelle rétro (rétrocaveuse)', 'bore-holes': 'Percer des trous de poteaux', 'chip-brush': 'Broyer des branches', 'tow-wagon': 'Tirer une remorque agricole',
          'spread-spray': 'Épandre ou pulvériser', 'drag-arena': 'Herser une piste équestre', 'level-field': 'Herser ou niveler un champ', 'make-hay': 'Faire du foin',
          'carry-implement': 'Porter un autre outil lourd à l’arrière',
        },
        hints: { dig: 'Tranchées, fondations, souches', 'make-hay': 'Faucher et presser de petites balles carrées' },
      } },
    },
    musts: {
      ask: 'Lesquels de ces travaux sont indispensables ?',
      why: 'Un travail indispensable écarte tout tracteur qui ne peut pas le faire. Les autres ne comptent que dans le classement.',
      hint: 'Laissez le reste.',
      fields: { 'tasks.must': { label: 'Travaux indispensables' } },
    },
    lawn: {
      ask: 'Quelle surface de pelouse tondez-vous ?',
      why: 'La surface, les obstacles et le temps dont vous disposez nous disent quelle largeur de tondeuse il vous faut.',
      fields: {
        'land.mown': { label: 'Pelouse', hint: 'Par exemple 0,8 ha ou 2 acres' },
        'land.obstacles': {
          label: 'Arbres, massifs et recoins', options: { open: 'Surtout dégagé', some: 'Quelques-uns', many: 'Beaucoup' },
        },
        'tasks.mow-lawn.hours': { label: 'Durée maximale d’une tonte', hint: 'Par exemple 2 h ou 1 h 30' },
        'tasks.mow-lawn.perYear': { label: 'Tontes par an', hint: 'Par exemple 25' },
      },
    },
    deck: {
      ask: 'Où la tondeuse doit-elle se trouver ?',
      why: 'Une tondeuse ventrale demande une prise de force (PDF) ventrale, et certaines tailles de tracteur n’en ont pas. Une tondeuse arrière va sur tout tracteur assez puissant.',
      fields: { 'tasks.mow-lawn.deck': {
        label: 'Tondeuse',
        options: { belly: 'Sous le tracteur (ventrale)', rear: 'Derrière le tracteur', either: 'L’une ou l’autre' },
        hints: { belly: 'Tourne près des arbres', rear: 'Se dépose vite' },
      } },
    },
    rough: {
      ask: 'Qu’est-ce qui pousse sur le terrain non entretenu ?',
      why: 'À largeur égale, les broussailles demandent plus de puissance à la PDF que l’herbe.',
      fields: {
        'tasks.cut-rough.growth': { label: 'Végétation', options: { grass: 'Herbe et mauvaises herbes', brush: 'Broussailles et jeunes arbres' } },
        'land.rough': { label: 'Quelle surface', hint: 'Par exemple 2 ha ou 5 acres' },
      },
    },
    bales: {
      ask: 'Combien pèsent vos balles, et à quelle hauteur vont-elles ?',
      why: 'Une balle se trouve loin devant les axes du chargeur ; il en lève donc moins que ne le dit sa brochure. La hauteur écarte les chargeurs trop bas.',
      fields: {
        'tasks.lift-bales.weight': { label: 'Balle la plus lourde', hint: 'Une balle ronde de 1,2 × 1,2 m (4 × 4 pieds) pèse souvent de 180 à 360 kg (400 à 800 lb), une de 1,5 × 1,5 m (5 × 5 pieds) de 360 à 680 kg (800 à 1 500 lb)' },
        'tasks.lift-bales.diameter': { label: 'Ou sa taille : sa hauteur', hint: 'Si vous ne connaissez pas le poids. Par exemple 1,5 m ou 5 pieds' },
        'tasks.lift-bales.width': { label: 'Et sa largeur', hint: 'Par exemple 1,2 m ou 4 pieds' },
        'tasks.lift-bales.hay': { label: 'Foin', options: { dry: 'Sec', wrapped: 'Enrubanné et humide' } },
        'tasks.lift-bales.height': { label: 'À quelle hauteur vous la levez', hint: 'Par exemple 1,8 m ou 6 pieds, sur une remorque. Laissez vide si vous ne faites que les déplacer' },
        'tasks.lift-bales.perYear': { label: 'Balles par an', hint: 'Par exemple 60' },
      },
    },
    loose: {
      ask: 'Que déplacez-vous, et combien ?',
      why: 'Un godet de gravier mouillé pèse plusieurs fois un godet de paillis. De la taille du godet dépend le nombre de voyages.',
      fields: {
        'tasks.move-loose.material': { label: 'Matériau', options: {
          gravel: 'Gravier ou pierre', sand: 'Sable', topsoil: 'Terre végétale', clay: 'Argile', mulch: 'Paillis d’écorce', 'wood-chips': 'Copeaux de bois',
          compost: 'Compost', manure: 'Fumier', firewood: 'Bois de chauffage',
        } },
        'tasks.move-loose.volume': { label: 'Combien à la fois', hint: 'Par exemple 15 m³ ou 20 yd³, un camion plein' },
        'tasks.move-loose.perYear': { label: 'Fois par an', hint: 'Par exemple 4' },
      },
    },
    logs: {
      ask: 'Quelle est la taille de vos troncs ?',
      why: 'Le bois vert est lourd : un tronc de chêne rouge de 40 cm (16 pouces) de diamètre et de 2,4 m (8 pieds) de long pèse environ 300 kg (700 lb). Nous comptons avec le poids du bois vert de son essence.',
      fields: {
        'tasks.handle-logs.weight': { label: 'Pièce la plus lourde, si vous le savez', hint: 'Ou donnez l’essence et la taille ci-dessous' },
        'tasks.handle-logs.species': { label: 'Essence', options: {
          'american-elm': 'Orme d’Amérique', apple: 'Pommier', ash: 'Frêne', beech: 'Hêtre', birch: 'Bouleau', 'black-cherry': 'Cerisier tardif', 'black-oak': 'Chêne noir',
          'black-walnut': 'Noyer noir', cottonwood: 'Peuplier deltoïde', hemlock: 'Pruche du Canada', hickory: 'Caryer', honeylocust: 'Févier épineux',
          'live-oak': 'Chêne de Virginie', 'red-maple': 'Érable rouge', 'red-oak': 'Chêne rouge', 'red-spruce': 'Épinette rouge', tamarack: 'Mélèze laricin',
          'white-oak': 'Chêne blanc', 'yellow-poplar': 'Tulipier de Virginie',
        } },
        'tasks.handle-logs.diameter': { label: 'Diamètre du plus gros tronc', hint: 'Par exemple 40 cm ou 16 pouces' },
        'tasks.handle-logs.length': { label: 'Pièce la plus longue', hint: 'Par exemple 2,4 m ou 8 pieds' },
        'tasks.handle-logs.height': { label: 'À quelle hauteur vous la levez', hint: 'Par exemple 1,2 m ou 4 pieds, sur une remorque' },
        'tasks.handle-logs.perYear': { label: 'Jours par an', hint: 'Par exemple 5' },
      },
    },
    pallets: {
      ask: 'Combien pèsent vos palettes, et à quelle hauteur vont-elles ?',
      why: 'Le milieu d’une palette se trouve à 61 cm (24 pouces) devant le talon de la fourche, et la fourche a son propre poids.',
      fields: {
        'tasks.lift-pallets.weight': { label: 'Palette la plus lourde', hint: 'Quarante sacs d’aliments de 25 kg font 1 000 kg ; quarante sacs de 50 lb font 2 000 lb' },
        'tasks.lift-pallets.height': { label: 'À quelle hauteur vous la levez', hint: 'Par exemple 1,2 m ou 4 pieds, sur un camion' },
        'tasks.lift-pallets.perYear': { label: 'Palettes par an', hint: 'Par exemple 10' },
      },
    },
    digging: {
      ask: 'À quelle profondeur devez-vous creuser ?',
      why: 'Toutes les tailles de tracteur n’acceptent pas de pelle rétro (rétrocaveuse), certaines séries seulement à partir d’une certaine année, et chaque pelle a sa profondeur.',
      fields: {
        'tasks.dig.depth': { label: 'Profondeur', hint: 'Par exemple 1,8 m ou 6 pieds. Avant de creuser, renseignez-vous sur les conduites et câbles enterrés' },
        'tasks.dig.perYear': { label: 'Jours par an', hint: 'Par exemple 3' },
      },
    },
    'drive-snow': {
      ask: 'Combien de neige déblayez-vous ?',
      why: 'Une lame pousse une neige légère. Une neige épaisse demande une souffleuse, et plus la souffleuse est large, plus il lui faut de puissance à la PDF.',
      fields: {
        'tasks.clear-snow.length': { label: 'Longueur du chemin', hint: 'Par exemple 120 m ou 400 pieds' },
        'tasks.clear-snow.depth': { label: 'Plus forte épaisseur déblayée en une fois', hint: 'Par exemple 20 cm ou 8 pouces' },
        'tasks.clear-snow.how': { label: 'Avec', options: { blade: 'Une lame', blower: 'Une souffleuse', either: 'L’une ou l’autre' } },
        'tasks.clear-snow.perYear': { label: 'Fois par an', hint: 'Par exemple 12' },
      },
    },
    'drive-grading': {
      ask: 'Quelle est la longueur de votre chemin ?',
      why: 'Une niveleuse à caisson pleine de gravier est dure à tirer. C’est le poids sur les roues motrices, plus que la puissance, qui décide si elles adhèrent.',
      fields: {
        'tasks.grade-drive.length': { label: 'Longueur du chemin', hint: 'Par exemple 180 m ou 600 pieds' },
        'tasks.grade-drive.perYear': { label: 'Fois par an', hint: 'Par exemple 2' },
      },
    },
    garden: {
      ask: 'Quelle est la taille du potager ?',
      why: 'Plus un rotoculteur est large, plus il lui faut de puissance à la PDF, et il devrait effacer les traces des pneus.',
      fields: {
        'tasks.till-garden.area': { label: 'Potager', hint: 'Par exemple 200 m² ou 2 000 ft²' },
        'tasks.till-garden.perYear': { label: 'Fois par an', hint: 'Par exemple 2' },
      },
    },
    holes: {
      ask: 'Combien de fois percez-vous des trous de poteaux ?',
      why: 'Pour quelques trous par an, louer une tarière peut coûter moins cher que d’en acheter une.',
      fields: { 'tasks.bore-holes.perYear': { label: 'Jours par an', hint: 'Par exemple 3' } },
    },
    chipping: {
      ask: 'Quelle est la grosseur des branches à broyer ?',
      why: 'Plus un broyeur accepte de grosses branches, plus il lui faut de puissance à la PDF.',
      fields: {
        'tasks.chip-brush.diameter': { label: 'Diamètre de la plus grosse branche', hint: 'Par exemple 10 cm ou 4 pouces' },
        'tasks.chip-brush.perYear': { label: 'Jours par an', hint: 'Par exemple 3' },
      },
    },
    wagon: {
      ask: 'Combien pèse la remorque chargée ?',
      why: 'Le tracteur doit retenir et arrêter ce qu’il tire, et le monter dans votre pente la plus raide. On tire toujours à la barre d’attelage, jamais plus haut.',
      fields: {
        'tasks.tow-wagon.weight': { label: 'Remorque avec sa charge', hint: 'Par exemple 1 500 kg ou 3 000 lb' },
        'tasks.tow-wagon.brakes': { label: 'Freins de la remorque', options: { none: 'Aucun', inertia: 'Freins à inertie', hydraulic: 'Freins hydrauliques', air: 'Freins à air comprimé' } },
        'tasks.tow-wagon.perYear': { label: 'Jours par an', hint: 'Par exemple 20' },
      },
    },
    spreading: {
      ask: 'Sur quelle surface épandez-vous ou pulvérisez-vous ?',
      why: 'Une trémie ou une cuve pleine pend à l’attelage, et son poids déleste les roues avant.',
      fields: {
        'tasks.spread-spray.area': { label: 'Surface', hint: 'Par exemple 2 ha ou 5 acres' },
        'tasks.spread-spray.perYear': { label: 'Fois par an', hint: 'Par exemple 3' },
      },
    },
    arena: {
      ask: 'Quelle est la taille de la piste ?',
      why: 'Une herse traînée est légère à tirer ; de sa largeur dépend le temps qu’il faut.',
      fields: {
        'tasks.drag-arena.area': { label: 'Piste', hint: 'Par exemple 1 800 m² ou 20 000 ft²' },
        'tasks.drag-arena.perYear': { label: 'Fois par an', hint: 'Par exemple 100' },
      },
    },
    levelling: {
      ask: 'Quelle surface de champ, et quel sol ?',
      why: 'Une herse à disques est plus dure à tirer dans l’argile que dans le sable. Le poids sur les roues motrices et la puissance de traction décident.',
      fields: {
        'tasks.level-field.area': { label: 'Champ', hint: 'Par exemple 1,2 ha ou 3 acres' },
        'land.soil': { label: 'Sol', options: { clay: 'Argile', loam: 'Limon', sand: 'Sable' } },
        'tasks.level-field.perYear': { label: 'Fois par an', hint: 'Par exemple 1' },
      },
    },
    hay: {
      ask: 'Combien de foin faites-vous ?',
      why: 'Une faucheuse à disques et une presse à balles demandent plus de puissance à la PDF que n’en ont la plupart des tracteurs compacts, et une presse demande aussi un tracteur plus lourd.',
      fields: {
        'tasks.make-hay.area': { label: 'Surface en foin', hint: 'Par exemple 3 ha ou 8 acres' },
        'tasks.make-hay.perYear': { label: 'Coupes par an', hint: 'Par exemple 2' },
      },
    },
    carrying: {
      ask: 'Combien pèse l’outil ?',
      why: 'Plus le poids est loin derrière, moins l’attelage en lève, et il doit rester assez de charge sur les roues avant pour diriger.',
      fields: {
        'tasks.carry-implement.weight': { label: 'Poids', hint: 'Par exemple 300 kg ou 700 lb' },
        'tasks.carry-implement.distance': { label: 'Distance de son milieu derrière les rotules de l’attelage', hint: 'Laissez vide si vous ne savez pas : nous prenons 61 cm (24 pouces)' },
      },
    },
    slope: {
      ask: 'Quelle est la pente la plus raide où vous roulerez ?',
      why: 'C’est sur le côté que les tracteurs se renversent le plus souvent. Nous comparons la stabilité des tracteurs ; nous ne disons jamais qu’une pente est sûre.',
      fields: { 'land.slope': {
        label: 'Pente',
        hint: 'Par exemple 12°. Une montée de 2 m sur 10 m fait environ 11°',
        options: { flat: 'Plat', rolling: 'Vallonné', steep: 'Raide' },
        hints: { flat: 'Moins de 90 cm de montée sur 10 m', rolling: 'Jusqu’à environ 1,75 m', steep: 'Plus que cela' },
      } },
    },
    ground: {
      ask: 'Votre sol est-il ferme ?',
      why: 'Sur un sol mou, les pneus patinent et creusent des ornières, et en altitude un moteur a moins de puissance.',
      fields: {
        'land.ground': { label: 'Sol', options: { firm: 'Ferme', soft: 'Mou ou travaillé', wet: 'Souvent mouillé' } },
        'land.altitude': { label: 'Altitude', hint: 'Seulement si vous êtes en hauteur. Par exemple 1 800 m ou 6 000 pieds' },
      },
    },
    overhead: {
      ask: 'Y a-t-il quelque chose de bas là où vous travaillerez ?',
      why: 'L’arceau de protection doit être relevé pendant le travail. Une poutre ou une branche basse obligerait à le replier, et c’est alors que les accidents arrivent.',
      fields: { 'land.overhead': {
        label: 'Au-dessus de vous', hint: 'Hauteur de ce qui est le plus bas, par exemple 2,4 m ou 8 pieds',
        options: { open: 'Non, c’est dégagé', low: 'Oui : une poutre, un toit ou des branches' },
      } },
    },
    drivers: {
      ask: 'Qui le conduira ?',
      why: 'Une personne débutante ou jeune a besoin de plus de marge d’erreur, et la loi a des règles pour les jeunes.',
      fields: {
        'drivers.least': {
          label: 'La personne la moins expérimentée',
          options: { new: 'N’a jamais conduit de tracteur', some: 'A déjà un peu conduit', experienced: 'A de l’expérience' },
        },
        'drivers.under18': { label: 'Une personne de moins de 18 ans le conduira-t-elle ?' },
        'drivers.limits': { label: 'Quelque chose est-il difficile pour l’une des personnes ?', options: {
          none: 'Non', legs: 'Les pédales et l’embrayage', reach: 'Atteindre les leviers et monter à bord', both: 'Les deux',
        } },
      },
    },
    storage: {
      ask: 'Où sera-t-il garé ?',
      why: 'Une porte trop basse ou trop étroite écarte un tracteur, quelles que soient ses autres qualités.',
      fields: { 'storage.kind': {
        label: 'Remisage', options: { garage: 'Dans un garage', shed: 'Dans une remise ou une grange', outdoors: 'Dehors' },
      } },
    },
    door: {
      ask: 'Quelles sont les dimensions de la porte, et la profondeur du local ?',
      why: 'Nous vérifions la largeur aux pneus, la hauteur avec l’arceau replié pour entrer, et la longueur avec le chargeur.',
      hint: 'Mesurez l’ouverture libre.',
      fields: {
        'storage.doorWidth': { label: 'Largeur de la porte', hint: 'Par exemple 2,4 m ou 8 pieds' },
        'storage.doorHeight': { label: 'Hauteur de la porte', hint: 'Par exemple 2 m 10 ou 6 pieds 6' },
        'storage.depth': { label: 'Profondeur à l’intérieur', hint: 'Par exemple 6 m ou 20 pieds' },
      },
    },
    gate: {
      ask: 'Quelle est la largeur du passage le plus étroit ?',
      why: 'Le tracteur doit passer avec sa tondeuse et un peu de place de chaque côté.',
      fields: { 'land.gate': { label: 'Barrière ou passage le plus étroit', hint: 'Par exemple 1,8 m ou 6 pieds. Laissez vide s’il n’y en a pas' } },
    },
    more: {
      ask: 'Faut-il regarder autre chose ?',
      why: 'Chaque case amène une ou deux questions de plus. Ce que vous laissez ne compte ni pour ni contre une machine.',
      hint: 'Cochez ce qui compte pour vous.',
      fields: { more: { label: 'Autres points', options: {
        haul: 'L’emmener sur une remorque', paying: 'Une somme par mois, ou l’entretien chez le vendeur', use: 'Ce qu’il coûte au fil des ans', cab: 'Une cabine', drive: 'Pédale ou vitesses', extras: 'Le confort du conducteur',
      } } },
    },
    haul: {
      ask: 'Le transporterez-vous sur une remorque ?',
      why: 'Le tracteur, le chargeur et la tondeuse ensemble ne doivent pas dépasser ce que la remorque et le véhicule peuvent porter.',
      fields: { 'haul.how': {
        label: 'Transport', options: { never: 'Non', 'own-trailer': 'Oui, sur ma remorque', hire: 'Oui, quelqu’un le transporte pour moi' },
      } },
    },
    trailer: {
      ask: 'Que peuvent porter votre remorque et votre véhicule ?',
      why: 'Les plaques de la remorque et du véhicule fixent la limite. Nous additionnons tout ce qui voyage.',
      hint: 'Laissez vide ce que vous ne savez pas.',
      fields: {
        'haul.trailer.gross': { label: 'Remorque, poids total autorisé en charge (PTAC ou PNBV)', hint: 'Sur sa plaque, par exemple 3 000 kg ou 7 000 lb' },
        'haul.trailer.empty': { label: 'Remorque à vide', hint: 'Par exemple 800 kg ou 1 800 lb' },
        'haul.tongueRating': { label: 'Charge maximale sur la boule d’attelage du véhicule', hint: 'Dans son manuel, par exemple 350 kg ou 750 lb' },
        'haul.trailer.brakes': { label: 'Freins de la remorque', options: { none: 'Aucun', inertia: 'Freins à inertie', hydraulic: 'Freins électriques ou hydrauliques', air: 'Freins à air comprimé' } },
        'haul.towRating': { label: 'Capacité de remorquage du véhicule', hint: 'Dans son manuel, par exemple 3 500 kg ou 7 500 lb' },
        'haul.trailer.deckWidth': { label: 'Largeur du plateau entre les ailes', hint: 'Par exemple 200 cm ou 80 pouces' },
        'haul.trailer.deckLength': { label: 'Longueur du plateau', hint: 'Par exemple 5,5 m ou 18 pieds' },
      },
    },
    budget: {
      ask: 'Combien voulez-vous dépenser ?',
      why: 'Nous additionnons le tracteur, ce qu’il lui faut pour vos travaux et le montage. Les prix d’occasion se recoupent : un petit tracteur avec tout coûte autant qu’un plus grand tout simple.',
      fields: {
        'budget.limit': { label: 'Limite', hint: 'Par exemple 18 000' },
        'budget.firm': { label: 'Est-ce une limite ferme ?' },
      },
    },
    paying: {
      ask: 'Comment paierez-vous, et qui l’entretiendra ?',
      why: 'Nous calculons un prêt aux conditions du concessionnaire, s’il en a donné. S’il doit entretenir le tracteur, ce devrait être une marque qu’il entretient.',
      fields: {
        'budget.pay': { label: 'Paiement', options: { cash: 'Comptant', loan: 'Avec un prêt' } },
        'budget.monthly': { label: 'Le plus que vous paieriez par mois', hint: 'Seulement pour un prêt. Par exemple 350' },
        'budget.service': { label: 'Entretien', options: { self: 'Je le fais moi-même', dealer: 'Je l’amène chez le concessionnaire', pickup: 'Le concessionnaire vient le chercher' } },
      },
    },
    use: {
      ask: 'Combien l’utiliserez-vous, et combien de temps le garderez-vous ?',
      why: 'Les heures et les années nous disent quelle part de son prix chaque tracteur devrait garder.',
      fields: {
        'budget.hoursPerYear': { label: 'Heures par an', hint: 'Sur une petite propriété, c’est le plus souvent de 50 à 150' },
        'budget.keepYears': { label: 'Années où vous le garderez', hint: 'Par exemple 7' },
      },
    },
    cab: {
      ask: 'Voulez-vous une cabine ?',
      why: 'Une cabine d’usine climatisée n’existe qu’à partir de certaines finitions. Pour d’autres tailles, il y a peut-être une cabine d’un autre fabricant, avec chauffage.',
      fields: { 'comfort.cab': {
        label: 'Cabine', options: { none: 'Pas de cabine', heat: 'Avec chauffage', 'heat-and-air': 'Avec chauffage et climatisation' },
      } },
    },
    drive: {
      ask: 'Comment voulez-vous le conduire ?',
      why: 'Une pédale est le plus facile pour le chargeur et la tonte. Un inverseur sous charge perd moins de puissance dans un travail long et régulier.',
      fields: { 'comfort.drive': {
        label: 'Transmission',
        options: { pedal: 'À la pédale', shuttle: 'Avec des vitesses et un levier', any: 'L’une ou l’autre' },
        hints: { pedal: 'Hydrostatique', shuttle: 'Inverseur sous charge' },
      } },
    },
    extras: {
      ask: 'Qu’aimeriez-vous parmi ceci ?',
      why: 'Cela vient avec les finitions supérieures, et une partie ne peut pas être ajoutée plus tard.',
      hint: 'Cochez ce qui compte pour vous.',
      fields: { 'comfort.extras': {
        label: 'Équipements',
        options: {
          smoothSeat: 'Un siège à suspension', tiltWheel: 'Un volant inclinable', cruise: 'Un régulateur de vitesse', loaderOff: 'Un chargeur frontal qui se dépose sans outils',
          levelLift: 'Un chargeur frontal qui garde la charge à niveau', mowerLiftAlone: 'Une tondeuse qui se relève avec son propre levier', exhaust: 'Un moteur sans filtre à particules',
        },
      } },
    },
    'comfort-musts': {
      ask: 'Qu’est-ce qui est indispensable parmi cela ?',
      why: 'Ce qui est indispensable écarte tout tracteur qui ne l’a pas. Le reste ne compte que dans le classement.',
      fields: { 'comfort.must': { label: 'Confort indispensable' } },
    },
    priorities: {
      ask: 'Qu’est-ce qui compte le plus pour vous ?',
      why: 'Nous pesons dans cet ordre les tracteurs capables du travail, et nous vous montrons les poids.',
      fields: { priorities: { label: 'Ordre' } },
    },
  },
  faults: {
    empty: ({ label }) => `${label} : écrivez un nombre, ou choisissez « Je ne sais pas ».`,
    'not-a-number': ({ label, example }) => `${label} : nous n’avons pas pu lire cela comme un nombre. Par exemple : ${example}.`,
    'unknown-unit': ({ label, word, units }) => `${label} : nous ne connaissons pas ici l’unité « ${word} ». Vous pouvez employer ${units}.`,
    ambiguous: ({ label, one, other }) => `${label} : vouliez-vous dire ${one} ou ${other} ? Choisissez ci-dessous.`,
    'too-small': ({ label, from, example }) => `${label} : cela semble trop petit. Il faut au moins ${from}. Par exemple : ${example}.`,
    'too-big': ({ label, to, example }) => `${label} : cela semble trop grand. Le maximum est ${to}. Par exemple : ${example}.`,
    'amount-wanted': ({ label, example }) => `${label} : écrivez la hauteur, par exemple ${example}, ou choisissez « Je ne sais pas ».`,
  },
  wizard: {
    step: (now, atMost) => `Étape ${now} sur ${atMost} au plus`,
    stepOnly: (now) => `Étape ${now}`,
    standing: (count, of) => (count < 2 ? `${count} tracteur sur ${of} convient encore` : `${count} tracteurs sur ${of} conviennent encore`),
    why: 'Pourquoi cette question',
    notSure: 'Je ne sais pas',
    next: 'Continuer',
    back: 'Retour',
    seeResult: 'Voir le résultat à ce stade',
    backToQuestions: 'Reprendre les questions',
    thereIsAProblem: 'Il y a un problème',
    chooseOne: 'Choisissez une réponse, ou « Je ne sais pas ».',
    understood: (amount) => `Lu comme ${amount}`,
    yes: 'Oui',
    no: 'Non',
    place: (rank) => ['Le plus important', 'En deuxième', 'En troisième'][rank - 1] ?? `Au rang ${rank}`,
    nothingChosen: 'Rien de plus',
    choose: 'Choisissez…',
    unitsUs: 'pieds et livres',
    unitsMetric: 'mètres et kilogrammes',
    unitsLabel: 'Unités',
    languageLabel: 'Langue',
    moneyHint: (currency) => `en ${currency}`,
    startAgain: 'Recommencer',
    undoStartAgain: 'Retrouver mes réponses',
    loading: 'Chargement de la gamme…',
    skipped: {
      'one-left': (machines) => `Question non posée, car il n’y a plus rien à classer. Encore possible : ${machines}.`,
      'same-order': () => 'Question non posée : quoi que vous mettiez en premier, les mêmes tracteurs viennent en tête, dans le même ordre.',
      'met-anyway': () => 'Question non posée : tous les tracteurs ici ont ce que vous souhaitez ou peuvent le recevoir ; le rendre indispensable ne change rien.',
    },
    catalogueMissing: 'La gamme ne peut pas être chargée pour le moment. Appelez le concessionnaire ou écrivez-lui, ou réessayez plus tard.',
    catalogueFaulty: 'La gamme contient une erreur, et nous ne pouvons pas calculer avec elle. Appelez le concessionnaire ou écrivez-lui.',
    catalogueEmpty: 'Le concessionnaire ne propose aucun tracteur pour le moment. Appelez-le ou écrivez-lui.',
    tryAgain: 'Réessayer',
  },
};
