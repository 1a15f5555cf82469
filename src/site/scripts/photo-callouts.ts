/** Marks of photos and rows of the part table, told apart by the number that both carry. */
const MARKED = '[data-item]';

/** Hover, focus and tap on a mark or its row light up both; without this script the numbers match and the links lead there. */
export function startPhotoCallouts(page: Document): void {
  const light = ({ target }: Event): void => {
    // Focus scrolls the page under a resting pointer, which must not put out what is focused.
    const item = itemOf(target) ?? itemOf(page.activeElement);
    for (const marked of page.querySelectorAll(MARKED)) marked.classList.toggle('lit', marked.getAttribute('data-item') === item);
  };
  for (const kind of ['pointerover', 'focusin', 'pointerdown']) page.addEventListener(kind, light, { passive: true });
}

function itemOf(target: EventTarget | null): string | null {
  return target instanceof Element ? (target.closest(MARKED)?.getAttribute('data-item') ?? null) : null;
}
