/**
 * The demos are made by the program: `npm run transcripts` writes them anew, and this test compares. They show what a
 * conversation looks like and never count as a reference for a number.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { openProgram } from "../../src/commands/open-program.ts";
import { demoBrief, demoPath, recorded } from "./record.ts";

const demos = ["slipway", "trailhead", "tea-nursery"] as const;
const readmePath = fileURLToPath(new URL("../../README.md", import.meta.url));

describe.each(demos)("the demo %s", (demo) => {
  it("is the conversation that its brief makes, with the lists it ends in", async () => {
    const file = demoBrief(demo);
    const { text, state } = await recorded(file);
    await expect(text).toMatchFileSnapshot(demoPath(demo, "conversation.txt"));
    await expect(openProgram().sheet(state, "md")).toMatchFileSnapshot(demoPath(demo, "lists.md"));
  });

  it("gives the same lists when the brief is run from its file", async () => {
    const file = demoBrief(demo);
    const program = openProgram();
    const opened = program.open(file);
    expect(opened.missing).toEqual([]);
    expect(opened.refused).toEqual([]);
    const { state } = await recorded(file);
    expect(program.sheet(opened.state, "md")).toBe(program.sheet(state, "md"));
  });
});

describe("the conversation in README", () => {
  it("is cut from the demo as the program makes it", async () => {
    const { text } = await recorded(demoBrief("slipway"));
    const readme = readFileSync(readmePath, "utf8");
    const [start, end] = ["<!-- transcript -->\n", "<!-- /transcript -->"];
    const before = readme.slice(0, readme.indexOf(start) + start.length);
    const after = readme.slice(readme.indexOf(end));
    expect(before).not.toBe("");
    await expect(`${before}\n\`\`\`text\n${excerpt(text)}\n\`\`\`\n\n${after}`).toMatchFileSnapshot(
      readmePath,
    );
  });
});

/** The first topic whole, one question from the middle, and the end. */
function excerpt(text: string): string {
  const from = text.indexOf("Part 1 of 10");
  const blocks = text.slice(from).split("\n\n");
  const firstTopic = blocks.slice(
    0,
    blocks.findIndex((block) => block.startsWith("So far: ")),
  );
  const power = blocks.find((block) => block.startsWith("Autonomy, question 1"));
  const design = blocks.find((block) => block.startsWith("The design so far"));
  return [...firstTopic, "[...]", power, "[...]", design].join("\n\n");
}
