import type { MailWords } from './words.ts';

export const mail: MailWords = {
  language: 'fr',
  shortlist: {
    heading: 'La sélection par courriel',
    what: 'Un seul message avec les machines, les raisons, les inconvénients, les prix et un lien vers vos réponses. Pas de lettre d’information.',
    send: 'Envoyer', sent: 'La sélection est en route',
  },
  notify: {
    heading: 'Un mot quand il en rentre une',
    what: (dealer) => `${dealer} reçoit votre adresse et vos réponses, et vous écrit quand une machine qui fait le travail rentre.`,
    send: 'Le demander', sent: (dealer) => `${dealer} sait maintenant ce que vous cherchez`,
  },
  address: 'Votre adresse de courriel',
  addressHint: 'Pour cela seulement. À écrire ainsi : nom@lieu.example',
  addressFault: { missing: 'Indiquez l’adresse où l’envoyer', wrong: 'Indiquez une adresse entière, comme nom@lieu.example' },
  addressNear: (address) => `Vouliez-vous dire ${address} ?`,
  dealerCopy: (dealer) => `Que ${dealer} reçoive une copie avec mon adresse, pour pouvoir me répondre`,
  statistics: (dealer) => `Que ${dealer} puisse compter mes réponses, sans mon adresse, pour choisir ce qu’il achète`,
  forTheDealer: 'Pour le concessionnaire, si vous voulez',
  name: 'Votre nom',
  nameFault: 'Indiquez un nom en lettres, ou laissez le champ vide',
  phone: 'Téléphone',
  phoneFault: 'Indiquez un numéro, ou laissez le champ vide',
  goodTime: 'Bon moment pour appeler',
  goodTimes: { any: 'N’importe quand', morning: 'Le matin', midday: 'À midi', afternoon: 'L’après-midi', evening: 'Le soir' },
  privacy: 'Votre adresse est gardée une semaine après l’envoi, puis effacée. Chaque message porte un lien qui arrête les suivants.',
  sending: 'Envoi…',
  working: 'On montre que ce n’est pas un automate ; quelques secondes…',
  sentTo: (address) => `Elle va à ${address}.`,
  mayTake: 'Cela peut prendre quelques minutes. Si rien n’arrive, regardez dans les indésirables, ou demandez au concessionnaire.',
  later: {
    busy: 'Le courriel ne peut pas être pris en ce moment.', unreachable: 'L’envoi ne répond pas. Peut-être n’y a-t-il pas de réseau.',
    tryingAgain: (seconds) => `Nouvel essai dans ${seconds} s.`, tryAgain: 'Réessayer',
    otherWays: 'Rien n’est perdu : vous pouvez aussi imprimer cette page ou l’enregistrer.',
  },
  refused: {
    faulty: 'Le courriel n’a pas été pris tel quel. Vérifiez l’adresse, ou demandez au concessionnaire.',
    other: (code) => `Le courriel n’a pas été pris (${code}). Demandez au concessionnaire, ou imprimez cette page.`,
  },
  close: 'Fermer',
};
