import type { HandoffWords } from './words.ts';

export const fr: HandoffWords = {
  language: 'fr',
  subject: (dealer) => `Tracteurs qui conviennent au travail : ${dealer}`,
  priceOf: (day) => `prix du ${day}`,
  goOn: 'Vos réponses, pour les revoir, les changer ou continuer :',
  shortened: {
    withLink: 'Courriel abrégé faute de place. Le lien à la fin montre tout.',
    alone: 'Courriel abrégé faute de place. Il y manque des machines, des raisons et des précautions.',
  },
  cautionsInShort: 'D’abord le manuel. Arceau levé, ceinture mise. Pas de passager, personne autour, PDF protégée et arrêtée, moteur jamais à l’intérieur.',
  codeTitle: 'Code QR avec vos réponses, et rien sur qui vous êtes',
  leftOut: (places) => `Non transmis : ${places}. Seuls les choix d’une liste et les chiffres sont transmis.`,
  tooLongToType: (length, most) => `Avec autant de réponses, le code compte ${length} caractères ; on peut en taper ${most}. Prenez le lien ou le code QR.`,
  refusals: {
    nothing: () => ({ what: 'Rien n’a été repris.', why: 'La case est vide.', mend: 'Collez le lien, ou tapez le code.' }),
    'not-ours': () => ({ what: 'Rien n’a été repris.', why: 'Cela ne contient pas de réponses de cet assistant.', mend: 'Copiez le lien entier, de https à la dernière lettre.' }),
    'too-long': () => ({ what: 'Rien n’a été repris.', why: 'C’est plus long que toutes les réponses possibles.', mend: 'Collez le lien seul.' }),
    sign: ({ sign, group }) => ({ what: 'Rien n’a été repris.', why: `Aucun code ne contient « ${sign} » ; il est dans le groupe ${group}.`, mend: 'Regardez de nouveau ce groupe.' }),
    damaged: () => ({ what: 'Rien n’a été repris.', why: 'Un signe est faux, manque ou est en trop.', mend: 'Comparez groupe par groupe, ou copiez le lien de nouveau.' }),
    newer: () => ({ what: 'Rien n’a été repris.', why: 'Ces réponses viennent d’une version plus récente de cette page.', mend: 'Rechargez la page, ou répondez ici aux questions.' }),
    'not-understood': () => ({ what: 'Rien n’a été repris.', why: 'Aucun acheteur n’a pu répondre ainsi.', mend: 'Répondez ici aux questions.' }),
  },
};
