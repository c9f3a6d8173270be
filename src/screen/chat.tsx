import { Box, Static, Text, useCursor } from "ink";
import type { ReactNode } from "react";
import type { Tone } from "../plain/index.ts";
import type { Live } from "./live.ts";
import type { Row } from "./page.ts";

/** Sixteen-colour names, so that the terminal's own theme decides what they look like. */
const looks = {
  plain: {},
  quiet: { dimColor: true },
  strong: { bold: true },
  note: { color: "cyan" },
  caution: { color: "yellow" },
  stop: { color: "red", bold: true },
} as const satisfies Record<Tone, object>;

function RowLine({ row }: { readonly row: Row }): ReactNode {
  return (
    <Text wrap="truncate">
      {row.map((piece, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a row have no identity and never move
        <Text key={index} {...looks[piece.tone]}>
          {piece.text}
        </Text>
      ))}
    </Text>
  );
}

function Rows({ rows }: { readonly rows: readonly Row[] }): ReactNode {
  return (
    <Box flexDirection="column">
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are drawn afresh each time and never reordered
        <RowLine key={index} row={row} />
      ))}
    </Box>
  );
}

function LiveArea({ live }: { readonly live: Live }): ReactNode {
  const { setCursorPosition } = useCursor();
  setCursorPosition(live.cursor);
  return <Rows rows={live.rows} />;
}

export interface Passage {
  readonly id: number;
  readonly rows: readonly Row[];
}

/** The whole screen: passages are printed once and belong to the terminal, the live area is redrawn. */
export function Chat(props: {
  readonly passages: readonly Passage[];
  readonly live: Live | null;
}): ReactNode {
  return (
    <>
      <Static items={[...props.passages]}>
        {(passage) => <Rows key={passage.id} rows={passage.rows} />}
      </Static>
      {props.live === null ? null : <LiveArea live={props.live} />}
    </>
  );
}
