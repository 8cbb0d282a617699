import type { MailWords } from './words.ts';

export const fr: MailWords = {
  language: 'fr',
  subjects: {
    notify: (dealer) => `C’est noté : un mot quand il en arrive un – ${dealer}`,
    confirm: (dealer) => `Était-ce vous ? Un clic et la sélection arrive – ${dealer}`,
    dealerShortlist: (dealer) => `Un acheteur a demandé une sélection – ${dealer}`,
    dealerNotify: (dealer) => `Un acheteur veut un mot quand il en arrive un – ${dealer}`,
    undelivered: (dealer) => `Le courriel d’un acheteur ne peut être remis – ${dealer}`,
  },
  asked: (dealer) => `Vous l’avez demandé chez ${dealer}.`,
  otherList: (now, seen) => (seen === undefined
    ? `Calculé avec la liste du ${now}, et non avec celle que vous avez vue. Prix et machines peuvent différer.`
    : `Calculé avec la liste du ${now} ; vous avez vu celle du ${seen}. Prix et machines peuvent différer.`),
  otherRules: 'La façon de calculer a changé depuis que vous l’avez vu. Quelques chiffres peuvent différer.',
  shortened: 'Abrégé pour tenir dans un courriel.',
  open: 'Voir vos réponses',
  lineUp: {
    about: 'Toutes les barres sont à une même échelle : pleines pour les machines, en contour pour ce qui est à vous.',
    across: 'En largeur', up: 'En hauteur', along: 'En longueur',
  },
  demands: {
    heading: 'Ce que demande le travail', none: 'Rien qui écarte une machine.',
    atLeast: (amount) => `au moins ${amount}`, atMost: (amount) => `au plus ${amount}`, safety: 'pour la sécurité',
  },
  notify: {
    title: 'Vous aurez un mot quand il en arrive un',
    says: (dealer) => `${dealer} a vos réponses et votre adresse, et vous écrira quand une machine arrive qui fait le travail. Vous n’avez rien d’autre à faire.`,
  },
  confirm: {
    title: 'Était-ce vous ?',
    says: (dealer) => `Quelqu’un a demandé l’envoi à cette adresse d’une sélection de tracteurs d’occasion de ${dealer}. Si c’était vous, appuyez sur le bouton. Sinon, ne faites rien : rien n’est alors envoyé.`,
    button: 'Oui, envoyez-la-moi',
  },
  dealer: {
    titles: { shortlist: 'Un acheteur a demandé une sélection', notify: 'Un acheteur veut un mot quand il en arrive un' },
    says: {
      shortlist: 'Il accepte que vous receviez cette copie. Répondre à ce courriel, c’est lui écrire.',
      notify: 'Il accepte que vous receviez cette copie. Répondez à ce courriel quand une machine arrive qui fait le travail ci-dessous.',
    },
    contactHeading: 'L’acheteur', name: 'Nom', phone: 'Téléphone', mail: 'Courriel', goodTime: 'Bon moment pour appeler',
    goodTimes: { any: 'n’importe quand', morning: 'le matin', midday: 'à midi', afternoon: 'l’après-midi', evening: 'le soir' },
    language: 'Langue de son courriel', noContact: 'Il n’a donné ni nom ni téléphone.',
    toldBuyer: 'Ce qui convient, tel qu’on le lui dit',
    undelivered: {
      title: 'Le courriel à un acheteur ne peut être remis',
      says: 'Le courriel que cet acheteur a demandé a été refusé, est revenu, ou n’a été accepté par personne pendant trois jours. Il n’est plus essayé. L’adresse contient peut-être une faute ; si un numéro de téléphone figure ci-dessous, vous pouvez appeler.',
    },
  },
  footer: {
    why: (dealer) => `Ce courriel vient parce qu’il a été demandé avec cette adresse chez ${dealer}. C’est un seul courriel ; vous n’êtes sur aucune liste.`,
    stop: 'Plus aucun courriel d’ici, d’aucun concessionnaire :', stopLink: 'ne plus en recevoir',
    notAsked: 'Vous n’avez rien demandé ? Quelqu’un d’autre a peut-être saisi votre adresse :', notAskedLink: 'je n’ai rien demandé',
    toDealer: (dealer) => `Cette copie va à ${dealer} parce que l’acheteur l’accepte. N’utilisez ses données que pour sa demande.`,
  },
};
