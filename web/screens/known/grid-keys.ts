/**
 * One stop for the Tab key in a table of links; the arrows go from cell to cell, Home and End along
 * the row. What is spread goes on an element around the table.
 */
export const gridKeys = {
  onKeyDown(event: KeyboardEvent): void {
    const here = linkOf(event.target);
    const next = here && nextTo(here, event.key);
    if (!next) return;
    event.preventDefault();
    next.focus();
  },
  onFocusIn(event: FocusEvent): void {
    const link = linkOf(event.target);
    if (!link) return;
    const table = link.closest('table');
    for (const each of table?.querySelectorAll<HTMLElement>('td a[tabindex="0"]') ?? []) {
      each.tabIndex = -1;
    }
    link.tabIndex = 0;
  },
};

function linkOf(target: EventTarget | null): HTMLElement | null {
  return target instanceof HTMLElement && target.matches('td a') ? target : null;
}

function nextTo(link: HTMLElement, key: string): HTMLElement | null {
  const cell = link.parentElement as HTMLTableCellElement;
  const row = cell.parentElement as HTMLTableRowElement;
  const table = row.closest('table') as HTMLTableElement;
  const at = (line: HTMLTableRowElement | undefined, place: number) =>
    line?.cells[place]?.querySelector<HTMLElement>('td > a') ?? null;
  switch (key) {
    case 'ArrowRight':
      return at(row, cell.cellIndex + 1);
    case 'ArrowLeft':
      return at(row, cell.cellIndex - 1);
    case 'ArrowDown':
      return at(table.rows[row.rowIndex + 1], cell.cellIndex);
    case 'ArrowUp':
      return at(table.rows[row.rowIndex - 1], cell.cellIndex);
    case 'Home':
      return at(row, 1);
    case 'End':
      return at(row, row.cells.length - 1);
    default:
      return null;
  }
}
