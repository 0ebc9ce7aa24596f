import type { UnitSystem } from '@evendraft/units';
import { cellText, columnHeader, type ReportTable } from '../tables/report-table.js';

/** A table of the report in words, for a page that lays it out itself. */
export interface TableCells {
  readonly columns: readonly { readonly header: string; readonly align: 'left' | 'right' }[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * The heads and cells of a table as they are printed.
 *
 * @param table - what it holds
 * @param system - units of the reader
 * @returns words; numbers stand on the right
 */
export function tableCells({ columns, rows }: ReportTable, system: UnitSystem): TableCells {
  return {
    columns: columns.map((column) => ({
      header: columnHeader(column, system),
      align: column.quantity === undefined ? 'left' : 'right',
    })),
    rows: rows.map((row) => columns.map((column, index) => cellText(row[index], column, system))),
  };
}
