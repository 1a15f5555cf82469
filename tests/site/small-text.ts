/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

/** Runs inside a page: elements whose own text is smaller than 12.5 px, raised and lowered signs, those of formulas too, and hidden words aside. */
export function smallText(): string[] {
  const found: string[] = [];
  for (const element of document.querySelectorAll('body *')) {
    const ownText = [...element.childNodes].some((node) => node.nodeType === 3 && (node.textContent ?? '').trim() !== '');
    const hidden = element.closest('.vh, .defs, [hidden], title, desc, sub, sup, math') !== null || element.getClientRects().length === 0;
    if (ownText && !hidden && Number.parseFloat(getComputedStyle(element).fontSize) < 12.5)
      found.push(`${element.tagName}.${element.getAttribute('class') ?? ''} ${getComputedStyle(element).fontSize}`);
  }
  return [...new Set(found)];
}
