import { de as handoff } from '../../../handoff/words/de.ts';
import type { HandOnWords } from './words.ts';

export const handOn: HandOnWords = {
  handoff,
  explained: 'Code, Link und Zeile zum Tippen enthalten Ihre Antworten und nichts darüber, wer Sie sind. Wer sie öffnet, sieht, was an dem Tag dazu passt. Dafür wird nichts gesendet und nichts gespeichert.',
  code: 'Mit dem Handy scannen oder an der Theke zeigen.',
  noLink: 'So lange Antworten fasst kein Link und kein Code. In der E-Mail stehen sie trotzdem.',
  link: { label: 'Link zu Ihren Antworten', copy: 'Link kopieren' },
  typed: { label: 'Zum Vorlesen oder Tippen', copy: 'Zeile kopieren' },
  share: 'Link teilen',
  shareTitle: 'Traktoren, die zur Arbeit passen',
  copied: 'Kopiert.',
  marked: 'Dieser Browser lässt eine Seite nicht kopieren. Es ist jetzt markiert: Kopieren Sie es von Hand.',
  notShared: 'Teilen ging hier nicht. Kopieren Sie stattdessen den Link.',
  kept: { delivery: 'die Postleitzahl für die Lieferung', tradeIn: 'was Sie in Zahlung geben', owned: 'Namen Ihrer eigenen Geräte' },
  mail: {
    heading: 'Die Auswahl als E-Mail',
    explained: 'Ihr eigenes Mailprogramm verschickt sie, an wen Sie wollen.',
    save: 'Als E-Mail-Datei speichern',
    saved: (file) => `Gespeichert als ${file}. Öffnen Sie die Datei, dann zeigt Ihr Mailprogramm sie als Entwurf.`,
    write: 'E-Mail damit schreiben',
    shortened: 'Eine E-Mail, die ein Link öffnet, hat wenig Platz: Sie nennt die ersten Maschinen in Kürze und sagt das auch. In der Datei steht alles.',
    noRoom: 'In einer E-Mail, die ein Link öffnet, ist dafür kein Platz. In der Datei schon.',
    file: 'traktor-auswahl',
  },
  opened: 'Das sind die Antworten aus Ihrem Link, und was sich daraus ergibt. Unten können Sie jede ändern.',
  notOpened: {
    what: 'Die Antworten aus Ihrem Link ließen sich nicht übernehmen.',
    again: 'Öffnen Sie den ganzen Link noch einmal, oder beantworten Sie die Fragen hier.',
    newer: 'Laden Sie diese Seite neu, oder beantworten Sie die Fragen hier.',
    other: 'Beantworten Sie die Fragen hier.',
  },
};
