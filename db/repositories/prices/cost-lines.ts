import type { Columns, Money, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, insertRow, updateRow } from '../../statement.ts';

export type CostKind = 'delivery' | 'regrip' | 'sell-fee' | 'sell-postage' | 'bend' | 'shaft' | 'other';

/**
 * What a purchase or sale costs beside the club: an amount or a percentage, always the user's assumption.
 * Of delivery, regrip, sell-fee and sell-postage a bag has one each.
 */
export type CostLineFields = {
  kind: CostKind;
  label?: string;
  amount?: Money;
  percent?: number;
  enabled: boolean;
};
export type CostLine = CostLineFields & { id: number };

const FIELDS: Columns<CostLineFields> = {
  kind: ['kind', 'text'],
  label: ['label', 'text'],
  amount: ['amount', 'money'],
  percent: ['percent', 'real'],
  enabled: ['enabled', 'flag'],
};
const LINE: Columns<CostLine> = { ...FIELDS, id: ['id', 'int'] };

/** @param bagId null for the defaults. @returns the new line's id. */
export function addCostLine(db: Db, bagId: number | null, line: CostLineFields, position = 0): number {
  return insertRow(db, 'cost_line', { ...toRow(FIELDS, line), bag_id: bagId, position });
}

export function updateCostLine(db: Db, id: number, patch: Patch<CostLineFields>): void {
  updateRow(db, 'cost_line', id, toPatchRow(FIELDS, patch));
}

export function deleteCostLine(db: Db, id: number): void {
  deleteRow(db, 'cost_line', id);
}

/** The lines of a bag, or with null the defaults. */
export function costLinesOf(db: Db, bagId: number | null): CostLine[] {
  const sql = 'SELECT * FROM cost_line WHERE bag_id IS @bagId ORDER BY position, id';
  return all(db, sql, { bagId }).map((row) => fromRow(LINE, row));
}
