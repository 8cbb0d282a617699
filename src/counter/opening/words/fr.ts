import { fr as handoff } from '../../../handoff/words/fr.ts';
import type { OpeningWords } from './words.ts';

export const opening: OpeningWords = {
  handoff,
  heading: 'Ouvrir les réponses d’un acheteur',
  explained: 'Depuis un téléphone, un papier ou un courriel. On y trouve les réponses, et rien sur qui a répondu.',
  field: { label: 'Lien ou code', hint: 'Collez le lien, ou tapez le code comme on vous le dicte : en majuscules ou en minuscules, avec ou sans tirets.', open: 'Ouvrir' },
  refusals: {
    nothing: () => ({ what: 'Rien n’a été ouvert.', why: 'La case est vide.', mend: 'Collez le lien, ou tapez le code.' }),
    'not-ours': () => ({ what: 'Rien n’a été ouvert.', why: 'Cela ne contient pas de réponses de l’assistant.', mend: 'Faites copier le lien entier, de https à la dernière lettre, ou demandez le code à taper.' }),
    'too-long': () => ({ what: 'Rien n’a été ouvert.', why: 'C’est plus long que toutes les réponses possibles.', mend: 'Collez le lien seul.' }),
    sign: ({ sign, group }) => ({ what: 'Rien n’a été ouvert.', why: `Aucun code ne contient « ${sign} » ; il est dans le groupe ${group}.`, mend: 'Faites-vous redire ce groupe.' }),
    damaged: () => ({ what: 'Rien n’a été ouvert.', why: 'Un signe est faux, manque ou est en trop.', mend: 'Faites-vous dicter le code groupe par groupe, ou faites copier le lien de nouveau.' }),
    newer: () => ({ what: 'Rien n’a été ouvert.', why: 'Ces réponses viennent d’une version plus récente que celle de ce comptoir.', mend: 'Rechargez cette page. Si cela n’aide pas, posez les questions ici.' }),
    'not-understood': () => ({ what: 'Rien n’a été ouvert.', why: 'Aucun acheteur n’a pu répondre ainsi.', mend: 'Posez les questions ici.' }),
  },
  camera: {
    start: 'Scanner le code QR', starting: 'La caméra démarre. Le navigateur demandera peut-être la permission.', stop: 'Arrêter la caméra', picture: 'Ce que voit la caméra',
    hint: 'Tenez le code QR devant la caméra. L’image reste sur cet appareil.',
    absent: {
      'no-reader': 'Ce navigateur ne sait pas lire les codes QR. Demandez le code à taper, ou scannez avec l’appareil photo et collez le lien ici.',
      'no-camera': 'Cette page ne peut pas utiliser de caméra : son adresse doit commencer par https. Demandez le code à taper.',
    },
    trouble: {
      refused: 'Le navigateur ne laisse pas cette page utiliser la caméra. Autorisez-la à côté de l’adresse et réessayez, ou tapez le code.',
      none: 'Aucune caméra n’a été trouvée. Branchez-en une et réessayez, ou tapez le code.',
      busy: 'Un autre programme utilise la caméra. Fermez-le et réessayez, ou tapez le code.',
      failed: 'La caméra s’est arrêtée. Réessayez, ou tapez le code.',
    },
    seen: {
      other: 'C’est un autre code QR. Cherchez celui qui est à côté des réponses de l’acheteur.',
      damaged: 'Le code QR a été lu, mais quelque chose y est faux. Faites recharger la page et montrer de nouveau le code QR, ou tapez le code.',
      newer: 'Ce code QR vient d’une version plus récente que celle de ce comptoir. Rechargez cette page.',
    },
  },
  kept: { delivery: 'le code postal de livraison', tradeIn: 'ce qui est repris', owned: 'marques et noms des outils déjà là', material: 'le matériau, s’il est peu courant', species: 'l’essence du bois, si elle est peu courante' },
  ask: (things) => `Un lien ne contient que des choix et des chiffres. Demandez, si cela compte : ${things}.`,
  takeAlong: {
    heading: 'À emporter', scan: 'Scannez-le avec votre téléphone. Il contient vos réponses, et rien sur qui vous êtes.', link: 'En lien', typed: 'En code à taper',
    noLink: 'Ces réponses sont trop longues pour un lien ou un code QR. Imprimez-les.',
  },
};
