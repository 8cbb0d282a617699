import { es as lot } from '../../../lot/words/es.ts';
import type { UnitWords } from './words.ts';

export const unit: UnitWords = {
  language: 'es',
  lot,
  print: 'Imprimir',
  price: {
    open: 'Lo que cuesta puesto en su casa',
    typical: 'De estos no hay ninguno en existencia. El margen es lo que suelen costar.',
    how: 'Cómo llega hasta usted',
    delivered: 'Lo lleva el distribuidor',
    fetched: 'Lo recojo yo',
    distance: 'A qué distancia del distribuidor',
    ask: 'preguntar',
    columns: { what: 'Concepto', amount: 'Importe' },
    tradeIn: 'Algo a cambio',
    noTradeIn: 'Nada',
    tradeIns: {
      'compact-tractor': 'un tractor compacto', 'larger-tractor': 'un tractor más grande', 'lawn-tractor': 'un tractor cortacésped', mower: 'otra segadora',
      'utility-vehicle': 'un vehículo de trabajo todoterreno', implements: 'aperos', vehicle: 'un coche, camión o remolque', other: 'otra cosa',
    },
    tradeInHint: 'Solo un deseo: el distribuidor tiene que verlo antes, y aquí no se le pone valor.',
  },
  look: {
    open: 'Qué mirar en él',
    notKept: 'Lo que marque se guarda solo mientras esta página esté abierta.',
    count: (done, all) => `${done} de ${all} mirados`,
    done: 'Mirado',
    bad: 'Está mal',
    foundBad: (names) => `Está mal: ${names}.`,
    mend: 'Haga que lo arreglen, o pregunte cuánto cuesta, antes de comprometerse.',
    paper: { howTo: 'Primera casilla: mirado. Segunda casilla: está mal.', serial: 'Número de serie leído en la placa', day: 'Día', notes: 'Notas' },
  },
  costs: {
    open: 'Lo que cuesta con los años, al lado de otro',
    explained: '¿El más viejo con más equipo o el más nuevo con menos? Elija otro para ponerlo al lado, y sus propios años y horas.',
    beside: 'Al lado de',
    alone: 'Ningún otro cumple lo imprescindible, así que no hay con qué compararlo.',
    pay: 'Cómo paga',
    ownMoney: 'De una vez, con su propio dinero',
    parts: (name) => `De qué se compone un año: ${name}`,
    table: 'El gráfico como tabla',
  },
  asking: { open: 'Su precio de venta al lado de otros de este distribuidor' },
};
