/** A table as plain lines: set in columns where that reads well, else each row told in words. */
import type { Block } from "./document.ts";
import { type ColumnsOf, wrapped } from "./wrap.ts";

type Table = Extract<Block, { kind: "table" }>;

interface Room {
  readonly columns: number;
  readonly columnsOf: ColumnsOf;
}

/** Between two columns. */
const gap = 2;
/** A column of words narrower than this reads worse than a sentence. */
const leastWordColumns = 14;

/** In columns where there is room for them and the rows do not grow longer by it; words where it is read aloud. */
export function tableLines(table: Table, room: Room, isSpoken: boolean): readonly string[] {
  const told = table.rows.flatMap((cells) =>
    wrapped(rowText(table.columns, cells), room.columns, room.columnsOf),
  );
  const set = isSpoken || table.rows.length < 2 ? null : grid(table, room);
  return set !== null && set.rowLines <= told.length ? set.lines : told;
}

/** One row a paragraph, each cell after its column's name: it can be read aloud and never runs out of the window. */
function rowText(columns: readonly string[], cells: readonly string[]): string {
  const told = cells.slice(1).flatMap((cell, i) => {
    const name = columns[i + 1]!;
    if (cell === "") return [];
    return [cell.toLowerCase().startsWith(`${name.toLowerCase()} `) ? cell : `${name} ${cell}`];
  });
  return `${cells[0]}: ${told.join("; ")}`;
}

interface Grid {
  readonly lines: readonly string[];
  /** Those below the names of the columns. */
  readonly rowLines: number;
}

/** In columns; tables of figures that are too wide are cut into several that begin alike. null where neither can be. */
function grid(table: Table, room: Room): Grid | null {
  const widths = columnWidths(table, room);
  if (widths !== null) return setGrid(table, widths, room);
  if (table.align.slice(1).some((side) => side === "left")) return null;
  const natural = naturalWidths(table, room);
  const parts: number[][] = [];
  let used = 0;
  for (let i = 1; i < natural.length; i++) {
    used += gap + natural[i]!;
    if (parts.length === 0 || natural[0]! + used > room.columns) {
      parts.push([0]);
      used = gap + natural[i]!;
    }
    parts.at(-1)!.push(i);
  }
  if (natural[0]! + gap + Math.max(...natural.slice(1)) > room.columns) return null;
  const grids = parts.map((chosen) => {
    const of = <T>(all: readonly T[]): readonly T[] => chosen.map((i) => all[i]!);
    const one: Table = {
      ...table,
      columns: of(table.columns),
      align: of(table.align),
      rows: table.rows.map(of),
    };
    return setGrid(one, of(natural), room);
  });
  return {
    lines: grids.flatMap(({ lines }, part) => (part === 0 ? lines : ["", ...lines])),
    rowLines: grids.reduce((sum, { rowLines }) => sum + rowLines, 0),
  };
}

/** What each column needs: its widest cell, and the longest word of its name. */
function naturalWidths({ columns, rows }: Table, { columnsOf }: Room): readonly number[] {
  return columns.map((name, i) =>
    Math.max(...name.split(" ").map(columnsOf), ...rows.map((cells) => columnsOf(cells[i] ?? ""))),
  );
}

/** As natural, columns of words made narrower, the widest first, until all fit; null where they cannot. */
function columnWidths(table: Table, room: Room): readonly number[] | null {
  const widths = [...naturalWidths(table, room)];
  // whole sentences in narrow columns are no table
  if (Math.max(...widths) > 2 * room.columns) return null;
  const over = () => widths.reduce((sum, width) => sum + width + gap, -gap) - room.columns;
  while (over() > 0) {
    const words = widths.map((width, i) => (table.align[i] === "left" ? width : 0));
    const widest = Math.max(...words);
    if (widest <= leastWordColumns) return null;
    widths[words.indexOf(widest)]! -= 1;
  }
  return widths;
}

function setGrid({ columns, align, rows }: Table, widths: readonly number[], { columnsOf }: Room): Grid {
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => {
        const blanks = " ".repeat(Math.max(0, widths[i]! - columnsOf(cell)));
        return align[i] === "right" ? blanks + cell : cell + blanks;
      })
      .join(" ".repeat(gap))
      .trimEnd();
  const row = (cells: readonly string[], stands: "up" | "down"): readonly string[] => {
    const told = widths.map((width, i) => wrapped(cells[i] ?? "", width, columnsOf));
    const height = Math.max(...told.map((lines) => lines.length));
    return Array.from({ length: height }, (_, at) =>
      line(told.map((lines) => lines[stands === "up" ? at : at - height + lines.length] ?? "")),
    );
  };
  const rowLines = rows.flatMap((cells) => row(cells, "up"));
  const rule = line(widths.map((width) => "-".repeat(width)));
  return { lines: [...row(columns, "down"), rule, ...rowLines], rowLines: rowLines.length };
}
