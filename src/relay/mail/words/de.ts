import type { MailWords } from './words.ts';

export const de: MailWords = {
  language: 'de',
  subjects: {
    notify: (dealer) => `Notiert: Nachricht, sobald einer kommt – ${dealer}`,
    confirm: (dealer) => `Waren Sie das? Ein Klick, und die Auswahl kommt – ${dealer}`,
    dealerShortlist: (dealer) => `Ein Käufer bat um eine Auswahl – ${dealer}`,
    dealerNotify: (dealer) => `Ein Käufer wünscht Nachricht, sobald einer kommt – ${dealer}`,
    undelivered: (dealer) => `E-Mail an einen Käufer ist nicht zustellbar – ${dealer}`,
  },
  asked: (dealer) => `Sie haben bei ${dealer} darum gebeten.`,
  otherList: (now, seen) => (seen === undefined
    ? `Berechnet mit der Liste vom ${now}, nicht mit der, die Sie gesehen haben. Preise und Maschinen können anders sein.`
    : `Berechnet mit der Liste vom ${now}; gesehen haben Sie die vom ${seen}. Preise und Maschinen können anders sein.`),
  otherRules: 'Es wird inzwischen etwas anders gerechnet als bei dem, was Sie gesehen haben. Einzelne Angaben können anders sein.',
  shortened: 'Gekürzt, damit es in eine E-Mail passt.',
  open: 'Ihre Antworten ansehen',
  lineUp: {
    about: 'Alle Balken in einem Maßstab: voll für Maschinen, umrandet für Ihre eigenen Sachen.',
    across: 'Wie breit', up: 'Wie hoch', along: 'Wie lang',
  },
  demands: {
    heading: 'Was die Arbeit verlangt', none: 'Nichts, was eine Maschine ausschließt.',
    atLeast: (amount) => `mindestens ${amount}`, atMost: (amount) => `höchstens ${amount}`, safety: 'zur Sicherheit',
  },
  notify: {
    title: 'Sie bekommen Nachricht, sobald einer kommt',
    says: (dealer) => `${dealer} hat Ihre Antworten und Ihre Adresse und schreibt Ihnen, sobald eine Maschine kommt, die die Arbeit kann. Sie brauchen nichts weiter zu tun.`,
  },
  confirm: {
    title: 'Waren Sie das?',
    says: (dealer) => `Jemand bat darum, eine Auswahl gebrauchter Traktoren von ${dealer} an diese Adresse zu senden. Waren Sie es, drücken Sie auf den Knopf. Wenn nicht, tun Sie nichts: Dann wird nichts gesendet.`,
    button: 'Ja, bitte senden',
  },
  dealer: {
    titles: { shortlist: 'Ein Käufer bat um eine Auswahl', notify: 'Ein Käufer wünscht Nachricht, sobald einer kommt' },
    says: {
      shortlist: 'Er ist einverstanden, dass Sie diese Kopie bekommen. Wenn Sie auf diese E-Mail antworten, schreiben Sie ihm.',
      notify: 'Er ist einverstanden, dass Sie diese Kopie bekommen. Antworten Sie auf diese E-Mail, sobald eine Maschine kommt, die die Arbeit unten kann.',
    },
    contactHeading: 'Der Käufer', name: 'Name', phone: 'Telefon', mail: 'E-Mail', goodTime: 'Gute Zeit für einen Anruf',
    goodTimes: { any: 'jederzeit', morning: 'morgens', midday: 'mittags', afternoon: 'nachmittags', evening: 'abends' },
    language: 'Sprache seiner E-Mail', noContact: 'Er hat weder Namen noch Telefonnummer angegeben.',
    toldBuyer: 'Was passt, wie es ihm gesagt wird',
    undelivered: {
      title: 'E-Mail an einen Käufer ist nicht zustellbar',
      says: 'Die E-Mail, um die dieser Käufer bat, wurde abgelehnt, kam zurück oder wurde drei Tage lang von niemandem angenommen. Sie wird nicht noch einmal versucht. Vielleicht ist die Adresse verschrieben; wo unten eine Telefonnummer steht, können Sie anrufen.',
    },
  },
  footer: {
    why: (dealer) => `Diese E-Mail kommt, weil sie mit dieser Adresse bei ${dealer} angefordert wurde. Es ist eine einzelne E-Mail; Sie stehen auf keinem Verteiler.`,
    stop: 'Keine E-Mail mehr von hier, von keinem Händler:', stopLink: 'abbestellen',
    notAsked: 'Sie haben nichts angefordert? Vielleicht hat jemand anderes Ihre Adresse eingegeben:', notAskedLink: 'das habe ich nicht angefordert',
    toDealer: (dealer) => `Diese Kopie geht an ${dealer}, weil der Käufer damit einverstanden ist. Verwenden Sie seine Angaben nur für seine Anfrage.`,
  },
};
