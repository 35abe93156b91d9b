/// <reference lib="dom" />
import type { Page } from "playwright-core";
import type { TextBox } from "./texts-on-page.js";

const DPI = 150;

/** A page as a copier sees it. */
export const COPY = { deviceScaleFactor: DPI / 96 };

/** Takes a picture of a sheet laid out for print at 150 dpi, turns it to 1 bit, and tells of each text's box how much of it is the text's own colour. */
export async function inkShares(copier: Page, html: string, [width, height]: readonly [number, number], texts: readonly TextBox[]): Promise<readonly number[]> {
  await copier.setViewportSize({ width, height });
  await copier.setContent(html);
  const picture = (await copier.screenshot({ fullPage: true })).toString("base64");
  const asked = texts.map(({ ink, colour }) => ({ ink, white: colour === "rgb(255, 255, 255)" }));
  return copier.evaluate(sharesInPicture, { picture, asked, scale: DPI / 96 });
}

interface Asked {
  readonly picture: string;
  readonly asked: readonly { readonly ink: readonly number[]; readonly white: boolean }[];
  readonly scale: number;
}

/** Runs inside the browser. */
async function sharesInPicture({ picture, asked, scale }: Asked): Promise<number[]> {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [image.width, image.height];
  const pen = canvas.getContext("2d", { willReadFrequently: true })!;
  pen.drawImage(image, 0, 0);
  // taken once: asking the picture for each box anew is slow on a long page
  const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
  const isBlack = (x: number, y: number): boolean => {
    const at = 4 * (y * canvas.width + x);
    return data[at]! + data[at + 1]! + data[at + 2]! < 384;
  };
  return asked.map(({ ink, white }) => {
    const [left, top, right, bottom] = ink.map((side) => Math.round(side * scale)) as [number, number, number, number];
    const [wide, high] = [Math.max(1, right - left), Math.max(1, bottom - top)];
    let own = 0;
    for (let y = top; y < top + high; y += 1) for (let x = left; x < left + wide; x += 1) own += isBlack(x, y) === !white ? 1 : 0;
    return own / (wide * high);
  });
}
