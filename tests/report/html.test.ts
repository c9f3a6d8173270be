import { describe, expect, it } from "vitest";
import { designOf } from "../../src/design/index.ts";
import { html } from "../../src/report/index.ts";
import { syntheticWorld } from "../design/fixtures.ts";
import { documentOf, documents, hostile, hostileBrief, htmlTags, htmlText } from "./sheets.ts";

const page = (document: (typeof documents)[number][1]) => html(document, "Camera post: a gate");

describe("the page", () => {
  it.each(documents)("opens and closes every tag in turn: %s", (_name, document) => {
    expect(htmlTags(page(document)).length).toBeGreaterThan(200);
  });
  it("is seen to be broken when it is", () => {
    expect(() => htmlTags("<p><b>x</p></b>")).toThrow();
    expect(() => htmlTags("<div><p>x</p>")).toThrow();
  });
  it.each(documents)("needs no other file and runs nothing: %s", (_name, document) => {
    const tags = htmlTags(page(document));
    for (const { name, attributes } of tags) {
      expect(["script", "link", "iframe", "img", "object", "embed"]).not.toContain(name);
      expect(Object.keys(attributes).filter((key) => key === "src" || key.startsWith("on"))).toEqual([]);
      if (attributes.href !== undefined) expect(attributes.href).toMatch(/^#/);
    }
    expect(page(document)).not.toMatch(/url\(|@import/);
  });
  it.each(documents)(
    "has one title, one heading of the first rank, and contents that lead somewhere: %s",
    (_name, document) => {
      const tags = htmlTags(page(document));
      expect(tags.filter(({ name }) => name === "title")).toHaveLength(1);
      expect(tags.filter(({ name }) => name === "h1")).toHaveLength(1);
      const ids = tags.flatMap(({ attributes }) => attributes.id ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      const links = tags.flatMap(({ attributes }) => attributes.href?.slice(1) ?? []);
      expect(links).toEqual(ids);
      expect(links.length).toBeGreaterThan(8);
    },
  );
  it("puts items into lists, rows into tables and cells into rows only, each heading cell with its scope", () => {
    for (const { name, inside, attributes } of htmlTags(page(documents[0]![1]))) {
      const parent = inside.at(-1);
      if (name === "li") expect(["ol", "ul"]).toContain(parent);
      if (name === "tr") expect(["thead", "tbody"]).toContain(parent);
      if (name === "td" || name === "th") expect(parent).toBe("tr");
      if (name === "th") expect(["col", "row"]).toContain(attributes.scope);
      if (name === "div" || name === "table") expect(inside).not.toContain("p");
    }
  });
  it("declares language, letters and width, and says of the drawing what it is", () => {
    const tags = htmlTags(page(documents[0]![1]));
    expect(tags[0]!.attributes.lang).toBe("en");
    expect(tags.some(({ attributes }) => attributes.charset === "utf-8")).toBe(true);
    expect(tags.some(({ attributes }) => attributes.name === "viewport")).toBe(true);
    expect(tags.find(({ name }) => name === "svg")!.attributes["aria-label"]).toBeTruthy();
  });
  it("shows every sign of a post's name and takes none for a tag", () => {
    const design = designOf(hostileBrief, syntheticWorld);
    const text = html(documentOf(design), `Camera post: ${design.name}`);
    expect(htmlTags(text).some(({ name }) => name === "script")).toBe(false);
    expect(htmlText(text).split(hostile)).toHaveLength(3);
  });
});

describe("the drawing", () => {
  it.each(documents)("names each thing once, no name on another: %s", (_name, document) => {
    const drawing = document.find((block) => block.kind === "drawing")!;
    const svg = drawing.kind === "drawing" ? drawing.svg : "";
    const tags = htmlTags(svg);
    const [, , widthUnits, heightUnits] = tags[0]!.attributes.viewBox!.split(" ").map(Number);
    const texts = tags.filter(({ name }) => name === "text");
    const names = Array.from(svg.matchAll(/<text[^>]*>([^<]*)</g), ([, name]) => name!);
    expect(new Set(names).size).toBe(names.length);
    const size = Number(texts[0]!.attributes["font-size"]);
    const heights = texts.map(({ attributes }) => Number(attributes.y)).toSorted((a, b) => a - b);
    for (const [i, y] of heights.slice(1).entries()) expect(y - heights[i]!).toBeGreaterThanOrEqual(size);
    const [left, top] = tags[0]!.attributes.viewBox!.split(" ").map(Number);
    for (const { attributes } of texts) {
      expect(Number(attributes.y)).toBeLessThan(top! + heightUnits!);
      // A serif letter is about half as wide as it is high.
      const longest = Math.max(...names.map((name) => name.length));
      expect(Number(attributes.x) + 0.52 * size * longest).toBeLessThan(left! + widthUnits!);
    }
  });
  it("calls what everything hangs on by its name", () => {
    const label = (wanted: string) => {
      const block = documents.find(([name]) => name === wanted)![1].find(({ kind }) => kind === "drawing")!;
      return block.kind === "drawing" ? block.svg : "";
    };
    expect(label("a wall")).toContain(">wall<");
    expect(label("a wall")).not.toContain(">mast ");
    expect(label("by cable")).toContain(">mast ");
  });
});
