import 'jsqr';

/** The reader of QR codes puts itself on the page: it is no module. */
declare const jsQR: (pixels: Uint8ClampedArray, width: number, height: number) => { data: string } | null;

/** What another library reads from a picture, a frame of a film or a drawing; undefined where it sees no code. */
export function scan(picture: HTMLVideoElement | HTMLImageElement | HTMLCanvasElement, width: number, height: number): string | undefined {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.drawImage(picture, 0, 0, width, height);
  return jsQR(context.getImageData(0, 0, width, height).data, width, height)?.data;
}

/** A drawing as the browser paints it. */
export async function painted(svg: SVGSVGElement, side: number): Promise<HTMLCanvasElement> {
  const image = new Image(side, side);
  const drawing = svg.cloneNode(true) as SVGSVGElement;
  drawing.setAttribute('width', String(side));
  drawing.setAttribute('height', String(side));
  image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(drawing))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width: side, height: side });
  canvas.getContext('2d')!.drawImage(image, 0, 0);
  return canvas;
}
