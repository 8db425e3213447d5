import { describe, expect, it } from "vitest";
import {
  type Drawing,
  LINE_STYLES,
  type Mark,
  writeSvg,
  WriterRefusal,
  type WriterFault,
} from "../../src/drawings/index.ts";
import { mm, ticks } from "../../src/lengths/index.ts";
import { DESIGNS, ferrySlip } from "./designs.ts";
import { viewsOf } from "./shown.ts";

const sheet = (...marks: Mark[]): Drawing => ({ width: mm(100), height: mm(50), marks });
const at = { x: mm(10), y: mm(20) };

const written = (text: string): Mark => ({
  kind: "text",
  at,
  runs: [{ kind: "text", text }],
  size: mm(4),
  weight: "regular",
  anchor: "start",
});

function faultOf(write: () => unknown): WriterFault {
  try {
    write();
  } catch (error) {
    if (error instanceof WriterRefusal) return error.fault;
    throw error;
  }
  throw new Error("nothing was refused");
}

const ring = (inset: number) =>
  [
    [inset, inset],
    [50 - inset, inset],
    [50 - inset, 50 - inset],
    [inset, 50 - inset],
  ].map(([x = 0, y = 0]) => ({ x: mm(x), y: mm(y) }));

describe("the SVG writer", () => {
  it("[D30] counts in millimetres, to a thousandth", () => {
    const svg = writeSvg(
      sheet({ kind: "line", from: at, to: { x: ticks(1_234_567), y: mm(20.5) }, line: "thin" }),
    );
    expect(svg).toContain('width="100mm" height="50mm" viewBox="0 0 100 50"');
    expect(svg).toContain('d="M10 20L15.432 20.5"');
    const { front, back, section } = viewsOf(DESIGNS.skew);
    for (const drawing of [front, back, section]) {
      for (const [number] of writeSvg(drawing).matchAll(/\d+\.\d+/g)) {
        expect(number.split(".")[1]?.length).toBeLessThanOrEqual(3);
      }
    }
  });

  it("[D30] takes widths and dashes from the house's table, and gives the same text again", () => {
    const { back } = viewsOf(DESIGNS["mm-double"]);
    const svg = writeSvg(back);
    for (const kind of ["outline", "edge", "thin", "hidden", "phantom"] as const) {
      const { width, dashes } = LINE_STYLES[kind];
      const rule = new RegExp(
        `\\.${kind}\\{[^}]*stroke-width:${width}(;stroke-dasharray:${dashes.join(" ")})?\\}`,
      );
      expect(svg).toMatch(rule);
      expect(svg).toContain(`class="${kind}"`);
    }
    expect(svg).not.toContain(".rule-strong{");
    expect(writeSvg(back)).toBe(svg);
  });

  it("[D30] hatches what falls out at 45 degrees", () => {
    const svg = writeSvg(viewsOf(ferrySlip).back);
    expect(svg).toContain('<pattern id="hatch-out" width="2.8" height="2.8"');
    expect(svg).toContain('patternTransform="rotate(45)"');
  });

  it("[D31] escapes text, names and titles", () => {
    const svg = writeSvg(sheet({ kind: "group", name: 'a"b', marks: [written("Slip & <Ebb>")] }), {
      title: "7 < 8",
    });
    expect(svg).toContain("Slip &amp; &lt;Ebb&gt;");
    expect(svg).toContain('data-name="a&quot;b"');
    expect(svg).toContain("<title>7 &lt; 8</title>");
  });

  it("[D31] refuses control characters and broken signs, and says where", () => {
    expect(faultOf(() => writeSvg(sheet(written("ab\u0007"))))).toEqual({
      code: "control-character",
      text: "ab\u0007",
      at: 2,
    });
    for (const bad of ["\n", "\u0000", "\ud800", "\uffff", "\u0085"]) {
      expect(faultOf(() => writeSvg(sheet(written(bad)))).code).toBe("control-character");
    }
    expect(writeSvg(sheet(written("Ærø Zażółć 🌊")))).toContain("Ærø Zażółć 🌊");
  });

  it("[D31] refuses a mark that it does not know", () => {
    const strange: Mark = JSON.parse('{"kind":"spline","points":[]}');
    expect(faultOf(() => writeSvg(sheet(strange)))).toEqual({ code: "unknown-mark", kind: "spline" });
  });

  it("[D31] refuses a picture that nobody resolves, and clips one that somebody does", () => {
    const picture: Mark = {
      kind: "picture",
      source: "slip",
      left: mm(10),
      top: mm(10),
      width: mm(20),
      height: mm(30),
      degrees: 4,
      clip: [at, { x: mm(30), y: mm(20) }, { x: mm(30), y: mm(40) }],
    };
    expect(faultOf(() => writeSvg(sheet(picture)))).toEqual({ code: "no-picture", source: "slip" });
    const svg = writeSvg(sheet(picture), { pictures: (source) => `pictures/${source}.jpg` });
    expect(svg).toContain('href="pictures/slip.jpg"');
    expect(svg).toContain('transform="rotate(4 20 25)"');
    expect(svg).toContain('<clipPath id="clip-1"><path d="M10 20L30 20L30 40Z"/></clipPath>');
    expect(svg).toContain('clip-path="url(#clip-1)"');
  });

  it("[D24] stacks a fraction, and says it with its whole for who does not see it", () => {
    const figure: Mark = {
      kind: "text",
      at,
      runs: [{ kind: "fraction", whole: "1", numerator: "1", denominator: "16" }],
      size: mm(4),
      weight: "regular",
      anchor: "middle",
    };
    const svg = writeSvg(sheet(figure));
    expect(svg).toContain('aria-label="1 1⁄16"');
    expect([...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => match[1])).toEqual([
      "1",
      "1",
      "16",
    ]);
  });

  it("leaves a hole open", () => {
    const svg = writeSvg(
      sheet({ kind: "area", points: ring(0), holes: [ring(10)], fill: "mat", line: null }),
    );
    expect(svg).toContain('fill-rule="evenodd" d="M0 0L50 0L50 50L0 50ZM10 10L40 10L40 40L10 40Z"');
  });
});
