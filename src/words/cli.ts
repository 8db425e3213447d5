/** What the command line says of itself. */
export const CLI = {
  about: "From a print on paper to the mat, the bench sheet and the wall.",
  compose: {
    about: "one work: window, borders, mats, stops, checks and the sums behind them",
    file: "the work as JSON; standard input where absent",
    json: "print one JSON document instead of text",
    lines: "one JSON document a line in, one result a line out",
    practice: "the studio's habits as JSON",
    reuse: "also which of the practice's frames and mats that exist it goes into, the best one first",
    stock: "the rack as JSON: also which of its offcuts serve for which layer",
    help: `
A work is one JSON document. Lengths are written as people write them.

  margent compose work.json
  echo '{"print":{"width":"8 1/2","height":"11"},"outer":{"width":"11","height":"14"}}' | margent compose
  margent compose work.json --practice practice.json --reuse --stock stock.json

What is left open comes from the practice: 1/8 in overlap, one mat of 4-ply white rag cut at
45 degrees, the smallest common size with borders of 2 in, raised 1/4 in above centre.

Exit status: 0 done; 1 done, but something cannot be made as asked; 2 nothing could be read.`,
  },
  packet: {
    about: "a list of prints (CSV, XLSX) or a show (JSON) to everything the bench needs, as files",
    show: "the list or show",
    out: "the folder to write; one that holds a packet is replaced as a whole",
    practice: "the studio's habits as JSON",
    stock: "what lies in the rack and can be bought, as JSON",
    paper: "paper to print on, a4 or letter (default: the practice's)",
    seconds: "how long the plan of one board may take (default: 5)",
    date: "the date to print, YYYY-MM-DD (default: today)",
    help: `
The list needs a column "title" and sizes: "sheet width" and "sheet height", or "image width" and
"image height", or a museum's "dimensions" (height first). A unit may stand in the header,
"sheet width (cm)", or in the cell.

  margent packet prints.csv --out packet
  margent packet show.json --out packet --practice practice.json --stock stock.json

Exit status: 0 all went in; 1 some row or work needs mending, the rest is there; 2 nothing could be read.`,
  },
  cut: {
    about: "blanks of one material out of sheets and offcuts, by cuts from edge to edge",
    file: "the job as JSON; standard input where absent",
    help: `
  echo '{"unit":"in","sheets":[{"name":"32 x 40","w":32,"h":40,"cost":11.5}],
         "pieces":[{"name":"Ebb","w":11,"h":14,"n":6}]}' | margent cut

Exit status: 0 done; 1 done, but some piece cannot be cut; 2 nothing could be read.`,
  },
  chop: {
    about: "rails of one moulding out of lengths and offcuts",
    file: "the job as JSON; standard input where absent",
    help: `
  echo '{"unit":"in","lengths":[{"name":"oak","length":120,"cost":22}],"saw":"1/8","waste":"1/2",
         "moulding":{"overall":"3/4","rabbet":"1/4","allowance":"1/8"},
         "frames":[{"name":"Ebb","width":11,"height":14,"n":2}]}' | margent chop

"frames" are the sizes of the packages; instead, "rails" may be given, each from long point to long
point: {"name","length","n","frame"}. "kerf" is what a cut takes along the length; "saw" is the
saw's thickness, of which a cut at 45 degrees takes the square root of 2 times as much. "waste" is
lost at each end. An offcut is a length with "copies" 1 and no cost.

Chop one small frame in scrap first. Clamp the stick, hands off the saw line; eyes, ears, dust.

Exit status: 0 done; 1 done, but some rail cannot be made; 2 nothing could be read.`,
  },
  hang: {
    about: "frames on a wall: where each hangs, where its hooks go, what they carry",
    file: "the wall as JSON; standard input where absent",
    sheet: "also write the hanging sheet, as PDF",
    paper: "paper to print on, a4 or letter",
    title: (wall: string): string => (wall === "" ? "Hanging sheet" : `Hanging sheet, ${wall}`),
    help: `
  echo '{"unit":"in","wall":{"width":"144","height":"96"},"eyeLine":"57","hookDrop":"1/2",
         "rule":{"row":"gap","gap":"8"},
         "works":[{"title":"Ebb","width":"16","height":"20","weight":"5 lb",
                   "hang":{"kind":"wire","below":"5","apart":"12","length":"13"}}]}' | margent hang

x runs from the wall's left corner, y up from the floor or the level line. A wire's "drop" may be
given instead of its length: how far it rises above the rings when taut. Other ways to hang: "rings",
"plates", "cleat". Other rules: {"row":"spread"}, {"grid":{"columns":3,"gap":"2"}},
{"cluster":{"gap":"2"}}.

Hooks and fixings for the load and for the wall they go into; local codes come first. In public
places, over a bed or seat, above 50 lb (22.68 kg), where the ground shakes: a licensed hand.

Exit status: 0 done; 1 done, but something cannot be hung as asked; 2 nothing could be read.`,
  },
  series: {
    about: "the outer sizes for a whole show: for every number of them those that cost least",
    file: "sizes, limits and works as JSON; standard input where absent",
    works: "a list (CSV, XLSX) or show (JSON) whose windows are taken instead of the document's works",
    hopeless: (row: number, title: string): string =>
      `row ${row}, ${title}: left out, it cannot be cut as asked on any size`,
    help: `
  echo '{"unit":"in","border":{"least":"2","most":"4"},"lift":{"by":"1/4","least":"0","most":"1/2"},
         "sizes":[{"name":"11 x 14","width":"11","height":"14","cost":1.9},
                  {"name":"16 x 20","width":"16","height":"20","cost":3.9}],
         "works":[{"title":"Ebb","width":"6 1/2","height":"9"},
                  {"title":"Ferry slip","width":"10","height":"13","n":3}]}' | margent series

A work's "width" and "height" are its window's at the back of the lowest mat; "cost" is the board of
one work of that size. A size may stand either way up, unless "turn" is false. With --works the
windows of a list or show are composed first; "reach" then comes from each print's own paper.

Exit status: 0 done; 1 done, but some work is served by no size or some row was bad; 2 nothing could
be read.`,
  },
  list: {
    about: "a show as a list that a spreadsheet opens",
    out: "the file to write; its ending says how: .csv or .xlsx",
    sheet: "Works",
    lost: (row: number, fields: string): string => `row ${row}: the list has no column for ${fields}`,
  },
  draw: {
    about: "one mat at full size as SVG, DXF or PDF, for a plotter or to lay beside the board",
    out: "the file to write; its ending says how: .svg, .dxf or .pdf",
    mat: "which mat, 1 the lowest",
    from: "seen from the back, as it lies under the hand, or from the front",
    words: { head: "HEAD", out: "OUT" },
    title: (mat: number, view: "back" | "front"): string => `Mat ${mat} at full size, ${view} view`,
  },
  backup: {
    about: "copy the studio, also while it is served",
    file: "the file to write",
    done: (file: string): string => `${file} holds the whole studio`,
    help: `
Of a studio's own file it is a copy of that file; of a PostgreSQL (MARGENT_DATABASE) an export.

Exit status: 0 done; 2 it could not be written.`,
  },
  restore: {
    about: "put a backup in the place of all that the studio holds",
    file: "what margent backup or margent export has written",
    done: (shows: number, before: string | null): string =>
      `restored, ${shows === 1 ? "one show" : `${shows} shows`}${before === null ? "" : `; what was there before lies in ${before}`}`,
    help: `
Stop Margent first. What is there is copied aside before anything is put in its place.

Exit status: 0 done; 2 the backup cannot be read, or Margent is running.`,
  },
  export: {
    about: "carry one show, or all of the studio, out as a zip that any Margent takes in",
    file: "the zip to write",
    show: "one show alone, by its name or id",
    oneOf: (all: string): string => (all === "" ? "there is no show yet" : `one of ${all}`),
    done: (file: string): string => `${file} is written`,
    help: `
Works, history, printed papers and pictures as they came in: docs/format.md tells what the zip holds.

Exit status: 0 done; 2 it could not be written.`,
  },
  import: {
    about: "take the shows of a zip into the studio, beside those that are there",
    file: "what margent export has written, or a zip with a show.json and its pictures",
    done: (name: string, works: number): string =>
      `${name}: ${works === 1 ? "one work" : `${works} works`} taken in`,
    help: `
All of it comes in or nothing. A show that is there already comes in a second time, beside the first.

Exit status: 0 done; 2 nothing could be read.`,
  },
  serve: {
    about: "open the page on this machine",
    port: "port to listen on; 0 takes any free one",
    home: "folder of the studio's own file",
    open: "open a browser",
    noOpen: "open no browser",
  },
  schema: "print the JSON Schema of the documents",
  noInput: "nothing to read: give a file, or a document on standard input",
  say: ({ field, found, wanted }: { field: string; found: string; wanted: string }): string =>
    CLI.problem(field, found, wanted),
  problem: (field: string, found: string, wanted: string): string =>
    `${field === "" ? "document" : field}: found ${found}; wanted: ${wanted}`,
  cannotRead: (name: string, why: string): string => `${name}: cannot be read (${why})`,
} as const;
