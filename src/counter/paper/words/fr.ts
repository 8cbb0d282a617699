import type { PaperWords } from './words.ts';

export const fr: PaperWords = {
  language: 'fr',
  scan: 'Scannez pour voir vos réponses, les changer ou continuer. Le code ne contient rien sur qui vous êtes.',
  type: 'Ou tapez sur notre page :',
  scale: (ratio) => `Échelle 1:${ratio} si imprimé en taille réelle. La barre reste juste à toute taille.`,
  deciding: 'Les calculs qui décident',
  gives: (result) => `donne ${result}`,
  source: (source) => `Source : ${source}.`,
  onlyNamed: {
    machines: (names, count) => (count === 1 ? `Pas de place ici pour une autre à regarder : ${names}.` : `Pas de place ici pour ${count} autres à regarder : ${names}.`),
    reasons: (count) => (count === 1 ? 'Une raison de plus pour' : `${count} raisons de plus pour`),
    drawbacks: (count) => (count === 1 ? 'Une de plus contre ou inconnue' : `${count} de plus contre ou inconnues`),
    sums: (count) => (count === 1 ? 'un calcul de plus' : `${count} calculs de plus`),
    units: (count) => (count === 1 ? 'Un autre en stock' : `${count} autres en stock`),
    sheet: {
      withCode: 'Abrégé pour tenir sur deux pages ; ce qui manque est compté. La page derrière le code montre tout.',
      alone: 'Abrégé pour tenir sur deux pages ; ce qui manque est compté. Demandez-nous de tout vous montrer.',
    },
  },
  checksHeading: 'Quand vous verrez la machine',
  checks: {
    hours: 'Heures : l’usure va-t-elle avec le compteur ?',
    'service-record': 'Entretien : factures d’huile, de filtres et de réparations',
    'serial-plate': 'Plaque de série : présente, lisible, bonne année',
    rops: 'Arceau de protection (ROPS) : certifié, avec son étiquette ; rien de plié, coupé ou soudé',
    'seat-belt': 'Ceinture : présente, entière, et elle se bloque',
    hydraulics: 'Hydraulique : pas de fuite, le chargeur tient. Regardez, ne touchez pas',
    'loader-pins': 'Axes et bagues du chargeur : combien de jeu ?',
    clutch: 'Embrayage et transmission : patinage, bruits, freins',
    pto: 'Prise de force (PDF) : s’engage bien ; protecteur en place',
    tyres: 'Pneus : dessin, fissures, un type ; liquide ou masses ?',
    recalls: 'Rappels : demandez avec le numéro de série ; par écrit',
    liens: 'Gages : personne d’autre n’a de droit dessus ; par écrit',
  },
  form: {
    title: 'Que doit faire le tracteur ?',
    explained: 'Cochez une case ou écrivez sur la ligne. Laissez vide ce dont vous n’êtes pas sûr. Ni nom ni adresse sur cette feuille.',
    secondBox: 'Cochez aussi la case épaisse si c’est indispensable : cela écarte toute machine qui ne peut pas.',
    onlyIf: (options) => `Seulement pour : ${options}`,
    number: (places) => `Numérotez ce qui compte le plus, de 1 à ${places}.`,
  },
};
