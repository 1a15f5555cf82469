/** Marks of photos and rows of the part table, told apart by the number that both carry. */
const MARKED = '[data-item]';

/** Hover, focus and tap on a mark or its row light up both; without this script the numbers match and the links lead there. */
export function startPhotoCallouts(page: Document): void {
  const light = (event: Event): void => {
    const item = event.target instanceof Element ? (event.target.closest(MARKED)?.getAttribute('data-item') ?? null) : null;
    for (const marked of page.querySelectorAll(MARKED)) marked.classList.toggle('lit', marked.getAttribute('data-item') === item);
  };
  for (const kind of ['pointerover', 'focusin', 'pointerdown']) page.addEventListener(kind, light, { passive: true });
}
