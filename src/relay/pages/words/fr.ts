import type { PageWords } from './words.ts';

export const fr: PageWords = {
  language: 'fr',
  stop: {
    ask: { title: 'Ne plus recevoir ces messages ?', says: 'Vous ne recevrez plus de message d’ici, d’aucun concessionnaire. Rien ne change tant que vous n’appuyez pas sur le bouton.', button: 'Ne plus recevoir' },
    done: { title: 'C’est fait', says: 'Vous ne recevrez plus de message d’ici. Ce qui attendait encore n’est pas envoyé.' },
  },
  notAsked: {
    ask: { title: 'Vous n’aviez rien demandé ?', says: 'Quelqu’un d’autre a peut-être tapé votre adresse. Appuyez sur le bouton et vous ne recevrez plus de message d’ici ; cela nous aide aussi à voir les abus.', button: 'Je n’ai rien demandé' },
    done: { title: 'Merci', says: 'Vous ne recevrez plus de message d’ici. Nous sommes désolés du dérangement.' },
  },
  confirm: {
    ask: { title: 'Était-ce vous ?', says: 'Appuyez sur le bouton et la sélection que vous avez demandée vous est envoyée. Si ce n’était pas vous, fermez cette page : rien n’est alors envoyé.', button: 'Oui, envoyez-la-moi' },
    done: { title: 'En route', says: 'La sélection part dans les minutes qui viennent. Vous pouvez fermer cette page.' },
  },
  unknown: { title: 'Ce lien n’est pas connu', says: 'Il est peut-être coupé, ou trop ancien. Copiez le lien entier du message, ou répondez au message : le concessionnaire peut aussi vous retirer.' },
  tooOften: { title: 'Trop souvent', says: 'On a essayé trop souvent avec des liens qui ne sont pas connus. Réessayez dans dix minutes.' },
  notNow: { title: 'Pas pour le moment', says: 'Cela ne peut pas se faire à l’instant. Réessayez dans quelques minutes ; le lien reste bon.' },
};
