import { fr as lot } from '../../../lot/words/fr.ts';
import type { UnitWords } from './words.ts';

export const unit: UnitWords = {
  language: 'fr',
  lot,
  print: 'Imprimer',
  price: {
    open: 'Ce qu’il coûte, livré',
    typical: 'Il n’y en a aucun en stock. La fourchette est ce que de tels tracteurs coûtent d’ordinaire.',
    how: 'Comment il arrive chez vous',
    delivered: 'Le concessionnaire le livre',
    fetched: 'Je viens le chercher',
    distance: 'À quelle distance du concessionnaire',
    ask: 'à demander',
    columns: { what: 'Quoi', amount: 'Montant' },
    tradeIn: 'Quelque chose en échange',
    noTradeIn: 'Rien',
    tradeIns: {
      'compact-tractor': 'un tracteur compact', 'larger-tractor': 'un plus gros tracteur', 'lawn-tractor': 'un tracteur tondeuse', mower: 'une autre tondeuse',
      'utility-vehicle': 'un véhicule utilitaire tout-terrain', implements: 'des outils', vehicle: 'une voiture, un camion ou une remorque', other: 'autre chose',
    },
    tradeInHint: 'Un souhait seulement : le concessionnaire doit d’abord le voir, et aucune valeur n’est donnée ici.',
  },
  look: {
    open: 'Ce qu’il faut y regarder',
    notKept: 'Ce que vous cochez n’est gardé que tant que cette page est ouverte.',
    count: (done, all) => `${done} sur ${all} regardés`,
    done: 'Regardé',
    bad: 'En mauvais état',
    foundBad: (names) => `En mauvais état : ${names}.`,
    mend: 'Faites-le réparer, ou demandez ce que cela coûte, avant de vous engager.',
    paper: { howTo: 'Première case : regardé. Seconde case : en mauvais état.', serial: 'Numéro de série lu sur la plaque', day: 'Jour', notes: 'Notes' },
  },
  costs: {
    open: 'Ce qu’il coûte au fil des ans, à côté d’un autre',
    explained: 'Le plus ancien mieux équipé, ou le plus récent moins équipé ? Choisissez-en un autre, et vos propres années et heures.',
    beside: 'À côté de',
    alone: 'Aucun autre ne répond à vos impératifs : il n’y a rien à mettre à côté.',
    pay: 'Comment vous payez',
    ownMoney: 'En une fois, avec votre argent',
    parts: (name) => `De quoi une année est faite : ${name}`,
    table: 'Le graphique en tableau',
  },
  asking: { open: 'Son prix demandé à côté d’autres de ce concessionnaire' },
};
