import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folder, margent, root } from "./run.ts";

const DATE = ["--date", "2026-11-25", "--seconds", "0"];

interface PacketJson {
  plan: number;
  works: {
    row: number;
    title: string;
    quantity: number;
    mats: object[];
    checks: { level: string; code: string }[];
  }[];
  cut: Record<string, { sheets: { pieces: object[] }[] }>;
  chop?: { lengths: { rails: object[] }[]; bound: { cost: number }; cost: number };
  problems: { row: number; column: string; found: string; wanted: string }[];
}

const packetIn = (path: string): PacketJson =>
  JSON.parse(readFileSync(join(path, "packet.json"), "utf8")) as PacketJson;

function list(text: string): string {
  const path = join(folder(), "list.csv");
  writeFileSync(path, text);
  return path;
}

test("[K4][K7][K9] the example show goes through, the one that cannot be cut gets no board", () => {
  const out = join(folder(), "packet");
  const ran = margent(["packet", "examples/slack-water/show.json", "--out", out, "--seconds", "1", ...DATE]);
  expect(ran.status).toBe(1);
  expect(ran.err).toContain("row 16, Two Sheds, Rain: STOP.");
  expect(ran.err.match(/^.*left out.*$/gm)).toEqual([
    "light.pdf is left out: the show does not say what light it hangs in.",
  ]);
  expect(readdirSync(out).toSorted()).toEqual([
    "back-labels.pdf",
    "bench-order.csv",
    "bench-order.pdf",
    "bench-sheets.pdf",
    "check-list.csv",
    "chop-list.csv",
    "chop-list.pdf",
    "condition-notes.pdf",
    "cut-plan.csv",
    "cut-plan.pdf",
    "frame-fits.csv",
    "frame-sheets.pdf",
    "hanging.pdf",
    "labels.pdf",
    "loan-list.pdf",
    "mounting-sheets.pdf",
    "packet.json",
    "packing-list.pdf",
    "quote.csv",
    "quote.pdf",
    "records-dublin-core.xml",
    "records-iptc.xmp",
    "records.csv",
    "records.xlsx",
    "shopping-list.csv",
    "shopping-list.pdf",
    "wall-labels.pdf",
  ]);
  const packet = packetIn(out);
  expect(packet.works.length).toBe(24);
  // A blank for every mat, one to mount on, backing and glazing, of every work that can be cut.
  const wanted = packet.works
    .filter(({ checks }) => checks.every(({ level }) => level !== "stop"))
    .reduce((sum, { mats, quantity }) => sum + (mats.length + 3) * quantity, 0);
  const planned = Object.values(packet.cut).flatMap(({ sheets }) => sheets.flatMap(({ pieces }) => pieces));
  expect(planned.length).toBe(wanted);
  const rows = readFileSync(join(out, "cut-plan.csv"), "utf8").trim().split("\r\n").slice(1);
  const numbers = rows.map((row) => Number(row.split(",")[0]));
  expect(numbers.toSorted((a, b) => a - b)).toEqual(Array.from({ length: wanted }, (_, index) => index + 1));
  expect(rows.some((row) => row.includes("Two Sheds"))).toBe(false);
  // Four rails for every frame, as many frames as there is glazing.
  const rails = readFileSync(join(out, "chop-list.csv"), "utf8").trim().split("\r\n").slice(1);
  expect(rails.length).toBe(4 * rows.filter((row) => row.includes(",glazing,")).length);
  expect(packet.chop?.lengths.flatMap((length) => length.rails).length).toBe(rails.length);
});

test("[K4] a messy European list: good rows through, bad ones named by row and column", () => {
  const out = join(folder(), "packet");
  const ran = margent(["packet", "examples/lists/werkverzeichnis.csv", "--out", out, ...DATE]);
  expect(ran.status).toBe(1);
  const packet = packetIn(out);
  expect(packet.works.length).toBeGreaterThan(5);
  expect(packet.problems.length).toBeGreaterThan(2);
  for (const { row, column, found, wanted } of packet.problems) {
    expect(row).toBeGreaterThan(1);
    expect([column, found, wanted].every((text) => text.length > 0)).toBe(true);
    expect(ran.err).toContain(`row ${row}, ${column}: found ${found}`);
    expect(packet.works.some((work) => work.row === row)).toBe(false);
  }
});

test("[K1] [MN6] a clean list is status 0, a list without one good row 2", () => {
  const clean = "title,sheet width,sheet height,outer width,outer height\nEbb,8,10,11,14\n";
  const good = margent(["packet", list(clean), "--out", join(folder(), "p"), ...DATE]);
  expect([good.status, good.err.includes("found")]).toEqual([0, false]);
  expect(good.err).toContain("quote.pdf and quote.csv are left out: no price is known.");
  const none = margent([
    "packet",
    list("title,sheet width,sheet height\nEbb,71/4,10\n"),
    "--out",
    join(folder(), "p"),
    ...DATE,
  ]);
  expect(none.status).toBe(2);
  expect(none.err).toContain("row 2, sheet width: found 71/4");
  const noTitle = margent(["packet", list("name,width\nEbb,8\n"), "--out", join(folder(), "p"), ...DATE]);
  expect(noTitle.status).toBe(2);
});

test("[K5] a folder that holds something else is refused and left alone", () => {
  const out = folder();
  writeFileSync(join(out, "letter.txt"), "keep me");
  const ran = margent(["packet", "examples/slack-water/list.csv", "--out", out, ...DATE]);
  expect(ran.status).toBe(2);
  expect(ran.err).toContain("holds something else");
  expect(readdirSync(out)).toEqual(["letter.txt"]);
});

test("[K5][K6] a second packet replaces the first whole, and says that it makes it void", () => {
  const out = join(folder(), "packet");
  const clean = list("title,sheet width,sheet height,outer width,outer height\nEbb,8,10,11,14\n");
  expect(margent(["packet", clean, "--out", out, ...DATE]).status).toBe(0);
  writeFileSync(join(out, "left-over.pdf"), "from the first");
  expect(margent(["packet", clean, "--out", out, ...DATE]).status).toBe(0);
  expect(packetIn(out).plan).toBe(2);
  expect(existsSync(join(out, "left-over.pdf"))).toBe(false);
  // Cut off between the two moves: the old packet stands aside, and the next run puts it back.
  renameSync(out, join(out, "..", ".packet.before"));
  expect(margent(["packet", clean, "--out", out, ...DATE]).status).toBe(0);
  expect(packetIn(out).plan).toBe(3);
  expect(readdirSync(join(out, "..")).toSorted()).toEqual(["packet"]);
});

test("[K8] the same order makes the same bytes", () => {
  const [one, other] = [join(folder(), "packet"), join(folder(), "packet")];
  for (const out of [one, other])
    margent(["packet", "examples/lists/evening-class.csv", "--out", out, ...DATE]);
  const names = readdirSync(one);
  expect(names.length).toBeGreaterThan(5);
  for (const name of names)
    expect([name, readFileSync(join(one, name)).equals(readFileSync(join(other, name)))]).toEqual([
      name,
      true,
    ]);
});

test("[K10] a picture outside the list's folder is not taken", () => {
  const place = folder();
  mkdirSync(join(place, "lists"));
  writeFileSync(
    join(place, "secret.jpg"),
    readFileSync(join(root, "examples/slack-water/pictures/neap.jpg")),
  );
  const path = join(place, "lists", "list.csv");
  writeFileSync(
    path,
    "title,sheet width,sheet height,picture\nEbb,8,10,../secret.jpg\nNeap,8,10,pictures/none.jpg\n",
  );
  const out = join(place, "packet");
  expect(margent(["packet", path, "--out", out, ...DATE]).status).toBe(0);
  expect(readFileSync(join(out, "bench-sheets.pdf")).length).toBeLessThan(200_000);
});

test("[K3] options that cannot be read are named", () => {
  const clean = list("title,sheet width,sheet height\nEbb,8,10\n");
  const out = join(folder(), "p");
  expect(margent(["packet", clean, "--out", out, "--date", "2026-02-30"]).err).toContain(
    "--date: found 2026-02-30",
  );
  const noMonth = margent(["packet", clean, "--out", out, "--date", "2026-13-45"]);
  expect([noMonth.status, noMonth.err]).toEqual([2, expect.stringContaining("--date: found 2026-13-45")]);
  expect(margent(["packet", clean, "--out", out, "--paper", "a9"]).err).toContain(
    "--paper: found a9; wanted: a4 or letter",
  );
  expect(margent(["packet", "/nowhere.csv", "--out", out]).status).toBe(2);
  const practice = join(folder(), "practice.json");
  writeFileSync(practice, JSON.stringify({ overlap: "71/4" }));
  const ran = margent(["packet", clean, "--out", out, "--practice", practice]);
  expect([ran.status, existsSync(out)]).toEqual([2, false]);
  expect(ran.err).toContain("practice.overlap: found 71/4");
});

test("[K1] a show leaves as a list, CSV or workbook, and comes back as the same works", () => {
  const place = folder();
  for (const ending of ["csv", "xlsx"]) {
    const out = join(place, `works.${ending}`);
    const ran = margent(["list", "examples/lists/evening-class.csv", "--out", out]);
    expect([ending, ran.status, ran.out]).toEqual([ending, 0, ""]);
    const again = margent(["packet", out, "--out", join(place, ending), ...DATE]);
    expect(again.status).toBe(0);
  }
  const [csv, workbook] = [packetIn(join(place, "csv")), packetIn(join(place, "xlsx"))];
  expect(csv.works.length).toBe(12);
  expect(workbook).toEqual({ ...csv, show: "works" });
  // What a list has no column for is said, not dropped unsaid.
  const shown = margent(["list", "examples/slack-water/show.json", "--out", join(place, "show.csv")]);
  expect(shown.err).toContain("the list has no column for");
  expect(margent(["list", "examples/slack-water/show.json", "--out", join(place, "show.ods")]).status).toBe(
    2,
  );
});

test("[K4] without a practice a list is measured in what it mostly says, boards and all", () => {
  const [metric, inches] = [join(folder(), "p"), join(folder(), "p")];
  margent([
    "packet",
    list("title;sheet width (cm);sheet height (cm)\nEbbe;24,0;32,0\nFlut;30;40\n"),
    "--out",
    metric,
    ...DATE,
  ]);
  margent([
    "packet",
    list("title,sheet width,sheet height\nEbb,8,10\nNeap,9,12\n"),
    "--out",
    inches,
    ...DATE,
  ]);
  const outers = (path: string) =>
    (packetIn(path).works as unknown as { outer: { width: { text: string } } }[]).map(
      ({ outer }) => outer.width.text,
    );
  expect(outers(metric)).toEqual(["400 mm", "500 mm"]);
  expect(outers(inches)).toEqual(["12 in", "14 in"]);
});

test("[K11] a board and a rail that no stock gives are told by row, and the run ends with 1", () => {
  const stock = join(folder(), "stock.json");
  writeFileSync(
    stock,
    JSON.stringify({
      sheets: [{ name: "16 x 20", width: "16", height: "20" }],
      lengths: [{ name: "3 ft", length: "18 in" }],
    }),
  );
  const practice = join(folder(), "practice.json");
  writeFileSync(
    practice,
    JSON.stringify({ unit: "in", moulding: { name: "ash, flat", overall: "1 in", rabbet: "1/4 in" } }),
  );
  const path = list(
    "title,sheet width,sheet height,outer width,outer height\nSmall Slip,8,10,11,14\nLong Quay,20,16,30,24\n",
  );
  const out = join(folder(), "packet");
  const ran = margent(["packet", path, "--stock", stock, "--practice", practice, "--out", out, ...DATE]);
  expect(ran.status).toBe(1);
  const told = ran.err.split("\n").filter((line) => line.includes("STOP."));
  expect(told).toEqual([
    expect.stringMatching(
      /^row 3, 4-ply white rag: STOP\. Long Quay .*no sheet is large enough; the largest gives/,
    ),
    expect.stringMatching(/^row 3, 4-ply white rag: STOP\. Long Quay .*no sheet is large enough/),
    expect.stringMatching(/^row 3, ash, flat: STOP\. Long Quay.*no length is long enough/),
    expect.stringMatching(/^row 3, ash, flat: STOP\. Long Quay.*no length is long enough/),
  ]);
  const packet = packetIn(out);
  const pieces = Object.values(packet.cut).flatMap(({ sheets }) => sheets.flatMap((sheet) => sheet.pieces));
  expect(pieces.length).toBe(2);
});
