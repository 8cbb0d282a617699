import type { MailWords } from './words.ts';

export const mail: MailWords = {
  language: 'es',
  shortlist: {
    heading: 'La selección por correo',
    what: 'Un solo mensaje con las máquinas, los motivos, los inconvenientes, los precios y un enlace para volver a sus respuestas. Sin boletín.',
    send: 'Enviar', sent: 'La selección está en camino',
  },
  notify: {
    heading: 'Aviso cuando entre una',
    what: (dealer) => `${dealer} recibe su dirección y sus respuestas, y le escribe cuando entre una unidad que haga el trabajo.`,
    send: 'Pedirlo', sent: (dealer) => `${dealer} ya sabe lo que busca`,
  },
  address: 'Su dirección de correo',
  addressHint: 'Solo para esto. Se escribe así: nombre@lugar.example',
  addressFault: { missing: 'Escriba la dirección a la que debe ir', wrong: 'Escriba una dirección entera, como nombre@lugar.example' },
  addressNear: (address) => `¿Quería decir ${address}?`,
  dealerCopy: (dealer) => `Que ${dealer} reciba una copia con mi dirección para poder contestarme`,
  statistics: (dealer) => `Que ${dealer} pueda contar mis respuestas, sin mi dirección, al decidir qué comprar`,
  forTheDealer: 'Para el vendedor, si quiere',
  name: 'Su nombre',
  nameFault: 'Escriba un nombre con letras o deje el campo vacío',
  phone: 'Teléfono',
  phoneFault: 'Escriba un número o deje el campo vacío',
  goodTime: 'Buen momento para llamar',
  goodTimes: { any: 'Cualquiera', morning: 'Por la mañana', midday: 'Al mediodía', afternoon: 'Por la tarde', evening: 'Por la noche' },
  privacy: 'Su dirección se guarda una semana después del envío y luego se borra. Cada mensaje lleva un enlace para no recibir más.',
  sending: 'Enviando…',
  working: 'Demostrando que no es un programa; unos segundos…',
  sentTo: (address) => `Va a ${address}.`,
  mayTake: 'Puede tardar unos minutos. Si no llega nada, mire en el correo no deseado o pregunte al vendedor.',
  later: {
    busy: 'Ahora mismo no se puede aceptar el correo.', unreachable: 'No se llega al servicio de correo. Quizá no haya red.',
    tryingAgain: (seconds) => `Nuevo intento en ${seconds} s.`, tryAgain: 'Intentar de nuevo',
    otherWays: 'No se pierde nada: también puede imprimir esta página o guardarla como archivo.',
  },
  refused: {
    faulty: 'El correo no se aceptó tal como está. Revise la dirección o pregunte al vendedor.',
    other: (code) => `El correo no se aceptó (${code}). Pregunte al vendedor o imprima esta página.`,
  },
  close: 'Cerrar',
};
