/**
 * The post as it stands so far, to scale: mast, panel, camera, radio, box and footing appear as they become known.
 * One set of parts in metres, drawn twice: in characters for the terminal and as SVG for the page.
 */
import { sayingIn } from "../core/units/index.ts";
import type { Design } from "../design/index.ts";

interface Shape {
  readonly name: string;
  /** Left edge and bottom, metres from the mast's foot. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Of a box that hangs on the mast, and of one that stands on the ground with a large bank inside. */
const boxM = { mast: { width: 0.45, height: 0.5 }, ground: { width: 0.9, height: 0.6 } } as const;
/** A panel is about half as wide again as it is high. */
const panelAspect = 1.5;
/** Clear ground between the mast's foot and what stands beside it. */
const besideM = 0.5;

/** Between two panels, in the drawing of them. */
const panelGapM = 0.03;

interface Panels {
  readonly shapes: readonly Shape[];
  /** Those that there was no room for beside what is drawn. */
  readonly left: number;
}

/** Side by side, leaning back by the tilt: as many as fit beside the rest without making it small, one at least. */
function panelShapes(design: Design, roomM: number): Panels {
  const { mounting, array } = design;
  if (array === null || array.panels === 0) return { shapes: [], left: 0 };
  const slopeRad = ((mounting.tiltDeg ?? 45) * Math.PI) / 180;
  const faceM = Math.sqrt(array.areaM2 / array.panels / panelAspect);
  const eachM = array.areaM2 / array.panels / faceM;
  const drawn = Math.min(array.panels, Math.max(1, Math.floor(roomM / eachM)));
  const height = Math.max(0.15, faceM * Math.sin(slopeRad));
  const isBeside = mounting.panelMount === "ground frame";
  const y = isBeside ? 0.5 : Math.max(0.5, mounting.panelHeightM - height / 2);
  const firstM = isBeside ? besideM : (-drawn * eachM) / 2;
  const shapes = Array.from({ length: drawn }, (_, i) => ({
    name: "panel",
    x: firstM + i * eachM,
    y,
    width: eachM - panelGapM,
    height,
  }));
  return { shapes, left: array.panels - drawn };
}

interface Drawn {
  readonly shapes: readonly Shape[];
  readonly panelsLeft: number;
  /** What all of it takes up, from the mast's foot. */
  readonly topM: number;
  readonly bottomM: number;
  readonly leftM: number;
  readonly rightM: number;
}

/** @param room  metres that there are for the panels, given what the rest takes up */
function drawn(design: Design, room: (rest: Omit<Drawn, "panelsLeft">) => number): Drawn {
  const [mast, ...others] = shapesOf(design);
  const rest = extent([mast!, ...others]);
  const panels = panelShapes(design, room(rest));
  return { ...extent([mast!, ...panels.shapes, ...others]), panelsLeft: panels.left };
}

function extent(shapes: readonly Shape[]): Omit<Drawn, "panelsLeft"> {
  return {
    shapes,
    topM: Math.max(...shapes.map((shape) => shape.y + shape.height)) + 0.2,
    // A line of ground is seen where nothing stands in it too.
    bottomM: Math.min(-0.1, ...shapes.map((shape) => shape.y)),
    leftM: Math.max(0.8, ...shapes.map((shape) => -shape.x)),
    rightM: Math.max(0.8, ...shapes.map((shape) => shape.x + shape.width)),
  };
}

/** All but the panels, the mast first. */
function shapesOf(design: Design): readonly Shape[] {
  const { mounting, brief, link, battery } = design;
  const isBuilding = brief.mounting.support.value === "wall" || brief.mounting.support.value === "roof";
  // what hangs on a building has no pole: its face is drawn behind everything
  const shapes: Shape[] = isBuilding
    ? [{ name: "wall", x: -1.2, y: 0, width: 2.4, height: mounting.mastHeightM + 0.3 }]
    : [{ name: "mast", x: -0.04, y: 0, width: 0.08, height: mounting.mastHeightM }];
  if (battery !== null && mounting.box !== null) {
    const { width, height } = boxM[mounting.box.stands];
    const isBeside = mounting.box.stands === "ground";
    shapes.push({
      name: "box",
      x: isBeside ? -besideM - width : 0.04,
      y: isBeside ? 0 : mounting.boxHeightM - height / 2,
      width,
      height,
    });
  }
  for (const i of brief.view.scenes.keys())
    shapes.push({
      name: "camera",
      x: 0.04 + i * 0.35,
      y: mounting.cameraHeightM - 0.1,
      width: 0.3,
      height: 0.15,
    });
  if (link?.radio != null)
    shapes.push({ name: "radio", x: -0.34, y: link.radio.nearHeightM - 0.15, width: 0.3, height: 0.3 });
  if (mounting.footing !== null) {
    const { depthM, diameterM } = mounting.footing;
    shapes.push({ name: "footing", x: -diameterM / 2, y: -depthM, width: diameterM, height: depthM });
  }
  return shapes;
}

const glyphs = {
  unicode: { mast: "│", wall: "·", panel: "▒", box: "█", camera: "◄", radio: "◊", footing: "░", ground: "─" },
  ascii: { mast: "|", wall: ".", panel: "#", box: "B", camera: "<", radio: "*", footing: ":", ground: "-" },
} as const;
type Glyphs = keyof typeof glyphs;
/** A character is about twice as high as it is wide. */
const columnsPerRow = 2;

/** Rows of a drawing that its width does not make lower. */
const rowsAtMost = 14;
/** Kept free to the right, for words beside the panels. */
const wordColumns = 14;

/**
 * @param width  columns, 30 or more
 * @returns lines no wider than `width`; the last ones say what the signs mean
 */
export function postLines(
  design: Design,
  look: { readonly width: number; readonly glyphs: Glyphs },
): readonly string[] {
  const sign = glyphs[look.glyphs];
  const columns = look.width - wordColumns;
  const { shapes, panelsLeft, topM, bottomM, leftM, rightM } = drawn(design, (rest) => {
    const fullColumnM = (rest.topM - rest.bottomM) / rowsAtMost / columnsPerRow;
    return columns * fullColumnM - rest.leftM - besideM;
  });
  const rowM = Math.max((topM - bottomM) / rowsAtMost, ((leftM + rightM) * columnsPerRow) / columns);
  const columnM = rowM / columnsPerRow;
  const before = Math.ceil(leftM / columnM);
  const across = before + Math.ceil(rightM / columnM) + 1;
  const set = shapes.map((shape) => (shape.name === "panel" ? parted(shape, columnM) : shape));
  const panels = shapes.filter(({ name }) => name === "panel");
  const middleM = panels.length === 0 ? null : panels[0]!.y + panels[0]!.height / 2;
  const rows = Math.ceil((topM - bottomM) / rowM);
  const lines = Array.from({ length: rows }, (_, row) => {
    const yM = topM - (row + 0.5) * rowM;
    const isGround = yM - rowM / 2 <= 0 && yM + rowM / 2 > 0;
    const line = Array.from({ length: across }, (_, column) => {
      const xM = (column - before) * columnM;
      const hit = set.findLast(
        (shape) =>
          shape.x < xM + columnM / 2 &&
          shape.x + shape.width > xM - columnM / 2 &&
          shape.y < yM + rowM / 2 &&
          shape.y + shape.height > yM - rowM / 2,
      );
      if (hit) return sign[hit.name as keyof typeof sign];
      return isGround ? sign.ground : " ";
    })
      .join("")
      .trimEnd();
    const isBesidePanels = panelsLeft > 0 && middleM !== null && Math.abs(yM - middleM) <= rowM / 2;
    return isBesidePanels ? `${line} and ${panelsLeft} more` : line;
  });
  const seen = [...new Set(shapes.map((shape) => shape.name))].filter((name) => name !== "mast");
  const highM = Math.max(
    ...shapes.filter(({ name }) => name !== "wall").map((shape) => shape.y + shape.height),
  );
  const figure = sayingIn(design.brief.units);
  const legend = [
    `${figure(highM, "m", tenths)} high`,
    ...(design.mounting.footing === null
      ? []
      : [
          `${figure(design.mounting.footing.depthM, "m", { ...tenths, safe: "up" })} ${figure.either("in ground", "below ground")}`,
        ]),
    ...seen.map((name) => {
      const words =
        name === "panel" ? panelWords(panels.length, panelsLeft) : name === "wall" ? saidOf(design) : name;
      return `${sign[name as keyof typeof sign]} ${words}`;
    }),
  ];
  return [...lines, ...wrappedLegend(legend, look.width)];
}

/** A panel on whole columns, the last of them left free where there are about three or more. */
function parted(panel: Shape, columnM: number): Shape {
  const first = Math.round(panel.x / columnM);
  const next = Math.round((panel.x + panel.width + panelGapM) / columnM);
  const last = panel.width + panelGapM < 2.5 * columnM ? next - 1 : next - 2;
  return { ...panel, x: (first - 0.4) * columnM, width: (last - first + 0.8) * columnM };
}

function panelWords(drawnPanels: number, left: number): string {
  const all = drawnPanels + left;
  if (left > 0) return `${drawnPanels} of ${all} panels`;
  return all === 1 ? "panel" : `${all} panels`;
}

/** What the signs mean, never broken inside one. */
function wrappedLegend(entries: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const entry of entries) {
    const line = lines.at(-1);
    if (line === undefined || line.length + 2 + entry.length > width) lines.push(entry);
    else lines[lines.length - 1] = `${line}  ${entry}`;
  }
  return lines;
}

const fill: Readonly<Record<string, string>> = {
  mast: "#777",
  wall: "#e4ddd0",
  panel: "#235",
  box: "#bbb",
  camera: "#333",
  radio: "#888",
  footing: "#c9bfae",
};

const tenths = { places: 1, keepsZeros: true } as const;

const supportWords = { newMast: "mast", existingPole: "pole", wall: "wall", roof: "roof" } as const;

const saidOf = ({ brief }: Design): string => supportWords[brief.mounting.support.value];

/** A name with a height to measure up to, or a depth to dig. */
function labelOf(name: string, design: Design): string {
  const { mounting, link } = design;
  const heights: Readonly<Record<string, number | undefined>> = {
    mast: mounting.mastHeightM,
    camera: mounting.cameraHeightM,
    radio: link?.radio?.nearHeightM,
  };
  const heightM = heights[name];
  const said = name === "mast" || name === "wall" ? saidOf(design) : name;
  const figure = sayingIn(design.brief.units);
  if (heightM !== undefined) return `${said} ${figure(heightM, "m", tenths)} up`;
  return name === "footing" && mounting.footing !== null
    ? `${said} ${figure(mounting.footing.depthM, "m", { places: 2, keepsZeros: true, safe: "up" })} deep`
    : said;
}

/** Heights of the names: as near to what they name as they can be without touching each other. */
function spreadM(wantedM: readonly number[], apartM: number): readonly number[] {
  const placed: number[] = [];
  for (const heightM of wantedM) placed.push(Math.min(heightM, (placed.at(-1) ?? Infinity) - apartM));
  return placed;
}

/** The same post as SVG, 100 units a metre, each thing named once in a column to the right. */
export function postSvg(design: Design): string {
  // A page is about as wide as the post is high, and half as much again.
  const { shapes, panelsLeft, topM, ...whole } = drawn(design, (rest) => 1.4 * (rest.topM - rest.bottomM));
  const panels = shapes.filter(({ name }) => name === "panel");
  const panelLabel =
    panelsLeft === 0
      ? panelWords(panels.length, 0)
      : `${panels.length} ${panels.length === 1 ? "panel" : "panels"} and ${panelsLeft} more`;
  const leftM = -whole.leftM - 0.2;
  const edgeM = whole.rightM + 0.3;
  const lettersM = Math.max(0.12, (edgeM - leftM) / 20);
  const rightM = edgeM + 12.5 * lettersM;
  const named = shapes
    .filter((shape, i) =>
      shape.name === "panel"
        ? shape === panels.at(-1)
        : shapes.findIndex(({ name }) => name === shape.name) === i,
    )
    .map((shape) => ({ ...shape, middleM: shape.y + shape.height / 2 }))
    .toSorted((a, b) => b.middleM - a.middleM);
  const namesM = spreadM(
    named.map(({ middleM }) => middleM),
    1.3 * lettersM,
  );
  const bottomM = Math.min(whole.bottomM, namesM.at(-1)! - lettersM) - 0.1;
  const unit = (metres: number) => Math.round(metres * 100);
  const body = shapes.map(
    (shape) =>
      `<rect x="${unit(shape.x)}" y="${unit(-shape.y - shape.height)}" width="${unit(shape.width)}" height="${unit(shape.height)}" fill="${fill[shape.name]}"/>`,
  );
  const names = named.map(
    ({ name, x, width, middleM }, i) =>
      `<line x1="${unit(x + width)}" y1="${unit(-middleM)}" x2="${unit(edgeM)}" y2="${unit(-namesM[i]!)}" stroke="#999"/><text x="${unit(edgeM + 0.05)}" y="${unit(-namesM[i]! + 0.35 * lettersM)}" font-size="${unit(lettersM)}">${name === "panel" ? panelLabel : labelOf(name, design)}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${unit(leftM)} ${unit(-topM)} ${unit(rightM - leftM)} ${unit(topM - bottomM)}" width="420" role="img" aria-label="The post, to scale"><line x1="${unit(leftM)}" y1="0" x2="${unit(edgeM)}" y2="0" stroke="#654"/>${body.join("")}${names.join("")}</svg>`;
}
