import { expect, type Locator, type Page } from '@playwright/test';

/** What is in a picture: how many colours, and how much of it is not the ground that its corner shows. */
export interface Contents {
  readonly colours: number;
  readonly covered: number;
}

const asUrl = (png: Buffer): string => `data:image/png;base64,${png.toString('base64')}`;

/** Looks into a PNG, with the browser's own reader. */
export const contents = (page: Page, png: Buffer): Promise<Contents> =>
  page.evaluate(async (url) => {
    const image = await createImageBitmap(await (await fetch(url)).blob());
    const pen = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
    pen.drawImage(image, 0, 0);
    const pixels = new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer);
    return {
      colours: new Set(pixels).size,
      covered: pixels.filter((pixel) => pixel !== pixels[0]).length / pixels.length,
    };
  }, asUrl(png));

/** How much of two pictures of the same size is not the same, from 0 to 1. */
export const difference = (page: Page, a: Buffer, b: Buffer): Promise<number> =>
  page.evaluate(
    async (urls) => {
      const read = async (url: string): Promise<Uint32Array> => {
        const image = await createImageBitmap(await (await fetch(url)).blob());
        const pen = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
        pen.drawImage(image, 0, 0);
        return new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer);
      };
      const [one, other] = await Promise.all(urls.map(read));
      if (one!.length !== other!.length) return 1;
      return one!.filter((pixel, i) => pixel !== other![i]).length / one!.length;
    },
    [asUrl(a), asUrl(b)],
  );

/** The sizes written in the view, as they stand: text and middle on the page, only those that can be seen. */
export interface Figure {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

export const figures = (page: Page): Promise<Figure[]> =>
  page.locator('.scene-figure').evaluateAll((all) =>
    all
      .filter((one) => one instanceof HTMLElement && one.style.visibility === 'visible')
      .map((one) => {
        const { left, top, width, height } = one.getBoundingClientRect();
        return { text: one.textContent ?? '', x: left + width / 2, y: top + height / 2 };
      }),
  );

/** The view as it stands once it has come to rest: two looks at it that say the same. */
export async function atRest(page: Page): Promise<Figure[]> {
  let last = '';
  await expect
    .poll(async () => {
      const now = JSON.stringify(await figures(page));
      const same = now === last;
      last = now;
      return same;
    })
    .toBe(true);
  return JSON.parse(last) as Figure[];
}

/** What the sizes are of: runs are named, the height is a bare figure. */
export const written = (all: readonly Figure[]): string[] =>
  all.map(({ text }) => (text.includes(':') ? text.split(':')[0]! : 'height')).sort();

/** Where a part lies in the view while its card is shown and it is looked at square on: by its sizes, which stand beside it. */
export async function placeOf(page: Page, upright: boolean): Promise<{ x: number; y: number }> {
  await expect.poll(async () => (await figures(page)).length).toBeGreaterThan(1);
  const [length, width] = await figures(page);
  return upright ? { x: width!.x, y: length!.y } : { x: length!.x, y: width!.y };
}

/** The middle of an element on the page. */
export async function middleOf(element: Locator): Promise<{ x: number; y: number }> {
  const box = await element.boundingBox();
  if (!box) throw new Error('what should be clicked is not on the page');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
