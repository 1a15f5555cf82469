import { NUMBER_COLUMNS, type NumberColumn } from '../../corpus/finder-query.ts';

/** Binds the list of columns: a box for each, and buttons that move it. The last shown column cannot be taken away. */
export function bindColumns(
  form: HTMLElement,
  changed: (columns: readonly NumberColumn[]) => void,
): { readonly show: (columns: readonly NumberColumn[]) => void } {
  const list = form.querySelector('[data-columns] ol');
  const items = (): HTMLElement[] => [...(list?.querySelectorAll<HTMLElement>('[data-column]') ?? [])];
  const columnOf = (item: HTMLElement): NumberColumn | undefined => NUMBER_COLUMNS.find((column) => column === item.dataset['column']);
  const read = (): NumberColumn[] =>
    items()
      .filter((item) => item.querySelector<HTMLInputElement>('[data-shown]')?.checked === true)
      .map(columnOf)
      .filter((column) => column !== undefined);
  list?.addEventListener('change', (event) => {
    const columns = read();
    if (columns.length > 0) changed(columns);
    else if (event.target instanceof HTMLInputElement) event.target.checked = true;
  });
  list?.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-move]') : null;
    const item = button?.closest<HTMLElement>('[data-column]');
    if (!button || !item) return;
    const other = button.dataset['move'] === '1' ? item.nextElementSibling : item.previousElementSibling;
    if (other === null) return;
    if (button.dataset['move'] === '1') other.after(item);
    else other.before(item);
    changed(read());
    button.focus();
  });
  let isArranged = false;
  return {
    show: (columns) => {
      if (!isArranged) {
        for (const column of [...columns].reverse()) {
          const item = items().find((each) => columnOf(each) === column);
          if (item !== undefined) list?.prepend(item);
        }
        isArranged = true;
      }
      for (const item of items()) {
        const box = item.querySelector<HTMLInputElement>('[data-shown]');
        const column = columnOf(item);
        if (box !== null && column !== undefined) box.checked = columns.includes(column);
      }
    },
  };
}
