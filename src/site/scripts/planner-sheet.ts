import type { PlannedDevice } from '../../render/planned-device.ts';

/** Ports of a sheet; null where no published sheet has this address. */
export async function fetchDevice(folder: string, slug: string): Promise<PlannedDevice | null> {
  if (!/^[a-z0-9-]+$/.test(slug)) return null;
  try {
    const response = await fetch(`${folder}${slug}.json`);
    // Written by the build that this script belongs to.
    return response.ok ? ((await response.json()) as PlannedDevice) : null;
  } catch {
    return null;
  }
}

/** Names the chosen sheet in the list, where an older one does not stand yet, and leads to its page. */
export function showChoice(list: HTMLSelectElement, { slug, name }: PlannedDevice, teardowns: string): void {
  if (![...list.options].some((option) => option.value === slug)) list.append(new Option(name, slug));
  list.value = slug;
  const place = document.querySelector('[data-sheet-link]');
  if (place === null) return;
  const link = document.createElement('a');
  link.href = `${teardowns}${slug}/`;
  link.textContent = `The sheet of the ${name}`;
  place.replaceChildren(link);
}
