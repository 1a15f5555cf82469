import { placeWords } from '../../figures/photo-frame/place-words.ts';

/**
 * While writing: a click in a photo gives the place under it, ready for the entry: across and down in per cent, the zone, and with the
 * click before it the two ends of a scale or a distance. No page that is built has this script.
 */
export function startPhotoPicker(page: Document): void {
  for (const picture of page.querySelectorAll<HTMLElement>('.ph-picture')) {
    let last: string | null = null;
    picture.addEventListener('click', (event) => {
      if (event.target instanceof Element && event.target.closest('a') !== null) return;
      const box = picture.getBoundingClientRect();
      const { place, zone } = placeWords((event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
      const photo = picture.closest('figure')?.id.replace('photo-', '') ?? '';
      const ends = last === null ? '' : `\n{ from: ${last}, to: ${place} }`;
      last = place;
      show(picture, `${place}\n:photo[${photo} ${zone}]${ends}`);
    });
  }
}

/** The words under the photo, and on the clipboard where the browser allows it. */
function show(picture: HTMLElement, words: string): void {
  const figure = picture.closest('figure');
  if (figure === null) return;
  const shown = figure.querySelector<HTMLElement>('[data-picked]') ?? newOutput(figure);
  shown.textContent = words;
  const [place = ''] = words.split('\n');
  // Without permission the words can still be marked and copied by hand.
  if (window.isSecureContext) navigator.clipboard.writeText(place).catch(() => undefined);
}

function newOutput(figure: HTMLElement): HTMLElement {
  const output = figure.ownerDocument.createElement('pre');
  output.dataset['picked'] = '';
  output.setAttribute('role', 'status');
  output.className = 'note';
  figure.append(output);
  return output;
}
