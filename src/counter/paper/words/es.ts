import type { PaperWords } from './words.ts';

export const es: PaperWords = {
  language: 'es',
  scan: 'Escanee para ver sus respuestas, cambiarlas o seguir. El código no contiene nada sobre quién es usted.',
  type: 'O escriba en nuestra página:',
  scale: (ratio) => `Escala 1:${ratio} si se imprime a tamaño completo. La barra vale a cualquier tamaño.`,
  deciding: 'Los cálculos que deciden',
  gives: (result) => `da ${result}`,
  source: (source) => `Fuente: ${source}.`,
  onlyNamed: {
    machines: (names, count) => (count === 1 ? `No cabe aquí otra que podría mirar: ${names}.` : `No caben aquí otras ${count} que podría mirar: ${names}.`),
    reasons: (count) => (count === 1 ? 'Una razón más a favor' : `${count} razones más a favor`),
    drawbacks: (count) => (count === 1 ? 'Una más en contra o sin saber' : `${count} más en contra o sin saber`),
    sums: (count) => (count === 1 ? 'un cálculo más' : `${count} cálculos más`),
    units: (count) => (count === 1 ? 'Otro en existencia' : `Otros ${count} en existencia`),
    sheet: {
      withCode: 'Abreviado para caber en dos páginas; lo que falta está contado. La página del código lo muestra todo.',
      alone: 'Abreviado para caber en dos páginas; lo que falta está contado. Pida que se lo mostremos todo.',
    },
  },
  checksHeading: 'Cuando vea la máquina',
  checks: {
    hours: 'Horas: ¿va el desgaste con el contador?',
    'service-record': 'Mantenimiento: facturas de aceite, filtros y reparaciones',
    'serial-plate': 'Placa de serie: está, se lee y es del año dicho',
    rops: 'Barra antivuelco (ROPS): certificada, con su etiqueta; nada doblado, cortado ni soldado',
    'seat-belt': 'Cinturón: está, entero, y se bloquea',
    hydraulics: 'Hidráulica: sin fugas, el cargador no baja. Mire, no toque',
    'loader-pins': 'Pasadores y bujes del cargador: ¿cuánto juego?',
    clutch: 'Embrague y transmisión: si patina, ruidos, frenos',
    pto: 'TDF: entra y sale bien; protector puesto',
    tyres: 'Llantas: dibujo, grietas, un tipo; ¿líquido o pesas?',
    recalls: 'Retiros del fabricante: pregunte con el número de serie; por escrito',
    liens: 'Cargas: nadie más tiene derecho sobre ella; por escrito',
  },
  form: {
    title: '¿Qué debe hacer el tractor?',
    explained: 'Marque una casilla o escriba en la línea. Deje en blanco lo que no sepa. En esta hoja no hace falta nombre ni dirección.',
    secondBox: 'Marque también la casilla gruesa si es imprescindible: eso descarta toda máquina que no pueda.',
    onlyIf: (options) => `Solo para: ${options}`,
    number: (places) => `Numere lo que más importa, de 1 a ${places}.`,
  },
};
