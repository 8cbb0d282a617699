import type { PageWords } from './words.ts';

export const es: PageWords = {
  language: 'es',
  stop: {
    ask: { title: '¿Dejar de recibir estos correos?', says: 'No recibirá más correos desde aquí, de ningún distribuidor. Nada cambia hasta que pulse el botón.', button: 'No quiero más correos' },
    done: { title: 'Hecho', says: 'No recibirá más correos desde aquí. Lo que aún estaba en espera no se envía.' },
  },
  notAsked: {
    ask: { title: '¿No lo pidió usted?', says: 'Quizá otra persona escribió su dirección. Pulse el botón y no recibirá más correos desde aquí; también nos ayuda a ver los abusos.', button: 'Yo no pedí esto' },
    done: { title: 'Gracias', says: 'No recibirá más correos desde aquí. Sentimos la molestia.' },
  },
  confirm: {
    ask: { title: '¿Fue usted?', says: 'Pulse el botón y le enviamos la selección que pidió. Si no fue usted, cierre esta página: entonces no se envía nada.', button: 'Sí, envíenmela' },
    done: { title: 'En camino', says: 'La selección se envía en los próximos minutos. Puede cerrar esta página.' },
  },
  unknown: { title: 'Este enlace no se conoce', says: 'Puede estar cortado o ser demasiado antiguo. Copie el enlace entero del correo, o responda al correo: el distribuidor también puede darle de baja.' },
  tooOften: { title: 'Demasiadas veces', says: 'Se ha intentado demasiadas veces con enlaces que no se conocen. Inténtelo de nuevo en diez minutos.' },
  notNow: { title: 'Ahora no es posible', says: 'No se puede hacer en este momento. Inténtelo en unos minutos; el enlace sigue siendo válido.' },
};
