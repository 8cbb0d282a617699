import type { PaperWords } from './words.ts';

export const de: PaperWords = {
  language: 'de',
  scan: 'Scannen, um Ihre Antworten anzusehen, zu ändern oder weiterzumachen. Der Code enthält nichts darüber, wer Sie sind.',
  type: 'Oder auf unserer Seite eintippen:',
  scale: (ratio) => `Maßstab 1:${ratio}, in voller Größe gedruckt. Der Balken stimmt in jeder Größe.`,
  deciding: 'Die Rechnungen, die entscheiden',
  gives: (result) => `ergibt ${result}`,
  source: (source) => `Quelle: ${source}.`,
  onlyNamed: {
    machines: (names, count) => (count === 1 ? `Hier war kein Platz für eine weitere, die in Frage kommt: ${names}.` : `Hier war kein Platz für ${count} weitere, die in Frage kommen: ${names}.`),
    reasons: (count) => (count === 1 ? 'Ein weiterer Grund dafür' : `${count} weitere Gründe dafür`),
    drawbacks: (count) => (count === 1 ? 'Eines mehr dagegen oder nicht bekannt' : `${count} mehr dagegen oder nicht bekannt`),
    sums: (count) => (count === 1 ? 'eine weitere Rechnung' : `${count} weitere Rechnungen`),
    units: (count) => (count === 1 ? 'Einer mehr auf dem Hof' : `${count} mehr auf dem Hof`),
    sheet: {
      withCode: 'Auf zwei Seiten gekürzt; was fehlt, ist gezählt. Die Seite hinter dem Code zeigt alles.',
      alone: 'Auf zwei Seiten gekürzt; was fehlt, ist gezählt. Lassen Sie sich alles zeigen.',
    },
  },
  checksHeading: 'Wenn Sie die Maschine ansehen',
  checks: {
    hours: 'Stunden: Passt der Verschleiß an Pedalen und Sitz?',
    'service-record': 'Wartung: Rechnungen für Öl, Filter und Reparaturen',
    'serial-plate': 'Typenschild: vorhanden, lesbar, Baujahr stimmt',
    rops: 'Überrollbügel (ROPS): geprüft, mit Schild; nichts verbogen, gesägt oder geschweißt',
    'seat-belt': 'Gurt: vorhanden, heil, und er rastet ein',
    hydraulics: 'Hydraulik: dicht, der Frontlader sinkt nicht. Nie mit der Hand fühlen',
    'loader-pins': 'Bolzen und Buchsen des Frontladers: wie viel Spiel?',
    clutch: 'Kupplung und Antrieb: Rutschen, Geräusche, Bremsen',
    pto: 'Zapfwelle: schaltet sauber ein und aus; Schutz vorhanden',
    tyres: 'Reifen: Profil, Risse, eine Art; Wasser oder Gewichte?',
    recalls: 'Rückrufe: mit der Seriennummer fragen; schriftlich',
    liens: 'Rechte anderer: Niemand sonst hat Anspruch; schriftlich',
  },
  form: {
    title: 'Was soll der Traktor tun?',
    explained: 'Kreuzen Sie an oder schreiben Sie auf die Linie. Lassen Sie weg, wobei Sie nicht sicher sind. Name und Anschrift gehören nicht auf dieses Blatt.',
    secondBox: 'Kreuzen Sie auch das dicke Kästchen an, wo es ein Muss ist: Das schließt jede Maschine aus, die es nicht kann.',
    onlyIf: (options) => `Nur für: ${options}`,
    number: (places) => `Nummerieren Sie, was am meisten zählt, von 1 bis ${places}.`,
  },
};
