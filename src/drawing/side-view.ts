import { loaderFromSide } from './loader-shapes.ts';
import { guess, type Measures } from './measures.ts';
import type { Outfit } from './outfit.ts';
import { proportions as share } from './proportions.ts';
import { box, dimension, path, strokes, type Dimension, type Point, type Shape } from './shape.ts';
import { wheelFromSide } from './wheel.ts';

export interface View {
  shapes: Shape[];
  dimensions: Dimension[];
  /** Where a load would hang on the loader at full height. */
  pin?: Point;
}

/** Seat on its box, steering wheel on its column, and the platform the feet stand on. */
function seatAndWheel({ wheelbase: { value: w }, height: { value: h }, clearance }: Measures): Shape[] {
  const [back, front, low, high] = [w * share.seatBack, w * share.seatFront, h * share.seatHeight, h * share.seatTop];
  const [wheelX, wheelY] = [w * share.steeringWheel, h * share.steeringHeight];
  const floor = Math.max(clearance.value * 1.15, h * share.platformHeight);
  return [
    box({ part: 'body', line: 'light', filled: true }, w * 0.06, floor - h * 0.022, w * share.platformFront, floor),
    path({ part: 'body', line: 'light', filled: true, closed: true }, [[w * share.platformFront, floor], [w * 0.47, h * 0.5], [w * share.firewall, h * 0.52], [w * share.firewall, floor]]),
    path({ part: 'seat', line: 'light', filled: true, closed: true }, [[back + w * 0.04, floor], [back + w * 0.02, low], [front - w * 0.06, low], [front - w * 0.02, floor]]),
    path({ part: 'seat', line: 'heavy', filled: true, closed: true, corner: h * 0.02 }, [
      [back + w * 0.02, low - h * 0.025], [back - w * 0.06, high], [back + w * 0.005, high], [back + w * 0.085, low + h * 0.03], [front, low + h * 0.035], [front, low - h * 0.015],
    ]),
    path({ part: 'steering', line: 'light' }, [[w * 0.5, h * 0.49], [wheelX, wheelY]]),
    path({ part: 'steering', line: 'heavy' }, [[wheelX - w * 0.07, wheelY - h * 0.022], [wheelX + w * 0.06, wheelY + h * 0.04]]),
  ];
}

/** The hoop: two lines up from behind the seat, folded it lies back to its own height. */
function hoop({ wheelbase: { value: w }, height, folded, rearTyre }: Measures): Shape[] {
  const [x, thick, foot] = [w * share.ropsPost, height.value * share.postThickness, rearTyre.value * 0.6];
  const post = box({ part: 'rops', line: 'heavy', filled: true, corner: thick * 0.6 }, x - thick, foot, x + thick, height.value, height);
  if (!folded) return [post];
  const [top, end] = [folded.value, x - thick - (height.value - folded.value)];
  return [
    post,
    box({ part: 'rops', line: 'light', filled: true }, x - thick * 1.6, Math.max(foot, top - thick * 1.5), x + thick * 1.6, top, folded),
    path({ part: 'folded', line: 'thin', closed: true }, [[x - thick, top], [end, top - thick], [end, top - thick * 3], [x - thick, top - thick * 2]], folded, guess(0)),
  ];
}

function cabFrame({ wheelbase: { value: w }, height, bonnet, rearTyre }: Measures): Shape[] {
  const [h, back, front] = [height.value, w * share.cabBack, w * share.cabFront];
  const roof = h * (1 - share.roof);
  const foot = rearTyre.value * 0.9;
  return [
    path({ part: 'cab', line: 'heavy' }, [[back, foot], [back + w * 0.02, roof]], height),
    path({ part: 'cab', line: 'heavy' }, [[front + w * 0.03, bonnet.value], [front - w * 0.05, roof]], height),
    path({ part: 'cab', line: 'light' }, [[w * 0.12, foot], [w * 0.1, roof]], height),
    path({ part: 'cab', line: 'light' }, [[w * 0.14, h * share.platformHeight * 1.1], [w * 0.36, h * share.platformHeight * 1.1], [front + w * 0.02, bonnet.value * 0.8]], height),
    box({ part: 'cab', line: 'heavy', filled: true, corner: h * 0.02 }, back - w * 0.05, roof, front + w * 0.05, h, height),
  ];
}

/** Bonnet and nose: how high they are is nobody's published figure, so that the line over them is dashed. */
function bonnetShapes({ wheelbase: { value: w }, length, bonnet, frontTyre, back }: Measures): Shape[] {
  const b = bonnet.value;
  const [rear, nose] = [w * share.firewall, Math.max(w * 1.02, length.value - back - b * 0.04)];
  const bottom = Math.max(b * share.noseBottom, frontTyre.value * 0.62);
  const [high, corner] = [b * share.noseTop, b * 0.1];
  const outline: Point[] = [[rear, bottom], [rear, b], [nose - b * 0.06, high], [nose - b * 0.02, bottom + (high - bottom) * 0.45], [nose, bottom]];
  const [footRear, topRear, topNose, cheek, footNose] = outline as [Point, Point, Point, Point, Point];
  const slits = [0, 1, 2, 3].map((slit): Point[] => [
    [rear + (nose - rear) * (0.46 + slit * 0.08), b * 0.67], [rear + (nose - rear) * (0.49 + slit * 0.08), b * 0.8],
  ]);
  return [
    path({ part: 'bonnet', line: 'no-line', filled: true, closed: true, corner }, outline),
    path({ part: 'bonnet', line: 'heavy', corner }, [footRear, topRear, topNose, cheek], bonnet),
    path({ part: 'bonnet', line: 'heavy' }, [cheek, footNose, footRear], length),
    path({ part: 'bonnet', line: 'light' }, [[nose - b * 0.15, bottom], [nose - b * 0.16, high - b * 0.07]]),
    strokes({ part: 'bonnet', line: 'light' }, slits),
  ];
}

/** What carries it all: gearbox, engine and the bolster over the front axle; its underside is the clearance. */
function chassis({ wheelbase, length, clearance, frontTyre, rearTyre, bonnet, back }: Measures): Shape {
  const [w, low] = [wheelbase.value, clearance.value];
  const axle = frontTyre.value / 2;
  const [step, nose, top] = [w * share.chassisStep, length.value - back, bonnet.value * share.chassisTop];
  const high = Math.max(low * 1.02, axle * 0.75);
  return path({ part: 'body', line: 'heavy', filled: true, closed: true }, [
    [w * share.chassisBack, Math.max(low * 1.3, rearTyre.value * 0.34)], [w * share.chassisBack, Math.max(top * 0.8, rearTyre.value * 0.6)], [step, top], [nose - w * 0.04, top],
    [nose, top * 0.96], [nose, high * 1.15], [nose - w * 0.05, high], [step + w * 0.05, high], [step - w * 0.04, low], [w * 0.06, low],
  ], wheelbase, length, clearance);
}

function hitch({ rearTyre, back }: Measures): Shape[] {
  const r = rearTyre.value / 2;
  const end = -Math.max(back, r * 1.05);
  return [
    path({ part: 'hitch', line: 'heavy' }, [[0, r * 0.8], [end, r * 0.62]], { value: back, assumed: false }),
    path({ part: 'hitch', line: 'light' }, [[-r * 0.2, r * 1.25], [end + r * 0.12, r * 1.15]]),
    path({ part: 'hitch', line: 'light' }, [[-r * 0.3, r * 1.5], [end * 0.62, r * 1.45], [end * 0.66, r * 0.72]]),
  ];
}

/** What one sees of the mudguard over the tyre that stands before it. */
function fender({ rearTyre }: Measures): Shape {
  const [r, over] = [rearTyre.value / 2, (rearTyre.value / 2) * share.fender];
  return path({ part: 'fender', line: 'heavy', filled: true, closed: true, corner: r * 0.22 }, [
    [-over * 1.02, r * 1.25], [-over * 0.78, r + over * 1.02], [over * 0.62, r + over * 1.02], [over * 1.06, r + over * 0.45], [over * 1.16, r * 0.9], [r * 0.6, r * 0.8],
  ], rearTyre);
}

/** A deck under the belly: its width is its maker's, what one sees from the side only shows that it is there. */
function deckShapes({ wheelbase: { value: w }, rearTyre, frontTyre }: Measures): Shape[] {
  const [left, right] = [rearTyre.value / 2 + 0.04, w - frontTyre.value / 2 - 0.03];
  const { deckBottom: low, deckTop: high } = share;
  return [
    path({ part: 'deck', line: 'heavy', filled: true, closed: true, corner: 0.03 }, [[left, low], [left, high * 0.8], [left + 0.08, high], [right - 0.08, high], [right, high * 0.8], [right, low]]),
    path({ part: 'deck', line: 'light' }, [[(left + right) / 2 - 0.08, high], [(left + right) / 2 - 0.05, high + 0.07], [(left + right) / 2 + 0.05, high + 0.07], [(left + right) / 2 + 0.08, high]]),
  ];
}

/** A machine from its right-hand side, nose to the right, rear axle at 0. */
export function sideView({ loader, deck, cab, machine }: Outfit, measures: Measures): View {
  const { wheelbase, length, withLoader, height, back, rearTyre } = measures;
  const arms = loader && loaderFromSide(loader, measures);
  const whole = loader ? withLoader : length;
  const left = -Math.max(back, rearTyre.value / 2);
  const shapes = [
    ...hitch(measures), chassis(measures), ...bonnetShapes(measures),
    ...wheelFromSide(wheelbase.value, measures.frontTyre),
    ...(deck === undefined ? [] : deckShapes(measures)),
    ...(cab ? [] : hoop(measures)), ...seatAndWheel(measures), ...(cab ? cabFrame(measures) : []),
    fender(measures), ...wheelFromSide(0, rearTyre), ...(arms?.shapes ?? []),
  ];
  return {
    shapes,
    dimensions: [
      ...(wheelbase.assumed ? [] : [dimension('wheelbase', 'below', 0, [0, 0], [wheelbase.value, 0], wheelbase.value)]),
      ...(whole.assumed ? [] : [dimension('length', 'below', 1, [-back, 0], [whole.value - back, 0], whole.value)]),
      ...(height.assumed ? [] : [dimension('height', 'left', 0, [left, 0], [left, height.value], height.value)]),
      ...(machine.loaders && arms?.pin ? [dimension('reach', 'right', 0, [arms.pin[0], 0], arms.pin, arms.pin[1])] : []),
    ],
    ...(arms?.pin && { pin: arms.pin }),
  };
}
