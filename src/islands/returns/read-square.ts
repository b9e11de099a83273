import jsqr from "jsqr";

/** Reads square codes in a picture. Its own file, so that the reader is fetched only by whoever has a picture. */

const MOST_PIXELS_PER_SIDE = 2400;
const MOST_SQUARES = 30;

interface Corner {
  readonly x: number;
  readonly y: number;
}

const pixelsOf = async (file: Blob): Promise<CanvasRenderingContext2D | null> => {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, MOST_PIXELS_PER_SIDE / Math.max(picture.width, picture.height));
  const canvas = Object.assign(document.createElement("canvas"), { width: Math.max(1, Math.round(picture.width * scale)), height: Math.max(1, Math.round(picture.height * scale)) });
  const context = canvas.getContext("2d", { willReadFrequently: true });
  context?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return context;
};

const cover = (context: CanvasRenderingContext2D, [first, ...rest]: readonly Corner[]): void => {
  if (first === undefined) return;
  context.fillStyle = "white";
  context.beginPath();
  context.moveTo(first.x, first.y);
  for (const { x, y } of rest) context.lineTo(x, y);
  context.fill();
};

/** The texts of all square codes in a picture, a line for each; null where there is none. A square that is read is covered, and the next one is looked for. */
export const textInPicture = async (file: Blob): Promise<string | null> => {
  const context = await pixelsOf(file);
  const texts: string[] = [];
  while (context !== null && texts.length < MOST_SQUARES) {
    const { width, height } = context.canvas;
    const found = jsqr(context.getImageData(0, 0, width, height).data, width, height);
    if (found === null || found.data === "") break;
    texts.push(found.data);
    const { topLeftCorner, topRightCorner, bottomRightCorner, bottomLeftCorner } = found.location;
    cover(context, [topLeftCorner, topRightCorner, bottomRightCorner, bottomLeftCorner]);
  }
  return texts.length === 0 ? null : texts.join("\n");
};
