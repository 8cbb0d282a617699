import { fr as handoff } from '../../../handoff/words/fr.ts';
import type { HandOnWords } from './words.ts';

export const handOn: HandOnWords = {
  handoff,
  explained: 'Le code QR, le lien et le code à taper contiennent vos réponses, et rien sur qui vous êtes. Qui les ouvre voit ce qui y répond ce jour-là. Rien n’est envoyé ni gardé pour cela.',
  code: 'Scannez-le avec un téléphone, ou montrez-le au comptoir.',
  noLink: 'Ces réponses sont trop longues pour un lien ou un code QR. Le courriel les contient tout de même.',
  link: { label: 'Lien vers vos réponses', copy: 'Copier le lien' },
  typed: { label: 'Code à dicter ou à taper', copy: 'Copier le code' },
  share: 'Partager le lien',
  shareTitle: 'Tracteurs qui conviennent au travail',
  copied: 'Copié.',
  marked: 'Ce navigateur ne laisse pas une page copier. Le texte est sélectionné : copiez-le à la main.',
  notShared: 'Le partage n’a pas marché ici. Copiez plutôt le lien.',
  kept: { delivery: 'le code postal de livraison', tradeIn: 'ce que vous donnez en reprise', owned: 'les noms de ce que vous avez déjà' },
  mail: {
    heading: 'La sélection par courriel',
    explained: 'C’est votre propre messagerie qui l’envoie, à qui vous voulez.',
    save: 'Enregistrer comme fichier de courriel',
    saved: (file) => `Enregistré sous ${file}. Ouvrez-le : votre messagerie le montre comme brouillon.`,
    write: 'Écrire un courriel avec',
    shortened: 'Un courriel ouvert par un lien a peu de place : il résume les premières machines, et il le dit. Le fichier contient tout.',
    noRoom: 'Un courriel ouvert par un lien n’a pas la place pour cela. Le fichier, si.',
    file: 'tracteurs',
  },
  opened: 'Voici les réponses de votre lien, et ce qui en résulte. Vous pouvez en changer plus bas.',
  notOpened: {
    what: 'Les réponses de votre lien n’ont pas pu être reprises.',
    again: 'Ouvrez de nouveau le lien entier, ou répondez ici aux questions.',
    newer: 'Rechargez cette page, ou répondez ici aux questions.',
    other: 'Répondez ici aux questions.',
  },
};
