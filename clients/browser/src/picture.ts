import { h } from './dom.js';

/** A picture of the shop's own: from the page's origin, and with words for who does not see it. */
export interface Picture {
  src: string;
  alt: string;
}

/** Nothing where there is none; its room is kept before it has come. */
export function pictureView(picture: Picture | undefined): HTMLElement | undefined {
  if (!picture) return undefined;
  const { src, alt } = checked(picture);
  return h('img', { src, alt, part: 'picture', loading: 'lazy', decoding: 'async', width: 300, height: 200 });
}

/** The page of a shop asks no other host, and every picture has words. */
export function checked(picture: Picture): Picture {
  const { src, alt } = picture;
  if (typeof alt !== 'string' || alt.trim() === '') throw new Error(`The picture ${src} has no alt.`);
  if (new URL(src, document.baseURI).origin !== location.origin) throw new Error(`The picture ${src} is of another origin.`);
  return picture;
}
