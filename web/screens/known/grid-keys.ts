/**
 * One stop for the Tab key in a table of links; the arrows go from cell to cell, Home and End along
 * the row. While a sheet is open beside the table (`follows`), it tells of the link that was walked to.
 * What comes back is spread on an element around the table.
 */
export function gridKeys(follows: boolean) {
  return {
    onKeyDown(event: KeyboardEvent): void {
      const here = linkOf(event.target);
      const next = here && nextTo(here, event.key);
      if (!next) return;
      event.preventDefault();
      next.focus();
      if (follows && next.href !== here.href) location.replace(next.href);
    },
    onFocusIn(event: FocusEvent): void {
      const link = linkOf(event.target);
      if (!link) return;
      const table = link.closest('table');
      for (const each of table?.querySelectorAll<HTMLElement>('tbody a[tabindex="0"]') ?? []) {
        each.tabIndex = -1;
      }
      link.tabIndex = 0;
    },
  };
}

function linkOf(target: EventTarget | null): HTMLAnchorElement | null {
  return target instanceof HTMLAnchorElement && target.matches('tbody a') ? target : null;
}

function nextTo(link: HTMLAnchorElement, key: string): HTMLAnchorElement | null {
  const cell = link.parentElement as HTMLTableCellElement;
  const row = cell.parentElement as HTMLTableRowElement;
  const table = row.closest('table') as HTMLTableElement;
  const at = (line: HTMLTableRowElement | undefined, place: number) =>
    line?.cells[place]?.querySelector<HTMLAnchorElement>('tbody a') ?? null;
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
      return at(row, 0);
    case 'End':
      return at(row, row.cells.length - 1);
    default:
      return null;
  }
}
