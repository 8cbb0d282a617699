import type { HandoffWords } from './words.ts';

export const de: HandoffWords = {
  language: 'de',
  subject: (dealer) => `Traktoren, die zur Arbeit passen: ${dealer}`,
  priceOf: (day) => `Preis vom ${day}`,
  goOn: 'Ihre Antworten, zum Ansehen, Ändern und Weitermachen:',
  shortened: {
    withLink: 'Gekürzt, damit die E-Mail passt. Der Link am Ende zeigt alles.',
    alone: 'Gekürzt, damit die E-Mail passt. Maschinen, Gründe und Hinweise fehlen.',
  },
  cautionsInShort: 'Zuerst die Betriebsanleitung. Bügel oben, Gurt an. Keine Mitfahrer, niemand im Umkreis, Zapfwelle geschützt und aus, kein Motor im Raum.',
  codeTitle: 'QR-Code mit Ihren Antworten und nichts darüber, wer Sie sind',
  leftOut: (places) => `Nicht weitergegeben: ${places}. Nur Antworten aus einer Liste und Zahlen gehen mit.`,
  tooLongToType: (length, most) => `Mit so vielen Antworten hat die Form ${length} Zeichen; tippen lassen sich ${most}. Nehmen Sie den Link oder den QR-Code.`,
  refusals: {
    nothing: () => ({ what: 'Es wurde nichts übernommen.', why: 'Das Feld ist leer.', mend: 'Fügen Sie den Link ein, oder tippen Sie die Form.' }),
    'not-ours': () => ({ what: 'Es wurde nichts übernommen.', why: 'Darin sind keine Antworten dieses Assistenten.', mend: 'Kopieren Sie den ganzen Link, von https bis zum letzten Zeichen.' }),
    'too-long': () => ({ what: 'Es wurde nichts übernommen.', why: 'Das ist länger, als Antworten je sind.', mend: 'Fügen Sie nur den Link ein.' }),
    sign: ({ sign, group }) => ({ what: 'Es wurde nichts übernommen.', why: `„${sign}“ kommt in keiner Form vor; es steht in Gruppe ${group}.`, mend: 'Sehen Sie sich diese Gruppe noch einmal an.' }),
    damaged: () => ({ what: 'Es wurde nichts übernommen.', why: 'Ein Zeichen ist falsch, fehlt oder ist zu viel.', mend: 'Vergleichen Sie Gruppe für Gruppe, oder kopieren Sie den Link noch einmal.' }),
    newer: () => ({ what: 'Es wurde nichts übernommen.', why: 'Die Antworten stammen von einer neueren Fassung dieser Seite.', mend: 'Laden Sie die Seite neu, oder beantworten Sie die Fragen hier.' }),
    'not-understood': () => ({ what: 'Es wurde nichts übernommen.', why: 'So kann kein Käufer geantwortet haben.', mend: 'Beantworten Sie die Fragen hier.' }),
  },
};
