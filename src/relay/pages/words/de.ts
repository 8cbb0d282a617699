import type { PageWords } from './words.ts';

export const de: PageWords = {
  language: 'de',
  stop: {
    ask: { title: 'Diese Mails abbestellen?', says: 'Sie bekommen dann von hier keine Mail mehr, von keinem Händler. Es ändert sich nichts, solange Sie nicht auf den Knopf drücken.', button: 'Abbestellen' },
    done: { title: 'Abbestellt', says: 'Sie bekommen von hier keine Mail mehr. Was noch wartet, wird nicht gesendet.' },
  },
  notAsked: {
    ask: { title: 'Nicht von Ihnen angefordert?', says: 'Vielleicht hat jemand anderes Ihre Adresse eingegeben. Drücken Sie auf den Knopf, dann bekommen Sie von hier keine Mail mehr; uns hilft es, Missbrauch zu erkennen.', button: 'Das habe ich nicht angefordert' },
    done: { title: 'Danke', says: 'Sie bekommen von hier keine Mail mehr. Es tut uns leid, dass Sie gestört wurden.' },
  },
  confirm: {
    ask: { title: 'Waren Sie das?', says: 'Drücken Sie auf den Knopf, dann wird Ihnen die Auswahl gesendet, um die Sie gebeten haben. Waren Sie es nicht, schließen Sie diese Seite: Dann wird nichts gesendet.', button: 'Ja, bitte senden' },
    done: { title: 'Unterwegs', says: 'Die Auswahl wird in den nächsten Minuten gesendet. Sie können diese Seite schließen.' },
  },
  unknown: { title: 'Dieser Link ist nicht bekannt', says: 'Vielleicht ist er abgeschnitten oder zu alt. Kopieren Sie den ganzen Link aus der Mail, oder antworten Sie auf die Mail: Auch der Händler kann sie abbestellen.' },
  tooOften: { title: 'Zu oft', says: 'Es wurde zu oft mit unbekannten Links versucht. Versuchen Sie es in zehn Minuten noch einmal.' },
  notNow: { title: 'Im Moment nicht', says: 'Das geht gerade nicht. Versuchen Sie es in einigen Minuten noch einmal; der Link bleibt gültig.' },
};
