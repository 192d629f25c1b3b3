/**
 * Keeps the height free that an element asks for by its attribute, until it is drawn. A policy that blocks `style` attributes lets a script set
 * the same; the styles of the element outdo it.
 */
export function reserve(element: HTMLElement): void {
  const height = element.getAttribute('reserve') ?? '';
  if (!/^\d+(\.\d+)?(px|r?em)$/.test(height.trim())) return;
  element.style.display = 'block';
  element.style.minHeight = height;
}
