import type { MailWords } from './words.ts';

export const mail: MailWords = {
  language: 'de',
  shortlist: {
    heading: 'Die Auswahl per E-Mail',
    what: 'Eine Nachricht mit den Maschinen, den Gründen, den Nachteilen, den Preisen und einem Link zurück zu Ihren Antworten. Kein Newsletter.',
    send: 'Abschicken', sent: 'Die Auswahl ist unterwegs',
  },
  notify: {
    heading: 'Nachricht, wenn eine hereinkommt',
    what: (dealer) => `${dealer} bekommt Ihre Adresse und Ihre Antworten und schreibt Ihnen, wenn eine Maschine hereinkommt, die das leistet.`,
    send: 'Darum bitten', sent: (dealer) => `${dealer} weiß jetzt, was Sie suchen`,
  },
  address: 'Ihre E-Mail-Adresse',
  addressHint: 'Nur für diesen Zweck. So geschrieben: name@ort.example',
  addressFault: { missing: 'Geben Sie die Adresse ein, an die es gehen soll', wrong: 'Geben Sie eine ganze Adresse ein, wie name@ort.example' },
  addressNear: (address) => `Meinten Sie ${address}?`,
  dealerCopy: (dealer) => `${dealer} soll eine Kopie mit meiner Adresse bekommen, um mir antworten zu können`,
  statistics: (dealer) => `${dealer} darf meine Antworten, ohne meine Adresse, mitzählen, um zu entscheiden, was angekauft wird`,
  forTheDealer: 'Für den Händler, wenn Sie mögen',
  name: 'Ihr Name',
  nameFault: 'Geben Sie einen Namen aus Buchstaben ein oder lassen Sie das Feld leer',
  phone: 'Telefon',
  phoneFault: 'Geben Sie eine Nummer ein oder lassen Sie das Feld leer',
  goodTime: 'Gute Zeit für einen Anruf',
  goodTimes: { any: 'Jederzeit', morning: 'Morgens', midday: 'Mittags', afternoon: 'Nachmittags', evening: 'Abends' },
  privacy: 'Ihre Adresse wird nach dem Versand noch eine Woche aufbewahrt und dann gelöscht. In jeder Nachricht steht ein Link, der weitere verhindert.',
  sending: 'Wird geschickt…',
  working: 'Es wird gezeigt, dass hier kein Automat schreibt; einige Sekunden…',
  sentTo: (address) => `Sie geht an ${address}.`,
  mayTake: 'Das kann einige Minuten dauern. Kommt nichts an, sehen Sie bei der unerwünschten Post nach oder fragen Sie den Händler.',
  later: {
    busy: 'Die E-Mail kann gerade nicht angenommen werden.', unreachable: 'Der Versand ist nicht erreichbar. Vielleicht gibt es kein Netz.',
    tryingAgain: (seconds) => `Nächster Versuch in ${seconds} s.`, tryAgain: 'Noch einmal versuchen',
    otherWays: 'Verloren ist nichts: Sie können diese Seite auch drucken oder als Datei sichern.',
  },
  refused: {
    faulty: 'Die E-Mail wurde so nicht angenommen. Prüfen Sie die Adresse oder fragen Sie den Händler.',
    other: (code) => `Die E-Mail wurde nicht angenommen (${code}). Fragen Sie den Händler oder drucken Sie diese Seite.`,
  },
  close: 'Schließen',
};
