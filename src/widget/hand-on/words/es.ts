import { es as handoff } from '../../../handoff/words/es.ts';
import type { HandOnWords } from './words.ts';

export const handOn: HandOnWords = {
  handoff,
  explained: 'El código, el enlace y la clave contienen sus respuestas, y nada sobre quién es usted. Quien los abra verá lo que hay para ellas ese día. Para eso no se envía ni se guarda nada.',
  code: 'Escanéelo con un teléfono o muéstrelo en el mostrador.',
  noLink: 'Estas respuestas son más largas de lo que cabe en un enlace o un código. El correo sí las lleva.',
  link: { label: 'Enlace a sus respuestas', copy: 'Copiar el enlace' },
  typed: { label: 'Clave para leer en voz alta o escribir', copy: 'Copiar la clave' },
  share: 'Compartir el enlace',
  shareTitle: 'Tractores que se adaptan al trabajo',
  copied: 'Copiado.',
  marked: 'Este navegador no deja copiar a una página. Ya está seleccionado: cópielo a mano.',
  notShared: 'Aquí no se pudo compartir. Copie el enlace.',
  kept: { delivery: 'el código postal de entrega', tradeIn: 'lo que entrega a cuenta', owned: 'los nombres de lo que ya tiene' },
  mail: {
    heading: 'La selección por correo',
    explained: 'La envía su propio programa de correo, a quien usted quiera.',
    save: 'Guardar como archivo de correo',
    saved: (file) => `Guardado como ${file}. Al abrirlo, su programa de correo lo muestra como borrador.`,
    write: 'Escribir un correo con ella',
    shortened: 'En un correo que se abre con un enlace cabe poco: resume las primeras máquinas, y lo dice. El archivo lo lleva todo.',
    noRoom: 'En un correo que se abre con un enlace no cabe esto. En el archivo sí.',
    file: 'tractores',
  },
  opened: 'Estas son las respuestas de su enlace y lo que resulta de ellas. Más abajo puede cambiar cualquiera.',
  notOpened: {
    what: 'No se pudieron tomar las respuestas de su enlace.',
    again: 'Abra otra vez el enlace completo, o responda aquí las preguntas.',
    newer: 'Vuelva a cargar esta página, o responda aquí las preguntas.',
    other: 'Responda aquí las preguntas.',
  },
};
