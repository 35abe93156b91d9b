/// <reference lib="dom" />
import type { Browser } from "playwright-core";
import type { TextBox } from "./texts-on-page.js";

const DPI = 150;

/** Takes a picture of a page laid out for print at 150 dpi, turns it to 1 bit, and tells of each text's box how much of it is the text's own colour. */
export async function inkShares(browser: Browser, html: string, [width, height]: readonly [number, number], texts: readonly TextBox[]): Promise<readonly number[]> {
  const page = await browser.newPage({ deviceScaleFactor: DPI / 96, viewport: { width, height } });
  try {
    await page.emulateMedia({ media: "print" });
    await page.setContent(html);
    const picture = (await page.screenshot({ fullPage: true })).toString("base64");
    const asked = texts.map(({ ink, colour }) => ({ ink, white: colour === "rgb(255, 255, 255)" }));
    return await page.evaluate(sharesInPicture, { picture, asked, scale: DPI / 96 });
  } finally {
    await page.close();
  }
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
  return asked.map(({ ink, white }) => {
    const [left, top, right, bottom] = ink.map((side) => side * scale) as [number, number, number, number];
    const { data } = pen.getImageData(left, top, Math.max(1, right - left), Math.max(1, bottom - top));
    let own = 0;
    for (let i = 0; i < data.length; i += 4) own += data[i]! + data[i + 1]! + data[i + 2]! < 384 === !white ? 1 : 0;
    return own / (data.length / 4);
  });
}
