import { de as handoff } from '../../../handoff/words/de.ts';
import type { OpeningWords } from './words.ts';

export const opening: OpeningWords = {
  handoff,
  heading: 'Antworten eines Käufers öffnen',
  explained: 'Vom Handy, vom Papier oder aus einer E-Mail. Darin steht, was geantwortet wurde, und nichts darüber, von wem.',
  field: { label: 'Link oder Zeile', hint: 'Link einfügen, oder die Zeile tippen, wie sie vorgelesen wird: groß oder klein, mit Strichen oder ohne.', open: 'Öffnen' },
  refusals: {
    nothing: () => ({ what: 'Es wurde nichts geöffnet.', why: 'Das Feld ist leer.', mend: 'Fügen Sie den Link ein, oder tippen Sie die Zeile.' }),
    'not-ours': () => ({ what: 'Es wurde nichts geöffnet.', why: 'Darin sind keine Antworten des Assistenten.', mend: 'Lassen Sie den ganzen Link kopieren, von https bis zum letzten Zeichen, oder sich die Zeile zum Tippen geben.' }),
    'too-long': () => ({ what: 'Es wurde nichts geöffnet.', why: 'Das ist länger, als Antworten je sind.', mend: 'Fügen Sie nur den Link ein.' }),
    sign: ({ sign, group }) => ({ what: 'Es wurde nichts geöffnet.', why: `„${sign}“ kommt in keiner Zeile vor; es steht in Gruppe ${group}.`, mend: 'Lassen Sie sich diese Gruppe noch einmal vorlesen.' }),
    damaged: () => ({ what: 'Es wurde nichts geöffnet.', why: 'Ein Zeichen ist falsch, fehlt oder ist zu viel.', mend: 'Lassen Sie sich Gruppe für Gruppe vorlesen, oder den Link noch einmal kopieren.' }),
    newer: () => ({ what: 'Es wurde nichts geöffnet.', why: 'Die Antworten stammen von einer neueren Fassung als dieser.', mend: 'Laden Sie diese Seite neu. Hilft das nicht, stellen Sie die Fragen hier.' }),
    'not-understood': () => ({ what: 'Es wurde nichts geöffnet.', why: 'So kann kein Käufer geantwortet haben.', mend: 'Stellen Sie die Fragen hier.' }),
  },
  camera: {
    start: 'Code scannen', starting: 'Die Kamera startet. Vielleicht fragt der Browser, ob sie darf.', stop: 'Kamera ausschalten', picture: 'Was die Kamera sieht',
    hint: 'Halten Sie den Code vor die Kamera. Das Bild bleibt auf diesem Gerät.',
    absent: {
      'no-reader': 'Dieser Browser kann keine Codes lesen. Lassen Sie sich die Zeile zum Tippen geben, oder scannen Sie mit der Kamera-App des Geräts und fügen Sie den Link hier ein.',
      'no-camera': 'Diese Seite darf keine Kamera benutzen: Ihre Adresse muss mit https beginnen. Lassen Sie sich die Zeile zum Tippen geben.',
    },
    trouble: {
      refused: 'Der Browser lässt diese Seite nicht an die Kamera. Erlauben Sie es neben der Adresse und versuchen Sie es noch einmal, oder tippen Sie die Zeile.',
      none: 'Es wurde keine Kamera gefunden. Schließen Sie eine an und versuchen Sie es noch einmal, oder tippen Sie die Zeile.',
      busy: 'Ein anderes Programm benutzt die Kamera. Schließen Sie es und versuchen Sie es noch einmal, oder tippen Sie die Zeile.',
      failed: 'Die Kamera ist ausgegangen. Versuchen Sie es noch einmal, oder tippen Sie die Zeile.',
    },
    seen: {
      other: 'Das ist ein anderer Code. Suchen Sie den neben den Antworten des Käufers.',
      damaged: 'Der Code wurde gelesen, aber etwas darin ist falsch. Lassen Sie die Seite neu laden und den Code noch einmal zeigen, oder tippen Sie die Zeile.',
      newer: 'Der Code stammt von einer neueren Fassung als dieser. Laden Sie diese Seite neu.',
    },
  },
  kept: { delivery: 'die Postleitzahl für die Lieferung', tradeIn: 'was in Zahlung gegeben wird', owned: 'Marken und Namen der eigenen Geräte', material: 'das Material, wenn es ein seltenes ist', species: 'die Holzart, wenn es eine seltene ist' },
  ask: (things) => `Ein Link enthält nur Auswahl und Zahlen. Fragen Sie, wo es darauf ankommt: ${things}.`,
  takeAlong: {
    heading: 'Zum Mitnehmen', scan: 'Scannen Sie ihn mit dem Handy. Er enthält Ihre Antworten und nichts darüber, wer Sie sind.', link: 'Als Link', typed: 'Als Zeile zum Tippen',
    noLink: 'So lange Antworten fasst kein Link und kein Code. Drucken Sie sie aus.',
  },
};
