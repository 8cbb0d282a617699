import type { HandoffWords } from './words.ts';

export const es: HandoffWords = {
  language: 'es',
  subject: (dealer) => `Tractores que se adaptan al trabajo: ${dealer}`,
  priceOf: (day) => `precio del ${day}`,
  goOn: 'Sus respuestas, para verlas, cambiarlas o seguir:',
  shortened: {
    withLink: 'Correo abreviado para que quepa. El enlace al final lo muestra todo.',
    alone: 'Correo abreviado para que quepa. Faltan máquinas, razones y precauciones.',
  },
  cautionsInShort: 'Primero el manual del operador. Arco arriba, cinturón puesto. Sin pasajeros, nadie cerca, TDF protegida y apagada, motor nunca bajo techo.',
  codeTitle: 'Código QR con sus respuestas, y nada sobre quién es usted',
  leftOut: (places) => `No se transmitió: ${places}. Solo van respuestas de una lista y cifras.`,
  tooLongToType: (length, most) => `Con tantas respuestas, la clave tiene ${length} caracteres; se pueden escribir ${most}. Use el enlace o el código QR.`,
  refusals: {
    nothing: () => ({ what: 'No se tomó nada.', why: 'La casilla está vacía.', mend: 'Pegue el enlace o escriba la clave.' }),
    'not-ours': () => ({ what: 'No se tomó nada.', why: 'Eso no contiene respuestas de este asistente.', mend: 'Copie el enlace completo, desde https hasta la última letra.' }),
    'too-long': () => ({ what: 'No se tomó nada.', why: 'Eso es más largo que cualquier conjunto de respuestas.', mend: 'Pegue solo el enlace.' }),
    sign: ({ sign, group }) => ({ what: 'No se tomó nada.', why: `Ninguna clave lleva «${sign}»; está en el grupo ${group}.`, mend: 'Revise ese grupo.' }),
    damaged: () => ({ what: 'No se tomó nada.', why: 'Hay un signo equivocado, falta uno o sobra uno.', mend: 'Compare grupo por grupo, o copie otra vez el enlace.' }),
    newer: () => ({ what: 'No se tomó nada.', why: 'Las respuestas se hicieron con una versión más nueva de esta página.', mend: 'Vuelva a cargar la página, o responda aquí las preguntas.' }),
    'not-understood': () => ({ what: 'No se tomó nada.', why: 'Ningún comprador pudo haber respondido así.', mend: 'Responda aquí las preguntas.' }),
  },
};
