import { es as handoff } from '../../../handoff/words/es.ts';
import type { OpeningWords } from './words.ts';

export const opening: OpeningWords = {
  handoff,
  heading: 'Abrir las respuestas de un comprador',
  explained: 'Desde un teléfono, un papel o un correo. Contiene lo que se respondió, y nada sobre quién respondió.',
  field: { label: 'Enlace o clave', hint: 'Pegue el enlace, o escriba la clave como se la leen: en mayúsculas o minúsculas, con guiones o sin ellos.', open: 'Abrir' },
  refusals: {
    nothing: () => ({ what: 'No se abrió nada.', why: 'La casilla está vacía.', mend: 'Pegue el enlace o escriba la clave.' }),
    'not-ours': () => ({ what: 'No se abrió nada.', why: 'Eso no contiene respuestas del asistente.', mend: 'Pida que copien el enlace completo, desde https hasta la última letra, o pida la clave.' }),
    'too-long': () => ({ what: 'No se abrió nada.', why: 'Eso es más largo que cualquier conjunto de respuestas.', mend: 'Pegue solo el enlace.' }),
    sign: ({ sign, group }) => ({ what: 'No se abrió nada.', why: `Ninguna clave lleva «${sign}»; está en el grupo ${group}.`, mend: 'Pida que le lean otra vez ese grupo.' }),
    damaged: () => ({ what: 'No se abrió nada.', why: 'Hay un signo equivocado, falta uno o sobra uno.', mend: 'Pida que se la lean grupo por grupo, o que copien otra vez el enlace.' }),
    newer: () => ({ what: 'No se abrió nada.', why: 'Las respuestas se hicieron con una versión más nueva que la de este mostrador.', mend: 'Vuelva a cargar esta página. Si no sirve, haga aquí las preguntas.' }),
    'not-understood': () => ({ what: 'No se abrió nada.', why: 'Ningún comprador pudo haber respondido así.', mend: 'Haga aquí las preguntas.' }),
  },
  camera: {
    start: 'Escanear el código', starting: 'La cámara se está encendiendo. Quizá el navegador pida permiso.', stop: 'Apagar la cámara', picture: 'Lo que ve la cámara',
    hint: 'Ponga el código delante de la cámara. La imagen no sale de este aparato.',
    absent: {
      'no-reader': 'Este navegador no sabe leer códigos. Pida la clave para escribirla, o escanee con la cámara del propio aparato y pegue aquí el enlace.',
      'no-camera': 'Esta página no puede usar la cámara: su dirección tiene que empezar por https. Pida la clave para escribirla.',
    },
    trouble: {
      refused: 'El navegador no deja que esta página use la cámara. Permítalo junto a la dirección e inténtelo otra vez, o escriba la clave.',
      none: 'No se encontró ninguna cámara. Conecte una e inténtelo otra vez, o escriba la clave.',
      busy: 'Otro programa está usando la cámara. Ciérrelo e inténtelo otra vez, o escriba la clave.',
      failed: 'La cámara se apagó. Inténtelo otra vez, o escriba la clave.',
    },
    seen: {
      other: 'Ese es otro código. Busque el que está junto a las respuestas del comprador.',
      damaged: 'El código se leyó, pero algo en él está mal. Pida que carguen otra vez la página y muestren el código, o escriba la clave.',
      newer: 'El código se hizo con una versión más nueva que la de este mostrador. Vuelva a cargar esta página.',
    },
  },
  kept: { delivery: 'el código postal de entrega', tradeIn: 'lo que se entrega a cuenta', owned: 'marcas y nombres de los aperos que ya hay', material: 'el material, si es poco común', species: 'la madera, si es poco común' },
  ask: (things) => `Un enlace solo lleva opciones y cifras. Pregunte, si importa: ${things}.`,
  takeAlong: {
    heading: 'Para llevar', scan: 'Escanéelo con su teléfono. Contiene sus respuestas, y nada sobre quién es usted.', link: 'Como enlace', typed: 'Como clave para escribir',
    noLink: 'Estas respuestas son más largas de lo que cabe en un enlace o un código. Imprímalas.',
  },
};
