import { describe, expect, test } from "vitest";
import { commandForms, readCommandLine } from "../../src/commands/command-line.ts";

const said = (...argv: string[]): string => {
  const line = readCommandLine(argv);
  return line.kind === "wrong" ? line.says : `${line.name}(${line.args.join(",")})`;
};

describe("the command line", () => {
  test("nothing typed is the interview", () => {
    expect(said()).toBe("interview()");
    expect(said("--plain")).toBe("interview()");
  });

  test("each command with what it takes", () => {
    expect(said("new")).toBe("new()");
    expect(said("new", "hill gate", "--currency", "EUR", "--units", "us")).toBe("new(hill gate)");
    expect(said("resume", "hill-gate")).toBe("resume(hill-gate)");
    expect(said("size", "a.json", "b.json", "--json")).toBe("size(a.json,b.json)");
    expect(said("size", "-")).toBe("size(-)");
    expect(said("checklist", "--to", "html", "x")).toBe("checklist(x)");
  });

  test("-h and --help work anywhere and beat everything else that is typed", () => {
    for (const argv of [["-h"], ["--help"], ["help"]]) expect(said(...argv)).toBe("help()");
    expect(said("size", "x.json", "-h")).toBe("help(size)");
    expect(said("-h", "size")).toBe("help(size)");
    expect(said("nonsense", "--help")).toBe("help()");
    expect(said("--version")).toBe("version()");
  });

  test("what is wrong is said in one sentence that names it", () => {
    expect(said("sizzle")).toBe('There is no command "sizzle".');
    expect(said("--bogus")).toBe("Unknown option '--bogus'.");
    expect(said("list", "--to", "md")).toBe("The command list takes no --to.");
    expect(said("size", "x", "--units", "us")).toBe("The command size takes no --units.");
    expect(said("size")).toBe("The command size needs a brief: its name or its file.");
    expect(said("help", "a", "b")).toBe('That is one word too many: "b".');
    expect(said("checklist", "x", "--to")).toMatch(/^Option '--to <value>' argument missing\.$/);
    expect(said("list", "--json=yes")).toMatch(/'--json' does not take an argument\.$/);
  });

  test("a name of several words needs no quotation marks", () => {
    for (const name of ["new", "resume", "remove", "show", "checklist"])
      expect(said(name, "hill", "gate")).toBe(`${name}(hill gate)`);
  });

  test("what is wrong with a command leads to that command's page", () => {
    expect(readCommandLine(["size"])).toMatchObject({ kind: "wrong", command: "size" });
    expect(readCommandLine(["list", "--to", "md"])).toMatchObject({ kind: "wrong", command: "list" });
    expect(readCommandLine(["sizzle"])).toMatchObject({ kind: "wrong", command: null });
  });

  test("every command can be typed by its name", () => {
    for (const name of Object.keys(commandForms)) {
      const words =
        name === "version" || name === "help"
          ? [name]
          : [name, "x"].slice(0, 1 + commandForms[name as "size"].least);
      expect(said(...words), name).toMatch(new RegExp(`^${name}\\(`));
    }
  });
});
