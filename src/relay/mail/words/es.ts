import type { MailWords } from './words.ts';

export const es: MailWords = {
  language: 'es',
  subjects: {
    notify: (dealer) => `Anotado: aviso cuando llegue uno – ${dealer}`,
    confirm: (dealer) => `¿Fue usted? Un clic y llega la selección – ${dealer}`,
    dealerShortlist: (dealer) => `Un comprador ha pedido una selección – ${dealer}`,
    dealerNotify: (dealer) => `Un comprador quiere aviso cuando llegue uno – ${dealer}`,
    undelivered: (dealer) => `No se puede entregar el correo de un comprador – ${dealer}`,
  },
  asked: (dealer) => `Usted lo pidió en ${dealer}.`,
  otherList: (now, seen) => (seen === undefined
    ? `Está calculado con la lista del ${now}, no con la que usted vio. Los precios y las máquinas pueden ser otros.`
    : `Está calculado con la lista del ${now}; usted vio la del ${seen}. Los precios y las máquinas pueden ser otros.`),
  otherRules: 'La forma de calcular ha cambiado desde que usted lo vio. Algunas cifras pueden ser otras.',
  shortened: 'Abreviado para que quepa en un correo.',
  open: 'Ver sus respuestas',
  lineUp: {
    about: 'Todas las barras están a una misma escala: llenas para las máquinas, en contorno para lo de usted.',
    across: 'De ancho', up: 'De alto', along: 'De largo',
  },
  demands: {
    heading: 'Lo que pide el trabajo', none: 'Nada que descarte una máquina.',
    atLeast: (amount) => `al menos ${amount}`, atMost: (amount) => `como máximo ${amount}`, safety: 'por seguridad',
  },
  notify: {
    title: 'Recibirá aviso cuando llegue uno',
    says: (dealer) => `${dealer} tiene sus respuestas y su dirección, y le escribirá cuando llegue una máquina que haga el trabajo. No tiene que hacer nada más.`,
  },
  confirm: {
    title: '¿Fue usted?',
    says: (dealer) => `Alguien pidió que se enviara a esta dirección una selección de tractores usados de ${dealer}. Si fue usted, pulse el botón. Si no, no haga nada: entonces no se envía nada.`,
    button: 'Sí, envíenmela',
  },
  dealer: {
    titles: { shortlist: 'Un comprador ha pedido una selección', notify: 'Un comprador quiere aviso cuando llegue uno' },
    says: {
      shortlist: 'Está de acuerdo en que usted reciba esta copia. Si responde a este correo, le escribe a él.',
      notify: 'Está de acuerdo en que usted reciba esta copia. Responda a este correo cuando llegue una máquina que haga el trabajo de abajo.',
    },
    contactHeading: 'El comprador', name: 'Nombre', phone: 'Teléfono', mail: 'Correo', goodTime: 'Buen momento para llamar',
    goodTimes: { any: 'cualquiera', morning: 'por la mañana', midday: 'al mediodía', afternoon: 'por la tarde', evening: 'por la noche' },
    language: 'Idioma de su correo', noContact: 'No dio nombre ni teléfono.',
    toldBuyer: 'Lo que sirve, tal como se le dice',
    undelivered: {
      title: 'No se puede entregar el correo a un comprador',
      says: 'El correo que pidió este comprador fue rechazado, volvió, o nadie lo aceptó durante tres días. No se intenta otra vez. Puede haber un error en la dirección; si abajo hay un teléfono, puede llamar.',
    },
  },
  footer: {
    why: (dealer) => `Este correo llega porque se pidió con esta dirección en ${dealer}. Es un solo correo; usted no está en ninguna lista.`,
    stop: 'Ningún correo más desde aquí, de ningún distribuidor:', stopLink: 'no recibir más',
    notAsked: '¿No pidió nada? Quizá otra persona escribió su dirección:', notAskedLink: 'yo no lo pedí',
    toDealer: (dealer) => `Esta copia va a ${dealer} porque el comprador está de acuerdo. Use sus datos solo para su consulta.`,
  },
};
