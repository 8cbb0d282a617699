import { de as lot } from '../../../lot/words/de.ts';
import type { UnitWords } from './words.ts';

export const unit: UnitWords = {
  language: 'de',
  lot,
  print: 'Drucken',
  price: {
    open: 'Was er mit Lieferung kostet',
    typical: 'Von diesen steht keiner auf dem Hof. Die Spanne ist, was solche Traktoren meist kosten.',
    how: 'Wie er zu Ihnen kommt',
    delivered: 'Der Händler liefert',
    fetched: 'Ich hole ihn ab',
    distance: 'Wie weit vom Händler',
    ask: 'fragen',
    columns: { what: 'Was', amount: 'Betrag' },
    tradeIn: 'Etwas in Zahlung',
    noTradeIn: 'Nichts',
    tradeIns: {
      'compact-tractor': 'ein Kompakttraktor', 'larger-tractor': 'ein größerer Traktor', 'lawn-tractor': 'ein Rasentraktor', mower: 'ein anderer Mäher',
      'utility-vehicle': 'ein Nutzfahrzeug für Gelände', implements: 'Anbaugeräte', vehicle: 'Auto, Lastwagen oder Anhänger', other: 'etwas anderes',
    },
    tradeInHint: 'Nur ein Wunsch: Der Händler muss es erst sehen, und ein Wert steht hier nicht.',
  },
  look: {
    open: 'Worauf an ihm zu schauen ist',
    notKept: 'Ihre Häkchen bleiben nur, solange diese Seite offen ist.',
    count: (done, all) => `${done} von ${all} angesehen`,
    done: 'Angesehen',
    bad: 'Schlecht befunden',
    foundBad: (names) => `Schlecht befunden: ${names}.`,
    mend: 'Lassen Sie es richten oder fragen Sie, was das kostet, bevor Sie zusagen.',
    paper: { howTo: 'Erstes Kästchen: angesehen. Zweites Kästchen: schlecht befunden.', serial: 'Seriennummer, wie sie auf dem Schild steht', day: 'Tag', notes: 'Notizen' },
  },
  costs: {
    open: 'Was er über die Jahre kostet, neben einem anderen',
    explained: 'Der ältere mit mehr daran oder der neuere mit weniger? Wählen Sie einen zweiten und Ihre eigenen Jahre und Stunden.',
    beside: 'Neben',
    alone: 'Sonst erfüllt keiner, was sein muss; es gibt keinen zweiten daneben.',
    pay: 'Wie Sie zahlen',
    ownMoney: 'Auf einmal, mit eigenem Geld',
    parts: (name) => `Woraus ein Jahr besteht: ${name}`,
    table: 'Das Bild als Tabelle',
  },
  asking: { open: 'Sein Angebotspreis neben anderen dieses Händlers' },
};
